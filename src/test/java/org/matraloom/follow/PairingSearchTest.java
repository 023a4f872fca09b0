package org.matraloom.follow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BiConsumer;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Dense and grouped takes of which it is known what was said are paired rightly. */
class PairingSearchTest {

  private static final String DENSE = score("(takadimi takajunu) x8", "4 4 5");
  private static final String TAKADIMI = score("(takadimi) x16", "4 4 5");
  private static final String EVEN = score("(takadimi takajunu) x8", "4 4 4");
  private static final String GROUPED =
      score("takita , takadimi , takatakita , (tadiginatom , ) x3", "4 4 5");
  private static final List<String> SCORES = List.of(DENSE, TAKADIMI, EVEN, GROUPED);

  /** How far before its beat a sollu may be heard. */
  private static final double[] LAGS = {0, 0.03, 0.06};

  private static String score(String song, String nadais) {
    StringBuilder text = new StringBuilder("tala adi\ntempo 72\nSong = " + song + "\nperform\n");
    for (String nadai : nadais.split(" ")) {
      text.append("  Song nadai ").append(nadai).append('\n');
    }
    return text.toString();
  }

  @Test
  void cleanTakesArePairedWhateverTheLags() {
    everyTake(
        0.95,
        (take, random) -> {
          take.stretch = random.nextDouble(0.8, 1.25);
          take.jitterSeconds = random.nextDouble(0.003, 0.020);
          take.say(0, take.expected.size(), 1);
        });
  }

  /** Pa ta ka for practice: the sounds say nothing of the sollus, but much of the order. */
  @Test
  void threeSoundsInTurnArePairedByTime() {
    everyTake(
        0.95,
        (take, random) -> {
          take.inTurn = true;
          take.stretch = random.nextDouble(0.9, 1.1);
          take.say(0, take.expected.size(), 1);
        });
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.92, 0.96, 0.98, 1.02, 1.04, 1.08})
  void theLastRoundMayBeSlowerOrQuicker(double slower) {
    everyTake(
        0.95,
        (take, random) -> {
          int size = take.expected.size();
          int change =
              IntStream.range(0, size)
                  .filter(k -> take.expected.get(k).round() == 3)
                  .findFirst()
                  .orElseThrow();
          take.say(change, size, take.say(0, change, 1), slower);
        });
  }

  @Test
  void aWaitAnywhereDisplacesNothing() {
    everyTake(
        0.95,
        (take, random) -> {
          int at = random.nextInt(3, take.expected.size() - 4);
          double wait = random.nextDouble(0.2, 1);
          take.say(at, take.expected.size(), take.say(0, at, 1) + wait);
        });
  }

  @Test
  void aMatraLeftOutAtEveryTenthIsFoundThere() {
    everyTenth(
        (take, part) -> {
          int at = take.expected.size() * part / 10;
          take.say(at + 1, take.expected.size(), take.say(0, at, 1));
        });
  }

  @Test
  void aMatraPutInAtEveryTenthIsFoundThere() {
    everyTenth(
        (take, part) -> {
          int at = take.expected.size() * part / 10;
          double next = take.say(0, at, 1);
          take.extra(at, next);
          take.say(at, take.expected.size(), next + take.matraSeconds(at));
        });
  }

  @Test
  void tenSollusMayBeMissing() {
    everyTake(
        0.95,
        (take, random) -> {
          int from = random.nextInt(4, take.expected.size() - 15);
          double next = take.say(0, from, 1);
          double gone = (take.seconds(from + 10) - take.seconds(from)) * take.stretch;
          take.say(from + 10, take.expected.size(), next + gone);
        });
  }

  @Test
  void oneMayBreakOffAndBeginARoundAgain() {
    everyTake(
        0.95,
        (take, random) -> {
          int round =
              IntStream.range(0, take.expected.size())
                  .filter(k -> take.expected.get(k).round() == 2)
                  .findFirst()
                  .orElseThrow();
          double broke = take.say(0, round + random.nextInt(6, 20), 1);
          take.say(round, take.expected.size(), broke + 1.5);
        });
  }

  @Test
  void soundsThatAreNoSollusStayUnpaired() {
    everyTake(
        0.95,
        (take, random) -> {
          double end = take.say(0, take.expected.size(), 1);
          for (int i = 0; i < 8; i++) {
            take.noise(random.nextDouble(1, end), random.nextDouble(0.2, 0.6));
          }
        });
  }

  @Test
  void aMissingSolluOfWhichNobodyCanTellIsSaidToBeThat() {
    HeardTake take = new HeardTake(EVEN, 5, 0);
    take.blur = 1e6;
    int size = take.expected.size();
    take.say(101, size, take.say(0, 100, 1));
    PairingSearch.Found found = take.found();
    assertTrue(found.unsure().isPresent(), "" + found.said().size());
    assertTrue(found.unsure().get().missing(), "" + found.unsure());
    assertTrue(found.unsure().get().words().endsWith("I cannot tell which."));
  }

  @Test
  void nothingIsPairedWithNothing() {
    assertEquals(List.of(), new HeardTake(DENSE, 1, 0).paired());
  }

  /**
   * All scores and lags, each with seeds of its own: of all sollus 99 in 100 are paired rightly,
   * and of each take by far the most. Beside a fault a few that sound alike may be on either side.
   */
  private static void everyTake(double least, BiConsumer<HeardTake, SplittableRandom> perform) {
    Shares shares = new Shares();
    for (int score = 0; score < SCORES.size(); score++) {
      for (int lag = 0; lag < LAGS.length; lag++) {
        shares.add(score, lag, least, perform);
      }
    }
    shares.hold(SCORES.size() * LAGS.length);
  }

  /** A fault at nine places of each score, the lags in turn: each lag meets each score. */
  private static void everyTenth(BiConsumer<HeardTake, Integer> perform) {
    Shares shares = new Shares();
    for (int tenth = 1; tenth < 10; tenth++) {
      int part = tenth;
      for (int score = 0; score < SCORES.size(); score++) {
        shares.add(
            score,
            (tenth + score) % LAGS.length,
            0.9,
            (take, random) -> perform.accept(take, part));
      }
    }
    shares.hold(9 * SCORES.size());
  }

  /** How much of each take was paired rightly. */
  private static final class Shares {
    private final List<String> wrong = new ArrayList<>();
    private int made;
    private double sum;

    void add(int score, int lag, double least, BiConsumer<HeardTake, SplittableRandom> perform) {
      long seed = 100L + score * LAGS.length + lag;
      HeardTake take = new HeardTake(SCORES.get(score), seed, LAGS[lag]);
      perform.accept(take, new SplittableRandom(seed));
      double share = take.share(take.paired());
      made++;
      sum += share;
      if (share < least) {
        wrong.add("score " + score + ", lags to " + LAGS[lag] + ": " + share);
      }
    }

    void hold(int takes) {
      assertEquals(takes, made);
      assertTrue(sum / made >= 0.99, sum / made + " in the mean; " + wrong);
      assertEquals(List.of(), wrong);
    }
  }
}
