package org.matraloom.device;

import java.io.IOException;
import java.util.Arrays;
import java.util.Optional;
import org.matraloom.wav.PcmCodec;
import org.matraloom.wav.PcmFormat;

/** Measures the delay from output to input by playing clicks and recording them. */
public final class Calibrator {

  private static final int BLOCK_MS = 10;
  private static final int TAIL_MS = 800;

  private final PcmFormat format;
  private final PcmCodec codec;
  private final CalibrationClicks clicks;
  private final ClockOffset offset = new ClockOffset();
  private final float[] recording;
  private volatile Optional<IOException> trouble = Optional.empty();

  /**
   * Prepares a measurement.
   *
   * @param format how samples are handed to and taken from the devices, one channel
   */
  public Calibrator(PcmFormat format) {
    this.format = format;
    this.codec = new PcmCodec(format.bits());
    this.clicks = new CalibrationClicks(format.ratePerSecond());
    int tail = format.ratePerSecond() * TAIL_MS / 1000;
    this.recording = new float[clicks.samples().length + tail];
  }

  /**
   * How many clicks are played.
   *
   * @return clicks
   */
  public static int clicks() {
    return CalibrationClicks.COUNT;
  }

  /**
   * Plays and records, about 14 seconds.
   *
   * @param out where the clicks are played
   * @param in where they are recorded
   * @param output the name of the one device
   * @param input the name of the other
   * @return what was measured
   * @throws IOException if a device has gone, or the delay cannot be trusted; the message says why
   */
  public RoundTrip measure(AudioOut out, AudioIn in, String output, String input)
      throws IOException {
    Thread player = new Thread(() -> play(out), "matraloom-clicks");
    player.setDaemon(true);
    player.start();
    record(out, in);
    if (trouble.isPresent()) {
      throw trouble.get();
    }
    if (!offset.isKnown()) {
      throw new DeviceException(
          "the round trip is not stored: the devices did not run long enough at the same time;"
              + " measure again");
    }
    RoundTripMeasure.Finding found =
        RoundTripMeasure.find(clicks, recording, offset.frames(), format.ratePerSecond());
    int breaks = out.gaps().count() + in.overruns();
    if (!found.trouble().isEmpty()) {
      throw new DeviceException(
          "the round trip is not stored: "
              + found.trouble()
              + (breaks == 0 ? "" : " (the sound broke off " + breaks + " times)"));
    }
    return new RoundTrip(output, input, format.ratePerSecond(), found.median(), found.spread());
  }

  private void play(AudioOut out) {
    float[] samples = clicks.samples();
    int blockFrames = format.ratePerSecond() * BLOCK_MS / 1000;
    byte[] bytes = new byte[blockFrames * format.bytesPerFrame()];
    try {
      for (int at = 0; at < samples.length && trouble.isEmpty(); at += blockFrames) {
        float[] block = Arrays.copyOfRange(samples, at, at + blockFrames);
        codec.encode(block, blockFrames, bytes);
        out.write(bytes, 0, bytes.length);
      }
      out.drain();
    } catch (IOException gone) {
      trouble = Optional.of(gone);
    }
  }

  private void record(AudioOut out, AudioIn in) throws IOException {
    byte[] bytes = new byte[format.ratePerSecond() * BLOCK_MS / 1000 * format.bytesPerFrame()];
    int sampleBytes = format.bits() / 8;
    int frame = 0;
    long settled = format.ratePerSecond() / 2;
    while (frame < recording.length && trouble.isEmpty()) {
      int length = in.read(bytes, 0, bytes.length);
      for (int at = 0; at < length && frame < recording.length; at += sampleBytes) {
        recording[frame++] = codec.decode(sample(bytes, at, sampleBytes));
      }
      if (out.playedFrames() > settled) {
        offset.look(in.capturedFrames(), out.playedFrames());
      }
    }
  }

  private static int sample(byte[] bytes, int at, int sampleBytes) {
    int value = bytes[at + sampleBytes - 1];
    for (int i = sampleBytes - 2; i >= 0; i--) {
      value = value << 8 | bytes[at + i] & 0xFF;
    }
    return value;
  }
}
