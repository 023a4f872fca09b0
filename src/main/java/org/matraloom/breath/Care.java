package org.matraloom.breath;

import java.util.ArrayList;
import java.util.List;
import org.matraloom.time.Ratio;

/**
 * General cautions for voice and breath; not medical advice.
 *
 * <p>Light-headedness and tingling are the common signs of breathing too much (Healthwise and
 * HealthLink BC, pages on hyperventilation). No safe voice load is agreed on (National Center for
 * Voice and Speech, article on vocal dosimetry), so the reminder to rest is a habit of our own.
 */
public final class Care {

  /** After this many minutes of voice a rest is suggested. */
  public static final int REST_AFTER_MINUTES = 15;

  private Care() {}

  /**
   * What to keep in mind while a plan is practised.
   *
   * @param plan the plan
   * @return sentences, at least one
   */
  public static List<String> of(BreathPlan plan) {
    List<String> sentences = new ArrayList<>();
    Ratio voiced =
        plan.stretches().stream().map(BreathStretch::seconds).reduce(Ratio.ZERO, Ratio::plus);
    if (voiced.compareTo(Ratio.of(60L * REST_AFTER_MINUTES)) > 0) {
      sentences.add(
          "This is more than "
              + REST_AFTER_MINUTES
              + " minutes of voice: put silence and a drink of water in between.");
    }
    sentences.add(
        "Breathe quietly and without haste. Stop on pain, dizziness or tingling and breathe normally;"
            + " ask a doctor if it stays, and about a voice that is hoarse for more than a few days."
            + " These are general cautions, not medical advice.");
    return sentences;
  }
}
