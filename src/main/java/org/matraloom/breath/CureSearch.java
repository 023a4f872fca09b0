package org.matraloom.breath;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import org.matraloom.score.Composition;
import org.matraloom.score.Element;
import org.matraloom.score.Moment;
import org.matraloom.score.Performance;
import org.matraloom.score.Sequence;
import org.matraloom.score.Span;
import org.matraloom.time.Ratio;

/**
 * Looks for the smallest written changes of one kind after which a piece can be said.
 *
 * <p>One change is tried at every place; where none is enough, the one that helps most is kept and
 * the search goes on from there. A change at one place helps no more than a breath or two each time
 * its phrase is said, so where far more are missing only those are tried that stand inside a
 * repeat; and the work is bounded by the sollus that are read.
 */
final class CureSearch {

  private static final int MOST_CHANGES = 8;
  private static final long MOST_SOLLUS_READ = 500_000;

  /** A stretch that is parted, and loses what is left out, misses at most so many breaths fewer. */
  private static final long MOST_HELP = 2;

  /**
   * A piece with one more change.
   *
   * @param composition the changed piece
   * @param amount how many matras or sollus the change concerns
   * @param phrase the phrase in which it is made
   * @param place where
   * @param fit how well the place suits
   * @param missing how many breaths there is still no time for
   */
  record Change(
      Composition composition,
      int amount,
      String phrase,
      String place,
      Variant.Fit fit,
      long missing) {}

  private final BreathSettings settings;
  private final IntFunction<SequenceEdit> edit;
  private final int mostAmount;
  private final boolean eachTime;
  private long sollusRead;
  private boolean singles = true;

  private CureSearch(
      BreathSettings settings, IntFunction<SequenceEdit> edit, int mostAmount, boolean eachTime) {
    this.settings = settings;
    this.edit = edit;
    this.mostAmount = mostAmount;
    this.eachTime = eachTime;
  }

  /**
   * The changes in the order in which they are to be made; empty if the search does not succeed.
   *
   * <p>It is run with and without changes inside repeats; what changes the performance least is
   * taken.
   */
  static List<Change> changes(
      Composition composition,
      BreathSettings settings,
      IntFunction<SequenceEdit> edit,
      int mostAmount) {
    return Stream.of(false, true)
        .map(each -> new CureSearch(settings, edit, mostAmount, each).changes(composition))
        .filter(changes -> !changes.isEmpty())
        .min(Comparator.comparing(changes -> change(composition, changes)))
        .orElse(List.of());
  }

  private static Ratio change(Composition before, List<Change> changes) {
    Performance old = Performance.of(before);
    Performance changed = Performance.of(changes.get(changes.size() - 1).composition());
    return changed.beats().minus(old.beats()).plus(Ratio.of(sollus(old) - sollus(changed)));
  }

  private static long sollus(Performance performance) {
    return performance.rounds().stream().mapToLong(Span.Round::sollus).sum();
  }

  private List<Change> changes(Composition composition) {
    List<Change> made = new ArrayList<>();
    Composition current = composition;
    long missing = MissingBreaths.in(Performance.of(composition), settings);
    while (missing > 0 && made.size() < MOST_CHANGES) {
      int changesLeft = MOST_CHANGES - made.size();
      singles = missing <= changesLeft * MOST_HELP * mostSayings(current);
      Optional<Change> next = next(current, missing);
      if (next.isEmpty()) {
        return List.of();
      }
      made.add(next.get());
      current = next.get().composition();
      missing = next.get().missing();
    }
    return missing == 0 ? made : List.of();
  }

  /** How often the phrase that is said most is said. */
  private static long mostSayings(Composition composition) {
    Map<String, Long> times = new HashMap<>();
    Performance performance = Performance.of(composition);
    for (Span.Round round : performance.rounds()) {
      times.merge(round.phrase(), 1L, Long::sum);
    }
    Iterator<Moment> moments = performance.moments();
    while (moments.hasNext()) {
      if (moments.next() instanceof Moment.PhraseStart begins) {
        times.merge(begins.name(), 1L, Long::sum);
      }
    }
    return Collections.max(times.values());
  }

  private Optional<Change> next(Composition composition, long missing) {
    Optional<Change> between =
        next(
            composition,
            missing,
            EnumSet.of(Variant.Fit.BETWEEN_PHRASES, Variant.Fit.BETWEEN_WORDS));
    return between.isPresent()
        ? between
        : next(composition, missing, EnumSet.of(Variant.Fit.INSIDE_WORD));
  }

  private Optional<Change> next(Composition composition, long missing, Set<Variant.Fit> fits) {
    List<Change> helpful = new ArrayList<>();
    for (int amount = 1; amount <= mostAmount; amount++) {
      helpful.addAll(helpful(composition, amount, missing, fits));
      if (helpful.stream().anyMatch(change -> change.missing() == 0)) {
        break;
      }
    }
    Comparator<Change> order =
        Comparator.comparingLong(Change::missing)
            .thenComparingInt(Change::amount)
            .thenComparing(Change::fit);
    return helpful.stream()
        .min(order)
        .flatMap(
            best ->
                cheapest(helpful.stream().filter(each -> order.compare(each, best) == 0).toList()));
  }

  private List<Change> helpful(
      Composition composition, int amount, long missing, Set<Variant.Fit> fits) {
    List<Change> found = new ArrayList<>();
    for (Map.Entry<String, Sequence> phrase : composition.phrases().entrySet()) {
      if (sollusRead >= MOST_SOLLUS_READ || !(singles || repeats(phrase.getValue()))) {
        continue;
      }
      for (Variant variant : edit.apply(amount).variants(phrase.getValue())) {
        if (fits.contains(variant.fit())
            && (variant.eachTime() ? eachTime : singles)
            && sollusRead < MOST_SOLLUS_READ) {
          Composition changed = with(composition, phrase.getKey(), variant.sequence());
          Performance performance = Performance.of(changed);
          long left = MissingBreaths.in(performance, settings);
          sollusRead += sollus(performance) + 1;
          if (left < missing) {
            found.add(
                new Change(changed, amount, phrase.getKey(), variant.place(), variant.fit(), left));
          }
        }
      }
    }
    return found;
  }

  /** Whether something is said in a bracket, as a repeat is. */
  private static boolean repeats(Sequence sequence) {
    for (Element element : sequence.elements()) {
      if (element instanceof Element.Bracket) {
        return true;
      }
    }
    return false;
  }

  private Optional<Change> cheapest(List<Change> changes) {
    return changes.stream()
        .min(
            Comparator.comparing(
                change ->
                    BreathPlanner.plan(Performance.of(change.composition()), settings).cost()));
  }

  private static Composition with(Composition composition, String phrase, Sequence sequence) {
    Map<String, Sequence> phrases = new LinkedHashMap<>(composition.phrases());
    phrases.put(phrase, sequence);
    return composition.saying(phrases);
  }
}
