package org.matraloom.wav;

import de.sciss.jump3r.lowlevel.LameEncoder;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import javax.sound.sampled.AudioFormat;

/**
 * Makes an MP3 file of a WAVE file, for phones.
 *
 * <p>An MP3 begins some 25 to 50 ms late and says nothing about it, so it serves for listening and
 * saying along, and never for measuring. Tags are ID3v2.3 text frames (ID3 tag version 2.3.0,
 * id3.org, 1999), as UTF-16 with a byte order mark.
 */
public final class Mp3File {

  private static final int KILOBITS_PER_SECOND = 128;

  /** Quicker than the encoder's middle setting, for material that is mostly strokes and speech. */
  private static final int QUALITY = 7;

  private static final int BLOCK_FRAMES = 1152;
  private static final int TAG_HEADER = 10;

  private Mp3File() {}

  /**
   * Encodes; the file appears only when it is whole.
   *
   * @param wave 44100 or 48000 frames a second, one or two channels
   * @param target where the file goes; an older one is replaced
   * @param tags text frames in order, by frame name such as TIT2; a name TXXX:tala gives a frame of
   *     the user's own, called tala
   * @throws IOException if the WAVE file cannot be read or the disk fails
   */
  public static void encode(Path wave, Path target, Map<String, String> tags) throws IOException {
    try (WavReader reader = new WavReader(wave);
        PartFile file = new PartFile(target)) {
      byte[] tag = tag(tags);
      write(file, tag, tag.length);
      AudioFormat pcm = new AudioFormat(reader.ratePerSecond(), 16, reader.channels(), true, false);
      int mode =
          reader.channels() == 1
              ? LameEncoder.CHANNEL_MODE_MONO
              : LameEncoder.CHANNEL_MODE_JOINT_STEREO;
      LameEncoder encoder = new LameEncoder(pcm, KILOBITS_PER_SECOND, mode, QUALITY, false);
      PcmCodec codec = new PcmCodec(16);
      float[] block = new float[BLOCK_FRAMES * reader.channels()];
      byte[] bytes = new byte[block.length * 2];
      byte[] encoded = new byte[Math.max(encoder.getMP3BufferSize(), bytes.length * 2)];
      int frames;
      while ((frames = reader.read(block, BLOCK_FRAMES)) > 0) {
        int samples = frames * reader.channels();
        codec.encode(block, samples, bytes);
        write(file, encoded, encoder.encodeBuffer(bytes, 0, samples * 2, encoded));
      }
      write(file, encoded, encoder.encodeFinish(encoded));
      encoder.close();
      file.finish();
    }
  }

  private static void write(PartFile file, byte[] bytes, int count) throws IOException {
    ByteBuffer buffer = ByteBuffer.wrap(bytes, 0, count);
    while (buffer.hasRemaining()) {
      file.channel().write(buffer);
    }
  }

  private static byte[] tag(Map<String, String> tags) {
    byte[] frames = frames(tags);
    ByteBuffer tag = ByteBuffer.allocate(TAG_HEADER + frames.length);
    tag.put(new byte[] {'I', 'D', '3', 3, 0, 0});
    for (int shift = 21; shift >= 0; shift -= 7) {
      tag.put((byte) (frames.length >> shift & 0x7f));
    }
    return tag.put(frames).array();
  }

  private static byte[] frames(Map<String, String> tags) {
    ByteArrayOutputStream frames = new ByteArrayOutputStream();
    tags.forEach(
        (name, text) -> {
          byte[] content = content(name, text);
          ByteBuffer header = ByteBuffer.allocate(TAG_HEADER);
          header.put(name.substring(0, 4).getBytes(StandardCharsets.US_ASCII));
          header.putInt(content.length);
          frames.writeBytes(header.array());
          frames.writeBytes(content);
        });
    return frames.toByteArray();
  }

  private static byte[] content(String name, String text) {
    ByteArrayOutputStream content = new ByteArrayOutputStream();
    content.write(1);
    if (name.length() > 4) {
      content.writeBytes(utf16(name.substring(5)));
      content.writeBytes(new byte[2]);
    }
    content.writeBytes(utf16(text));
    return content.toByteArray();
  }

  private static byte[] utf16(String text) {
    byte[] plain = text.getBytes(StandardCharsets.UTF_16LE);
    byte[] marked = new byte[plain.length + 2];
    marked[0] = (byte) 0xff;
    marked[1] = (byte) 0xfe;
    System.arraycopy(plain, 0, marked, 2, plain.length);
    return marked;
  }
}
