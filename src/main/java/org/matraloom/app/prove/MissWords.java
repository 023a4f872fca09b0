package org.matraloom.app.prove;

import org.matraloom.kanakku.LengthWords;
import org.matraloom.time.Ratio;

/** Says in two or three words whether something lands. */
final class MissWords {

  private MissWords() {}

  /** "lands", or "16 matras (3 1/5 beats) early". */
  static String of(Ratio missBeats, int matrasPerBeat) {
    if (missBeats.signum() == 0) {
      return "lands";
    }
    boolean late = missBeats.signum() > 0;
    return LengthWords.length(late ? missBeats : missBeats.negate(), matrasPerBeat)
        + (late ? " late" : " early");
  }
}
