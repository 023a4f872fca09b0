package org.matraloom.wav;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * The chunks after the samples that name places: {@code cue} with the frames, {@code LIST adtl}
 * with the labels.
 *
 * <p>Source: Microsoft and IBM, "Multimedia Programming Interface and Data Specifications 1.0",
 * 1991. Readers differ on which of the two positions of a point they use, so both hold the frame.
 */
public final class CueChunks {

  private static final int POINT_BYTES = 24;

  private final Iterable<CuePoint> cues;
  private final long count;
  private final long labelBytes;

  /**
   * Prepares to write.
   *
   * @param cues the named places, in order; they are gone through several times
   */
  public CueChunks(Iterable<CuePoint> cues) {
    this.cues = cues;
    long points = 0;
    long bytes = 0;
    for (CuePoint cue : cues) {
      points++;
      bytes += 8 + evened(labelLength(text(cue)));
    }
    this.count = points;
    this.labelBytes = bytes;
  }

  /** How many bytes both chunks take; 0 if there is nothing to name. */
  long length() {
    return count == 0 ? 0 : 8 + 4 + POINT_BYTES * count + 8 + 4 + labelBytes;
  }

  /**
   * Writes both chunks.
   *
   * @param out where they go
   * @throws IOException if it cannot be written
   */
  public void writeTo(OutputStream out) throws IOException {
    if (count == 0) {
      return;
    }
    ByteBuffer head = littleEndian(12).put(WavHeader.id("cue "));
    out.write(head.putInt((int) (4 + POINT_BYTES * count)).putInt((int) count).array());
    int number = 0;
    for (CuePoint cue : cues) {
      ByteBuffer point = littleEndian(POINT_BYTES).putInt(++number).putInt((int) cue.frame());
      point.put(WavHeader.id("data")).putInt(0).putInt(0).putInt((int) cue.frame());
      out.write(point.array());
    }
    ByteBuffer list = littleEndian(12).put(WavHeader.id("LIST")).putInt((int) (4 + labelBytes));
    out.write(list.put(WavHeader.id("adtl")).array());
    number = 0;
    for (CuePoint cue : cues) {
      byte[] text = text(cue);
      ByteBuffer label = littleEndian(8 + evened(labelLength(text))).put(WavHeader.id("labl"));
      out.write(label.putInt(labelLength(text)).putInt(++number).put(text).array());
    }
  }

  private static ByteBuffer littleEndian(int length) {
    return ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
  }

  private static byte[] text(CuePoint cue) {
    return cue.label().getBytes(StandardCharsets.UTF_8);
  }

  /** A number and a text that ends in a zero byte. */
  private static int labelLength(byte[] text) {
    return 4 + text.length + 1;
  }

  private static int evened(int length) {
    return length + (length & 1);
  }
}
