package org.matraloom.sound;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.matraloom.schedule.Timeline;
import org.matraloom.voice.SolluVoice;
import org.matraloom.wav.PcmFormat;
import org.matraloom.wav.WavWriter;

/** Renders a whole track into a WAVE file whose avartanas, rounds and nadais are named. */
public final class TrackWriter {

  private static final int BLOCK_FRAMES = 8192;

  private final Track track;
  private final PcmFormat format;

  /**
   * Prepares a track of one passage without a drone.
   *
   * @param timeline what happens
   * @param mix how loud each part is
   * @param format how the file is written
   * @param voice says the sollus, at the rate of the format
   */
  public TrackWriter(Timeline timeline, Mix mix, PcmFormat format, SolluVoice voice) {
    this(new Track(List.of(new Passage(timeline, mix)), voice, Optional.empty()), format);
  }

  /**
   * Prepares a track.
   *
   * @param track what is heard
   * @param format how the file is written
   * @throws IllegalArgumentException if the track is made for another rate than the format
   */
  public TrackWriter(Track track, PcmFormat format) {
    if (track.ratePerSecond() != format.ratePerSecond()) {
      throw new IllegalArgumentException(
          "the track is made for "
              + track.ratePerSecond()
              + " frames a second, the file has "
              + format.ratePerSecond());
    }
    this.track = track;
    this.format = format;
  }

  /**
   * How long the track is, from the origin of the timeline to the end of the tail.
   *
   * @return frames
   */
  public long lengthFrames() {
    return track.lengthFrames();
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
    try (WavWriter file = new WavWriter(target, format, total, track.cues())) {
      TrackStream stream = track.stream(format.channels());
      float[] block = new float[BLOCK_FRAMES * format.channels()];
      long done = 0;
      int frames;
      while ((frames = stream.render(block, BLOCK_FRAMES)) > 0) {
        file.write(block, frames);
        done += frames;
        progress.rendered(done, total);
      }
      file.finish();
    }
  }
}
