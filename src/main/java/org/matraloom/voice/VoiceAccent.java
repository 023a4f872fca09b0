package org.matraloom.voice;

import org.matraloom.schedule.Stress;

/** How much a stressed sollu stands out: a little level and a little pitch. */
public final class VoiceAccent {

  private static final double LEVEL_DB = 2;
  private static final double LIFT = 0.08;

  private VoiceAccent() {}

  /**
   * Level against the strongest stress: plain sollus step back.
   *
   * @param stress how prominent the place is
   * @param accents how far accents stand out, as in {@link VoiceSettings}
   * @return dB, never above 0
   */
  public static double levelDb(Stress stress, double accents) {
    return -LEVEL_DB * accents * (1 - weight(stress));
  }

  /**
   * How much higher the pitch starts.
   *
   * @param stress how prominent the place is
   * @param accents how far accents stand out, as in {@link VoiceSettings}
   * @return a factor, 1 or more
   */
  public static double lift(Stress stress, double accents) {
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
