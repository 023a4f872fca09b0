package org.matraloom.session;

import java.util.Locale;
import org.matraloom.sound.Part;

/** The parts of the mix that a key switches on and off. */
enum Switch {
  CLAPS(Action.CLAPS, Part.CLAP),
  COUNTS(Action.COUNTS, Part.COUNT),
  WAVES(Action.WAVES, Part.WAVE),
  TICKS(Action.TICKS, Part.TICK),
  VOICE(Action.VOICE, Part.VOICE),
  BREATHS(Action.BREATHS, Part.BREATH),
  DRONE(Action.DRONE, Part.DRONE);

  private final Action action;
  private final Part part;

  Switch(Action action, Part part) {
    this.action = action;
    this.part = part;
  }

  Action action() {
    return action;
  }

  Part part() {
    return part;
  }

  String words() {
    return name().toLowerCase(Locale.ROOT);
  }
}
