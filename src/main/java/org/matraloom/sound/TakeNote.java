package org.matraloom.sound;

import java.util.List;
import java.util.Optional;
import org.matraloom.schedule.Timeline;

/**
 * What a take belongs to, written into its file.
 *
 * @param scoreName the file name of the score
 * @param scoreText the score itself, so that the take can be read when the score has changed
 * @param timeline what was to be said, at the tempo at which it was to be said
 * @param startFrame the frame of the take at which the timeline's origin is heard, once it is known
 * @param roundTripFrames the measured delay from output to input that is contained in the start;
 *     empty if it was never measured
 * @param gaps the silences that the device put into the guide, in order
 */
public record TakeNote(
    String scoreName,
    String scoreText,
    Timeline timeline,
    Optional<Long> startFrame,
    Optional<Long> roundTripFrames,
    List<GuideGap> gaps) {

  /** Copies the list. */
  public TakeNote {
    gaps = List.copyOf(gaps);
  }

  /**
   * A note of a guide that has not been interrupted yet.
   *
   * @param scoreName as above
   * @param scoreText as above
   * @param timeline as above
   * @param startFrame as above
   * @param roundTripFrames as above
   */
  public TakeNote(
      String scoreName,
      String scoreText,
      Timeline timeline,
      Optional<Long> startFrame,
      Optional<Long> roundTripFrames) {
    this(scoreName, scoreText, timeline, startFrame, roundTripFrames, List.of());
  }

  /**
   * The same note with the start known.
   *
   * @param frame the frame of the take at which the timeline's origin is heard
   * @return a copy
   */
  public TakeNote startingAt(long frame) {
    return new TakeNote(scoreName, scoreText, timeline, Optional.of(frame), roundTripFrames, gaps);
  }

  /**
   * The same note of a guide that was interrupted.
   *
   * @param heard the silences that the device put in
   * @return a copy
   */
  public TakeNote interrupted(List<GuideGap> heard) {
    return new TakeNote(scoreName, scoreText, timeline, startFrame, roundTripFrames, heard);
  }
}
