package org.matraloom.app.hear;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.matraloom.log.LogEntry;
import org.matraloom.log.PlaceHistory;
import org.matraloom.log.ScorePlace;

/** Many takes as comma-separated values (RFC 4180): a row for each place of each take. */
final class HistoryCsv {

  private HistoryCsv() {}

  static void write(List<NamedLog> logs, List<String> pieces, Appendable out) throws IOException {
    CSVPrinter table = new CSVPrinter(out, CSVFormat.RFC4180);
    table.printRecord(
        "log", "piece", "when", "tempo", "clean", "place", "round", "name", "unit", "off");
    for (NamedLog log : logs) {
      for (String piece : pieces) {
        for (LogEntry take : PlaceHistory.takes(log.history(), piece)) {
          for (Map.Entry<ScorePlace, Double> note : PlaceHistory.notes(take).entrySet()) {
            ScorePlace place = note.getKey();
            table.printRecord(
                log.name(),
                piece,
                take.when(),
                take.tempo().isPresent() ? take.tempo().getAsDouble() : "",
                take.clean().map(String::valueOf).orElse(""),
                place.kind().name().toLowerCase(Locale.ROOT),
                place.round() == 0 ? "" : place.round(),
                place.name(),
                place.kind().unit(),
                SignedNumber.of(note.getValue(), 1).replace("+", ""));
          }
        }
      }
    }
  }
}
