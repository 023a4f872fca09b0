package org.matraloom.app.prove;

import java.util.List;
import java.util.stream.Collectors;
import org.matraloom.form.Yati;
import org.matraloom.form.YatiSteps;
import org.matraloom.time.Ratio;

/** Says the sum and the shape of lines. */
final class LineWords {

  private LineWords() {}

  /** The lines added up: "28 + 21 + 14 + 7 = 70". */
  static String summed(List<Integer> lines) {
    int total = lines.stream().mapToInt(Integer::intValue).sum();
    return lines.stream().map(String::valueOf).collect(Collectors.joining(" + ")) + " = " + total;
  }

  /** Their yati and steps: "gopuccha (long to short), equal steps of 7". */
  static String shape(List<Integer> lines) {
    Yati named = Yati.ofMatras(lines);
    YatiSteps steps = YatiSteps.of(lines.stream().map(Ratio::of).toList());
    return named.word() + " (" + named.meaning() + "), " + steps.inWords();
  }
}
