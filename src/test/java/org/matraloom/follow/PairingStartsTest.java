package org.matraloom.follow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.matraloom.onset.Onset;

/** What else a pairing may be: counted from either end, and shifted from some sound on. */
class PairingStartsTest {

  private static final String TAKADIMI =
      "tala adi\ntempo 72\nSong = (takadimi) x24\nperform\n  Song nadai 4\n";

  private static final String MIXED =
      "tala adi\ntempo 72\nSong = (takadimi takajunu) x12\nperform\n  Song nadai 4\n";

  private static final int SOLLUS = 96;

  private final PairingStarts starts = starts();

  private static PairingStarts starts() {
    List<ExpectedSollu> asked = SaidAs.expected(TAKADIMI);
    assertEquals(SOLLUS, asked.size());
    List<Onset> onsets =
        IntStream.range(0, SOLLUS + 10).mapToObj(j -> new Onset(1 + 0.2 * j, 0.9)).toList();
    return new PairingStarts(
        HabitLayouts.of(asked),
        Intervals.matras(asked),
        ExpectedSollu.entries(asked),
        onsets,
        PairingModel.plain(SOLLUS));
  }

  private static List<Alignment.Said> pairs(int sollu, int onset, int count) {
    return IntStream.range(0, count)
        .mapToObj(i -> new Alignment.Said(sollu + i, onset + i))
        .toList();
  }

  private static List<Alignment.Said> joined(List<Alignment.Said> a, List<Alignment.Said> b) {
    return IntStream.range(0, a.size() + b.size())
        .mapToObj(i -> i < a.size() ? a.get(i) : b.get(i - a.size()))
        .toList();
  }

  /** Each sollu and each sound once, in order. */
  private static void assertInOrder(List<Alignment.Said> said) {
    for (int i = 0; i < said.size(); i++) {
      assertTrue(said.get(i).sollu() >= 0 && said.get(i).sollu() < SOLLUS, "" + said.get(i));
      if (i > 0) {
        assertTrue(said.get(i).sollu() > said.get(i - 1).sollu(), "" + said);
        assertTrue(said.get(i).onset() > said.get(i - 1).onset(), "" + said);
      }
    }
  }

  /** Four sollus said twice and four others left out: counted, nothing is. */
  @Test
  void thePassageSaidTwiceIsCountedFromBothEnds() {
    List<Alignment.Said> said =
        joined(joined(pairs(0, 0, 40), pairs(36, 40, 20)), pairs(60, 60, 36));
    assertEquals(List.of(pairs(0, 0, SOLLUS)), starts.straightened(said));
  }

  @Test
  void whereSomeAreMissingBothEndsAreTried() {
    List<Alignment.Said> said = joined(pairs(0, 0, 40), pairs(43, 40, 50));
    assertEquals(List.of(pairs(0, 0, 90), pairs(SOLLUS - 90, 0, 90)), starts.straightened(said));
    assertEquals(List.of(pairs(6, 0, 90)), starts.straightened(pairs(0, 0, 90)), "itself is none");
    assertEquals(List.of(pairs(0, 0, 90)), starts.straightened(pairs(6, 0, 90)));
  }

  @Test
  void soundsLeftOverOnTheWayStayLeftOver() {
    List<Alignment.Said> said = joined(pairs(0, 3, 40), pairs(39, 45, 50));
    for (List<Alignment.Said> straight : starts.straightened(said)) {
      assertInOrder(straight);
      assertEquals(
          said.stream().map(Alignment.Said::onset).toList(),
          straight.stream().map(Alignment.Said::onset).toList());
    }
    assertEquals(2, starts.straightened(said).size());
  }

  @Test
  void moreSoundsThanSollusAreNotCounted() {
    List<Alignment.Said> said = joined(pairs(0, 0, 50), pairs(46, 50, 50));
    assertEquals(List.of(), starts.straightened(said));
    assertEquals(List.of(), starts.straightened(pairs(0, 0, SOLLUS)), "there is no other way");
  }

  /** How many of the pairs are as they were said. */
  private static ToDoubleFunction<List<Alignment.Said>> rightOf(List<Alignment.Said> truth) {
    return said -> said.stream().filter(new HashSet<>(truth)::contains).count();
  }

  /** A slip after some twelfth that was overheard: from there on all is beside the truth. */
  @Test
  void whatIsShiftedFromSomeTwelfthOnIsTried() {
    int tried = 0;
    for (int part = 1; part < 12; part++) {
      for (int by : new int[] {-2, -1, 1, 2}) {
        int from = part * 80 / 12;
        List<Alignment.Said> said = pairs(4, 0, 80);
        List<Alignment.Said> truth =
            joined(pairs(4, 0, from), pairs(4 + from + by, from, 80 - from));
        List<List<Alignment.Said>> others = starts.shiftedWhole(said, rightOf(truth));
        double best = others.stream().mapToDouble(rightOf(truth)).max().orElse(0);
        assertTrue(best >= 80 - 2, best + " of 80 for " + by + " from " + from);
        others.forEach(PairingStartsTest::assertInOrder);
        tried++;
      }
    }
    assertEquals(44, tried);
  }

  /** Where a matra was left out and one put in later, both ends are right and the middle is not. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void aMatraLeftOutAndOnePutInLaterAreBothFound(long number) {
    for (String score : List.of(TAKADIMI, MIXED)) {
      HeardTake take = new HeardTake(score, number, 0.03);
      take.stretch = 0.85 + 0.05 * number;
      int out = 20 + 4 * (int) number;
      int in = out + 30;
      double next = take.say(out + 1, in, take.say(0, out, 1));
      take.extra(in, next);
      take.say(in, SOLLUS, next + take.matraSeconds(in));
      assertRight(take, 0.9, score + " " + number);
    }
  }

  /** Said without a slip by one whose sounds vary much: nothing is said twice or left out. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void wordsThatRepeatAreCounted(long number) {
    for (String score : List.of(TAKADIMI, MIXED)) {
      HeardTake take = new HeardTake(score, number, 0.05);
      take.blur = 1.2;
      take.jitterSeconds = 0.018;
      take.stretch = 0.76 + 0.05 * number;
      double end = take.say(0, SOLLUS, 1);
      for (int i = 0; i < 6; i++) {
        take.noise(1.1 + (end - 1) * (i + 0.37) / 6, 0.3);
      }
      assertRight(take, 0.97, score + " " + number);
    }
  }

  private static void assertRight(HeardTake take, double least, String what) {
    List<Alignment.Said> paired = take.paired();
    assertTrue(take.share(paired) >= least, take.share(paired) + " of " + what);
  }
}
