package org.matraloom.app.prove;

import org.matraloom.kanakku.LengthWords;
import org.matraloom.time.Ratio;

/** Says in two or three words whether something lands. */
public final class MissWords {

  private MissWords() {}

  /**
   * How far a piece misses, such as "lands", or "16 matras (3 1/5 beats) early".
   *
   * @param missBeats how many beats too late it ends; negative if too early
   * @param matrasPerBeat matras a beat in the last round
   * @return the words
   */
  public static String of(Ratio missBeats, int matrasPerBeat) {
    if (missBeats.signum() == 0) {
      return "lands";
    }
    boolean late = missBeats.signum() > 0;
    return LengthWords.length(late ? missBeats : missBeats.negate(), matrasPerBeat)
        + (late ? " late" : " early");
  }
}
