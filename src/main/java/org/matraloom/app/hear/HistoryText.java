package org.matraloom.app.hear;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.matraloom.app.cli.Paragraph;
import org.matraloom.log.LogEntry;
import org.matraloom.log.PlaceFinding;
import org.matraloom.log.PlaceHistory;
import org.matraloom.log.PlaceTrend;
import org.matraloom.log.ScorePlace;

/** Many takes for reading: of one log place by place, of several one row each. */
final class HistoryText {

  private static final int MOST_PLACES = 24;
  private static final int NAME = 32;
  private static final int LOG_NAME = 16;

  private final List<NamedLog> logs;
  private final PrintWriter out;

  HistoryText(List<NamedLog> logs, PrintWriter out) {
    this.logs = logs;
    this.out = out;
  }

  void print(List<String> pieces) {
    String separator = "";
    for (String piece : pieces) {
      out.print(separator);
      separator = System.lineSeparator();
      if (logs.size() == 1) {
        one(piece);
      } else {
        many(piece);
      }
    }
  }

  private void one(String piece) {
    List<LogEntry> takes = PlaceHistory.takes(logs.get(0).history(), piece);
    out.println(Paragraph.of(piece + ": " + takes(takes.size()) + span(takes)));
    out.println("+ is late or fast, - is early or slow; spread is from take to take");
    out.println(row("place", "takes", "mean", "spread", "newest", "habit"));
    List<PlaceFinding> findings = PlaceFinding.of(logs.get(0).history(), piece);
    for (PlaceFinding finding : findings.subList(0, Math.min(MOST_PLACES, findings.size()))) {
      PlaceHistory place = finding.history();
      ScorePlace.Kind kind = place.place().kind();
      int count = place.points().size();
      out.println(
          row(
              HabitWords.place(place.place()),
              "" + count,
              SignedNumber.of(place.mean(), 1) + " " + kind.unit(),
              count < 2 ? "-" : String.format(Locale.ROOT, "%.1f", place.spread()),
              SignedNumber.of(place.points().get(count - 1).off(), 1),
              habit(finding)));
    }
    if (findings.size() > MOST_PLACES) {
      out.println("and " + (findings.size() - MOST_PLACES) + " more places; --json has them all");
    }
    if (takes.stream().anyMatch(take -> take.outcome().places().isEmpty())) {
      out.println(
          Paragraph.of(
              takes(takes.stream().filter(take -> take.outcome().places().isEmpty()).count())
                  + " noted without changes and phrases, as by an earlier version."));
    }
    habits(findings, takes.size(), "");
  }

  private static String row(
      String place, String takes, String mean, String spread, String newest, String habit) {
    return String.format(
            Locale.ROOT,
            "%-" + NAME + "s %5s %10s %8s %8s  %s",
            shortened(place, NAME),
            takes,
            mean,
            spread,
            newest,
            habit)
        .stripTrailing();
  }

  /** At most nine letters. */
  private static String habit(PlaceFinding finding) {
    String trend = finding.trend().map(t -> t.better() ? ", better" : ", worse").orElse("");
    return switch (finding.habit()) {
      case NEVER -> "";
      case ALL -> "yes" + trend;
      case EARLIER -> "was";
      case LATER -> "new";
    };
  }

  private void habits(List<PlaceFinding> findings, int takes, String name) {
    List<PlaceFinding> told = findings.stream().filter(PlaceFinding::isTold).toList();
    String before = name.isEmpty() ? "" : name + ": ";
    told.forEach(
        finding -> out.println(Paragraph.indented(2, before + HabitWords.sentences(finding))));
    if (told.isEmpty()) {
      out.println(
          Paragraph.indented(
              2,
              before
                  + (takes < PlaceFinding.LEAST_TAKES
                      ? "A habit is told from " + PlaceFinding.LEAST_TAKES + " takes on."
                      : "No place is off in one way beyond chance. That does not say that all is"
                          + " well: see how far off the takes are.")));
    }
  }

  private void many(String piece) {
    out.println(Paragraph.of(piece + ": " + logs.size() + " logs"));
    out.println(
        logRow("log", "takes", "clean", "fastest", "landing ms", "newest", "habits, better/worse"));
    for (NamedLog log : logs) {
      List<LogEntry> takes = PlaceHistory.takes(log.history(), piece);
      List<PlaceFinding> findings = PlaceFinding.of(log.history(), piece);
      long told = findings.stream().filter(PlaceFinding::isTold).count();
      out.println(
          logRow(
              log.name(),
              "" + takes.size(),
              "" + takes.stream().filter(take -> take.clean().orElse(false)).count(),
              fastestClean(takes),
              landing(findings),
              takes.isEmpty() ? "-" : takes.get(takes.size() - 1).when().toLocalDate() + "",
              takes.size() < PlaceFinding.LEAST_TAKES
                  ? "-"
                  : told + ", " + trends(findings, true) + "/" + trends(findings, false)));
    }
    out.println("fastest: the fastest clean take; landing: its mean, + is late");
    for (NamedLog log : logs) {
      int takes = PlaceHistory.takes(log.history(), piece).size();
      habits(PlaceFinding.of(log.history(), piece), takes, log.name());
    }
  }

  private static String logRow(
      String log,
      String takes,
      String clean,
      String fastest,
      String landing,
      String newest,
      String habits) {
    return String.format(
            Locale.ROOT,
            "%-" + LOG_NAME + "s %5s %5s %7s %10s %10s  %s",
            shortened(log, LOG_NAME),
            takes,
            clean,
            fastest,
            landing,
            newest,
            habits)
        .stripTrailing();
  }

  private static long trends(List<PlaceFinding> findings, boolean better) {
    return findings.stream()
        .flatMap(finding -> finding.trend().stream())
        .map(PlaceTrend::better)
        .filter(is -> is == better)
        .count();
  }

  private static String fastestClean(List<LogEntry> takes) {
    OptionalDouble fastest =
        takes.stream()
            .filter(take -> take.clean().orElse(false) && take.tempo().isPresent())
            .mapToDouble(take -> take.tempo().getAsDouble())
            .max();
    return fastest.isPresent() ? LogText.tempo(fastest.getAsDouble()) : "-";
  }

  private static String landing(List<PlaceFinding> findings) {
    return findings.stream()
        .map(PlaceFinding::history)
        .filter(place -> place.place().kind() == ScorePlace.Kind.LANDING)
        .map(place -> SignedNumber.of(place.mean(), 1))
        .findFirst()
        .orElse("-");
  }

  private static String takes(long count) {
    return count + (count == 1 ? " take" : " takes");
  }

  private static String span(List<LogEntry> takes) {
    if (takes.isEmpty()) {
      return "";
    }
    String first = takes.get(0).when().toLocalDate() + "";
    String last = takes.get(takes.size() - 1).when().toLocalDate() + "";
    return first.equals(last) ? ", " + first : ", " + first + " to " + last;
  }

  private static String shortened(String text, int most) {
    return text.length() <= most ? text : text.substring(0, most - 1) + "~";
  }
}
