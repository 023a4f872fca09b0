package org.matraloom.take;

import java.util.ArrayList;
import java.util.List;
import org.matraloom.score.Lexicon;

/**
 * What was said when, against the pulse of the take, which is found on the way.
 *
 * @param sollus in order of time
 * @param line the pulse
 */
record SaidSollus(List<SaidSollu> sollus, PulseLine line) {

  /** Fewer sollus have no pulse. */
  static final int LEAST = 4;

  /**
   * Places every sollu of an alignment.
   *
   * @param alignment with at least {@link #LEAST} sollus on different beats
   * @param lexicon tells the consonants
   * @return the sollus and the pulse
   */
  static SaidSollus of(Alignment alignment, Lexicon lexicon) {
    List<ExpectedSollu> expected = alignment.expected();
    List<FeltBeat> kinds =
        expected.stream().map(each -> FeltBeat.of(each.sollu(), lexicon)).toList();
    SaidSollus first = with(FeltBeat.usualLags(), kinds, alignment);
    return with(FeltLags.of(expected, kinds, first.sollus), kinds, alignment);
  }

  private static SaidSollus with(double[] lags, List<FeltBeat> kinds, Alignment alignment) {
    List<Alignment.Said> said = alignment.said();
    double[] beat = new double[said.size()];
    double[] felt = new double[said.size()];
    int[] run = new int[said.size()];
    for (int i = 0; i < beat.length; i++) {
      int place = said.get(i).sollu();
      beat[i] = alignment.expected().get(place).beat().toDouble();
      felt[i] = alignment.secondsOf(said.get(i)) + lags[kinds.get(place).ordinal()];
      boolean again = i > 0 && place <= said.get(i - 1).sollu();
      run[i] = i == 0 ? 1 : run[i - 1] + (again ? 1 : 0);
    }
    PulseLine line = new PulseFit(beat, felt, run).line();
    List<SaidSollu> sollus = new ArrayList<>();
    for (int i = 0; i < beat.length; i++) {
      sollus.add(
          new SaidSollu(
              said.get(i).sollu(),
              run[i],
              alignment.secondsOf(said.get(i)),
              felt[i],
              felt[i] - line.secondsAt(beat[i], run[i])));
    }
    return new SaidSollus(List.copyOf(sollus), line);
  }
}
