package org.matraloom.breath;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.matraloom.score.Composition;
import org.matraloom.score.Edit;
import org.matraloom.score.Element;
import org.matraloom.score.Performance;
import org.matraloom.score.Sequence;
import org.matraloom.time.Ratio;

/**
 * A plan written into its score as breath marks, so that it is kept, and checked again at every
 * tempo.
 *
 * <p>A mark speaks wherever its phrase is said. So it may ask for a breath where the plan has none;
 * the marks that do so least are taken.
 *
 * @param edits the marks, as changes of the score in order
 * @param asked where the marked score breathes at the same tempo
 * @param added the breaths of it that the plan did not have
 */
public record KeptPlan(List<Edit> edits, BreathPlan asked, List<Breath> added) {

  /** A mark that could be written, and the sollus after which it asks for a breath. */
  private record Wish(Edit edit, Composition marked, Set<Ratio> asks, boolean atEnd) {}

  /** Copies the lists. */
  public KeptPlan {
    edits = List.copyOf(edits);
    added = List.copyOf(added);
  }

  /**
   * Writes a plan as marks.
   *
   * @param plan a plan
   * @return the marks, and the plan that follows from them
   */
  public static KeptPlan of(BreathPlan plan) {
    Set<Ratio> planned = plan.breaths().stream().map(Breath::afterBeat).collect(Collectors.toSet());
    Composition current = plan.performance().composition();
    List<Edit> edits = new ArrayList<>();
    Set<Ratio> open = new HashSet<>(planned);
    open.removeAll(asked(current));
    while (!open.isEmpty()) {
      Optional<Wish> best = best(current, planned, open);
      if (best.isEmpty()) {
        break;
      }
      edits.add(best.get().edit());
      current = best.get().marked();
      open.removeAll(best.get().asks());
    }
    BreathPlan marked = BreathPlanner.plan(Performance.of(current), plan.settings());
    List<Breath> added =
        marked.breaths().stream().filter(breath -> !planned.contains(breath.afterBeat())).toList();
    return new KeptPlan(edits, marked, added);
  }

  /** The mark that asks for no other breaths, then for most of those that are open. */
  private static Optional<Wish> best(Composition current, Set<Ratio> planned, Set<Ratio> open) {
    Set<Ratio> before = asked(current);
    List<Wish> wishes = new ArrayList<>();
    for (Map.Entry<String, Sequence> phrase : current.phrases().entrySet()) {
      List<Element> old = phrase.getValue().elements();
      for (Variant variant : new WishAdded().variants(phrase.getValue())) {
        Edit edit = change(phrase.getKey(), old, variant.sequence().elements());
        Composition marked = edit.appliedTo(current);
        Set<Ratio> asks = asked(marked);
        asks.removeAll(before);
        if (asks.stream().anyMatch(open::contains)) {
          boolean atEnd = variant.fit() == Variant.Fit.BETWEEN_PHRASES;
          wishes.add(new Wish(edit, marked, asks, atEnd));
        }
      }
    }
    return wishes.stream()
        .min(
            Comparator.comparingLong((Wish wish) -> others(wish, planned))
                .thenComparingLong(wish -> -wish.asks().stream().filter(open::contains).count())
                .thenComparing(wish -> !wish.atEnd()));
  }

  private static long others(Wish wish, Set<Ratio> planned) {
    return wish.asks().stream().filter(beat -> !planned.contains(beat)).count();
  }

  private static Set<Ratio> asked(Composition composition) {
    return VoiceReader.read(Performance.of(composition)).stream()
        .flatMap(voice -> voice.stops().stream())
        .filter(VoiceStop::isAsked)
        .map(stop -> stop.last().beat())
        .collect(Collectors.toCollection(HashSet::new));
  }

  /** The difference of two phrases that differ in one place. */
  private static Edit change(String phrase, List<Element> old, List<Element> changed) {
    int from = 0;
    while (from < old.size() && old.get(from).equals(changed.get(from))) {
      from++;
    }
    int left = 0;
    while (left < old.size() - from
        && old.get(old.size() - 1 - left).equals(changed.get(changed.size() - 1 - left))) {
      left++;
    }
    return new Edit.Splice(
        phrase, from, old.size() - left, changed.subList(from, changed.size() - left));
  }
}
