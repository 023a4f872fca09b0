package org.matraloom.prompt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/**
 * A row that a reciter is asked for: one avartana of four claps, two matras to a clap, at a tempo
 * at which a sollu has 0.4 s. It is heard once after a count-in and then said again and again.
 *
 * @param phrase the row as a phrase of a score, eight matras long
 * @param places its sollus in order, at least one
 */
public record AskedRow(String phrase, List<DueSollu> places) {

  /** Claps in a row. */
  public static final int BEATS = 4;

  /** Matras in a row. */
  public static final int MATRAS = 8;

  private static final Tempo TEMPO = Tempo.of(75);
  private static final int SILENT_AVARTANAS = 2;

  /**
   * A sollu of a row.
   *
   * @param sound the lexicon's name of its sound
   * @param seconds when it is due, from the first clap of the row
   */
  public record DueSollu(String sound, double seconds) {}

  /**
   * Checks the row.
   *
   * @throws IllegalArgumentException if nothing is said in it
   */
  public AskedRow {
    places = List.copyOf(places);
    if (places.isEmpty()) {
      throw new IllegalArgumentException("a row has one sollu or more, given \"" + phrase + "\"");
    }
  }

  /**
   * Reads a row.
   *
   * @param phrase words, karvais and silences as in a score
   * @param lexicon how words are taken apart
   * @return the row; empty if it is no phrase or is not eight matras long
   */
  public static Optional<AskedRow> of(String phrase, Lexicon lexicon) {
    Optional<Composition> read = ScoreReader.read(text(phrase, 0), "", lexicon).composition();
    if (read.isEmpty()) {
      return Optional.empty();
    }
    Performance performance = Performance.of(read.get());
    List<DueSollu> places = new ArrayList<>();
    performance
        .spoken()
        .forEach(
            said ->
                places.add(
                    new DueSollu(said.sollu().sound(), TEMPO.secondsOf(said.beat()).toDouble())));
    boolean fits = performance.endBeat().equals(Ratio.of(BEATS));
    return fits && !places.isEmpty() ? Optional.of(new AskedRow(phrase, places)) : Optional.empty();
  }

  /**
   * How long a row lasts.
   *
   * @return seconds
   */
  public static double seconds() {
    return TEMPO.secondsOf(Ratio.of(BEATS)).toDouble();
  }

  /**
   * How long a matra lasts.
   *
   * @return seconds
   */
  public static double matraSeconds() {
    return seconds() / MATRAS;
  }

  /**
   * When a saying begins, counted from where the count-in is heard to begin.
   *
   * @param say which one, from 0
   * @return seconds
   */
  public static double sayBegins(int say) {
    return (SILENT_AVARTANAS + say) * seconds();
  }

  /**
   * The tempo of the claps.
   *
   * @return beats a minute
   */
  public static Tempo tempo() {
    return TEMPO;
  }

  /**
   * The row without karvais and silences.
   *
   * @return words, a blank between two
   */
  public String words() {
    return phrase.replaceAll("(?<=^|\\s)[,.](?=\\s|$)", "").strip().replaceAll("\\s+", " ");
  }

  /**
   * The row as a piece: it is heard once, and then the hand goes alone while it is said.
   *
   * @param says how often it is said, 1 or more
   * @return the text of a score
   */
  public String score(int says) {
    return text(phrase, says);
  }

  /**
   * The same as a composition.
   *
   * @param says how often it is said, 1 or more
   * @param lexicon the list with which the row was read
   * @return the composition
   */
  public Composition piece(int says, Lexicon lexicon) {
    return ScoreReader.read(text(phrase, says), "", lexicon).composition().orElseThrow();
  }

  private static String text(String phrase, int says) {
    return "tala eka\ntempo "
        + TEMPO.beatsPerMinute()
        + "\nRow = "
        + phrase
        + " .".repeat(says * MATRAS)
        + "\nperform\n  Row nadai 2\n";
  }
}
