package org.matraloom.recording;

import com.jcraft.jogg.Packet;
import com.jcraft.jogg.Page;
import com.jcraft.jogg.StreamState;
import com.jcraft.jogg.SyncState;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/**
 * The packets of the first stream of an Ogg file, in order (layout: RFC 3533, section 6).
 *
 * <p>jogg puts pages together and checks them; here is decided what a fault means. What stands
 * behind the last page of the stream is not looked at.
 */
final class OggPackets implements Closeable {

  private static final int PAGE_HEAD = 27;
  private static final int LONGEST_PAGE = 65_307;
  private static final int PAGE_MARK = 0x5367674F;
  private static final int READ_BYTES = 1 << 13;

  /** Where a packet of one stream is longer than this, the file is not sound. */
  private static final int LONGEST_PACKET = 1 << 24;

  private final Path file;
  private final InputStream in;
  private final SyncState pages = new SyncState();
  private final StreamState packets = new StreamState();
  private final Page page = new Page();
  private final Packet packet = new Packet();
  private boolean started;
  private boolean ended;
  private int stream;

  /** The bytes of pages since the last packet ended. */
  private int unfinished;

  OggPackets(Path file) throws IOException {
    this.file = file;
    in = Files.newInputStream(file);
  }

  /** The next packet's bytes, or an empty array at the end, even one that comes too early. */
  byte[] next() throws IOException {
    while (true) {
      int found = started ? packets.packetout(packet) : 0;
      if (found < 0) {
        throw damaged("one of its Ogg pages is missing");
      } else if (found > 0 && packet.bytes > 0) {
        unfinished = 0;
        return Arrays.copyOfRange(packet.packet_base, packet.packet, packet.packet + packet.bytes);
      } else if (found == 0 && !readPage()) {
        return new byte[0];
      }
    }
  }

  /** A packet of the header, which must be there. */
  byte[] header() throws IOException {
    byte[] bytes = next();
    if (bytes.length == 0) {
      throw new RecordingException(file, "breaks off inside its header");
    }
    return bytes;
  }

  /** Hands on the next whole page of the stream; false if there is none. */
  private boolean readPage() throws IOException {
    while (!ended) {
      int found = pages.pageout(page);
      if (found < 0) {
        throw damaged("one of its Ogg pages has changed");
      } else if (found == 0) {
        int at = pages.buffer(READ_BYTES);
        int count = in.read(pages.data, at, READ_BYTES);
        if (count < 0) {
          return false;
        }
        pages.wrote(count);
      } else if (isOwn()) {
        unfinished += page.body_len;
        if (unfinished > LONGEST_PACKET) {
          throw damaged("one of its packets does not end");
        }
        packets.pagein(page);
        ended = page.eos() != 0;
        return true;
      }
    }
    return false;
  }

  /** Whether the page is of the stream that the file begins with. */
  private boolean isOwn() {
    if (!started) {
      started = true;
      stream = page.serialno();
      packets.init(stream);
    }
    return page.serialno() == stream;
  }

  private RecordingException damaged(String how) {
    return new RecordingException(file, "is damaged: " + how);
  }

  /** The position that the last page claims for its end, in frames; -1 if there is none. */
  long lastGranule() throws IOException {
    try (RandomAccessFile end = new RandomAccessFile(file.toFile(), "r")) {
      long start = Math.max(0, end.length() - LONGEST_PAGE);
      byte[] bytes = new byte[(int) (end.length() - start)];
      end.seek(start);
      end.readFully(bytes);
      ByteBuffer tail = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
      for (int at = bytes.length - PAGE_HEAD; at >= 0; at--) {
        if (tail.getInt(at) == PAGE_MARK) {
          return tail.getLong(at + 6);
        }
      }
      return -1;
    }
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
