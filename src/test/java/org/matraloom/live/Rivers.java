package org.matraloom.live;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.matraloom.breath.BreathSettings;
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
import org.matraloom.voice.SolluCue;
import org.matraloom.voice.SolluVoice;
import org.matraloom.voice.SolluWave;
import org.matraloom.wav.PcmFormat;

/** A made-up piece in adi: Source 32, Bend 32, Delta 16 matras; twice at 4 and once at 5 a beat. */
public final class Rivers {

  public static final int RATE = 48_000;
  public static final PcmFormat MONO = new PcmFormat(RATE, 16, 1);

  private Rivers() {}

  public static Timeline timeline(Tempo tempo, int countInAvartanas) {
    Map<String, Sequence> phrases = new LinkedHashMap<>();
    phrases.put("Source", new Sequence(List.of(words(32))));
    phrases.put("Bend", new Sequence(List.of(words(16))));
    phrases.put("Delta", new Sequence(List.of(words(16))));
    phrases.put(
        "River",
        new Sequence(
            List.of(
                new Element.Reference("Source"),
                new Element.Reference("Bend"),
                new Element.Reference("Bend"),
                new Element.Reference("Delta"))));
    Composition composition =
        new Composition(
            "River",
            Avartana.of(TalaFamily.TRIPUTA.tala(Jati.CHATUSRA), 1, FingerCustom.RESTART),
            tempo,
            Ratio.ZERO,
            Ratio.ZERO,
            phrases,
            List.of(new Step.Say("River", 2, 4, 1), new Step.Say("River", 1, 5, 1)));
    return ScoreTimeline.of(Performance.of(composition), countInAvartanas);
  }

  public static LivePiece piece(Tempo tempo, int countInAvartanas) {
    return new LivePiece(
        List.of(timeline(tempo, countInAvartanas)),
        countInAvartanas,
        new Clicks(),
        Optional.empty(),
        MONO,
        BreathSettings.study());
  }

  static <E extends Event> List<E> events(Timeline timeline, Class<E> kind) {
    List<E> found = new ArrayList<>();
    for (Event event : timeline) {
      if (kind.isInstance(event)) {
        found.add(kind.cast(event));
      }
    }
    return found;
  }

  /** Says every sollu as a short click, so that each is heard apart. */
  private static final class Clicks implements SolluVoice {
    @Override
    public int ratePerSecond() {
      return RATE;
    }

    @Override
    public int longestLeadFrames() {
      return 0;
    }

    @Override
    public SolluWave say(Optional<SolluCue> before, SolluCue cue, Optional<SolluCue> after) {
      float[] samples = new float[100];
      Arrays.fill(samples, 0.5f);
      return new SolluWave(samples, 0);
    }
  }

  private static Element.Word words(int matras) {
    Sollu sollu = new Sollu("ta", "ta");
    return new Element.Word("ta".repeat(matras), Collections.nCopies(matras, sollu));
  }
}
