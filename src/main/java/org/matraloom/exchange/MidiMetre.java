package org.matraloom.exchange;

import java.util.ArrayList;
import java.util.List;
import org.matraloom.score.Avartana;
import org.matraloom.time.Ratio;

/**
 * Where bars of another length begin. A bar is an avartana; a first bar that begins inside one is
 * shorter.
 *
 * @param beat where, in beats of the performance
 * @param beats how long a bar is from there on
 */
record MidiMetre(Ratio beat, int beats) {

  /** The metres from the beginning of a timeline on. */
  static List<MidiMetre> of(Avartana avartana, Ratio origin) {
    List<MidiMetre> metres = new ArrayList<>();
    int beats = avartana.goingOnAt(origin).beats();
    int done = (int) avartana.placeOf(origin).floor();
    if (done > 0) {
      metres.add(new MidiMetre(origin, beats - done));
    }
    Ratio whole = done == 0 ? origin : origin.plus(Ratio.of(beats - done));
    metres.add(new MidiMetre(whole, beats));
    avartana.turns().stream()
        .filter(turn -> Ratio.of(turn.beat()).compareTo(origin) > 0)
        .forEach(turn -> metres.add(new MidiMetre(Ratio.of(turn.beat()), turn.avartana().beats())));
    return metres;
  }
}
