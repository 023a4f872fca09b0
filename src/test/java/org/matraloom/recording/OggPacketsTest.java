package org.matraloom.recording;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pages laid out by hand as RFC 3533, section 6, has them. */
class OggPacketsTest {

  private static final int OWN = 7;
  private static final int FIRST = 2;
  private static final int LAST = 4;
  private static final int GOES_ON = 1;

  @TempDir Path folder;

  @Test
  void packetsComeInOrder() throws IOException {
    byte[] bytes = joined(page(FIRST, 0, "one"), page(0, 1, "two"), page(LAST, 2, "three"));
    assertEquals(List.of("one", "two", "three"), packets(bytes));
  }

  @Test
  void aPacketMayReachOverPages() throws IOException {
    byte[] packet = new byte[255 * 3 + 40];
    Arrays.fill(packet, (byte) 'x');
    byte[] bytes =
        joined(
            page(FIRST, 0, "head"),
            SoundFiles.page(OWN, 0, -1, 1, Arrays.copyOf(packet, 255 * 2), 2),
            SoundFiles.page(
                OWN, GOES_ON, 9, 2, Arrays.copyOfRange(packet, 255 * 2, packet.length), 2),
            page(LAST, 3, "end"));
    List<String> packets = packets(bytes);
    assertEquals(3, packets.size());
    assertArrayEquals(packet, packets.get(1).getBytes(StandardCharsets.US_ASCII));
  }

  @Test
  void anotherStreamIsLeftOut() throws IOException {
    byte[] other = SoundFiles.page(OWN + 1, FIRST, 0, 0, "other".getBytes(), 1);
    assertEquals(
        List.of("own", "more"),
        packets(joined(page(FIRST, 0, "own"), other, page(LAST, 1, "more"))));
  }

  @Test
  void whatStandsBehindTheEndIsNotLookedAt() throws IOException {
    byte[] bytes =
        joined(page(FIRST, 0, "one"), page(LAST, 1, "two"), "TAG of a player".getBytes());
    assertEquals(List.of("one", "two"), packets(bytes));
  }

  @Test
  void aFileThatIsCutEndsEarly() throws IOException {
    byte[] bytes = joined(page(FIRST, 0, "one"), page(0, 1, "two"), page(LAST, 2, "three"));
    assertEquals(List.of("one", "two"), packets(Arrays.copyOf(bytes, bytes.length - 1)));
  }

  @Test
  void aMissingPageIsTold() throws IOException {
    byte[] bytes = joined(page(FIRST, 0, "one"), page(0, 1, "two"), page(LAST, 3, "four"));
    String message = assertThrows(RecordingException.class, () -> packets(bytes)).getMessage();
    assertTrue(message.contains("is damaged: one of its Ogg pages is missing"), message);
  }

  @Test
  void aChangedByteIsTold() throws IOException {
    byte[] bytes = joined(page(FIRST, 0, "one"), page(0, 1, "two"), page(LAST, 2, "three"));
    int at = page(FIRST, 0, "one").length + 30;
    bytes[at] ^= 1;
    String message = assertThrows(RecordingException.class, () -> packets(bytes)).getMessage();
    assertTrue(message.contains("is damaged: one of its Ogg pages has changed"), message);
  }

  private List<String> packets(byte[] bytes) throws IOException {
    Path file = folder.resolve("made.ogg");
    Files.write(file, bytes);
    List<String> packets = new ArrayList<>();
    try (OggPackets ogg = new OggPackets(file)) {
      for (byte[] next = ogg.next(); next.length > 0; next = ogg.next()) {
        packets.add(new String(next, StandardCharsets.US_ASCII));
      }
    }
    return packets;
  }

  private static byte[] page(int flags, int number, String packet) {
    return SoundFiles.page(OWN, flags, number, number, packet.getBytes(), 1);
  }

  private static byte[] joined(byte[]... parts) throws IOException {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    for (byte[] part : parts) {
      all.write(part);
    }
    return all.toByteArray();
  }
}
