package org.matraloom.live;

import org.matraloom.sound.Mix;
import org.matraloom.sound.MixPart;

/**
 * Takes the voice and the ticks away, a step at each avartana, so that the performer is alone with
 * the hand in the end.
 *
 * @param avartanas after how many avartanas they are gone, 1 to {@value #MOST_AVARTANAS}
 */
public record Fade(int avartanas) {

  /** The slowest fade, in avartanas. */
  public static final int MOST_AVARTANAS = 99;

  private static final double DEPTH_DB = 24;

  /**
   * Checks the length.
   *
   * @throws IllegalArgumentException if it is outside its range
   */
  public Fade {
    if (avartanas < 1 || avartanas > MOST_AVARTANAS) {
      throw new IllegalArgumentException(
          "a fade takes 1 to " + MOST_AVARTANAS + " avartanas, given " + avartanas);
    }
  }

  boolean isOver(long avartana) {
    return avartana >= avartanas;
  }

  /** The mix in an avartana, counted from 0. */
  Mix apply(Mix mix, long avartana) {
    return fade(fade(mix, MixPart.VOICE, avartana), MixPart.TICK, avartana);
  }

  private Mix fade(Mix mix, MixPart part, long avartana) {
    Mix.Channel channel = mix.channels().get(part);
    double level = channel.levelDb() - DEPTH_DB * avartana / avartanas;
    boolean muted = channel.muted() || isOver(avartana) || level < Mix.LOWEST_DB;
    double kept = Math.max(Mix.LOWEST_DB, level);
    return mix.with(part, new Mix.Channel(kept, muted, channel.pan()));
  }
}
