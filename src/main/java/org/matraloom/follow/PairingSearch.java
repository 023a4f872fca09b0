package org.matraloom.follow;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.matraloom.onset.KnownSounds;
import org.matraloom.onset.Onset;
import org.matraloom.score.Lexicon;

/**
 * Pairs a take with its score by time and by sound together.
 *
 * <p>A first pairing goes by time alone. On words that repeat, such a pairing may be a sollu or
 * more beside the right one, so it is also tried shifted. From each of these it is learnt how the
 * performer speaks, and the likeliest is taken; another that is hardly less likely is kept beside
 * it, so that doubt can be told.
 */
final class PairingSearch {

  private static final int MOST_CLIMBS = 4;

  private final double[] expected;
  private final double[] matraSeconds;
  private final PairingWalk walk;
  private final PairingTraining training;
  private final PairingStarts starts;
  private final List<Onset> onsets;

  PairingSearch(
      List<ExpectedSollu> asked,
      List<Onset> onsets,
      SoundColours colours,
      Lexicon lexicon,
      KnownSounds mouth) {
    this(
        HabitLayouts.of(asked),
        Intervals.matras(asked),
        ExpectedSollu.entries(asked),
        ExpectedSollu.kinds(asked),
        onsets,
        colours,
        PairingModel.first(asked.stream().map(each -> FeltBeat.of(each.sollu(), lexicon)).toList())
            .of(asked, mouth));
  }

  PairingSearch(
      double[][] ways,
      double[] matraSeconds,
      boolean[] entries,
      int[] kinds,
      List<Onset> onsets,
      SoundColours colours,
      PairingModel ignorant) {
    this.expected = ways[0];
    this.matraSeconds = matraSeconds;
    this.onsets = List.copyOf(onsets);
    walk = new PairingWalk(ways, matraSeconds, onsets);
    training =
        new PairingTraining(
            new ScoreFollower(ways, matraSeconds, entries, onsets),
            walk,
            new PairingLessons(expected, kinds, onsets, colours),
            onsets.size(),
            ignorant.soft());
    starts = new PairingStarts(ways, matraSeconds, entries, onsets, ignorant);
  }

  /**
   * The likeliest pairing.
   *
   * @param said which sollu is which onset; empty if there is nothing to pair
   * @param unsure what cannot be told, if another pairing is hardly less likely
   * @param lagSeconds for each place of the score, how long before its beat it is heard, about the
   *     mean of all; empty if that was not learnt
   */
  record Found(List<Alignment.Said> said, Optional<EndAmbiguity> unsure, List<Double> lagSeconds) {

    /** The same without the last pair. */
    Found withoutLast() {
      return new Found(said.subList(0, said.size() - 1), unsure, lagSeconds);
    }
  }

  /** Looks for the likeliest pairing. */
  Found find() {
    if (expected.length == 0 || onsets.isEmpty()) {
      return new Found(List.of(), Optional.empty(), List.of());
    }
    PairingTraining.Trained plain = plain();
    if (training.isWhole(plain) && !LikerSounds.are(plain.said(), expected.length, training)) {
      return new Found(filled(plain), Optional.empty(), lags(plain));
    }
    PairingModel guess = starts.ignorant(plain.model().stretch());
    List<PairingTraining.Trained> all = new ArrayList<>(List.of(plain));
    if (training.isUnbroken(plain)) {
      starts
          .shiftedWhole(plain.said(), said -> training.learntWorth(said, guess))
          .forEach(start -> all.add(training.trained(start, guess)));
    } else {
      starts
          .others(plain.said(), said -> training.learntWorth(said, guess))
          .forEach(start -> all.add(training.trained(start, guess)));
    }
    PairingTraining.Trained likeliest = climbed(straightest(training.likeliest(all), guess), guess);
    PairingTraining.Trained whole =
        training.isUnbroken(likeliest)
            ? likeliest
            : training.likeliest(List.of(likeliest, training.trained(likeliest.said(), guess)));
    PairingTraining.Trained best =
        withEnd(ShiftedRival.begun(training, expected.length, whole, guess));
    return new Found(
        filled(best),
        ShiftedRival.of(training, expected.length, best, guess)
            .or(
                () ->
                    PairingRivals.of(
                        walk, training, onsets, expected.length, best.said(), best.model()))
            .or(() -> LeftOverEnds.of(onsets, best.said(), best.model(), matraSeconds)),
        lags(best));
  }

  /** A pairing with its end looked at once more. */
  private PairingTraining.Trained withEnd(PairingTraining.Trained found) {
    PairingModel model = found.model();
    List<Alignment.Said> whole =
        DisplacedEnd.found(found.said(), expected, matraSeconds, onsets, model);
    return new PairingTraining.Trained(
        ShortEnd.found(whole, expected, matraSeconds, onsets, model), model);
  }

  /**
   * The likeliest that is found by moving a pairing where its sounds are more alike, and again; all
   * with their gaps filled and as far as sounds go on at their ends, or what is left out would
   * tell.
   */
  private PairingTraining.Trained climbed(PairingTraining.Trained found, PairingModel guess) {
    PairingTraining.Trained best = found;
    PairingTraining.Trained whole = whole(found, guess);
    for (int climb = 0; climb < MOST_CLIMBS; climb++) {
      List<PairingTraining.Trained> all = new ArrayList<>(List.of(whole));
      for (List<Alignment.Said> moved : LikerSounds.of(whole.said(), expected.length, training)) {
        all.add(whole(training.asItIs(moved, guess), guess));
      }
      PairingTraining.Trained next = training.likeliest(all);
      if (next.said().equals(whole.said())) {
        return best;
      }
      whole = next;
      best = next;
    }
    return best;
  }

  private PairingTraining.Trained whole(PairingTraining.Trained trained, PairingModel guess) {
    PairingGaps gaps = new PairingGaps(expected, onsets, trained.model());
    return training.asItIs(gaps.extended(gaps.filled(trained.said())), guess);
  }

  /** A pairing, or the same sounds counted, whichever is likelier. */
  private PairingTraining.Trained straightest(PairingTraining.Trained found, PairingModel guess) {
    List<PairingTraining.Trained> both = new ArrayList<>(List.of(found));
    for (List<Alignment.Said> said : starts.straightened(found.said())) {
      both.add(training.asItIs(said, guess));
      both.add(training.trained(said, guess));
    }
    return training.likeliest(both);
  }

  /** The likeliest of those that are found without a look at what is shifted. */
  private PairingTraining.Trained plain() {
    List<PairingTraining.Trained> guessed = new ArrayList<>();
    for (double stretch : starts.stretches()) {
      PairingModel guess = starts.ignorant(stretch);
      PairingTraining.Trained bySure = training.trained(starts.bySureSounds(guess), guess);
      guessed.add(bySure);
      if (!training.isUnbroken(bySure)) {
        List<Alignment.Said> once = starts.onceBySureSounds(guess);
        guessed.add(training.trainedOnce(once, guess));
      }
      if (starts.hasUnsureSounds() && !training.isWhole(bySure)) {
        guessed.add(training.trained(starts.byAllSounds(guess), guess));
      }
    }
    return training.likeliest(guessed);
  }

  private static List<Double> lags(PairingTraining.Trained trained) {
    return Arrays.stream(trained.model().lagSeconds()).boxed().toList();
  }

  private List<Alignment.Said> filled(PairingTraining.Trained trained) {
    List<Alignment.Said> whole =
        new BrokenOff(expected, matraSeconds, onsets, trained.model())
            .found(trained.said(), walk.jumps(trained.said(), trained.model()));
    return new LandingSound(expected, matraSeconds, onsets, trained.model())
        .likeliest(new PairingGaps(expected, onsets, trained.model()).filled(whole));
  }
}
