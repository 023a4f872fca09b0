package org.matraloom.madetake;

/** Where a made take is recorded, and with what. */
enum RoomKind {
  QUIET,
  NOISE,
  CLAPS,
  CLICKS,
  ECHO,
  PUMPING,
  SECOND_VOICE,
  CLIPPED,
  TELEPHONE,
  DELAYED,
  CLOCK;

  /** How far noise is below the mean power of the voice. */
  static final double NOISE_DB = 20;

  /** How far strokes are below the peaks of the voice. */
  static final double BLEED_DB = 12;

  private static final double SECOND_VOICE_DB = 16;
  private static final double SLOW_CLOCK = 0.9985;

  /**
   * Records a take.
   *
   * @param take what is said
   * @param other another take of the same piece, which may sound behind it
   */
  MadeTake record(MadeTake take, MadeTake other, long seed) {
    return switch (this) {
      case QUIET -> take;
      case NOISE -> TakeRoom.noise(take, NOISE_DB, seed);
      case CLAPS -> TakeRoom.bleed(take, BLEED_DB, true, seed);
      case CLICKS -> TakeRoom.bleed(take, BLEED_DB, false, seed);
      case ECHO -> TakeRoom.echo(take, seed);
      case PUMPING -> TakeRoom.pumping(take);
      case SECOND_VOICE -> TakeRoom.secondVoice(take, other, SECOND_VOICE_DB);
      case CLIPPED -> TakeRoom.clipped(take);
      case TELEPHONE -> TakeRoom.telephone(take);
      case DELAYED -> TakeRoom.delayed(take);
      case CLOCK -> TakeRoom.clock(take, SLOW_CLOCK);
    };
  }
}
