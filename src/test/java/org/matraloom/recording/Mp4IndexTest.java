package org.matraloom.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An index that claims what the file cannot hold is refused before anything is made room for. */
class Mp4IndexTest {

  private static final Path WHOLE =
      Path.of("src/test/resources/org/matraloom/recording/bursts.m4a");

  @TempDir private Path folder;

  @Test
  void aWholeFileIsRead() throws IOException {
    try (Recording recording = Recordings.open(WHOLE)) {
      assertTrue(recording.ratePerSecond() > 0);
    }
  }

  /** ISO/IEC 14496-12: where in its box each count or number stands, from the box's name on. */
  @ParameterizedTest
  @CsvSource({
    "stts, 8",
    "stts, 12",
    "stsc, 8",
    "stsc, 16",
    "stsz, 12",
    "stsz, 16",
    "stco, 8",
    "stco, 12"
  })
  void aTableThatClaimsTooMuchIsRefused(String name, int at) throws IOException {
    byte[] bytes = Files.readAllBytes(WHOLE);
    int box = new String(bytes, StandardCharsets.ISO_8859_1).indexOf(name);
    assertTrue(box > 0, name + " was found");
    ByteBuffer.wrap(bytes).putInt(box + at, 0x0FFF_FFFF);
    refused(bytes);
  }

  @Test
  void aDescriptorThatDoesNotFitIsRefused() throws IOException {
    byte[] bytes = Files.readAllBytes(WHOLE);
    int box = new String(bytes, StandardCharsets.ISO_8859_1).indexOf("esds");
    assertTrue(box > 0, "it was found");
    for (int i = 0; i < 4; i++) {
      bytes[box + 9 + i] = (byte) (i < 3 ? 0xFF : 0x7F);
    }
    refused(bytes);
  }

  @Test
  void boxesInBoxesWithoutEndAreRefused() throws IOException {
    int deep = 20_000;
    ByteBuffer nested = ByteBuffer.allocate(8 * deep);
    for (int i = 0; i < deep; i++) {
      nested.putInt(8 * (deep - i)).put("moov".getBytes(StandardCharsets.US_ASCII));
    }
    refused(after(nested.array()));
  }

  @Test
  void boxesWithoutNumberAreRefused() throws IOException {
    int many = 200_000;
    ByteBuffer empty = ByteBuffer.allocate(8 * many);
    for (int i = 0; i < many; i++) {
      empty.putInt(8).put("free".getBytes(StandardCharsets.US_ASCII));
    }
    refused(after(empty.array()));
  }

  /**
   * A list of chapters whose last title is longer than its box: the decoder goes on behind it in
   * the middle of another box, whose content it takes for the length of a third.
   */
  @Test
  void aBoxThatIsReadPastItsEndMakesNoHangAndNoLogLines() throws IOException {
    List<LogRecord> logged = new ArrayList<>();
    Handler handler =
        new Handler() {
          @Override
          public void publish(LogRecord line) {
            logged.add(line);
          }

          @Override
          public void flush() {}

          @Override
          public void close() {}
        };
    Logger root = Logger.getLogger("");
    root.addHandler(handler);
    try {
      refused(withChapters((byte) 60));
    } finally {
      root.removeHandler(handler);
    }
    assertEquals(List.of(), logged);
    Path good = Files.write(folder.resolve("chapters.m4a"), withChapters((byte) 0));
    Recordings.open(good).close();
  }

  /** A {@code chpl} of one chapter at the end of the index, then room of another kind. */
  private static byte[] withChapters(byte titleBytes) throws IOException {
    byte[] whole = Files.readAllBytes(WHOLE);
    int index = new String(whole, StandardCharsets.ISO_8859_1).indexOf("moov") - 4;
    ByteBuffer bytes = ByteBuffer.wrap(Arrays.copyOf(whole, whole.length + 34 + 100));
    int size = bytes.getInt(index);
    assertEquals(whole.length, index + size, "the index is the last box");
    bytes.putInt(index, size + 34).position(whole.length);
    bytes.putInt(34).put("udta".getBytes(StandardCharsets.US_ASCII));
    bytes.putInt(26).put("chpl".getBytes(StandardCharsets.US_ASCII));
    bytes.putInt(0x0100_0000).putInt(0).put((byte) 1).putLong(0).put(titleBytes);
    bytes.putInt(100).put("free".getBytes(StandardCharsets.US_ASCII));
    Arrays.fill(bytes.array(), bytes.position(), bytes.capacity(), (byte) 0x7F);
    return bytes.array();
  }

  private static byte[] after(byte[] boxes) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    bytes.write(ByteBuffer.allocate(4).putInt(16).array());
    bytes.write("ftypM4A \0\0\0\0".getBytes(StandardCharsets.US_ASCII));
    bytes.write(boxes);
    return bytes.toByteArray();
  }

  private void refused(byte[] bytes) throws IOException {
    Path file = Files.write(folder.resolve("damaged.m4a"), bytes);
    RecordingException refusal =
        assertThrows(RecordingException.class, () -> Recordings.open(file).close());
    assertTrue(refusal.getMessage().contains("is damaged"), refusal.getMessage());
  }
}
