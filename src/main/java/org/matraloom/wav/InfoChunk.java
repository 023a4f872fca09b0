package org.matraloom.wav;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/**
 * The chunk that says what a file holds: {@code LIST INFO} with texts such as INAM, the title, and
 * ICMT, a comment.
 *
 * <p>Source: Microsoft and IBM, "Multimedia Programming Interface and Data Specifications 1.0",
 * 1991. Texts are written as UTF-8, as is usual today.
 */
final class InfoChunk {

  private final Map<String, String> texts;
  private final int bytes;

  /** Texts in the order in which they are written, by names of four letters. */
  InfoChunk(Map<String, String> texts) {
    this.texts = texts;
    this.bytes = texts.values().stream().mapToInt(text -> 8 + evened(encoded(text).length)).sum();
  }

  /** How many bytes the chunk takes; 0 if there is nothing to say. */
  int length() {
    return texts.isEmpty() ? 0 : 12 + bytes;
  }

  void writeTo(OutputStream out) throws IOException {
    if (texts.isEmpty()) {
      return;
    }
    ByteBuffer chunk = ByteBuffer.allocate(length()).order(ByteOrder.LITTLE_ENDIAN);
    chunk.put(WavHeader.id("LIST")).putInt(4 + bytes).put(WavHeader.id("INFO"));
    texts.forEach(
        (name, text) -> {
          byte[] content = encoded(text);
          chunk.put(WavHeader.id(name)).putInt(content.length).put(content);
          chunk.put(new byte[content.length & 1]);
        });
    out.write(chunk.array());
  }

  /** A text that ends in a zero byte. */
  private static byte[] encoded(String text) {
    return (text + '\0').getBytes(StandardCharsets.UTF_8);
  }

  private static int evened(int length) {
    return length + (length & 1);
  }
}
