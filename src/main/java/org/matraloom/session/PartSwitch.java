package org.matraloom.session;

import java.util.Locale;
import org.matraloom.sound.MixPart;

/** The parts of the mix that a key switches on and off. */
enum PartSwitch {
  CLAPS(KeyAction.CLAPS, MixPart.CLAP),
  COUNTS(KeyAction.COUNTS, MixPart.COUNT),
  WAVES(KeyAction.WAVES, MixPart.WAVE),
  TICKS(KeyAction.TICKS, MixPart.TICK),
  VOICE(KeyAction.VOICE, MixPart.VOICE),
  BREATHS(KeyAction.BREATHS, MixPart.BREATH),
  DRONE(KeyAction.DRONE, MixPart.DRONE);

  private final KeyAction action;
  private final MixPart part;

  PartSwitch(KeyAction action, MixPart part) {
    this.action = action;
    this.part = part;
  }

  KeyAction action() {
    return action;
  }

  MixPart part() {
    return part;
  }

  String words() {
    return name().toLowerCase(Locale.ROOT);
  }
}
