package org.matraloom.fit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.matraloom.score.Composition;
import org.matraloom.time.Ratio;

/**
 * Reads round plans as a musician types them: {@code 4-4-5}.
 *
 * <p>A number is a round in that nadai; {@code k2} after it gives the kalam and {@code x2} says it
 * twice; {@code ?} is a round whose nadai is to be found. In round brackets stands a wait: {@code
 * (7)} is seven matras of the round before it, {@code (16n5)} sixteen matras of nadai 5, {@code (2
 * beats)} two beats, {@code (?)} a wait to be found.
 */
public final class RoundPlanReader {

  /** The nadais that an open round may take. */
  public static final List<Integer> OPEN_NADAIS = List.of(3, 4, 5, 6, 7, 8, 9);

  /** The most rounds whose nadai may be left open. */
  public static final int MOST_OPEN_ROUNDS = 3;

  /** Every nadai up to 9 in every kalam divides a beat into parts that fit into this. */
  private static final int FINEST_GRID = 10_080;

  private static final Pattern ROUND = Pattern.compile("(\\d|\\?)(?:k(\\d))?(?:x(\\d{1,2}))?");
  private static final Pattern WAIT = Pattern.compile("\\((\\d{1,5}|\\?)(?:n(\\d))?\\)");
  private static final Pattern BEATS =
      Pattern.compile("\\((?:(\\d{1,4})\\+)?(\\d{1,4})(?:/(\\d{1,2}))?b(?:eats?)?\\)");
  private static final Pattern TOKEN = Pattern.compile("\\([^)]*\\)?|[^-,\\s(]+");

  private RoundPlanReader() {}

  /**
   * Reads a plan, with every choice for its open rounds.
   *
   * @param text what is typed
   * @return the plans, one unless a round is open
   * @throws IllegalArgumentException if it cannot be read; the message says what is wrong
   */
  public static List<RoundPlan> read(String text) {
    List<List<RoundPlan.Part>> plans = List.of(List.of());
    int openRounds = 0;
    int nadai = 4;
    Matcher tokens = TOKEN.matcher(text);
    while (tokens.find()) {
      String token = tokens.group();
      Matcher round = ROUND.matcher(token);
      if (!round.matches()) {
        plans = appended(plans, List.of(wait(token, nadai)));
        continue;
      }
      int kalam = round.group(2) == null ? 1 : Integer.parseInt(round.group(2));
      int times = round.group(3) == null ? 1 : Integer.parseInt(round.group(3));
      boolean open = round.group(1).equals("?");
      openRounds += open ? 1 : 0;
      if (openRounds > MOST_OPEN_ROUNDS) {
        throw new IllegalArgumentException(
            "at most " + MOST_OPEN_ROUNDS + " rounds can be left open, given more: " + text);
      }
      nadai = open ? nadai : Integer.parseInt(round.group(1));
      List<List<RoundPlan.Part>> longer = new ArrayList<>();
      for (int choice : open ? OPEN_NADAIS : List.of(nadai)) {
        RoundPlan.Part part = new RoundPlan.Part.Round(choice, kalam);
        longer.addAll(appended(plans, Collections.nCopies(times, part)));
      }
      plans = longer;
    }
    return plans.stream().map(RoundPlan::new).toList();
  }

  private static List<List<RoundPlan.Part>> appended(
      List<List<RoundPlan.Part>> plans, List<RoundPlan.Part> more) {
    List<List<RoundPlan.Part>> longer = new ArrayList<>();
    for (List<RoundPlan.Part> plan : plans) {
      List<RoundPlan.Part> parts = new ArrayList<>(plan);
      parts.addAll(more);
      longer.add(parts);
    }
    return longer;
  }

  private static RoundPlan.Part wait(String token, int nadaiBefore) {
    Matcher wait = WAIT.matcher(token.replace(" ", ""));
    if (wait.matches()) {
      int nadai = wait.group(2) == null ? nadaiBefore : Integer.parseInt(wait.group(2));
      if (wait.group(1).equals("?")) {
        return new RoundPlan.Part.OpenWait(nadai);
      }
      if (nadai < 1) {
        throw new IllegalArgumentException("a rest is counted in nadai 1 to 9, given " + token);
      }
      return new RoundPlan.Part.Wait(Ratio.of(Integer.parseInt(wait.group(1)), nadai));
    }
    Matcher beats =
        BEATS.matcher(token.strip().replaceAll("(?<=\\d) (?=\\d)", "+").replace(" ", ""));
    if (beats.matches()) {
      int den = beats.group(3) == null ? 1 : Integer.parseInt(beats.group(3));
      if (den > 0 && FINEST_GRID % den == 0) {
        int whole = beats.group(1) == null ? 0 : Integer.parseInt(beats.group(1));
        Ratio rest = Ratio.of(Integer.parseInt(beats.group(2)), den);
        return new RoundPlan.Part.Wait(rest.plus(Ratio.of(whole)));
      }
    }
    throw new IllegalArgumentException(
        "\""
            + token
            + "\" is not a round or a rest; a round is a nadai from 1 to "
            + Composition.HIGHEST_NADAI
            + " such as 4, 4k2, 5x2 or ?, a rest is (7), (16n5), (2 beats) or (?)");
  }
}
