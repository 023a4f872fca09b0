package org.matraloom.drum;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.matraloom.score.DrumStroke;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Sollu;
import org.matraloom.score.Wording;
import org.matraloom.spell.StrokeLine;

/**
 * Which strokes a sollu is played with: lines such as {@code dhim = din + thom}, one sollu a line.
 *
 * <p>Schools differ, so a list of one's own goes before the built-in one. A sollu of neither is
 * played {@code nam} if it closes with a nasal, else {@code ki}.
 */
public final class StrokeTable {

  private static final int LONGEST_LIST = 100_000;
  private static final String BUILT_IN = "strokes.txt";

  private final Map<String, List<DrumStroke>> strokes;

  private StrokeTable(Map<String, List<DrumStroke>> strokes) {
    this.strokes = Map.copyOf(strokes);
  }

  /**
   * The built-in list.
   *
   * @param lexicon the sollus that are known
   * @return the table
   */
  public static StrokeTable usual(Lexicon lexicon) {
    try (InputStream in = StrokeTable.class.getResourceAsStream(BUILT_IN)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return new StrokeTable(read(text, BUILT_IN, lexicon));
    } catch (IOException e) {
      throw new UncheckedIOException("the list of strokes cannot be read", e);
    }
  }

  /**
   * This table with a list of one's own before it.
   *
   * @param text the lines of the list; a {@code #} begins a note
   * @param name what the list is called in messages
   * @param lexicon the sollus that are known
   * @return a new table
   * @throws IllegalArgumentException if a line is not understood; it says which and why
   */
  public StrokeTable plus(String text, String name, Lexicon lexicon) {
    Map<String, List<DrumStroke>> both = new HashMap<>(strokes);
    both.putAll(read(text, name, lexicon));
    return new StrokeTable(both);
  }

  /**
   * This table with the strokes that a score names before it.
   *
   * @param wording how a score is spoken
   * @return a new table
   */
  public StrokeTable plus(Wording wording) {
    Map<String, List<DrumStroke>> both = new HashMap<>(strokes);
    wording.strokes().forEach((sollu, played) -> both.put(sollu.sound(), played));
    return new StrokeTable(both);
  }

  /**
   * The strokes of a sollu.
   *
   * @param sollu what is said
   * @return one stroke, or one of each hand
   */
  public List<DrumStroke> of(Sollu sollu) {
    boolean closes = sollu.spelling().matches(".*[mn\u1e47\u1e45]g?");
    return strokes.getOrDefault(sollu.sound(), List.of(closes ? DrumStroke.NAM : DrumStroke.KI));
  }

  /**
   * The strokes of a sollu as they are written.
   *
   * @param sollu what is said
   * @return for example "din+thom"
   */
  public String written(Sollu sollu) {
    return of(sollu).stream().map(DrumStroke::written).collect(Collectors.joining("+"));
  }

  private static Map<String, List<DrumStroke>> read(String text, String name, Lexicon lexicon) {
    if (text.length() > LONGEST_LIST) {
      throw new IllegalArgumentException(
          name + ": a list of strokes has at most " + LONGEST_LIST + " characters");
    }
    Map<String, List<DrumStroke>> read = new HashMap<>();
    List<String> lines = text.lines().toList();
    for (int index = 0; index < lines.size(); index++) {
      String line = lines.get(index).replaceFirst("#.*", "").strip();
      String where = name + ":" + (index + 1) + ": ";
      if (!line.isEmpty()) {
        try {
          StrokeLine said = StrokeLine.read(line, lexicon);
          read.put(said.sollu().sound(), said.strokes());
        } catch (IllegalArgumentException faulty) {
          throw new IllegalArgumentException(where + faulty.getMessage(), faulty);
        }
      }
    }
    return read;
  }
}
