package org.matraloom.take;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;

/**
 * What to practise next.
 *
 * @param why the purpose, such as "the change from four to five, slowly"
 * @param drill the arguments of the drill command up to the name of the score, such as {@code join}
 * @param options the arguments after it
 */
public record Practice(String why, List<String> drill, List<String> options) {

  /** Copies the lists. */
  public Practice {
    drill = List.copyOf(drill);
    options = List.copyOf(options);
  }

  private static final double SLOWER = 0.8;
  private static final double QUICKER = 1.1;
  private static final int LEAST_TEMPO = 20;
  private static final int LEAST_NADAI = 3;
  private static final int MOST_NADAI = 9;

  /**
   * The change of nadai at which a round begins, or plain words that change so if it begins with
   * none.
   */
  static Practice change(
      Performance performance, int round, int from, int to, double beatsPerMinute) {
    List<Span.Round> rounds = performance.rounds();
    int join = 0;
    for (int at = 1; at < rounds.size(); at++) {
      int nadai = rounds.get(at).matrasPerBeat();
      boolean changes = nadai != rounds.get(at - 1).matrasPerBeat();
      join += changes ? 1 : 0;
      if (changes && rounds.get(at).number() == round) {
        return new Practice(
            "the change into round " + round + ", slowly",
            List.of("join"),
            List.of("--join", "" + join, "--tempo", slower(beatsPerMinute), "-o", "join.wav"));
      }
    }
    return Math.min(from, to) >= LEAST_NADAI && Math.max(from, to) <= MOST_NADAI
        ? words(from, to, beatsPerMinute)
        : slowly(beatsPerMinute);
  }

  private static Practice words(int from, int to, double beatsPerMinute) {
    return new Practice(
        "plain words in " + from + " and " + to + ", slowly",
        List.of("switch", "" + from, "" + to),
        List.of("--tempo", slower(beatsPerMinute), "-o", "switch.wav"));
  }

  /** One phrase over and over. */
  static Practice phrase(String phrase, double beatsPerMinute) {
    return new Practice(
        "the phrase " + phrase + " alone, slowly",
        List.of("loop"),
        List.of("--phrase", phrase, "--tempo", slower(beatsPerMinute), "-o", "loop.wav"));
  }

  /** The piece with the hand falling silent now and then. */
  static Practice pulse(double beatsPerMinute) {
    return new Practice(
        "the piece with a hand that falls silent and comes back",
        List.of("clicks"),
        List.of(
            "--heard", "2", "--silent", "1", "--tempo", tempo(beatsPerMinute), "-o", "clicks.wav"));
  }

  /** The piece at growing tempi. */
  static Practice quicker(double beatsPerMinute) {
    List<String> options = new ArrayList<>(List.of("--from", tempo(beatsPerMinute), "--by", "4"));
    options.addAll(List.of("--to", tempo(beatsPerMinute * QUICKER), "-o", "ladder.wav"));
    return new Practice("the piece, a little quicker each time", List.of("ladder"), options);
  }

  /** The piece from the beginning, slowly up to its tempo. */
  static Practice slowly(double beatsPerMinute) {
    List<String> options = new ArrayList<>(List.of("--from", slower(beatsPerMinute), "--by", "4"));
    options.addAll(List.of("--to", tempo(beatsPerMinute), "-o", "ladder.wav"));
    return new Practice("the piece, slowly at first", List.of("ladder"), options);
  }

  /**
   * Whether the drill is made from the score.
   *
   * @return false for one of plain words
   */
  public boolean needsScore() {
    return !drill.get(0).equals("switch");
  }

  private static String slower(double beatsPerMinute) {
    return tempo(SLOWER * beatsPerMinute);
  }

  private static String tempo(double beatsPerMinute) {
    return String.format(Locale.ROOT, "%d", Math.max(LEAST_TEMPO, Math.round(beatsPerMinute)));
  }
}
