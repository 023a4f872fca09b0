package org.matraloom.recording;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * What has to be cut from a decoded MP3 so that its samples stand where they were recorded.
 *
 * <p>An encoder puts silence before the sound and tells how much in the tag frame ("Xing" or
 * "Info", with the encoder's part that LAME defined); the decoder adds {@value #DECODER_DELAY}
 * samples of its own (LAME, "MP3 Info Tag rev 1 specification", G. Ferguson).
 *
 * @param tagFrame whether the first frame is such a tag and holds no sound
 * @param skipFrames samples to leave out at the beginning
 * @param lengthFrames samples that were recorded, {@link Long#MAX_VALUE} if the file does not tell
 */
record Mp3Delay(boolean tagFrame, long skipFrames, long lengthFrames) {

  static final int DECODER_DELAY = 529;

  /** What LAME puts before the sound, for files that do not tell. */
  static final int USUAL_ENCODER_DELAY = 576;

  private static final int LARGEST_FRAME = 4_096;

  static Mp3Delay of(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      byte[] id3 = in.readNBytes(10);
      long start = 0;
      if (id3.length == 10 && id3[0] == 'I' && id3[1] == 'D' && id3[2] == '3') {
        int size =
            (id3[6] & 0x7F) << 21 | (id3[7] & 0x7F) << 14 | (id3[8] & 0x7F) << 7 | id3[9] & 0x7F;
        start = 10L + size + ((id3[5] & 0x10) != 0 ? 10 : 0);
      }
      return of(frameAt(file, start));
    }
  }

  private static ByteBuffer frameAt(Path file, long start) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      in.skip(start);
      byte[] bytes = in.readNBytes(LARGEST_FRAME);
      int at = 0;
      while (at + 1 < bytes.length
          && !((bytes[at] & 0xFF) == 0xFF && (bytes[at + 1] & 0xE0) == 0xE0)) {
        at++;
      }
      return ByteBuffer.wrap(bytes, at, bytes.length - at).slice();
    }
  }

  private static Mp3Delay of(ByteBuffer frame) {
    Mp3Delay unknown = new Mp3Delay(false, DECODER_DELAY + USUAL_ENCODER_DELAY, Long.MAX_VALUE);
    if (frame.limit() < 4) {
      return unknown;
    }
    boolean mpeg1 = (frame.get(1) & 0x18) == 0x18;
    boolean mono = (frame.get(3) & 0xC0) == 0xC0;
    int tag = 4 + (mpeg1 ? (mono ? 17 : 32) : (mono ? 9 : 17));
    String name = name(frame, tag);
    if (name(frame, 36).equals("VBRI")) {
      return new Mp3Delay(true, unknown.skipFrames, Long.MAX_VALUE);
    } else if (!name.equals("Xing") && !name.equals("Info")) {
      return unknown;
    }
    int flags = frame.limit() < tag + 8 ? 0 : frame.getInt(tag + 4);
    int at = tag + 8;
    long frames = 0;
    if ((flags & 1) != 0 && frame.limit() >= at + 4) {
      frames = Integer.toUnsignedLong(frame.getInt(at));
      at += 4;
    }
    at += ((flags & 2) != 0 ? 4 : 0) + ((flags & 4) != 0 ? 100 : 0) + ((flags & 8) != 0 ? 4 : 0);
    if (frame.limit() < at + 24 || frame.get(at) == 0) {
      return new Mp3Delay(true, unknown.skipFrames, Long.MAX_VALUE);
    }
    int both =
        (frame.get(at + 21) & 0xFF) << 16
            | (frame.get(at + 22) & 0xFF) << 8
            | frame.get(at + 23) & 0xFF;
    int delay = both >> 12;
    int padding = both & 0xFFF;
    long length = frames == 0 ? Long.MAX_VALUE : frames * (mpeg1 ? 1152 : 576) - delay - padding;
    return new Mp3Delay(true, delay + DECODER_DELAY, length);
  }

  private static String name(ByteBuffer frame, int at) {
    if (frame.limit() < at + 4) {
      return "";
    }
    byte[] name = new byte[4];
    frame.get(at, name);
    return new String(name, StandardCharsets.ISO_8859_1);
  }
}
