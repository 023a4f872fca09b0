package org.matraloom.sound;

import java.io.IOException;
import java.nio.file.Path;
import org.matraloom.schedule.Timeline;
import org.matraloom.time.FrameClock;

/** Renders a whole timeline into a WAVE file whose avartanas, rounds and nadais are named. */
public final class TrackWriter {

  private static final int BLOCK_FRAMES = 8192;

  private final Timeline timeline;
  private final Mix mix;
  private final PcmFormat format;
  private final SolluVoice voice;

  /**
   * Prepares a track.
   *
   * @param timeline what happens
   * @param mix how loud each part is
   * @param format how the file is written
   * @param voice says the sollus, at the rate of the format
   */
  public TrackWriter(Timeline timeline, Mix mix, PcmFormat format, SolluVoice voice) {
    this.timeline = timeline;
    this.mix = mix;
    this.format = format;
    this.voice = voice;
  }

  /**
   * How long the track is, from the origin of the timeline to the end of the tail.
   *
   * @return frames
   */
  public long lengthFrames() {
    return Renderer.lengthFrames(timeline, clock());
  }

  /**
   * Renders the track and writes it; the file appears only when it is whole.
   *
   * @param target where the file goes; an older one is replaced
   * @param progress is told after every block, several times a second of music
   * @throws IOException if the track is too long for a WAVE file or the disk fails
   */
  public void write(Path target, RenderProgress progress) throws IOException {
    long total = lengthFrames();
    TimelineCues cues = new TimelineCues(timeline, clock());
    try (WavWriter file = new WavWriter(target, format, total, cues)) {
      Renderer renderer = new Renderer(timeline, clock(), mix, voice, format.channels());
      float[] block = new float[BLOCK_FRAMES * format.channels()];
      long done = 0;
      int frames;
      while ((frames = renderer.render(block, BLOCK_FRAMES)) > 0) {
        file.write(block, frames);
        done += frames;
        progress.rendered(done, total);
      }
      file.finish();
    }
  }

  private FrameClock clock() {
    return timeline.clock(format.ratePerSecond());
  }
}
