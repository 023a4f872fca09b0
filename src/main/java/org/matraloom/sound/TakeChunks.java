package org.matraloom.sound;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.time.FrameClock;
import org.matraloom.wav.CueChunks;
import org.matraloom.wav.CuePoint;
import org.matraloom.wav.WavHeader;

/**
 * The chunks before the samples of a take: what it belongs to ({@code LIST INFO}), the avartanas
 * and rounds ({@code cue} and {@code LIST adtl}), and the text of the score in a chunk of its own
 * ({@code loom}, UTF-8), which other programs pass over.
 *
 * <p>They have the same length whether the start of the guide is known or not, so they can be
 * written again in their place. Source: Microsoft and IBM, "Multimedia Programming Interface and
 * Data Specifications 1.0", 1991, INFO list chunk.
 */
final class TakeChunks {

  static final String SCORE = "loom";

  private static final int GAPS_WIDTH = 800;

  private TakeChunks() {}

  static byte[] of(TakeNote note, int ratePerSecond) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      Composition composition = note.timeline().performance().composition();
      ByteArrayOutputStream info = new ByteArrayOutputStream();
      info.writeBytes(WavHeader.id("INFO"));
      text(info, "INAM", composition.title());
      text(info, "ISFT", "Matraloom");
      text(info, "ICMT", comment(note, ratePerSecond));
      chunk(out, "LIST", info.toByteArray());
      new CueChunks(cues(note, ratePerSecond)).writeTo(out);
      chunk(out, SCORE, note.scoreText().getBytes(StandardCharsets.UTF_8));
    } catch (IOException inMemory) {
      throw new UncheckedIOException(inMemory);
    }
    return out.toByteArray();
  }

  private static String comment(TakeNote note, int ratePerSecond) {
    Composition composition = note.timeline().performance().composition();
    return "score: "
        + note.scoreName()
        + "; rounds: "
        + rounds(note.timeline().performance())
        + "; tempo: "
        + composition.tempo().beatsPerMinute()
        + "; origin beat: "
        + note.timeline().originBeat()
        + "; start frame: "
        + figure(note.startFrame())
        + "; round trip frames: "
        + figure(note.roundTripFrames())
        + "; frames a second: "
        + ratePerSecond
        + "; silences: "
        + gaps(note.gaps());
  }

  /** How many there were and where the first ones are, in a fixed width. */
  private static String gaps(List<GuideGap> gaps) {
    StringBuilder text = new StringBuilder(Integer.toString(gaps.size()));
    for (GuideGap gap : gaps) {
      String next = " " + gap.atFrame() + "+" + gap.frames();
      if (text.length() + next.length() > GAPS_WIDTH) {
        break;
      }
      text.append(next);
    }
    return text + " ".repeat(GAPS_WIDTH - text.length());
  }

  /** The first and the last round that the guide has. */
  private static String rounds(Performance performance) {
    List<Span.Round> rounds = performance.rounds();
    return rounds.get(0).number() + "-" + rounds.get(rounds.size() - 1).number();
  }

  /** A number in a fixed width, so that it can be put in later. */
  private static String figure(Optional<Long> number) {
    return String.format(
        Locale.ROOT, "%12s", number.map(known -> Long.toString(known)).orElse("unknown"));
  }

  private static List<CuePoint> cues(TakeNote note, int ratePerSecond) {
    FrameClock clock = note.timeline().clock(ratePerSecond);
    List<CuePoint> cues = new ArrayList<>();
    new TimelineCues(note.timeline(), clock, Math.max(0, note.startFrame().orElse(0L)))
        .forEach(cues::add);
    return cues;
  }

  private static void text(ByteArrayOutputStream out, String id, String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    byte[] ended = new byte[bytes.length + 1];
    System.arraycopy(bytes, 0, ended, 0, bytes.length);
    chunk(out, id, ended);
  }

  private static void chunk(ByteArrayOutputStream out, String id, byte[] body) {
    out.writeBytes(WavHeader.id(id));
    out.writeBytes(
        ByteBuffer.allocate(4).order(ByteOrder.LITTLE_ENDIAN).putInt(body.length).array());
    out.writeBytes(body);
    if ((body.length & 1) == 1) {
      out.write(0);
    }
  }
}
