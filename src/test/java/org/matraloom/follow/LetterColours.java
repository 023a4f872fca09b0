package org.matraloom.follow;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.matraloom.phonetics.AnyMouth;

/**
 * The colours of sollus in a mouth that speaks as the letters say, from the program's own table.
 */
final class LetterColours {

  private static final Map<String, List<String>> TRAITS =
      Map.of(
          "ta", List.of("stop", "dental", "vowel-a"),
          "ka", List.of("stop", "velar", "vowel-a"),
          "di", List.of("voiced", "dental", "vowel-i"),
          "mi", List.of("nasal", "labial", "vowel-i"),
          "ju", List.of("affricate", "palatal", "vowel-u"),
          "ṇu", List.of("nasal", "dental", "vowel-u"));

  private final Map<String, double[]> ofTrait;

  LetterColours() {
    try (BufferedReader lines =
        new BufferedReader(
            new InputStreamReader(
                AnyMouth.class.getResourceAsStream("traits.txt"), StandardCharsets.UTF_8))) {
      ofTrait =
          lines
              .lines()
              .filter(line -> line.startsWith("trait "))
              .map(line -> line.substring("trait ".length()).split(": "))
              .collect(Collectors.toMap(parts -> parts[0], parts -> numbers(parts[1])));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static double[] numbers(String text) {
    return Arrays.stream(text.split(" ")).mapToDouble(Double::parseDouble).toArray();
  }

  /** The colour of a sollu of {@code takadimi takajunu}. */
  double[] of(String sollu) {
    List<double[]> parts =
        TRAITS.get(sollu).stream().map((Function<String, double[]>) ofTrait::get).toList();
    double[] sum = new double[parts.get(0).length];
    for (double[] part : parts) {
      for (int d = 0; d < sum.length; d++) {
        sum[d] += part[d];
      }
    }
    return sum;
  }
}
