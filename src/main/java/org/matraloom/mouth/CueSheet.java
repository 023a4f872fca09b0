package org.matraloom.mouth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Sollu;

/**
 * What was spoken in a recording, in order: a line for each row of words, words as in a score, and
 * before a word perhaps when it begins, in seconds or as minutes:seconds.
 */
public final class CueSheet {

  private static final Pattern TIME = Pattern.compile("(?:(\\d{1,3}):)?(\\d{1,5}(?:\\.\\d+)?)");
  private static final int SECONDS_A_MINUTE = 60;

  private final List<CalledSollu> called;

  private CueSheet(List<CalledSollu> called) {
    this.called = List.copyOf(called);
  }

  /**
   * Reads a sheet.
   *
   * @param text the sheet; what follows # on a line is not read
   * @param source what it is called in messages
   * @param lexicon how words are taken apart
   * @return the sheet
   * @throws KitException if a word is not known, a time is not in order, or there is no word
   */
  public static CueSheet read(String text, String source, Lexicon lexicon) throws KitException {
    List<CalledSollu> called = new ArrayList<>();
    double latest = 0;
    int number = 0;
    for (String line : text.lines().toList()) {
      number++;
      String where = source + ", line " + number + ": ";
      OptionalDouble time = OptionalDouble.empty();
      boolean opensRow = true;
      for (String word : line.replaceFirst("#.*", "").strip().split("\\s+")) {
        Matcher told = TIME.matcher(word);
        if (word.isEmpty()) {
          continue;
        }
        if (told.matches()) {
          time = OptionalDouble.of(seconds(told));
          if (time.getAsDouble() < latest) {
            throw new KitException(where + "the time " + word + " lies before the one above it");
          }
          latest = time.getAsDouble();
          continue;
        }
        boolean opensWord = true;
        for (Sollu sollu : split(word, where, lexicon)) {
          called.add(new CalledSollu(sollu.sound(), number, opensRow, opensWord, time));
          time = OptionalDouble.empty();
          opensRow = false;
          opensWord = false;
        }
      }
    }
    if (called.isEmpty()) {
      throw new KitException(source + " names no sollu; write what was spoken, a row on a line");
    }
    return new CueSheet(called);
  }

  private static List<Sollu> split(String word, String where, Lexicon lexicon) throws KitException {
    Optional<List<Sollu>> sollus = lexicon.split(word);
    if (sollus.isEmpty()) {
      String near = lexicon.nearest(word).map(like -> "; did you mean " + like + "?").orElse("");
      throw new KitException(
          where + "\"" + word + "\" is no word of known sollus" + near + " (own ones: --lexicon)");
    }
    return sollus.get();
  }

  private static double seconds(Matcher told) {
    int minutes = told.group(1) == null ? 0 : Integer.parseInt(told.group(1));
    return minutes * SECONDS_A_MINUTE + Double.parseDouble(told.group(2));
  }

  List<CalledSollu> called() {
    return called;
  }

  /**
   * How many sollus the sheet names.
   *
   * @return at least 1
   */
  public int size() {
    return called.size();
  }
}
