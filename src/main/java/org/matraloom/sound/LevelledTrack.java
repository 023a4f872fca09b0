package org.matraloom.sound;

import java.io.IOException;
import java.nio.file.Path;

/**
 * Writes a track at a set loudness, with its peaks under a set limit.
 *
 * <p>The track is rendered once, far below the limiter, and kept on disk. Passes over that find the
 * gain with which the limited sound comes to the loudness, and what has to be taken back so that no
 * peak between the samples is too high; memory does not grow with the length.
 */
public final class LevelledTrack {

  /** The loudness of programmes by EBU R 128 (2023), in LUFS. */
  public static final double USUAL_LUFS = -23;

  /** The highest peak of practice tracks, in dBTP. */
  public static final double HIGHEST_DBTP = -1;

  private static final int BLOCK_FRAMES = 4096;
  private static final double HEADROOM_DB = 24;
  private static final double MOST_GAIN_DB = 18;
  private static final double NEAR_ENOUGH_LU = 0.1;
  private static final int MOST_PASSES = 4;

  /** Left between the measured peak and the limit, for the rounding of the samples. */
  private static final double SAFETY_DB = 0.05;

  private final Track track;
  private final PcmFormat format;
  private final double targetLufs;

  /** Takes what a pass over the kept samples gives. */
  @FunctionalInterface
  private interface Sink {
    void take(float[] block, int frames) throws IOException;
  }

  /**
   * Prepares a track.
   *
   * @param track what is heard
   * @param format how the file is written
   * @param targetLufs the loudness to reach, such as {@link #USUAL_LUFS}
   */
  public LevelledTrack(Track track, PcmFormat format, double targetLufs) {
    this.track = track.softer(HEADROOM_DB);
    this.format = format;
    this.targetLufs = targetLufs;
  }

  /**
   * Renders, levels and writes; the file appears only when it is whole.
   *
   * @param target where the file goes; an older one is replaced
   * @param progress is told how far the rendering has come
   * @throws IOException if the disk fails
   */
  public void write(Path target, RenderProgress progress) throws IOException {
    try (RawFile raw = new RawFile(target.toAbsolutePath())) {
      double gainDb = targetLufs - rendered(raw, progress).lufs();
      gainDb = Double.isFinite(gainDb) ? gainDb : HEADROOM_DB;
      Levels levels = null;
      for (int pass = 0; pass < MOST_PASSES; pass++) {
        gainDb = Math.min(gainDb, HEADROOM_DB + MOST_GAIN_DB);
        Levels.Listener listener = new Levels.Listener(format.ratePerSecond(), format.channels());
        pass(raw, gainDb, 0, listener::add);
        levels = listener.levels();
        double missing = targetLufs - levels.lufs();
        if (!Double.isFinite(missing) || Math.abs(missing) < NEAR_ENOUGH_LU) {
          break;
        }
        gainDb += missing;
      }
      double trimDb = Math.min(0, HIGHEST_DBTP - SAFETY_DB - levels.dbtp());
      try (WavWriter file = new WavWriter(target, format, track.lengthFrames(), track.cues())) {
        pass(raw, gainDb, trimDb, file::write);
        file.finish();
      }
    }
  }

  private Levels rendered(RawFile raw, RenderProgress progress) throws IOException {
    TrackStream stream = track.stream(format.channels());
    Levels.Listener listener = new Levels.Listener(format.ratePerSecond(), format.channels());
    float[] block = new float[BLOCK_FRAMES * format.channels()];
    long total = track.lengthFrames();
    long done = 0;
    int frames;
    while ((frames = stream.render(block, BLOCK_FRAMES)) > 0) {
      raw.append(block, frames * format.channels());
      listener.add(block, frames);
      done += frames;
      progress.rendered(done, total);
    }
    return listener.levels();
  }

  /** Gives the kept samples through a gain, the limiter and what is taken back after it. */
  private void pass(RawFile raw, double gainDb, double trimDb, Sink sink) throws IOException {
    Limiter limiter = new Limiter(format.ratePerSecond());
    int channels = format.channels();
    float gain = (float) Mix.linear(gainDb);
    float trim = (float) Mix.linear(trimDb);
    float[] block = new float[BLOCK_FRAMES * channels];
    float[] left = new float[BLOCK_FRAMES];
    float[] right = new float[BLOCK_FRAMES];
    int late = limiter.delayFrames();
    int waiting = late;
    raw.rewind();
    while (true) {
      int frames = raw.read(block, block.length) / channels;
      boolean end = frames == 0;
      frames = end ? late : frames;
      for (int frame = 0; frame < frames; frame++) {
        left[frame] = end ? 0 : gain * block[frame * channels];
        right[frame] = end ? 0 : gain * block[frame * channels + channels - 1];
      }
      limiter.process(left, right, frames);
      int skipped = Math.min(waiting, frames);
      waiting -= skipped;
      for (int frame = skipped; frame < frames; frame++) {
        block[(frame - skipped) * channels] = trim * left[frame];
        block[(frame - skipped) * channels + channels - 1] =
            trim * (channels == 1 ? left[frame] : right[frame]);
      }
      sink.take(block, frames - skipped);
      if (end) {
        return;
      }
    }
  }
}
