package org.matraloom.notation;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.matraloom.score.Place;
import org.matraloom.spell.Quoted;

/**
 * Something that is wrong, or doubtful, in a written score.
 *
 * @param severity whether the score can be used all the same
 * @param file the name of the file, as given
 * @param place where it is; {@link #WHOLE_FILE} if the file as a whole is meant, line 0 if the text
 *     is a single line that was typed
 * @param width how many characters are meant, as a reader counts them; 0 if the file as a whole is
 * @param sourceLine the line as written; empty if the file as a whole is meant
 * @param message what was found and what was expected
 * @param help what to write instead, where that is known
 */
public record Problem(
    Severity severity,
    String file,
    Place place,
    int width,
    String sourceLine,
    String message,
    Optional<String> help) {

  /** Whether a score can be used in spite of a problem. */
  public enum Severity {
    /** It cannot be used. */
    ERROR,
    /** It can be used, but may not mean what was intended. */
    WARNING
  }

  /** No place: the file as a whole is meant. */
  public static final Place WHOLE_FILE = new Place(0, 0);

  private static final int WIDEST = 74;
  private static final int BEFORE_CARET = 50;
  private static final String CUT = "...";

  /**
   * Writes the problem for a terminal: place and message, the line, a caret under the place, help.
   *
   * @return two to four lines without a final line end; tabs of the line are kept, control
   *     characters are replaced
   */
  public String format() {
    StringBuilder text = new StringBuilder();
    text.append(file);
    if (place.line() > 0) {
      text.append(':').append(place.line()).append(':').append(place.column());
    }
    text.append(": ").append(severity.name().toLowerCase(Locale.ROOT)).append(": ");
    text.append(message);
    if (width > 0) {
      showLine(text);
    }
    help.ifPresent(advice -> text.append("\nhelp: ").append(advice));
    return text.toString();
  }

  private void showLine(StringBuilder text) {
    List<String> clusters = Quoted.clusters(sourceLine);
    int caret = Math.min(place.column() - 1, clusters.size());
    int from = clusters.size() > WIDEST ? Math.max(0, caret - BEFORE_CARET) : 0;
    int to = Math.min(clusters.size(), from + WIDEST);
    StringBuilder shown = new StringBuilder(from > 0 ? CUT : "");
    StringBuilder marks = new StringBuilder(from > 0 ? " ".repeat(CUT.length()) : "");
    for (int index = from; index < to; index++) {
      String cluster = clusters.get(index);
      shown.append(cluster.equals("\t") ? cluster : Quoted.printable(cluster));
      if (index < caret) {
        marks.append(cluster.equals("\t") ? '\t' : ' ');
      }
    }
    int tail = Math.max(0, Math.min(width, to - caret) - 1);
    marks.append('^').append("~".repeat(tail));
    text.append('\n').append(shown).append(to < clusters.size() ? CUT : "");
    text.append('\n').append(marks);
  }
}
