package org.matraloom.sound;

import java.util.Optional;
import org.matraloom.schedule.Timeline;
import org.matraloom.time.FrameClock;
import org.matraloom.voice.SolluVoice;

/**
 * Renders a timeline block by block; files and live playback both draw from here.
 *
 * <p>Frame 0 is the origin of the clock, and a stroke begins at exactly the clock's frame of its
 * event. Frames come strictly in order; blocks of any size give the same samples to the last bit.
 * Memory does not grow with the length of the piece. The first second starts softly and the peaks
 * are limited.
 */
public final class Renderer {

  /** How long the last sounds may ring on after the last event, in seconds. */
  public static final int TAIL_SECONDS = 1;

  /**
   * Work goes on in chunks of this size from frame 0, so that the caller's blocks change nothing.
   */
  private static final int CHUNK_FRAMES = 256;

  private final Mixer mixer;
  private final Limiter limiter;
  private final int channels;
  private long lengthFrames;
  private final float[] left = new float[CHUNK_FRAMES];
  private final float[] right = new float[CHUNK_FRAMES];
  private int readInChunk = CHUNK_FRAMES;
  private long frame;

  /**
   * Prepares a rendering from frame 0.
   *
   * @param timeline what happens
   * @param clock where it happens; its rate is the rate of the samples
   * @param mix how loud each part is
   * @param voice says the sollus, at the rate of the clock
   * @param channels 2 for left and right, 1 for their mean
   * @throws IllegalArgumentException if the voice is made for another rate, or the channels are not
   *     1 or 2
   */
  public Renderer(Timeline timeline, FrameClock clock, Mix mix, SolluVoice voice, int channels) {
    this(
        new Passage(timeline, mix),
        clock,
        voice,
        channels,
        Optional.empty(),
        TrackPlace.whole(lengthFrames(timeline, clock)));
  }

  /**
   * Prepares a rendering of one voice that is a part of a track and may lie over a drone.
   *
   * @param timeline what happens
   * @param clock where it happens; its rate is the rate of the samples
   * @param mix how loud each part is
   * @param voice says the sollus, at the rate of the clock
   * @param channels 2 for left and right, 1 for their mean
   * @param drone sounds below all parts of the track without a break, at the rate of the clock
   * @param place where in the track the rendering lies
   * @throws IllegalArgumentException as the constructor for a passage
   */
  public Renderer(
      Timeline timeline,
      FrameClock clock,
      Mix mix,
      SolluVoice voice,
      int channels,
      Optional<SrutiDrone> drone,
      TrackPlace place) {
    this(new Passage(timeline, mix), clock, voice, channels, drone, place);
  }

  /**
   * Prepares a rendering that is a part of a track and may lie over a drone.
   *
   * @param passage what happens, and how loud each part is
   * @param clock where it happens; its rate is the rate of the samples
   * @param voice says the sollus, at the rate of the clock
   * @param channels 2 for left and right, 1 for their mean
   * @param drone sounds below all parts of the track without a break, at the rate of the clock
   * @param place where in the track the rendering lies
   * @throws IllegalArgumentException if the voice or the drone is made for another rate, or the
   *     channels are not 1 or 2
   */
  public Renderer(
      Passage passage,
      FrameClock clock,
      SolluVoice voice,
      int channels,
      Optional<SrutiDrone> drone,
      TrackPlace place) {
    if (drone.isPresent() && drone.get().ratePerSecond() != clock.ratePerSecond()) {
      throw new IllegalArgumentException(
          "the drone is made for "
              + drone.get().ratePerSecond()
              + " frames a second, the rendering has "
              + clock.ratePerSecond());
    }
    if (voice.ratePerSecond() != clock.ratePerSecond()) {
      throw new IllegalArgumentException(
          "the voice is made for "
              + voice.ratePerSecond()
              + " frames a second, the rendering has "
              + clock.ratePerSecond());
    }
    if (channels != 1 && channels != 2) {
      throw new IllegalArgumentException("a rendering has 1 or 2 channels, given " + channels);
    }
    this.mixer = new Mixer(passage, clock, voice, drone, place);
    this.limiter = new Limiter(clock.ratePerSecond());
    this.channels = channels;
    this.lengthFrames = lengthFrames(passage, clock);
    dropDelay();
  }

  /**
   * How long a rendering is, the tail of {@value #TAIL_SECONDS} s after the last event included.
   *
   * @param timeline what happens
   * @param clock where it happens
   * @return frames
   */
  public static long lengthFrames(Timeline timeline, FrameClock clock) {
    return Math.max(0, clock.frameAt(timeline.endBeat()))
        + (long) TAIL_SECONDS * clock.ratePerSecond();
  }

  /** The same until the last of a passage has ended, companions included. */
  static long lengthFrames(Passage passage, FrameClock clock) {
    return passage.companions().stream()
        .mapToLong(each -> lengthFrames(each.timeline(), clock))
        .reduce(lengthFrames(passage.timeline(), clock), Math::max);
  }

  /**
   * From which frame on a {@link PlayChange} may still be made; what lies before is settled.
   *
   * @return a frame not far ahead of those rendered: a chunk, the look-ahead of the limiter and the
   *     lead of the voice
   */
  public long openFrame() {
    return mixer.openFrame();
  }

  /**
   * Changes what is played; the rendering ends where the new passage ends.
   *
   * @param change what and where
   * @throws IllegalArgumentException if the change begins before {@link #openFrame()}
   */
  public void change(PlayChange change) {
    if (Math.min(change.fromFrame(), change.silentFrame()) < openFrame()) {
      throw new IllegalArgumentException(
          "frame "
              + Math.min(change.fromFrame(), change.silentFrame())
              + " is settled already, changes begin at frame "
              + openFrame());
    }
    mixer.change(change);
    lengthFrames = change.clockFrame() + lengthFrames(change.next(), change.clock());
  }

  /**
   * Renders the next frames.
   *
   * <p>Events are pulled and sollus shaped while this runs, which takes memory: call it from a
   * thread that fills a buffer, never from one that must not wait.
   *
   * @param block where samples go, interleaved, at least {@code frames} times the channels long
   * @param frames how many frames are wanted, not negative
   * @return how many were rendered; fewer than wanted only at the end, 0 after it
   * @throws IllegalArgumentException if the block is too short
   */
  public int render(float[] block, int frames) {
    if (frames < 0 || (long) frames * channels > block.length) {
      throw new IllegalArgumentException(
          frames + " frames of " + channels + " channels do not fit " + block.length + " samples");
    }
    int wanted = (int) Math.min(frames, lengthFrames - frame);
    for (int done = 0; done < wanted; ) {
      if (readInChunk == CHUNK_FRAMES) {
        nextChunk();
      }
      int count = Math.min(wanted - done, CHUNK_FRAMES - readInChunk);
      copy(block, done, count);
      readInChunk += count;
      done += count;
    }
    frame += wanted;
    return wanted;
  }

  private void copy(float[] block, int at, int count) {
    float[] leftNow = left;
    float[] rightNow = right;
    int from = readInChunk;
    int to = readInChunk + count;
    if (channels == 2) {
      int target = 2 * at;
      for (int i = from; i < to; i++) {
        block[target] = leftNow[i];
        block[target + 1] = rightNow[i];
        target += 2;
      }
    } else {
      int target = at;
      for (int i = from; i < to; i++) {
        block[target++] = (leftNow[i] + rightNow[i]) * 0.5f;
      }
    }
  }

  private void dropDelay() {
    int delay = limiter.delayFrames();
    while (delay >= CHUNK_FRAMES) {
      nextChunk();
      delay -= CHUNK_FRAMES;
    }
    nextChunk();
    readInChunk = delay;
  }

  private void nextChunk() {
    mixer.next(left, right, CHUNK_FRAMES);
    limiter.process(left, right, CHUNK_FRAMES);
    readInChunk = 0;
  }
}
