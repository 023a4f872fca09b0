package org.matraloom.app.hear;

import java.io.IOException;
import java.util.Locale;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.matraloom.log.History;
import org.matraloom.log.LogEntry;

/**
 * The log as comma-separated values (RFC 4180): a row for each record and for each of its rounds.
 */
final class LogCsv {

  private static final String FORMULA_SIGNS = "=+-@\t\r";

  private LogCsv() {}

  static void write(History history, Appendable out) throws IOException {
    CSVPrinter table = new CSVPrinter(out, CSVFormat.RFC4180);
    table.printRecord(
        "when",
        "kind",
        "piece",
        "round",
        "nadai",
        "tempo",
        "clean",
        "landing_error_ms",
        "voiced_seconds",
        "recording",
        "remark");
    for (LogEntry entry : history.entries()) {
      String kind = entry.kind().name().toLowerCase(Locale.ROOT);
      table.printRecord(
          entry.when(),
          kind,
          text(entry.piece()),
          "",
          "",
          number(entry.tempo()),
          entry.clean().map(String::valueOf).orElse(""),
          number(entry.landingErrorMs()),
          entry.voicedSeconds(),
          text(entry.recording().orElse("")),
          text(entry.remark()));
      for (LogEntry.RoundEntry round : entry.rounds()) {
        table.printRecord(
            entry.when(),
            kind,
            text(entry.piece()),
            round.round(),
            round.nadai() == 0 ? "" : round.nadai(),
            round.tempo(),
            round.clean(),
            "",
            "",
            "",
            "");
      }
    }
  }

  private static String number(OptionalDouble value) {
    return value.isPresent() ? Double.toString(value.getAsDouble()) : "";
  }

  /** A text that a spreadsheet takes for a text, not for a formula to work out. */
  private static String text(String text) {
    return !text.isEmpty() && FORMULA_SIGNS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }
}
