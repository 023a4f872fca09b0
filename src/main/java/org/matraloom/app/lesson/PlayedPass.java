package org.matraloom.app.lesson;

import java.util.Optional;
import org.matraloom.onset.BandEnergies;

/**
 * A pass that was played and recorded.
 *
 * @param goesOn false if a key asked for the end of the session
 * @param heard what was looked at of the take while it was said, so that it need not be looked at
 *     again; empty if it was not, or not all of it
 */
public record PlayedPass(boolean goesOn, Optional<BandEnergies> heard) {

  /**
   * A pass to which nobody listened while it was said.
   *
   * @param goesOn false if a key asked for the end of the session
   * @return the pass
   */
  public static PlayedPass unheard(boolean goesOn) {
    return new PlayedPass(goesOn, Optional.empty());
  }
}
