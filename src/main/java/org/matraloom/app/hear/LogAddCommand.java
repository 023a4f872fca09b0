package org.matraloom.app.hear;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.LogOptions;
import org.matraloom.app.cli.NadaiNumber;
import org.matraloom.app.cli.Paragraph;
import org.matraloom.app.cli.UserError;
import org.matraloom.log.History;
import org.matraloom.log.LogEntry;
import org.matraloom.log.PracticeLog;
import org.matraloom.log.VoicedTime;
import org.matraloom.spell.MeantWord;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Notes practice by hand. */
@Command(
    name = "add",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Note practice by hand.",
    footer = {
      "",
      LogOptions.WHERE,
      "Example: matraloom log add \"Gutter Song\" --tempo 66 --clean --voiced 5"
    })
final class LogAddCommand implements Callable<Integer> {

  private static final int NOON = 12;
  private static final double MINUTE = 60;

  @Spec private CommandSpec command;

  @Parameters(
      paramLabel = "TITLE",
      description = "What was practised; records with the same title belong together.")
  private String piece;

  @Option(names = "--tempo", paramLabel = "BPM", description = "Beats a minute.")
  private Double tempo;

  @Option(names = "--clean", description = "It was said without a fault.")
  private boolean clean;

  @Option(names = "--missed", description = "It was not.")
  private boolean missed;

  @Option(names = "--round", paramLabel = "N", description = "Only this round was said.")
  private Integer round;

  @Option(names = "--nadai", paramLabel = "N", description = "In this nadai: what was said.")
  private NadaiNumber nadai;

  @Option(
      names = "--landing",
      paramLabel = "MS",
      description = "How late the last matra ended, in ms; negative if early.")
  private Double landingMs;

  @Option(
      names = "--voiced",
      paramLabel = "MINUTES",
      description = "How long the voice was in use, in minutes.")
  private double voicedMinutes;

  @Option(
      names = "--date",
      paramLabel = "WHEN",
      description =
          "When it ended, such as 2026-03-04 or 2026-03-04T19:30 (now if not given);"
              + " not in the future.")
  private String date;

  @Option(names = "--remark", paramLabel = "TEXT", description = "A few words of your own.")
  private String remark = "";

  @Option(
      names = "--new",
      description = "It is a new piece, although its title is close to a known one.")
  private boolean isNew;

  @Mixin private LogOptions place;

  @Override
  public Integer call() throws IOException {
    requireSense();
    LogEntry entry = entry();
    PracticeLog log = place.log();
    History before = log.read();
    meant(before)
        .ifPresent(
            near -> {
              throw new UserError(
                  "\""
                      + piece
                      + "\" is not in the log; did you mean \""
                      + near
                      + "\"? Give that title, or --new for a new piece. Nothing was noted.");
            });
    log.append(entry);
    PrintWriter out = command.commandLine().getOut();
    out.println("noted in " + log.file());
    if (tempo != null && !isJudged()) {
      out.println("With neither --clean nor --missed it counts for no suggestion of a tempo.");
    }
    if (voicedMinutes > 0) {
      List<LogEntry> entries = new ArrayList<>(before.entries());
      entries.add(entry);
      VoicedTime.of(new History(entries, List.of()), OffsetDateTime.now())
          .reminder()
          .ifPresent(words -> out.println(Paragraph.of(words)));
    }
    return ExitCode.DONE;
  }

  /** A piece of the log whose title is nearly that of a new one. */
  private Optional<String> meant(History before) {
    List<String> known = before.pieces();
    return isNew || known.contains(piece) ? Optional.empty() : MeantWord.of(piece, known);
  }

  private void requireSense() {
    if (clean && missed) {
      throw new UserError("--clean and --missed together make no sense; give one");
    }
    if (round != null && (tempo == null || !isJudged())) {
      throw new UserError("--round needs --tempo, and --clean or --missed");
    }
    if (nadai != null && round == null) {
      throw new UserError("--nadai belongs to --round; name the round as well");
    }
    if (tempo == null
        && !isJudged()
        && voicedMinutes == 0
        && remark.isEmpty()
        && landingMs == null) {
      throw new UserError(
          "there is nothing to note; give --tempo with --clean or --missed, --voiced or --remark");
    }
  }

  private boolean isJudged() {
    return clean || missed;
  }

  private LogEntry entry() {
    try {
      return new LogEntry(
          when(),
          LogEntry.Kind.NOTE,
          piece,
          number(tempo),
          new LogEntry.Outcome(
              isJudged() && round == null ? Optional.of(clean) : Optional.empty(),
              number(landingMs),
              round == null
                  ? List.of()
                  : List.of(
                      new LogEntry.RoundEntry(
                          round, nadai == null ? 0 : nadai.matrasPerBeat(), tempo, clean))),
          voicedMinutes * MINUTE,
          Optional.empty(),
          remark);
    } catch (IllegalArgumentException outOfRange) {
      throw new UserError(outOfRange.getMessage());
    }
  }

  private static OptionalDouble number(Double value) {
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  /** A day without a time is noon, or now if that is still to come today. */
  private OffsetDateTime when() {
    if (date == null) {
      return OffsetDateTime.now();
    }
    try {
      OffsetDateTime now = OffsetDateTime.now();
      boolean hasTime = date.contains("T");
      LocalDateTime local =
          hasTime ? LocalDateTime.parse(date) : LocalDate.parse(date).atTime(NOON, 0);
      OffsetDateTime when = local.atZone(ZoneId.systemDefault()).toOffsetDateTime();
      if (!when.isAfter(now)) {
        return when;
      }
      if (!hasTime && local.toLocalDate().equals(now.toLocalDate())) {
        return now;
      }
      throw new UserError(
          "--date is "
              + date
              + ", which is still to come; give when it was practised, at the latest "
              + now.toLocalDateTime().truncatedTo(ChronoUnit.MINUTES));
    } catch (DateTimeException unreadable) {
      throw new UserError(
          "--date is " + date + "; write 2026-03-04 or 2026-03-04T19:30, an existing day");
    }
  }
}
