package org.matraloom.wav;

import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * What lies around the samples of a WAVE file, whoever wrote it: PCM of 8 to 32 bits, float, mu-law
 * or A-law; plain, extensible or RF64.
 *
 * <p>A file whose length was never filled in, or whose samples break off, is read as far as it
 * goes. Layout: Microsoft, "Multiple channel audio data and WAVE files" (2007); RF64: EBU Tech 3306
 * (2009).
 */
public final class WavLayout {

  private static final int CHUNK_HEAD = 8;
  private static final int PLAIN_FORMAT = 16;
  private static final int EXTENSIBLE_FORMAT = 40;
  private static final long UNKNOWN_LENGTH = 0xFFFF_FFFFL;

  /** Longer lists of named places are passed over. */
  private static final int LONGEST_CUES = 16 << 20;

  private final FileChannel channel;
  private final CueList cues = new CueList();
  private SampleKind kind;
  private int channels;
  private long ratePerSecond;
  private long dataStart = -1;
  private long dataBytes;

  private WavLayout(FileChannel channel) {
    this.channel = channel;
  }

  /**
   * Reads all of a file but its samples.
   *
   * @param channel the file, from its beginning; its position is left alone
   * @return what was found
   * @throws WavFault if it is no WAVE file, has no samples, or samples of a kind that is not read
   * @throws EOFException if it breaks off inside its header
   * @throws IOException if the disk fails
   */
  public static WavLayout of(FileChannel channel) throws IOException {
    WavLayout layout = new WavLayout(channel);
    layout.scan();
    if (layout.kind == null || layout.dataStart < 0) {
      String what = layout.kind == null ? "format" : "samples";
      throw new WavFault("has no " + what + " in it; is it cut short?");
    }
    return layout;
  }

  /**
   * How a sample is stored.
   *
   * @return the kind
   */
  public SampleKind kind() {
    return kind;
  }

  /**
   * The number of channels that is stated.
   *
   * @return 0 to 65535
   */
  public int channels() {
    return channels;
  }

  /**
   * The sample rate that is stated.
   *
   * @return frames a second, 0 or more
   */
  public long ratePerSecond() {
    return ratePerSecond;
  }

  /**
   * Where the samples begin.
   *
   * @return bytes from the beginning of the file
   */
  public long dataStart() {
    return dataStart;
  }

  /**
   * How much of the samples is there.
   *
   * @return bytes
   */
  public long dataBytes() {
    return dataBytes;
  }

  /**
   * The named places of the file.
   *
   * @return in the order in which they are stored; an unnamed one has an empty label
   */
  public List<CuePoint> cues() {
    return cues.points();
  }

  private void scan() throws IOException {
    ByteBuffer head = take(0, 12);
    String form = name(head);
    if (!form.equals("RIFF") && !form.equals("RF64")) {
      throw new WavFault("is not a WAVE file; give a .wav file");
    } else if (!name(head.position(8)).equals("WAVE")) {
      throw new WavFault("is a RIFF file but not WAVE; give a recording of sound");
    }
    long size = channel.size();
    long longLength = UNKNOWN_LENGTH;
    long position = 12;
    // What is stated may be so long that its end overflows.
    while (position >= 0 && position + CHUNK_HEAD <= size) {
      ByteBuffer chunk = take(position, CHUNK_HEAD);
      String name = name(chunk);
      long length = Integer.toUnsignedLong(chunk.getInt());
      position += CHUNK_HEAD;
      long there = Math.min(length, size - position);
      if (name.equals("ds64")) {
        longLength = take(position, 16).getLong(8);
      } else if (name.equals("fmt ")) {
        readFormat(take(position, (int) Math.min(length, EXTENSIBLE_FORMAT)));
      } else if (name.equals("data")) {
        long stated = length == UNKNOWN_LENGTH ? longLength : length;
        boolean open = stated == UNKNOWN_LENGTH || stated < 0 || (stated == 0 && size > position);
        data(position, open ? size - position : Math.min(stated, size - position));
        length = open ? size - position : stated;
      } else if (name.equals("cue ") && there <= LONGEST_CUES) {
        cues.readPoints(take(position, (int) there));
      } else if (name.equals("LIST") && there <= LONGEST_CUES) {
        cues.readLabels(take(position, (int) there));
      }
      position += length + (length & 1);
    }
  }

  private void data(long start, long lengthBytes) {
    if (dataStart < 0) {
      dataStart = start;
      dataBytes = lengthBytes;
    }
  }

  private void readFormat(ByteBuffer format) throws IOException {
    if (format.limit() < PLAIN_FORMAT) {
      throw new EOFException("format chunk");
    }
    int tag = Short.toUnsignedInt(format.getShort(0));
    channels = Short.toUnsignedInt(format.getShort(2));
    ratePerSecond = Integer.toUnsignedLong(format.getInt(4));
    int frameBytes = Short.toUnsignedInt(format.getShort(12));
    if (tag == WavHeader.EXTENSIBLE && format.limit() >= EXTENSIBLE_FORMAT) {
      tag = Short.toUnsignedInt(format.getShort(24));
    }
    int sampleBytes = channels == 0 ? 0 : frameBytes / channels;
    kind = WavTag.kind(tag, sampleBytes, Short.toUnsignedInt(format.getShort(14)));
  }

  private ByteBuffer take(long position, int length) throws IOException {
    ByteBuffer taken = ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
    while (taken.hasRemaining()) {
      if (channel.read(taken, position + taken.position()) < 0) {
        throw new EOFException();
      }
    }
    return taken.flip();
  }

  private static String name(ByteBuffer from) {
    byte[] name = new byte[4];
    from.get(name);
    return new String(name, StandardCharsets.ISO_8859_1);
  }
}
