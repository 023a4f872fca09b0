package org.matraloom.recording;

import io.github.jaredmdobson.concentus.OpusApplication;
import io.github.jaredmdobson.concentus.OpusEncoder;
import io.github.jaredmdobson.concentus.OpusException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Sounds with known beginnings, and files of them in many formats. */
public final class SoundFiles {

  static final int RATE = 44_100;
  static final int[] STARTS = {8_820, 17_640, 26_460};
  static final int LENGTH = 35_280;

  private SoundFiles() {}

  /** Tones of 1000 Hz that begin at {@link #STARTS} and die away, at any rate. */
  static float[] bursts(int rate) {
    float[] sound = new float[(int) ((long) LENGTH * rate / RATE)];
    for (int start : STARTS) {
      int from = (int) ((long) start * rate / RATE);
      for (int i = 0; i < rate / 10; i++) {
        double t = (double) i / rate;
        sound[from + i] += (float) (0.5 * Math.sin(2000 * Math.PI * t) * Math.exp(-t / 0.02));
      }
    }
    return sound;
  }

  /** A recording that is held in memory. */
  public static Recording recording(float[] sound, int rate) {
    return new HeldRecording(sound, rate);
  }

  public static float[] readAll(Path file) throws IOException {
    try (Recording recording = Recordings.open(file)) {
      float[] all = new float[0];
      float[] block = new float[1_000];
      for (int count = recording.read(block); count > 0; count = recording.read(block)) {
        int old = all.length;
        all = java.util.Arrays.copyOf(all, old + count);
        System.arraycopy(block, 0, all, old, count);
      }
      return all;
    }
  }

  public static void wav(Path file, int tag, int channels, int rate, int bits, byte[] data)
      throws IOException {
    ByteBuffer head = ByteBuffer.allocate(44).order(ByteOrder.LITTLE_ENDIAN);
    head.put(ascii("RIFF")).putInt(36 + data.length).put(ascii("WAVEfmt ")).putInt(16);
    head.putShort((short) tag).putShort((short) channels).putInt(rate);
    head.putInt(rate * channels * bits / 8).putShort((short) (channels * bits / 8));
    head.putShort((short) bits).put(ascii("data")).putInt(data.length);
    write(file, head.array(), data);
  }

  static void aiff(Path file, String coding, int bits, byte[] data) throws IOException {
    ByteBuffer head = ByteBuffer.allocate(58).order(ByteOrder.BIG_ENDIAN);
    head.put(ascii("FORM")).putInt(50 + data.length).put(ascii("AIFCCOMM")).putInt(22);
    head.putShort((short) 1).putInt(data.length * 8 / bits).putShort((short) bits);
    head.putShort((short) (16_383 + 15)).putLong((long) RATE << 48).put(ascii(coding));
    head.put(ascii("SSND")).putInt(8 + data.length).putLong(0);
    write(file, head.array(), data);
  }

  /** Little-endian or big-endian whole numbers of a sound, full scale at 1. */
  public static byte[] whole(float[] sound, int bits, ByteOrder order) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    for (float sample : sound) {
      long value = Math.round(sample * (double) ((1L << bits - 1) - 1));
      for (int i = 0; i < bits; i += 8) {
        bytes.write((int) (value >> (order == ByteOrder.BIG_ENDIAN ? bits - 8 - i : i)));
      }
    }
    return bytes.toByteArray();
  }

  /** An Ogg Opus file with one packet a page, as RFC 7845 lays it out. */
  static void opus(Path file, float[] sound) throws IOException, OpusException {
    OpusEncoder encoder = new OpusEncoder(48_000, 1, OpusApplication.OPUS_APPLICATION_AUDIO);
    encoder.setBitrate(96_000);
    int preSkip = 312;
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteBuffer head = ByteBuffer.allocate(19).order(ByteOrder.LITTLE_ENDIAN);
    head.put(ascii("OpusHead"))
        .put((byte) 1)
        .put((byte) 1)
        .putShort((short) preSkip)
        .putInt(48_000);
    page(out, 2, 0, 0, head.array());
    ByteBuffer tags = ByteBuffer.allocate(16);
    page(out, 0, 0, 1, tags.put(ascii("OpusTags")).array());
    int frame = 960;
    int pages = (sound.length + preSkip + frame - 1) / frame;
    short[] pcm = new short[frame];
    byte[] packet = new byte[4_000];
    for (int p = 0; p < pages; p++) {
      for (int i = 0; i < frame; i++) {
        int at = p * frame + i;
        pcm[i] = at < sound.length ? (short) Math.round(sound[at] * 32_767) : 0;
      }
      int length = encoder.encode(pcm, 0, frame, packet, 0, packet.length);
      long end = Math.min(sound.length + preSkip, (p + 1L) * frame);
      page(out, p == pages - 1 ? 4 : 0, end, p + 2, java.util.Arrays.copyOf(packet, length));
    }
    Files.write(file, out.toByteArray());
  }

  private static void page(
      ByteArrayOutputStream out, int flags, long granule, int number, byte[] packet)
      throws IOException {
    out.write(page(7, flags, granule, number, packet, packet.length / 255 + 1));
  }

  /**
   * A page with one packet, or with a beginning of one that fills whole segments.
   *
   * @param segments the number of segments: one more than the body fills if its packet ends here
   */
  static byte[] page(int serial, int flags, long granule, int number, byte[] body, int segments) {
    ByteBuffer page =
        ByteBuffer.allocate(27 + segments + body.length).order(ByteOrder.LITTLE_ENDIAN);
    page.put(ascii("OggS")).put((byte) 0).put((byte) flags).putLong(granule).putInt(serial);
    page.putInt(number).putInt(0).put((byte) segments);
    for (int i = 0; i < segments; i++) {
      page.put((byte) Math.min(255, body.length - i * 255));
    }
    page.put(body);
    page.putInt(22, checksum(page.array()));
    return page.array();
  }

  /** The checksum of RFC 3533, section 6: CRC-32 with polynomial 0x04c11db7, nothing reflected. */
  private static int checksum(byte[] bytes) {
    int sum = 0;
    for (byte value : bytes) {
      sum ^= value << 24;
      for (int bit = 0; bit < 8; bit++) {
        sum = sum << 1 ^ (sum < 0 ? 0x04C11DB7 : 0);
      }
    }
    return sum;
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }

  private static void write(Path file, byte[] head, byte[] data) throws IOException {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    all.write(head);
    all.write(data);
    Files.write(file, all.toByteArray());
  }
}
