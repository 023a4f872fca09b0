package org.matraloom.pack;

import java.util.Optional;
import java.util.function.IntFunction;
import org.matraloom.voice.SolluVoice;

/**
 * What is heard in the tracks of a set beside the voice.
 *
 * @param leadIn whole avartanas of plain words before those from samam up to a start off samam, as
 *     far as they are counted in; empty for no words
 * @param drum makes a drum that plays what is said, for a rate in frames a second; none for no drum
 * @param strokes which strokes it plays, so that a set is known by them; empty for no drum
 */
public record PackBeside(
    Optional<Integer> leadIn, Optional<IntFunction<? extends SolluVoice>> drum, String strokes) {

  /** The voice alone. */
  public static final PackBeside NOTHING = new PackBeside(Optional.empty(), Optional.empty(), "");

  /** What tells a set from one with other things beside the voice; empty for the voice alone. */
  String known() {
    return leadIn.map(avartanas -> "\nlead-in" + (avartanas > 0 ? " " + avartanas : "")).orElse("")
        + (drum.isPresent() ? "\ndrum " + strokes : "");
  }
}
