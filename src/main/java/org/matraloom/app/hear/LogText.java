package org.matraloom.app.hear;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.TreeSet;
import org.matraloom.app.cli.Paragraph;
import org.matraloom.log.CleanTempo;
import org.matraloom.log.History;
import org.matraloom.log.LogEntry;
import org.matraloom.log.TempoRule;
import org.matraloom.log.VoicedTime;

/** The practice log for reading. */
final class LogText {

  private static final int MOST_DAYS = 14;
  private static final int MOST_ROUNDS = 5;
  private static final int MOST_REMARKS = 5;
  private static final int MOST_TAKEN_BACK = 3;
  private static final int FIRST_COLUMN = 12;
  private static final int COLUMN = 10;
  private static final double MINUTE = 60;

  private final History history;
  private final TempoRule rule;

  LogText(History history, TempoRule rule) {
    this.history = history;
    this.rule = rule;
  }

  void print(Path file, VoicedTime voice, PrintWriter out) {
    int count = history.entries().size();
    out.println("Practice log: " + file);
    if (count == 0) {
      out.println("Nothing is noted yet. See: matraloom take --help, matraloom log add --help");
      takenBack(out);
      return;
    }
    out.println(count + (count == 1 ? " record" : " records") + "; nothing leaves this machine.");
    takenBack(out);
    history.pieces().forEach(piece -> piece(piece, out));
    out.println();
    voice(voice, out);
  }

  private void takenBack(PrintWriter out) {
    List<LogEntry> all = history.withdrawn();
    int left = Math.max(0, all.size() - MOST_TAKEN_BACK);
    for (LogEntry entry : all.subList(left, all.size())) {
      out.println(Paragraph.indented(2, "taken back: " + EntryWords.of(entry)));
    }
    if (left > 0) {
      out.println("  and " + left + " taken back before; all of them: matraloom log --json");
    }
  }

  private void piece(String piece, PrintWriter out) {
    List<LogEntry> entries = history.of(piece);
    long judged = entries.stream().filter(entry -> entry.clean().isPresent()).count();
    long clean = entries.stream().filter(entry -> entry.clean().orElse(false)).count();
    double voiced = entries.stream().mapToDouble(LogEntry::voicedSeconds).sum();
    out.println();
    String sums = takes(judged) + ", " + clean + " clean, " + minutes(voiced) + " of voice";
    out.println(Paragraph.of(piece + ": " + sums));
    List<CleanTempo> rows =
        CleanTempo.of(history, piece).stream().filter(row -> !row.points().isEmpty()).toList();
    if (!rows.isEmpty()) {
      table(rows.subList(0, Math.min(rows.size(), MOST_ROUNDS + 1)), out);
      left(rows.size() - MOST_ROUNDS - 1, "round", " not shown", out);
      rows.forEach(row -> next(row, out));
    }
    remarks(entries, out);
  }

  private static void left(int count, String what, String where, PrintWriter out) {
    if (count > 0) {
      String many = count == 1 ? " " + what : " " + what + "s";
      out.println("  and " + count + many + where + "; all of them: matraloom log --csv -");
    }
  }

  private static void remarks(List<LogEntry> entries, PrintWriter out) {
    List<LogEntry> remarks = entries.stream().filter(entry -> !entry.remark().isBlank()).toList();
    int left = Math.max(0, remarks.size() - MOST_REMARKS);
    if (!remarks.isEmpty()) {
      out.println("  remarks");
    }
    for (LogEntry entry : remarks.subList(left, remarks.size())) {
      String words = entry.remark().strip().replaceAll("[\\s\\p{Cntrl}]+", " ");
      out.println(Paragraph.indented(4, entry.when().toLocalDate() + "  " + words));
    }
    left(left, "remark", " before", out);
  }

  private static String takes(long count) {
    return count + (count == 1 ? " take" : " takes") + " judged";
  }

  static String minutes(double seconds) {
    if (seconds > 0 && seconds < MINUTE) {
      return "under a minute";
    }
    long minutes = Math.round(seconds / MINUTE);
    return minutes == 1 ? "1 minute" : minutes + " minutes";
  }

  private void table(List<CleanTempo> rows, PrintWriter out) {
    TreeSet<LocalDate> all = new TreeSet<>();
    rows.forEach(row -> all.addAll(row.days()));
    List<LocalDate> days = new ArrayList<>(all);
    int left = Math.max(0, days.size() - MOST_DAYS);
    out.println("  fastest clean take of each day, beats a minute (-: none clean)");
    StringBuilder heads = new StringBuilder(padded("day"));
    StringBuilder nadais = new StringBuilder(padded(""));
    for (CleanTempo row : rows) {
      int nadai = row.points().get(row.points().size() - 1).nadai();
      heads.append(aligned(name(row.round())));
      nadais.append(aligned(nadai == 0 ? "" : "nadai " + nadai));
    }
    out.println("  " + heads.toString().stripTrailing());
    if (!nadais.toString().isBlank()) {
      out.println("  " + nadais.toString().stripTrailing());
    }
    for (LocalDate day : days.subList(left, days.size())) {
      StringBuilder line = new StringBuilder(padded(day.toString()));
      rows.forEach(row -> line.append(aligned(cell(row, day))));
      out.println("  " + line.toString().stripTrailing());
    }
    left(left, "day", " before", out);
  }

  private static String cell(CleanTempo row, LocalDate day) {
    OptionalDouble fastest = row.fastestClean(day);
    if (fastest.isPresent()) {
      return tempo(fastest.getAsDouble());
    }
    return row.takes(day) == 0 ? "" : "-";
  }

  private void next(CleanTempo row, PrintWriter out) {
    rule.next(row.points())
        .filter(advice -> row.round() == CleanTempo.WHOLE || advice.move() != TempoRule.Move.STAY)
        .ifPresent(
            advice -> {
              out.println("  next, " + name(row.round()) + ": " + where(advice) + ",");
              out.println("    as there " + why(advice));
            });
  }

  private static String where(TempoRule.Advice advice) {
    return switch (advice.move()) {
          case UP -> "up to ";
          case DOWN -> advice.tempo() < Math.round(advice.from()) ? "down to " : "still at ";
          case STAY -> "once more at ";
        }
        + advice.tempo()
        + " beats a minute";
  }

  /** Why this tempo, after "as there". */
  static String why(TempoRule.Advice advice) {
    String from = tempo(advice.from());
    if (advice.move() == TempoRule.Move.UP) {
      return advice.needed() == 1
          ? "was one clean take at " + from
          : "were " + advice.needed() + " clean takes in a row at " + from + " or more";
    } else if (advice.move() == TempoRule.Move.DOWN) {
      return advice.inARow() == 1
          ? "was one miss at " + from
          : "were " + advice.inARow() + " misses in a row, the newest at " + from;
    }
    String takes = advice.clean() ? "clean take" : "miss";
    String plural = advice.clean() ? "clean takes" : "misses";
    int more = advice.needed() - advice.inARow();
    return (advice.inARow() == 1
            ? "was one " + takes
            : "were " + advice.inARow() + " " + plural + " in a row")
        + " at "
        + from
        + "; "
        + (more == 1 ? "one" : more)
        + " more in a row, and it is "
        + advice.then();
  }

  private static void voice(VoicedTime voice, PrintWriter out) {
    out.println(
        "Voice today: "
            + minutes(voice.todaySeconds())
            + "; since the last rest of "
            + VoicedTime.REST_MINUTES
            + " minutes: "
            + minutes(voice.sinceRestSeconds())
            + ".");
    voice.reminder().ifPresent(words -> out.println(Paragraph.of(words)));
  }

  static String name(int round) {
    return round == CleanTempo.WHOLE ? "whole" : "round " + round;
  }

  /** Beats a minute, with a tenth only where there is one. */
  static String tempo(double beatsPerMinute) {
    String text = String.format(Locale.ROOT, "%.1f", beatsPerMinute);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }

  private static String padded(String text) {
    return String.format(Locale.ROOT, "%-" + FIRST_COLUMN + "s", text);
  }

  private static String aligned(String text) {
    return String.format(Locale.ROOT, "%" + COLUMN + "s", text);
  }
}
