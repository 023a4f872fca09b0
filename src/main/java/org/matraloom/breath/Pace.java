package org.matraloom.breath;

import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/** Turns lengths in beats into seconds and back, exactly. */
record Pace(Tempo tempo) {

  Ratio seconds(Ratio beats) {
    return beats.times(tempo.secondsPerBeat());
  }

  Ratio beats(int milliseconds) {
    return Ratio.of(milliseconds, 1_000).dividedBy(tempo.secondsPerBeat());
  }
}
