package org.matraloom.sound;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Element;
import org.matraloom.score.FingerCustom;
import org.matraloom.score.Jati;
import org.matraloom.score.Performance;
import org.matraloom.score.Sequence;
import org.matraloom.score.Sollu;
import org.matraloom.score.Step;
import org.matraloom.spell.TalaFamily;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/** Small made-up pieces whose sound is known beforehand. */
public final class Pieces {

  private static final List<String> WORDS = List.of("ta", "ka", "di", "mi");

  private Pieces() {}

  /** Adi, 80 matras: twice at 4 and once at 5 a beat fills seven avartanas. */
  static Timeline adi80(Tempo tempo, int countInAvartanas) {
    return adi(80, 1, tempo, countInAvartanas);
  }

  /** Adi in a kalai, a phrase of single matras: twice at 4 and once at 5 a beat. */
  static Timeline adi(int matras, int kalai, Tempo tempo, int countInAvartanas) {
    return piece(
        kalai,
        tempo,
        countInAvartanas,
        List.of(said(matras)),
        new Step.Say("Song", 2, 4, 1),
        new Step.Say("Song", 1, 5, 1));
  }

  /** One long piece: a phrase of 64 matras, said so many times at 4 a beat. */
  static Timeline rounds(int times, Tempo tempo) {
    return piece(1, tempo, 1, List.of(said(64)), new Step.Say("Song", times, 4, 1));
  }

  /** A sollu, then its karvai, four times. */
  static Timeline ringing(Tempo tempo) {
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      elements.add(said(1));
      elements.add(new Element.Karvai(2));
      elements.add(said(1));
    }
    return piece(1, tempo, 0, elements, new Step.Say("Song", 1, 4, 1));
  }

  private static Timeline piece(
      int kalai, Tempo tempo, int countInAvartanas, List<Element> elements, Step... plan) {
    Composition composition =
        new Composition(
            "Gutter Song",
            Avartana.of(TalaFamily.TRIPUTA.tala(Jati.CHATUSRA), kalai, FingerCustom.RESTART),
            tempo,
            Ratio.ZERO,
            Ratio.ZERO,
            Map.of("Song", new Sequence(elements)),
            List.of(plan));
    return ScoreTimeline.of(Performance.of(composition), countInAvartanas);
  }

  private static Element.Word said(int matras) {
    List<Sollu> sollus = new ArrayList<>();
    for (int i = 0; i < matras; i++) {
      String word = WORDS.get(i % WORDS.size());
      sollus.add(new Sollu(word, word));
    }
    return new Element.Word(String.join("", Collections.nCopies(matras, "ta")), sollus);
  }

  public static <E extends Event> List<E> events(Timeline timeline, Class<E> kind) {
    List<E> found = new ArrayList<>();
    timeline.forEach(event -> collect(event, kind, found));
    return found;
  }

  private static <E extends Event> void collect(Event event, Class<E> kind, List<E> found) {
    if (kind.isInstance(event)) {
      found.add(kind.cast(event));
    }
  }
}
