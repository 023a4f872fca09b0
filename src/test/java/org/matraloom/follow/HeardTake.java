package org.matraloom.follow;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.matraloom.notation.ScoreReader;
import org.matraloom.onset.KnownSounds;
import org.matraloom.onset.Onset;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;

/**
 * A take without sound: onsets and colours of which it is known what was said. Every sollu has a
 * lag and a colour of its own, drawn by lot.
 */
public final class HeardTake {

  /** A sound and the place of its sollu, or -1 for one that is none. */
  record Heard(Onset onset, int sollu, double[] colour) {}

  private static final int COLOURS = 18;
  private static final int KINDS_OF_SOUND = 64;

  public final List<ExpectedSollu> expected;
  final double[] lagSeconds;
  double jitterSeconds = 0.010;
  double stretch = 1;

  /** How far the sounds of one sollu vary beside how far sollus are apart. */
  double blur = 0.7;

  /** Whether three sounds are said in turn, whatever the sollus. */
  boolean inTurn;

  /** Whether the sollus are said as their letters say, and not by sounds drawn by lot. */
  boolean asLettersSay;

  private final SplittableRandom random;
  private final double[][] colourOf = new double[KINDS_OF_SOUND][COLOURS];
  private final Map<String, Integer> kinds = new HashMap<>();
  private final List<Heard> heard = new ArrayList<>();

  /**
   * Prepares a take.
   *
   * @param score its text
   * @param seed for all that is drawn
   * @param mostLagSeconds how far before its beat a sollu is heard at most
   */
  public HeardTake(String score, long seed, double mostLagSeconds) {
    random = new SplittableRandom(seed);
    expected =
        ExpectedSollu.of(
            ScoreTimeline.of(
                Performance.of(
                    ScoreReader.read(score, "rain.loom", Lexicon.standard())
                        .composition()
                        .orElseThrow()),
                0));
    for (double[] colour : colourOf) {
      Arrays.setAll(colour, d -> random.nextGaussian());
    }
    lagSeconds =
        IntStream.range(0, KINDS_OF_SOUND)
            .mapToDouble(kind -> random.nextDouble() * mostLagSeconds)
            .toArray();
  }

  /** Says some sollus; the first at a moment, the others in time. Returns when the next falls. */
  double say(int from, int to, double atSeconds) {
    return say(from, to, atSeconds, 1);
  }

  /** The same, slower than the rest of the take. */
  double say(int from, int to, double atSeconds, double slower) {
    for (int k = from; k < to; k++) {
      one(k, atSeconds + (seconds(k) - seconds(from)) * stretch * slower);
    }
    double end = to < expected.size() ? seconds(to) : seconds(to - 1);
    return atSeconds + (end - seconds(from)) * stretch * slower;
  }

  /** Says one sollu of the score once. */
  void one(int sollu, double atSeconds) {
    heard.add(sound(kind(sollu), sollu, atSeconds));
  }

  /** Says what stands at a place of the score without being it. */
  void extra(int like, double atSeconds) {
    heard.add(sound(kind(like), -1, atSeconds));
  }

  /** Something that is no sollu at all. */
  void noise(double atSeconds, double confidence) {
    double[] colour = new double[COLOURS];
    Arrays.setAll(colour, d -> random.nextGaussian());
    heard.add(new Heard(new Onset(atSeconds, confidence), -1, colour));
  }

  private Heard sound(int kind, int sollu, double atSeconds) {
    double[] colour = new double[COLOURS];
    double[] own =
        asLettersSay
            ? new LetterColours().of(expected.get(Math.max(0, sollu)).sollu().sound())
            : colourOf[kind];
    Arrays.setAll(colour, d -> own[d] + blur * random.nextGaussian());
    double at = atSeconds - lagSeconds[kind] + jitterSeconds * random.nextGaussian();
    return new Heard(new Onset(at, random.nextDouble(0.6, 1)), sollu, colour);
  }

  private int kind(int sollu) {
    if (inTurn) {
      return sollu % 3;
    }
    return kinds.computeIfAbsent(expected.get(sollu).sollu().sound(), name -> kinds.size());
  }

  double seconds(int sollu) {
    return expected.get(sollu).seconds();
  }

  double matraSeconds(int sollu) {
    return Intervals.matras(expected)[sollu] * stretch;
  }

  /** What was said, in order of time. */
  List<Heard> heard() {
    return heard.stream().sorted(Comparator.comparingDouble(h -> h.onset.seconds())).toList();
  }

  /** The pairing that is found. */
  List<Alignment.Said> paired() {
    return found().said();
  }

  /** The pairing that is found, and what cannot be told. */
  PairingSearch.Found found() {
    List<Heard> all = heard();
    double[][] heardColours = all.stream().map(Heard::colour).toArray(double[][]::new);
    SoundColours colours =
        asLettersSay
            ? new SoundColours(heardColours).withLetters(expected, Lexicon.standard())
            : new SoundColours(heardColours);
    return new PairingSearch(
            expected,
            all.stream().map(Heard::onset).toList(),
            colours,
            Lexicon.standard(),
            KnownSounds.NONE)
        .find();
  }

  /** The share of said sollus that are paired with their sounds. */
  double share(List<Alignment.Said> paired) {
    List<Heard> all = heard();
    long right = paired.stream().filter(s -> all.get(s.onset()).sollu == s.sollu()).count();
    return right / (double) all.stream().filter(h -> h.sollu >= 0).count();
  }
}
