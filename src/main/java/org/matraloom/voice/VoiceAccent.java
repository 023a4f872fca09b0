package org.matraloom.voice;

import org.matraloom.schedule.Stress;

/** How much a stressed sollu stands out: a little level and a little pitch. */
final class VoiceAccent {

  private static final double LEVEL_DB = 2;
  private static final double LIFT = 0.08;

  private VoiceAccent() {}

  /** Level against the strongest stress, dB, never above 0: plain sollus step back. */
  static double levelDb(Stress stress, double accents) {
    return -LEVEL_DB * accents * (1 - weight(stress));
  }

  /** How much higher the pitch starts, as a factor. */
  static double lift(Stress stress, double accents) {
    return 1 + LIFT * accents * weight(stress);
  }

  private static double weight(Stress stress) {
    return switch (stress) {
      case ROUND -> 1;
      case SAMAM -> 0.8;
      case PHRASE -> 0.5;
      case NONE -> 0;
    };
  }
}
