package org.matraloom.wav;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The named places that were found in a file, put together from their frames and their labels. */
final class CueList {

  private static final int POINT_BYTES = 24;

  private final Map<Integer, Long> frames = new LinkedHashMap<>();
  private final Map<Integer, String> labels = new LinkedHashMap<>();

  List<CuePoint> points() {
    return frames.entrySet().stream()
        .map(point -> new CuePoint(point.getValue(), labels.getOrDefault(point.getKey(), "")))
        .toList();
  }

  /** Reads the inside of a {@code cue} chunk. */
  void readPoints(ByteBuffer chunk) {
    for (int at = 4; at + POINT_BYTES <= chunk.limit(); at += POINT_BYTES) {
      frames.put(chunk.getInt(at), Integer.toUnsignedLong(chunk.getInt(at + 20)));
    }
  }

  /** Reads the inside of a {@code LIST} chunk, if it is one of labels. */
  void readLabels(ByteBuffer chunk) {
    if (chunk.limit() < 4 || !text(chunk, 0, 4).equals("adtl")) {
      return;
    }
    int at = 4;
    while (at + 12 <= chunk.limit()) {
      int length = chunk.getInt(at + 4);
      if (length < 4 || length > chunk.limit() - at - 8) {
        return;
      }
      if (text(chunk, at, 4).equals("labl")) {
        labels.put(chunk.getInt(at + 8), text(chunk, at + 12, length - 4));
      }
      at += 8 + length + (length & 1);
    }
  }

  /** A text up to its zero byte. */
  private static String text(ByteBuffer chunk, int from, int length) {
    int end = 0;
    while (end < length && chunk.get(from + end) != 0) {
      end++;
    }
    byte[] bytes = new byte[end];
    chunk.get(from, bytes);
    return new String(bytes, StandardCharsets.UTF_8);
  }
}
