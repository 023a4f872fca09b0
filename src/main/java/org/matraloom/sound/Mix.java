package org.matraloom.sound;

import java.util.EnumMap;
import java.util.Map;
import java.util.Set;

/**
 * How loud each part is, whether it sounds, and on which side.
 *
 * @param channels one setting for every {@link MixPart}
 * @param samamDb how much the clap on samam rises above the other claps, in dB
 * @param outputDb gain of the whole before the limiter, in dB
 * @param wholeCountIn whether before the first round every kriya sounds in the middle, even where
 *     its part is muted or panned afterwards
 * @param voiceFadeDb how much the voice falls from one round to the next, in dB, 0 to 24
 */
public record Mix(
    Map<MixPart, Channel> channels,
    double samamDb,
    double outputDb,
    boolean wholeCountIn,
    double voiceFadeDb) {

  /** The peak of a clap at 0 dB, in dB below full scale. */
  public static final double CLAP_PEAK_DBFS = -6;

  /** The highest level or gain taken, in dB. */
  public static final double HIGHEST_DB = 24;

  /** The highest level of the drone, in dB: it stays this far under the clap. */
  public static final double HIGHEST_DRONE_DB = -18;

  /** The lowest level or gain taken, in dB; use a mute for silence. */
  public static final double LOWEST_DB = -60;

  /**
   * The setting of one part.
   *
   * @param levelDb its peak against the clap, in dB, {@value Mix#LOWEST_DB} to {@value
   *     Mix#HIGHEST_DB}
   * @param muted whether it is silent
   * @param pan its side, from -1 (left) over 0 (both alike) to 1 (right); a side is only ever taken
   *     away from, so panning raises no peak
   */
  public record Channel(double levelDb, boolean muted, double pan) {
    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if the level or the pan is outside its range
     */
    public Channel {
      requireGain("level", levelDb);
      if (!(pan >= -1 && pan <= 1)) {
        throw new IllegalArgumentException("pan " + pan + " is outside -1 (left) to 1 (right)");
      }
    }
  }

  record Gains(float left, float right) {}

  /**
   * Copies the settings.
   *
   * @throws IllegalArgumentException if a part has no setting or a gain is outside its range
   */
  public Mix {
    for (MixPart part : MixPart.values()) {
      if (!channels.containsKey(part)) {
        throw new IllegalArgumentException("the mix has no setting for " + part);
      }
    }
    requireGain("samam gain", samamDb);
    requireGain("output gain", outputDb);
    if (channels.get(MixPart.DRONE).levelDb > HIGHEST_DRONE_DB) {
      throw new IllegalArgumentException(
          "the drone is at -18.0 dB or less, given " + channels.get(MixPart.DRONE).levelDb);
    }
    if (!(voiceFadeDb >= 0 && voiceFadeDb <= HIGHEST_DB)) {
      throw new IllegalArgumentException("the voice fades by 0 to 24 dB, given " + voiceFadeDb);
    }
    channels = Map.copyOf(channels);
  }

  /**
   * The mix for learning: the voice leads and every part is heard.
   *
   * @return clap 0 dB, samam +2, counts -12, wave -6, ticks -18, voices -3, breath -15, drum -6
   */
  public static Mix lesson() {
    return of(-3);
  }

  /**
   * The mix for saying it oneself: the voice steps back.
   *
   * @return as {@link #lesson()}, with the voices at -9 dB
   */
  public static Mix practice() {
    return of(-9);
  }

  private static Mix of(double voiceDb) {
    Map<MixPart, Channel> channels = new EnumMap<>(MixPart.class);
    channels.put(MixPart.CLAP, new Channel(0, false, 0));
    channels.put(MixPart.COUNT, new Channel(-12, false, 0));
    channels.put(MixPart.WAVE, new Channel(-6, false, 0));
    channels.put(MixPart.TICK, new Channel(-18, false, 0));
    channels.put(MixPart.VOICE, new Channel(voiceDb, false, 0));
    channels.put(MixPart.BREATH, new Channel(-15, false, 0));
    channels.put(MixPart.DRONE, new Channel(-20, false, 0));
    channels.put(MixPart.SECOND, new Channel(voiceDb, false, 0));
    channels.put(MixPart.DRUM, new Channel(-6, false, 0));
    return new Mix(channels, 2, 0, false, 0);
  }

  /**
   * The same mix with only some parts sounding.
   *
   * @param parts the parts that are heard
   * @return a copy
   */
  public Mix only(Set<MixPart> parts) {
    return muting(parts, false);
  }

  /**
   * The same mix with some parts silent as well.
   *
   * @param parts the parts that are not heard
   * @return a copy
   */
  public Mix without(Set<MixPart> parts) {
    return muting(parts, true);
  }

  private Mix muting(Set<MixPart> parts, boolean mutesThem) {
    Mix mix = this;
    for (MixPart part : MixPart.values()) {
      if (parts.contains(part) == mutesThem) {
        Channel channel = channels.get(part);
        mix = mix.with(part, new Channel(channel.levelDb, true, channel.pan));
      }
    }
    return mix;
  }

  /**
   * The same mix with one part set anew.
   *
   * @param part the part
   * @param channel its setting
   * @return a copy
   */
  public Mix with(MixPart part, Channel channel) {
    Map<MixPart, Channel> changed = new EnumMap<>(channels);
    changed.put(part, channel);
    return new Mix(changed, samamDb, outputDb, wholeCountIn, voiceFadeDb);
  }

  /**
   * The same mix with one part at another level.
   *
   * @param part the part
   * @param levelDb its peak against the clap, in dB
   * @return a copy
   * @throws IllegalArgumentException if the level is outside its range
   */
  public Mix withLevel(MixPart part, double levelDb) {
    Channel channel = channels.get(part);
    return with(part, new Channel(levelDb, channel.muted, channel.pan));
  }

  /**
   * The same mix with one part on another side.
   *
   * @param part the part
   * @param pan from -1 (left) to 1 (right)
   * @return a copy
   * @throws IllegalArgumentException if the pan is outside its range
   */
  public Mix withPan(MixPart part, double pan) {
    Channel channel = channels.get(part);
    return with(part, new Channel(channel.levelDb, channel.muted, pan));
  }

  /**
   * The same mix, louder or softer as a whole; the limiter still holds the peaks.
   *
   * @param gainDb gain before the limiter, in dB
   * @return a copy
   * @throws IllegalArgumentException if the gain is outside its range
   */
  public Mix withOutput(double gainDb) {
    return new Mix(channels, samamDb, gainDb, wholeCountIn, voiceFadeDb);
  }

  /**
   * The same mix, with every kriya heard on both sides before the first round.
   *
   * @return a copy
   */
  public Mix withWholeCountIn() {
    return new Mix(channels, samamDb, outputDb, true, voiceFadeDb);
  }

  /**
   * The same mix with a voice that falls from round to round, so that the learner takes over.
   *
   * @param dbPerRound how much it falls from one round to the next, in dB, 0 to {@value
   *     #HIGHEST_DB}
   * @return a copy
   * @throws IllegalArgumentException if the fall is outside its range
   */
  public Mix withVoiceFade(double dbPerRound) {
    return new Mix(channels, samamDb, outputDb, wholeCountIn, dbPerRound);
  }

  Gains saidGains(MixPart part, int round) {
    return gains(part, part == MixPart.DRUM ? 0 : -voiceFadeDb * Math.max(0, round - 1));
  }

  boolean sounds(MixPart part) {
    return !channels.get(part).muted;
  }

  /** The factors from a sound that peaks at 1.0 to the two sides. */
  Gains gains(MixPart part, double extraDb) {
    Channel channel = channels.get(part);
    double gain = linear(CLAP_PEAK_DBFS + outputDb + channel.levelDb + extraDb);
    return new Gains(
        (float) (gain * Math.min(1, 1 - channel.pan)),
        (float) (gain * Math.min(1, 1 + channel.pan)));
  }

  /** The same factors as they are in the middle. */
  Gains centredGains(MixPart part, double extraDb) {
    return withPan(part, 0).gains(part, extraDb);
  }

  static double linear(double db) {
    return StrictMath.pow(10, db / 20);
  }

  private static void requireGain(String what, double db) {
    if (!(db >= LOWEST_DB && db <= HIGHEST_DB)) {
      throw new IllegalArgumentException(
          what + " " + db + " dB is outside " + LOWEST_DB + " to " + HIGHEST_DB + " dB");
    }
  }
}
