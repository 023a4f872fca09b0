package org.matraloom.recording;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/**
 * Looks over the outermost boxes of an MP4 file before it is decoded (ISO/IEC 14496-12, 4.2).
 *
 * <p>A file that is cut short, or written piecemeal, is told from a whole one here.
 */
final class Mp4Boxes {

  private static final int SHORT_HEAD = 8;
  private static final int LONG_HEAD = 16;
  private static final int MOST_BOXES = 5_000;

  private Mp4Boxes() {}

  /**
   * Checks that the index and the sound are there in full.
   *
   * @throws RecordingException if they are not
   */
  static void require(Path file, RandomAccessFile in) throws IOException {
    boolean index = false;
    boolean sound = false;
    int boxes = 0;
    Mp4Index inner = new Mp4Index(file, in);
    long at = 0;
    while (at + SHORT_HEAD <= in.length()) {
      in.seek(at);
      long size = Integer.toUnsignedLong(in.readInt());
      byte[] type = new byte[4];
      in.readFully(type);
      String name = new String(type, StandardCharsets.ISO_8859_1);
      if (size == 1 && at + LONG_HEAD <= in.length()) {
        size = in.readLong();
      } else if (size == 0) {
        size = in.length() - at;
      }
      if (size < SHORT_HEAD || size > in.length() - at) {
        throw new RecordingException(file, "is cut short or damaged: a part of it is missing");
      }
      if (name.equals("moof")) {
        throw new RecordingException(
            file, "is a fragmented MP4 file, which is not read here; save it as WAV or FLAC");
      }
      if (name.equals("moov")) {
        inner.require(at + SHORT_HEAD, at + size, 1);
      }
      if (++boxes > MOST_BOXES) {
        throw new RecordingException(file, "is damaged: it has more than " + MOST_BOXES + " boxes");
      }
      index |= name.equals("moov");
      sound |= name.equals("mdat");
      at += size;
    }
    in.seek(0);
    if (!index || !sound) {
      throw new RecordingException(
          file, "is cut short: its " + (index ? "sound" : "index") + " is missing");
    }
  }
}
