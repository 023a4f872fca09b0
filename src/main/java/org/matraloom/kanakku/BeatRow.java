package org.matraloom.kanakku;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Kriya;
import org.matraloom.score.Recitation;
import org.matraloom.score.Sollu;
import org.matraloom.score.Span;
import org.matraloom.score.Utterance;
import org.matraloom.time.Ratio;

/**
 * One beat of a round cut by the tala: what the hand does, and what the mouth says meanwhile.
 *
 * @param beat which beat; 0 is the samam of the avartana in which the performance starts
 * @param kriya what the hand gives
 * @param samam whether it is the first beat of an avartana
 * @param onTheBeat the sollu that sounds when the kriya falls, if one does
 * @param begins whether that sollu begins on the beat, rather than ringing on from before
 * @param sollus the sollus that begin in this beat, in order
 * @param marks the beat in writing, a mark a matra: a sollu, several of them in square brackets, a
 *     comma where a sound rings on, a dot where it is silent, a hyphen outside the round
 */
public record BeatRow(
    long beat,
    Kriya kriya,
    boolean samam,
    Optional<Sollu> onTheBeat,
    boolean begins,
    List<Sollu> sollus,
    List<String> marks) {

  /** The most beats that are listed. */
  public static final int MOST = 10_000;

  record Said(Ratio from, Ratio to, Sollu sollu) {}

  /** Copies the lists. */
  public BeatRow {
    sollus = List.copyOf(sollus);
    marks = List.copyOf(marks);
  }

  /**
   * A round cut by the tala.
   *
   * @param round the round
   * @param composition the piece it belongs to
   * @return a row for every beat in which the round is said, at most {@value #MOST}
   */
  public static List<BeatRow> of(Span.Round round, Composition composition) {
    long first = round.startBeat().floor();
    long last = Math.min(round.endBeat().ceil(), first + MOST);
    List<Said> said = new ArrayList<>();
    Iterator<Utterance> utterances = Recitation.of(round, composition);
    while (utterances.hasNext()
        && (said.isEmpty() || newest(said).from().compareTo(Ratio.of(last)) < 0)) {
      take(utterances.next(), round.startBeat(), said);
    }
    List<BeatRow> rows = new ArrayList<>();
    int ended = 0;
    for (long beat = first; beat < last; beat++) {
      while (ended < said.size() && said.get(ended).to().compareTo(Ratio.of(beat)) <= 0) {
        ended++;
      }
      List<Said> sounding = said.subList(ended, said.size());
      rows.add(row(beat, composition.avartana(), sounding, BeatMarks.of(beat, round, sounding)));
    }
    return List.copyOf(rows);
  }

  private static Said newest(List<Said> said) {
    return said.get(said.size() - 1);
  }

  private static void take(Utterance utterance, Ratio start, List<Said> said) {
    Ratio from = start.plus(utterance.atBeat());
    if (utterance instanceof Utterance.Sound sound) {
      said.add(new Said(from, from.plus(sound.beats()), sound.sollu()));
    } else if (utterance instanceof Utterance.Ring ring && !said.isEmpty()) {
      Said rings = newest(said);
      if (rings.to().equals(from)) {
        said.set(said.size() - 1, new Said(rings.from(), from.plus(ring.beats()), rings.sollu()));
      }
    }
  }

  private static BeatRow row(long beat, Avartana avartana, List<Said> said, List<String> marks) {
    Ratio from = Ratio.of(beat);
    Ratio to = Ratio.of(beat + 1);
    List<Sollu> inside = new ArrayList<>();
    Optional<Said> on = Optional.empty();
    for (Said one : said) {
      if (one.from().compareTo(to) >= 0) {
        break;
      }
      if (one.from().compareTo(from) >= 0) {
        inside.add(one.sollu());
      }
      if (one.from().compareTo(from) <= 0) {
        on = Optional.of(one);
      }
    }
    return new BeatRow(
        beat,
        avartana.kriyaAt(beat),
        avartana.isSamam(beat),
        on.map(Said::sollu),
        on.isPresent() && on.get().from().equals(from),
        inside,
        marks);
  }
}
