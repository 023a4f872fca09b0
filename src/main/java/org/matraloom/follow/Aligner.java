package org.matraloom.follow;

import java.util.List;
import java.util.Set;
import org.matraloom.onset.Onset;
import org.matraloom.onset.OnsetCurve;
import org.matraloom.score.Lexicon;

/** Finds which sound of a take is which sollu of its score. */
public final class Aligner {

  private Aligner() {}

  /**
   * Aligns a take.
   *
   * <p>The take may begin late, be up to a quarter slower or faster than the score, drift, miss or
   * double sollus, hold other sounds, and begin again at a round or a phrase.
   *
   * @param expected the sollus of the score, in order
   * @param curve what was heard
   * @return the best alignment
   */
  public static Alignment of(List<ExpectedSollu> expected, OnsetCurve curve) {
    return of(expected, curve, curve.heard(Alignment.LEAST_CONFIDENCE), Lexicon.standard());
  }

  /**
   * Aligns onsets.
   *
   * @param expected the sollus of the score, in order
   * @param curve the recording in which they were heard
   * @param onsets what was heard, in order of time
   * @param lexicon what the score was read with
   * @return the best alignment
   */
  public static Alignment of(
      List<ExpectedSollu> expected, OnsetCurve curve, List<Onset> onsets, Lexicon lexicon) {
    SoundColours colours = SoundColours.of(curve.levels(), onsets);
    PairingSearch.Found found = new PairingSearch(expected, onsets, colours, lexicon).find();
    return new Alignment(
        expected,
        onsets,
        found.said(),
        Set.of(),
        RecordedRange.whole(expected.size()),
        found.unsure(),
        Set.of(),
        found.lagSeconds());
  }
}
