package org.matraloom.app.prove;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.matraloom.time.Ratio;

/**
 * Turns a place as it is said into one that a score holds: "one late" and "1 matra late" into +1/4,
 * "half a beat early" into -1/2, "beat 5, 2nd matra" into beat 5 1/4.
 */
final class TypedPlace {

  private static final List<String> NUMBERS =
      List.of("one", "two", "three", "four", "five", "six", "seven", "eight", "nine");
  private static final Pattern OFF_SAMAM =
      Pattern.compile(
          "(half|\\d{1,4}|"
              + String.join("|", NUMBERS)
              + ")(?: an?)?( matras?| beats?)? (late|after|early|before)(?: sam(?:am)?)?");
  private static final Pattern IN_A_BEAT =
      Pattern.compile("beat (\\d{1,4}),? (\\d{1,3})(?:st|nd|rd|th)? matra");

  private TypedPlace() {}

  /**
   * The place as a score writes it.
   *
   * @param typed the place as it was typed
   * @param matrasPerBeat matras a beat, kalam included
   * @param kalai counted beats an akshara
   * @return the place in the words of a score, or the text as it is where it is no place
   * @throws IllegalArgumentException if a beat has no such matra
   */
  static String written(String typed, int matrasPerBeat, int kalai) {
    String text = typed.strip().replaceAll(" +", " ").toLowerCase(Locale.ROOT);
    Matcher off = OFF_SAMAM.matcher(text);
    if (off.matches()) {
      boolean inBeats = off.group(2) != null && off.group(2).startsWith(" beat");
      Ratio aksharas = number(off.group(1)).dividedBy((long) kalai * (inBeats ? 1 : matrasPerBeat));
      boolean after = off.group(3).equals("late") || off.group(3).equals("after");
      return (after ? "+" : "-") + aksharas.toMixed();
    }
    Matcher inside = IN_A_BEAT.matcher(text);
    if (inside.matches()) {
      long matra = Long.parseLong(inside.group(2));
      if (matra < 1 || matra > matrasPerBeat) {
        throw new IllegalArgumentException(
            "a beat has matras 1 to " + matrasPerBeat + " here, given " + typed.strip());
      }
      Ratio beat = Ratio.of(Long.parseLong(inside.group(1)));
      return "beat " + beat.plus(Ratio.of(matra - 1, matrasPerBeat)).toMixed();
    }
    return typed;
  }

  private static Ratio number(String word) {
    int named = NUMBERS.indexOf(word) + 1;
    if (word.equals("half")) {
      return Ratio.of(1, 2);
    }
    return Ratio.of(named > 0 ? named : Long.parseLong(word));
  }
}
