package org.matraloom.follow;

import java.util.List;
import java.util.Set;
import org.matraloom.onset.KnownSounds;
import org.matraloom.onset.Onset;
import org.matraloom.onset.OnsetCurve;
import org.matraloom.onset.SoundLevels;
import org.matraloom.score.Lexicon;

/** Finds which sound of a take is which sollu of its score. */
public final class Aligner {

  /** By so much the logarithm of the likelihood of the sounds is to grow. */
  private static final double CLEARLY_LIKER = 1;

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
    return of(expected, curve, onsets, lexicon, KnownSounds.NONE);
  }

  /**
   * Aligns onsets of a mouth that may be known.
   *
   * @param expected the sollus of the score, in order
   * @param curve the recording in which they were heard
   * @param onsets what was heard, in order of time
   * @param lexicon what the score was read with
   * @param mouth what is known beforehand of who speaks
   * @return the best alignment
   */
  public static Alignment of(
      List<ExpectedSollu> expected,
      OnsetCurve curve,
      List<Onset> onsets,
      Lexicon lexicon,
      KnownSounds mouth) {
    PairingSearch.Found found = found(expected, curve, onsets, lexicon, mouth);
    FaintSollus.Filled filled = filled(expected, curve.levels(), onsets, found);
    List<Alignment.Said> said =
        new LoneEnds(expected, curve.levels(), filled.onsets(), found.lagSeconds())
            .leftOut(filled.said());
    return new Alignment(
        expected,
        filled.onsets(),
        said,
        Set.of(),
        RecordedRange.whole(expected.size()),
        found
            .unsure()
            .or(() -> LeftOverEnds.afterFaint(expected, filled.onsets(), said))
            .or(() -> UnlikeEnd.of(expected, curve.levels(), filled.onsets(), said)),
        Set.of(),
        found.lagSeconds());
  }

  /**
   * The likeliest pairing. What is known of a mouth is heard where the sounds are clearly liker to
   * it in another pairing than in that which the take itself tells; else all stays as it is.
   */
  private static PairingSearch.Found found(
      List<ExpectedSollu> expected,
      OnsetCurve curve,
      List<Onset> onsets,
      Lexicon lexicon,
      KnownSounds mouth) {
    SoundColours heard = SoundColours.of(curve.levels(), onsets, expected, lexicon);
    PairingSearch.Found plain =
        new PairingSearch(expected, onsets, heard, lexicon, KnownSounds.NONE).find();
    if (mouth.isUnknown()) {
      return plain;
    }
    SoundColours colours = SoundColours.of(curve.levels(), onsets, expected, mouth);
    PairingSearch.Found known = new PairingSearch(expected, onsets, colours, lexicon, mouth).find();
    int[] kinds = ExpectedSollu.kinds(expected);
    double more =
        SoundEvidence.of(colours, kinds, known.said())
            - SoundEvidence.of(colours, kinds, plain.said());
    return more > CLEARLY_LIKER ? known : plain;
  }

  /**
   * With the sollus that are heard faintly in their places; a last sollu that was given a clap or
   * another sound unlike it is looked for as well.
   */
  private static FaintSollus.Filled filled(
      List<ExpectedSollu> expected,
      SoundLevels levels,
      List<Onset> onsets,
      PairingSearch.Found found) {
    if (UnlikeEnd.isUnlike(expected, levels, onsets, found.said())) {
      PairingSearch.Found before = found.withoutLast();
      FaintSollus.Filled other = new FaintSollus(expected, levels, onsets, before).filled();
      if (other.said().get(other.said().size() - 1).sollu() == expected.size() - 1) {
        return other;
      }
    }
    return new FaintSollus(expected, levels, onsets, found).filled();
  }
}
