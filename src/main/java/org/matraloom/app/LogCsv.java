package org.matraloom.app;

import java.io.IOException;
import java.util.Locale;
import java.util.OptionalDouble;
import org.matraloom.log.Entry;
import org.matraloom.log.History;

/**
 * The log as comma-separated values (RFC 4180): a row for each record and for each of its rounds.
 */
final class LogCsv {

  private static final String HEAD =
      "when,kind,piece,round,nadai,tempo,clean,landing_error_ms,voiced_seconds,recording,remark";

  private LogCsv() {}

  static void write(History history, Appendable out) throws IOException {
    row(out, HEAD);
    for (Entry entry : history.entries()) {
      String head =
          entry.when()
              + ","
              + entry.kind().name().toLowerCase(Locale.ROOT)
              + ","
              + quoted(entry.piece());
      row(
          out,
          String.join(
              ",",
              head,
              "",
              "",
              number(entry.tempo()),
              entry.clean().map(String::valueOf).orElse(""),
              number(entry.landingErrorMs()),
              Double.toString(entry.voicedSeconds()),
              quoted(entry.recording().orElse("")),
              quoted(entry.remark())));
      for (Entry.RoundEntry round : entry.rounds()) {
        String nadai = round.nadai() == 0 ? "" : Integer.toString(round.nadai());
        row(
            out,
            head
                + ","
                + round.round()
                + ","
                + nadai
                + ","
                + round.tempo()
                + ","
                + round.clean()
                + ",,,,");
      }
    }
  }

  private static void row(Appendable out, String text) throws IOException {
    out.append(text).append("\r\n");
  }

  private static String number(OptionalDouble value) {
    return value.isPresent() ? Double.toString(value.getAsDouble()) : "";
  }

  private static String quoted(String text) {
    return text.matches("[^\",\r\n]*") ? text : '"' + text.replace("\"", "\"\"") + '"';
  }
}
