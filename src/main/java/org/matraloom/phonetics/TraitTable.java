package org.matraloom.phonetics;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What {@code scripts/train-phones} has learnt: what each trait adds to a colour, and how mouths
 * differ in each way to speak.
 *
 * @param ofTrait the numbers of each trait, by its name
 * @param ways the ways to speak; the last one knows nothing
 */
record TraitTable(Map<String, double[]> ofTrait, List<SpeakingWay> ways) {

  private static final String BUILT_IN = "traits.txt";

  TraitTable {
    ofTrait = Map.copyOf(ofTrait);
    ways = List.copyOf(ways);
  }

  /** Reads the table of the program. */
  static TraitTable load() {
    try (InputStream in = TraitTable.class.getResourceAsStream(BUILT_IN);
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      return of(lines.lines().toList());
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /**
   * Reads lines: {@code trait NAME: numbers}, {@code way SHARE TRAITS}, {@code axis SPREAD: axis}.
   */
  static TraitTable of(List<String> lines) {
    Map<String, double[]> ofTrait = new HashMap<>();
    List<SpeakingWay> ways = new ArrayList<>();
    for (int at = 0; at < lines.size(); at++) {
      String[] head = lines.get(at).split(":")[0].split(" ");
      if (head[0].equals("trait")) {
        ofTrait.put(head[1], numbers(lines.get(at)));
      } else if (head[0].equals("way")) {
        List<String> known = Arrays.asList(head);
        List<String> axes =
            lines.subList(at + 1, lines.size()).stream()
                .takeWhile(line -> line.startsWith("axis "))
                .toList();
        ways.add(
            new SpeakingWay(
                Double.parseDouble(head[1]),
                known.contains("consonants"),
                known.contains("vowels"),
                axes.stream()
                    .mapToDouble(line -> Double.parseDouble(line.split("[ :]")[1]))
                    .toArray(),
                axes.stream().map(TraitTable::numbers).toArray(double[][]::new)));
      }
    }
    return new TraitTable(ofTrait, ways);
  }

  /** How many numbers a colour has. */
  int size() {
    return ways.get(0).axes().length;
  }

  private static double[] numbers(String line) {
    return Arrays.stream(line.substring(line.indexOf(':') + 1).trim().split(" "))
        .mapToDouble(Double::parseDouble)
        .toArray();
  }
}
