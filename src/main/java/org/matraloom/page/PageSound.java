package org.matraloom.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The sounds of a page for a phone: short clips, and which of them sound where.
 *
 * <p>The page places them itself, so that one set of clips of the hand serves every tempo. Sollus
 * are shaped for their length and come once for each tempo; equal ones are one clip.
 *
 * @param ratePerSecond frames a second of every clip
 * @param clips the clips, by number
 * @param hand the stroke on each beat of an avartana, in order; nothing where the hand holds
 * @param tick the stroke of a tick
 * @param voiceGain how much a sollu is multiplied by
 * @param sollus for each percentage of the tempo the clip of every sollu, in the order they are
 *     said
 * @param beside what sounds beside them
 */
public record PageSound(
    int ratePerSecond,
    List<Clip> clips,
    List<Optional<Stroke>> hand,
    Stroke tick,
    double voiceGain,
    Map<Integer, List<Integer>> sollus,
    Beside beside) {

  /**
   * What sounds beside the piece itself.
   *
   * @param droneHertz the tonic of a drone; empty for none
   * @param leadIn whole avartanas of words before those that lead in from samam; empty if the
   *     sollus begin without words
   */
  public record Beside(Optional<Double> droneHertz, Optional<Integer> leadIn) {}

  /**
   * One sound.
   *
   * @param samples one channel, -1 to 1
   * @param leadFrames how many of them lie before the felt beat
   */
  public record Clip(float[] samples, int leadFrames) {}

  /**
   * A clip at some loudness.
   *
   * @param clip the number of the clip
   * @param gain how much it is multiplied by
   */
  public record Stroke(int clip, double gain) {}

  /**
   * Sounds with nothing beside them.
   *
   * @param ratePerSecond frames a second of every clip
   * @param clips the clips, by number
   * @param hand the stroke on each beat of an avartana
   * @param tick the stroke of a tick
   * @param voiceGain how much a sollu is multiplied by
   * @param sollus for each percentage of the tempo the clip of every sollu
   */
  public PageSound(
      int ratePerSecond,
      List<Clip> clips,
      List<Optional<Stroke>> hand,
      Stroke tick,
      double voiceGain,
      Map<Integer, List<Integer>> sollus) {
    this(
        ratePerSecond,
        clips,
        hand,
        tick,
        voiceGain,
        sollus,
        new Beside(Optional.empty(), Optional.empty()));
  }

  /** Copies the collections. */
  public PageSound {
    clips = List.copyOf(clips);
    hand = List.copyOf(hand);
    sollus = Map.copyOf(sollus);
  }

  /**
   * How large the clips are in a page: four bits a sample, written in base 64.
   *
   * @return bytes, nearly
   */
  public long bytes() {
    long samples = clips.stream().mapToLong(clip -> clip.samples().length).sum();
    return samples / 2 * 4 / 3;
  }
}
