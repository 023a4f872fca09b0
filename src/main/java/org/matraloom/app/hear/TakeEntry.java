package org.matraloom.app.hear;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.matraloom.app.cli.NoteOptions;
import org.matraloom.log.LogEntry;
import org.matraloom.measure.RoundFindings;
import org.matraloom.measure.TakeFindings;
import org.matraloom.score.Performance;
import org.matraloom.verdict.Cleanness;

/** A measured take as a record of the practice log. */
public final class TakeEntry {

  /** Before this no telephone recorded anything: a file so old has lost its time. */
  private static final Instant OLDEST = Instant.parse("2000-01-01T00:00:00Z");

  private static final int KNOWN_BY_BYTES = 12;
  private static final int BLOCK = 1 << 16;

  private TakeEntry() {}

  /** Notes a take that can be judged, once. */
  static void note(
      TakeFindings findings,
      Performance performance,
      Path recording,
      NoteOptions log,
      PrintWriter out) {
    if (log.isOff()) {
      return;
    }
    if (findings.doubt().isPresent()) {
      out.println("Not noted in the practice log, as it cannot be judged.");
      return;
    }
    log.noteMade(() -> of(findings, performance, recording), out);
  }

  /**
   * Makes the record.
   *
   * @param findings a take that can be judged
   * @param performance what was to be said
   * @param recording its file
   * @return the record
   * @throws IOException if the file cannot be read
   */
  public static LogEntry of(TakeFindings findings, Performance performance, Path recording)
      throws IOException {
    Cleanness clean = new Cleanness(findings, performance);
    String title = performance.composition().title();
    String piece = title.isBlank() ? "untitled" : title;
    return new LogEntry(
        endOf(recording),
        LogEntry.Kind.TAKE,
        piece.length() > LogEntry.LONGEST_TEXT ? piece.substring(0, LogEntry.LONGEST_TEXT) : piece,
        findings
            .pulse()
            .map(pulse -> OptionalDouble.of(rounded(pulse.beatsPerMinute())))
            .orElse(OptionalDouble.empty()),
        new LogEntry.Outcome(
            Optional.of(clean.ofWhole()),
            findings
                .knownLanding()
                .map(landing -> OptionalDouble.of(rounded(1000 * landing.errorSeconds())))
                .orElse(OptionalDouble.empty()),
            rounds(clean),
            TakePlaceNotes.of(findings)),
        rounded(clean.voicedSeconds()),
        Optional.of(knownBy(recording)),
        "");
  }

  private static List<LogEntry.RoundEntry> rounds(Cleanness clean) {
    return clean.rounds().stream().map(round -> round(round, clean)).toList();
  }

  private static LogEntry.RoundEntry round(RoundFindings round, Cleanness clean) {
    return new LogEntry.RoundEntry(
        round.round(), round.matrasPerBeat(), rounded(round.beatsPerMinute()), clean.of(round));
  }

  private static double rounded(double value) {
    return Math.round(10 * value) / 10.0;
  }

  /** A recording is written until it ends, so the time of its file is when that was. */
  private static OffsetDateTime endOf(Path recording) throws IOException {
    Instant now = Instant.now();
    Instant written = Files.getLastModifiedTime(recording).toInstant();
    boolean isCredible =
        written.isAfter(OLDEST) && written.isBefore(now.plus(Duration.ofMinutes(1)));
    return (isCredible ? written : now).atZone(ZoneId.systemDefault()).toOffsetDateTime();
  }

  private static String knownBy(Path recording) throws IOException {
    try (InputStream in = Files.newInputStream(recording)) {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      byte[] block = new byte[BLOCK];
      for (int count = in.read(block); count > 0; count = in.read(block)) {
        digest.update(block, 0, count);
      }
      return "sha256:" + HexFormat.of().formatHex(digest.digest(), 0, KNOWN_BY_BYTES);
    } catch (NoSuchAlgorithmException missing) {
      throw new IllegalStateException("every Java has SHA-256", missing);
    }
  }
}
