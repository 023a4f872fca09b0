package org.matraloom.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.time.FrameClock;
import org.matraloom.voice.SolluVoice;
import org.matraloom.wav.CuePoint;

/**
 * Passages one after another, each rendered at its own tempo and followed by its tail, over one
 * unbroken drone.
 */
public final class Track {

  private final List<Passage> passages;
  private final SolluVoice voice;
  private final Optional<SrutiDrone> drone;

  /**
   * Puts a track together.
   *
   * @param passages what is heard, in order
   * @param voice says the sollus; its rate is the rate of the track
   * @param drone sounds from the first frame to the last
   */
  public Track(List<Passage> passages, SolluVoice voice, Optional<SrutiDrone> drone) {
    this.passages = List.copyOf(passages);
    this.voice = voice;
    this.drone = drone;
  }

  /**
   * The rate of the track.
   *
   * @return frames a second
   */
  public int ratePerSecond() {
    return voice.ratePerSecond();
  }

  /**
   * How long the track is.
   *
   * @return frames
   */
  public long lengthFrames() {
    return startFrame(passages.size());
  }

  /**
   * Where a passage begins.
   *
   * @param passage which, from 0; the number of passages gives the end of the track
   * @return frames
   */
  public long startFrame(int passage) {
    return passages.subList(0, passage).stream()
        .mapToLong(each -> Renderer.lengthFrames(each, clock(each)))
        .sum();
  }

  /**
   * The track from its beginning.
   *
   * @param channels 2 for left and right, 1 for their mean
   * @return a new stream
   */
  public TrackStream stream(int channels) {
    return new TrackStream(this, channels);
  }

  /** The same track with every passage softer before the limiter. */
  Track softer(double db) {
    List<Passage> quiet = new ArrayList<>();
    for (Passage passage : passages) {
      Mix mix = passage.mix();
      quiet.add(passage.in(mix.withOutput(mix.outputDb() - db)));
    }
    return new Track(quiet, voice, drone);
  }

  int passages() {
    return passages.size();
  }

  Renderer renderer(int passage, int channels) {
    Passage of = passages.get(passage);
    TrackPlace place = new TrackPlace(startFrame(passage), lengthFrames());
    return new Renderer(of, clock(of), voice, channels, drone, place);
  }

  /** The named places of all passages. */
  Iterable<CuePoint> cues() {
    List<Iterable<CuePoint>> parts = new ArrayList<>();
    for (int passage = 0; passage < passages.size(); passage++) {
      Passage of = passages.get(passage);
      parts.add(new TimelineCues(of.timeline(), clock(of), startFrame(passage)));
    }
    return new JoinedCues(parts);
  }

  private FrameClock clock(Passage passage) {
    return passage.timeline().clock(ratePerSecond());
  }
}
