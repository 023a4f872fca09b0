package org.matraloom.spell;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.matraloom.score.DrumStroke;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Sollu;

/**
 * Which strokes of a drum a sollu is played with, as a line of a list: {@code dhim = din + thom}.
 *
 * @param sollu what is said
 * @param strokes one stroke, or one of each hand
 */
public record StrokeLine(Sollu sollu, List<DrumStroke> strokes) {

  /** Copies the list. */
  public StrokeLine {
    strokes = List.copyOf(strokes);
  }

  /**
   * Reads a line.
   *
   * @param line the line, without a note
   * @param lexicon the sollus that are known
   * @return what it says
   * @throws IllegalArgumentException if it is not understood; it says why
   */
  public static StrokeLine read(String line, Lexicon lexicon) {
    String[] sides = line.split("=", 2);
    if (sides.length < 2) {
      throw new IllegalArgumentException(
          "a line is a sollu, =, and its strokes, as in dhim = din + thom");
    }
    return new StrokeLine(sollu(sides[0].strip(), lexicon), strokes(sides[1]));
  }

  /**
   * The line as it is written.
   *
   * @return for example "dhim = din + thom"
   */
  public String written() {
    return sollu.spelling()
        + " = "
        + strokes.stream().map(DrumStroke::written).collect(Collectors.joining(" + "));
  }

  private static Sollu sollu(String written, Lexicon lexicon) {
    Optional<List<Sollu>> split = lexicon.split(written);
    if (split.filter(sollus -> sollus.size() > 1).isPresent()) {
      throw new IllegalArgumentException(
          "\"" + written + "\" is " + split.get().size() + " sollus; write a line for each");
    }
    return split
        .map(sollus -> sollus.get(0))
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "\""
                        + written
                        + "\" is no known sollu"
                        + lexicon.nearest(written).map("; the nearest is "::concat).orElse("")));
  }

  private static List<DrumStroke> strokes(String written) {
    List<DrumStroke> strokes = new ArrayList<>();
    List<String> names = Arrays.stream(DrumStroke.values()).map(DrumStroke::written).toList();
    for (String part : written.split("\\+", -1)) {
      int number = names.indexOf(part.strip());
      if (number < 0) {
        throw new IllegalArgumentException(
            "no stroke is called \""
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
          "a sollu has one stroke, or one of each hand, as in din + thom");
    }
    return strokes;
  }
}
