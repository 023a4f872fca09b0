package org.matraloom.sound;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.matraloom.loudness.LoudnessMeter;
import org.matraloom.loudness.TruePeak;
import org.matraloom.wav.PcmFormat;
import org.matraloom.wav.RawFile;
import org.matraloom.wav.WavWriter;

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
  private static final int MOST_PASSES = 8;

  /** A limiter leaves at least so much of a gain, for the search. */
  private static final double LEAST_EFFECT = 0.2;

  /** Left between the measured peak and the limit, for the rounding of the samples. */
  private static final double SAFETY_DB = 0.05;

  private final Track track;
  private final PcmFormat format;
  private final double targetLufs;
  private final Map<String, String> info;

  /** Takes what a pass over the kept samples gives. */
  @FunctionalInterface
  private interface Sink {
    void take(float[] block, int frames) throws IOException;
  }

  /** Takes interleaved blocks apart for a meter. */
  private static final class Channels implements Sink {
    private final float[][] channels;
    private final Meter meter;

    Channels(int count, Meter meter) {
      this.channels = new float[count][BLOCK_FRAMES];
      this.meter = meter;
    }

    @Override
    public void take(float[] block, int frames) {
      for (int i = 0; i < frames * channels.length; i++) {
        channels[i % channels.length][i / channels.length] = block[i];
      }
      meter.add(channels, 0, frames);
    }
  }

  @FunctionalInterface
  private interface Meter {
    void add(float[][] channels, int fromFrame, int frames);
  }

  /**
   * Prepares a track.
   *
   * @param track what is heard
   * @param format how the file is written
   * @param targetLufs the loudness to reach, such as {@link #USUAL_LUFS}
   * @param info texts by RIFF name, in order, such as INAM for the title
   */
  public LevelledTrack(Track track, PcmFormat format, double targetLufs, Map<String, String> info) {
    this.info = info;
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
      double renderedLufs = rendered(raw, progress);
      double gainDb =
          Double.isFinite(renderedLufs)
              ? levelling(raw, targetLufs - renderedLufs, renderedLufs)
              : HEADROOM_DB;
      TruePeak peak = new TruePeak(format.channels());
      pass(raw, gainDb, 0, new Channels(format.channels(), peak::add));
      double trimDb = Math.min(0, HIGHEST_DBTP - SAFETY_DB - peak.dbtp());
      try (WavWriter file =
          new WavWriter(target, format, track.lengthFrames(), track.cues(), info)) {
        pass(raw, gainDb, trimDb, file::write);
        file.finish();
      }
    }
  }

  /** The gain with which the limited sound reaches the loudness, by the rule of false position. */
  private double levelling(RawFile raw, double firstDb, double renderedLufs) throws IOException {
    double gainDb = firstDb;
    double gainBefore = 0;
    double lufsBefore = renderedLufs;
    for (int pass = 0; pass < MOST_PASSES; pass++) {
      LoudnessMeter meter = LoudnessMeter.of(format.ratePerSecond(), format.channels());
      pass(raw, gainDb, 0, new Channels(format.channels(), meter::add));
      double missing = targetLufs - meter.integratedLufs();
      if (Math.abs(missing) < NEAR_ENOUGH_LU) {
        return gainDb;
      }
      double effect = (meter.integratedLufs() - lufsBefore) / (gainDb - gainBefore);
      gainBefore = gainDb;
      lufsBefore = meter.integratedLufs();
      gainDb += missing / Math.max(LEAST_EFFECT, Math.min(1, effect));
      gainDb = Math.min(gainDb, HEADROOM_DB + MOST_GAIN_DB);
      if (gainDb == gainBefore) {
        return gainDb;
      }
    }
    return gainDb;
  }

  /** Renders far below the limiter and tells how loud that is. */
  private double rendered(RawFile raw, RenderProgress progress) throws IOException {
    TrackStream stream = track.stream(format.channels());
    LoudnessMeter meter = LoudnessMeter.of(format.ratePerSecond(), format.channels());
    Channels listener = new Channels(format.channels(), meter::add);
    float[] block = new float[BLOCK_FRAMES * format.channels()];
    long total = track.lengthFrames();
    long done = 0;
    int frames;
    while ((frames = stream.render(block, BLOCK_FRAMES)) > 0) {
      raw.append(block, frames * format.channels());
      listener.take(block, frames);
      done += frames;
      progress.rendered(done, total);
    }
    return meter.integratedLufs();
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
