package org.matraloom.sound;

/** A part of the mix that has its own level, mute and pan. */
public enum MixPart {
  /** The clap, and the samam accent that lies over it. */
  CLAP,
  /** The finger counts. */
  COUNT,
  /** The wave of the hand. */
  WAVE,
  /** The subdivision ticks. */
  TICK,
  /** The spoken guide. */
  VOICE,
  /** The cue to breathe in. */
  BREATH,
  /** The sruti drone. */
  DRONE,
  /** The second of two reciters. */
  SECOND,
  /** A drum that plays what is said. */
  DRUM
}
