package org.matraloom.drum;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Sollu;
import org.matraloom.spell.MeantWord;

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
        String[] sides = line.split("=", 2);
        if (sides.length < 2) {
          throw new IllegalArgumentException(
              where + "a line is a sollu, =, and its strokes, as in dhim = din + thom");
        }
        read.put(sollu(sides[0].strip(), where, lexicon).sound(), strokes(sides[1], where));
      }
    }
    return read;
  }

  private static Sollu sollu(String written, String where, Lexicon lexicon) {
    Optional<List<Sollu>> split = lexicon.split(written);
    if (split.filter(sollus -> sollus.size() > 1).isPresent()) {
      throw new IllegalArgumentException(
          where
              + "\""
              + written
              + "\" is "
              + split.get().size()
              + " sollus; write a line for each");
    }
    return split
        .map(sollus -> sollus.get(0))
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    where
                        + "\""
                        + written
                        + "\" is no known sollu"
                        + lexicon.nearest(written).map("; the nearest is "::concat).orElse("")));
  }

  private static List<DrumStroke> strokes(String written, String where) {
    List<DrumStroke> strokes = new ArrayList<>();
    List<String> names = Arrays.stream(DrumStroke.values()).map(DrumStroke::written).toList();
    for (String part : written.split("\\+", -1)) {
      int number = names.indexOf(part.strip());
      if (number < 0) {
        throw new IllegalArgumentException(
            where
                + "no stroke is called \""
                + part.strip()
                + "\"; "
                + MeantWord.of(part.strip(), names)
                    .map("the nearest is "::concat)
                    .orElse("strokes are " + String.join(", ", names)));
      }
      strokes.add(DrumStroke.values()[number]);
    }
    boolean oneHand =
        strokes.size() > 2
            || strokes.stream().map(DrumStroke::isRight).distinct().count() < strokes.size();
    if (oneHand) {
      throw new IllegalArgumentException(
          where + "a sollu has one stroke, or one of each hand, as in din + thom");
    }
    return List.copyOf(strokes);
  }
}
