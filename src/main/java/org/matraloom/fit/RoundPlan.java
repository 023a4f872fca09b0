package org.matraloom.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.matraloom.kanakku.LengthWords;
import org.matraloom.score.Composition;
import org.matraloom.score.Step;
import org.matraloom.time.Ratio;

/**
 * The rounds in which one phrase of a yet unknown length is said, with the waits between them.
 *
 * @param parts rounds and waits in order, at least one round
 */
public record RoundPlan(List<Part> parts) {

  /** The most parts a plan may have. */
  public static final int MOST_PARTS = 128;

  /** One part of the plan. */
  public sealed interface Part {

    /**
     * The phrase is said once.
     *
     * @param nadai matras a beat in the first kalam, 1 to 9
     * @param kalam 1, 2 or 3
     */
    record Round(int nadai, int kalam) implements Part {
      /**
       * Checks the numbers.
       *
       * @throws IllegalArgumentException if one is out of range
       */
      public Round {
        check("nadai", nadai, Composition.HIGHEST_NADAI);
        check("kalam", kalam, Composition.HIGHEST_KALAM);
      }

      /**
       * The matras of a beat.
       *
       * @return nadai times the density of the kalam
       */
      public int matrasPerBeat() {
        return nadai * Composition.density(kalam);
      }
    }

    /**
     * A wait of a known length.
     *
     * @param beats the length, not negative
     */
    record Wait(Ratio beats) implements Part {}

    /**
     * A wait of a length still to be found; all open waits of a plan have one length.
     *
     * @param nadai the matras of a beat in which it is counted
     */
    record OpenWait(int nadai) implements Part {
      /**
       * Checks the nadai.
       *
       * @throws IllegalArgumentException if it is out of range
       */
      public OpenWait {
        check("nadai", nadai, Composition.HIGHEST_NADAI);
      }
    }

    private static void check(String what, int given, int highest) {
      if (given < 1 || given > highest) {
        throw new IllegalArgumentException(what + " is 1 to " + highest + ", given " + given);
      }
    }
  }

  /**
   * Copies the list.
   *
   * @throws IllegalArgumentException if nothing is said, or there are too many parts
   */
  public RoundPlan {
    parts = List.copyOf(parts);
    if (parts.stream().noneMatch(Part.Round.class::isInstance) || parts.size() > MOST_PARTS) {
      throw new IllegalArgumentException(
          "a round plan has 1 to " + MOST_PARTS + " parts and at least one round");
    }
  }

  /**
   * A plan of rounds in the first kalam, without waits.
   *
   * @param nadais the nadai of each round
   * @return the plan
   */
  public static RoundPlan of(int... nadais) {
    List<Part> parts = new ArrayList<>();
    for (int nadai : nadais) {
      parts.add(new Part.Round(nadai, 1));
    }
    return new RoundPlan(parts);
  }

  /**
   * The rounds alone.
   *
   * @return in order
   */
  public List<Part.Round> rounds() {
    return parts.stream().filter(Part.Round.class::isInstance).map(Part.Round.class::cast).toList();
  }

  /**
   * Whether a wait is still to be found.
   *
   * @return true if there is an open wait
   */
  public boolean hasOpenWait() {
    return parts.stream().anyMatch(Part.OpenWait.class::isInstance);
  }

  /**
   * How far one matra more in the phrase moves the end.
   *
   * @return beats, positive
   */
  public Ratio beatsPerMatra() {
    return rounds().stream()
        .map(round -> Ratio.of(1, round.matrasPerBeat()))
        .reduce(Ratio.ZERO, Ratio::plus);
  }

  /**
   * How far one matra more in every open wait moves the end.
   *
   * @return beats, nought without an open wait
   */
  public Ratio beatsPerWaitMatra() {
    Ratio sum = Ratio.ZERO;
    for (Part part : parts) {
      sum = part instanceof Part.OpenWait wait ? sum.plus(Ratio.of(1, wait.nadai())) : sum;
    }
    return sum;
  }

  /**
   * The waits of known length together.
   *
   * @return beats
   */
  public Ratio waitBeats() {
    Ratio sum = Ratio.ZERO;
    for (Part part : parts) {
      sum = part instanceof Part.Wait wait ? sum.plus(wait.beats()) : sum;
    }
    return sum;
  }

  /**
   * The plan as steps of a score.
   *
   * @param phrase the name of the phrase that is said
   * @param waitMatras the length given to every open wait, in matras
   * @return one step a part
   */
  public List<Step> steps(String phrase, int waitMatras) {
    List<Step> steps = new ArrayList<>();
    for (Part part : parts) {
      if (part instanceof Part.Round round) {
        steps.add(new Step.Say(phrase, 1, round.nadai(), round.kalam()));
      } else if (part instanceof Part.Wait wait) {
        steps.add(new Step.RestBeats(wait.beats()));
      } else if (part instanceof Part.OpenWait open) {
        steps.add(new Step.RestMatras(waitMatras, open.nadai()));
      }
    }
    return List.copyOf(steps);
  }

  /**
   * The same plan with an open wait before its last round, counted in the nadai of that round.
   *
   * @return the plan
   */
  public RoundPlan withWaitBeforeLast() {
    int last = lastRound();
    List<Part> changed = new ArrayList<>(parts);
    changed.add(last, new Part.OpenWait(((Part.Round) parts.get(last)).nadai()));
    return new RoundPlan(changed);
  }

  /**
   * The same plan with another last round.
   *
   * @param round the round to end with
   * @return the plan
   */
  public RoundPlan endingIn(Part.Round round) {
    List<Part> changed = new ArrayList<>(parts);
    changed.set(lastRound(), round);
    return new RoundPlan(changed);
  }

  private int lastRound() {
    int last = parts.size() - 1;
    while (!(parts.get(last) instanceof Part.Round)) {
      last--;
    }
    return last;
  }

  /**
   * Writes the plan as it is typed.
   *
   * @return "4-4-5", "4-4-(?n5)-5" or "4k2-(1/2 beat)-3"
   */
  @Override
  public String toString() {
    return parts.stream().map(RoundPlan::typed).collect(Collectors.joining("-"));
  }

  private static String typed(Part part) {
    if (part instanceof Part.Round round) {
      return round.nadai() + (round.kalam() == 1 ? "" : "k" + round.kalam());
    } else if (part instanceof Part.Wait wait) {
      return "(" + LengthWords.beats(wait.beats()) + ")";
    }
    return "(?n" + ((Part.OpenWait) part).nadai() + ")";
  }
}
