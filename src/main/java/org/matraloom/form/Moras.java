package org.matraloom.form;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.matraloom.score.Spoken;
import org.matraloom.time.Ratio;

/**
 * Finds what a phrase says several times in succession, however it is written.
 *
 * <p>A statement begins where something begins or after a gap, has at least two sollus or is a
 * group or a phrase of its own, and at most {@value #LONGEST}.
 */
final class Moras {

  private static final int LONGEST = 200;
  private static final int TIMES = 3;
  private static final int MOST_SOLLUS = 20_000;
  private static final long BASE = 1_000_003;

  /**
   * Equal statements with equal gaps.
   *
   * @param from the first sollu
   * @param sollus how many a statement has
   * @param times how often it is said, at least 2
   */
  record Run(int from, int sollus, int times) {
    int end() {
      return from + sollus * times;
    }

    private boolean explains(Run other) {
      return from <= other.from
          && end() >= other.end()
          && other.sollus % sollus == 0
          && (other.from - from) % sollus == 0;
    }
  }

  private final SaidPhrase phrase;
  private final List<SaidPhrase.Said> said;
  private final List<Integer> begins = new ArrayList<>();
  private final int[] bare;
  private final int[] gaps;
  private final long[] hash;
  private final long[] power;
  private final List<Run> runs = new ArrayList<>();
  private final List<Mora> moras = new ArrayList<>();

  private Moras(SaidPhrase phrase) {
    this.phrase = phrase;
    this.said = phrase.said();
    int size = said.size();
    this.bare = new int[size];
    this.gaps = new int[size];
    this.hash = new long[size + 1];
    this.power = new long[size + 1];
    Map<Object, Integer> numbers = new HashMap<>();
    power[0] = 1;
    for (int at = 0; at < size; at++) {
      SaidPhrase.Said one = said.get(at);
      bare[at] =
          numbers.computeIfAbsent(List.of(one.sound(), one.own()), none -> numbers.size() + 1);
      gaps[at] =
          numbers.computeIfAbsent(List.of(one.ring(), one.silence()), none -> numbers.size() + 1);
      hash[at + 1] = (hash[at] * BASE + bare[at]) * BASE + gaps[at];
      power[at + 1] = power[at] * BASE * BASE;
      if (at == 0 || opens(at) || said.get(at - 1).gap().signum() > 0) {
        begins.add(at);
      }
    }
    begins.add(size);
  }

  static Moras in(SaidPhrase phrase) {
    Moras found = new Moras(phrase);
    if (phrase.size() <= MOST_SOLLUS) {
      found.findRuns();
      found.findGraded(found.begins);
      found.findGraded(
          found.begins.stream().filter(at -> at == phrase.size() || found.opens(at)).toList());
      found.findGradedMoras();
    }
    return found;
  }

  /** Everything said twice or oftener in succession, short statements first. */
  List<Run> runs() {
    return runs;
  }

  /** The moras, in the order of their beginnings. */
  List<Mora> moras() {
    return moras.stream()
        .sorted((a, b) -> a.start() != b.start() ? a.start() - b.start() : b.end() - a.end())
        .toList();
  }

  private void findRuns() {
    List<Run> all = new ArrayList<>();
    for (int first = 0; first + 1 < begins.size(); first++) {
      int from = begins.get(first);
      for (int next = first + 1; next < begins.size(); next++) {
        int sollus = begins.get(next) - from;
        if (sollus > LONGEST || from + 2 * sollus > said.size()) {
          break;
        }
        int times = times(from, sollus);
        if (times > 1 && isStatement(from, sollus)) {
          all.add(new Run(from, sollus, times));
        }
      }
    }
    all.stream()
        .sorted((a, b) -> a.sollus != b.sollus ? a.sollus - b.sollus : a.from - b.from)
        .filter(run -> runs.stream().noneMatch(known -> known.explains(run) || turns(known, run)))
        .forEach(runs::add);
    runs.stream().filter(run -> run.times % TIMES == 0).map(this::mora).forEach(moras::add);
  }

  /** Whether one is another that begins with an opening, told from a gap inside its words on. */
  private boolean turns(Run known, Run run) {
    boolean within = known.sollus == run.sollus && known.from < run.from && run.from < known.end();
    return within && opens(known.from) && !opens(run.from);
  }

  private boolean isStatement(int from, int sollus) {
    return sollus > 1 || opens(from);
  }

  private int times(int from, int sollus) {
    int times = 1;
    while (from + (times + 1) * sollus <= said.size()
        && areEqual(from, from + times * sollus, sollus)
        && isWhole(from + times * sollus, from + (times + 1) * sollus)
        && (times == 1 || gaps[from + times * sollus - 1] == gaps[from + sollus - 1])) {
      times++;
    }
    return times;
  }

  /** A group or a phrase that begins like a statement and goes on is none. */
  private boolean isWhole(int from, int end) {
    return !opens(from) || Collections.binarySearch(begins, end) >= 0;
  }

  private boolean areEqual(int one, int other, int sollus) {
    return bare[one + sollus - 1] == bare[other + sollus - 1]
        && sum(one, sollus - 1) == sum(other, sollus - 1);
  }

  private long sum(int from, int sollus) {
    return hash[from + sollus] - hash[from] * power[sollus];
  }

  private Mora mora(Run run) {
    List<Integer> starts =
        IntStream.range(0, run.times).mapToObj(time -> run.from + time * run.sollus).toList();
    return mora(starts, run.end());
  }

  private Mora mora(List<Integer> starts, int end) {
    List<Ratio> lengths = new ArrayList<>();
    for (int time = 0; time < starts.size(); time++) {
      int last = (time + 1 < starts.size() ? starts.get(time + 1) : end) - 1;
      SaidPhrase.Said closing = said.get(last);
      Ratio to = closing.matra().plus(closing.own());
      lengths.add(to.minus(said.get(starts.get(time)).matra()));
    }
    return new Mora(starts, end, lengths, said.get(starts.get(1) - 1).gap());
  }

  /** Three that grow or shrink by equal steps: groups, or what ends the phrase or one in it. */
  private void findGraded(List<Integer> places) {
    for (int first = 0; first + TIMES < places.size(); first++) {
      List<Integer> starts = places.subList(first, first + TIMES);
      int end = places.get(first + TIMES);
      int gap = gaps[starts.get(1) - 1];
      boolean gapped =
          said.get(starts.get(1) - 1).gap().signum() > 0
              && gap == gaps[starts.get(2) - 1]
              && gap != gaps[end - 1];
      boolean groups = isGroup(starts.get(1)) && isGroup(starts.get(2));
      boolean ends = groups || end == said.size() || hasName(end);
      boolean statements = IntStream.range(0, TIMES).allMatch(i -> sollus(starts, end, i) > 1);
      if (gapped && ends && statements && areOneKind(starts, end)) {
        addGraded(starts, end);
      }
    }
  }

  /** Three moras side by side that grow or shrink by equal steps, with equal gaps between. */
  private void findGradedMoras() {
    Map<Integer, Mora> byStart = new HashMap<>();
    moras.stream()
        .filter(mora -> mora.starts().size() == TIMES && mora.gap().signum() > 0)
        .forEach(mora -> byStart.putIfAbsent(mora.start(), mora));
    for (Mora first : List.copyOf(byStart.values())) {
      Mora second = byStart.get(first.end());
      Mora third = second == null ? null : byStart.get(second.end());
      if (third != null
          && said.get(first.end() - 1).gap().signum() > 0
          && gaps[first.end() - 1] == gaps[second.end() - 1]) {
        addGraded(List.of(first.start(), second.start(), third.start()), third.end());
      }
    }
  }

  private void addGraded(List<Integer> starts, int end) {
    Mora graded = mora(starts, end);
    Ratio step = graded.statements().get(1).minus(graded.statements().get(0));
    if (step.signum() != 0
        && moras.stream().noneMatch(graded::equals)
        && graded.statements().get(2).minus(graded.statements().get(1)).equals(step)) {
      moras.add(graded);
    }
  }

  /** Whether three statements are all phrases or groups, or all words of one phrase. */
  private boolean areOneKind(List<Integer> starts, int end) {
    long opened = starts.stream().filter(this::opens).count();
    boolean oneSaying =
        phrase.offset(end - 1) - phrase.offset(starts.get(0)) == end - 1 - starts.get(0)
            && said.get(end - 1).phrase().equals(said.get(starts.get(0)).phrase());
    boolean words = !opens(starts.get(1)) && !opens(starts.get(2)) && oneSaying;
    return opened == TIMES || words;
  }

  private boolean hasName(int sollu) {
    return phrase.hasNameBefore(sollu, Integer.MAX_VALUE - 1);
  }

  private boolean isGroup(int sollu) {
    return opens(sollu) && !hasName(sollu);
  }

  private boolean opens(int sollu) {
    return said.get(sollu).opens() != Spoken.Opens.NOTHING;
  }

  private static int sollus(List<Integer> starts, int end, int statement) {
    int to = statement + 1 < starts.size() ? starts.get(statement + 1) : end;
    return to - starts.get(statement);
  }
}
