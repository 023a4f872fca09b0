package org.matraloom.breath;

import java.util.Locale;
import org.matraloom.kanakku.SumWords;
import org.matraloom.time.Ratio;

/** Numbers in words and figures. */
final class Counts {

  private Counts() {}

  static String of(long count, String one, String many) {
    return count + " " + (count == 1 ? one : many);
  }

  static String times(int count) {
    return count == 1 ? "once" : count == 2 ? "twice" : count + " times";
  }

  static String ordinal(int count) {
    int tens = count / 10 % 10;
    return switch (tens == 1 ? 0 : count % 10) {
      case 1 -> count + "st";
      case 2 -> count + "nd";
      case 3 -> count + "rd";
      default -> count + "th";
    };
  }

  static String beats(Ratio beats) {
    return SumWords.counted(beats, "beat");
  }

  static String seconds(Ratio seconds) {
    return String.format(Locale.ROOT, "%.1f s", seconds.toDouble());
  }
}
