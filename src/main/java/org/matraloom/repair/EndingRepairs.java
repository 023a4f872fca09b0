package org.matraloom.repair;

import java.util.List;
import java.util.Map;
import org.matraloom.form.ElementWords;
import org.matraloom.form.Ending;
import org.matraloom.form.Endings;
import org.matraloom.form.Threefold;
import org.matraloom.score.Edit;
import org.matraloom.score.Element;
import org.matraloom.score.Lexicon;
import org.matraloom.time.Ratio;

/** Repairs that give a threefold ending other karvais, or other statements. */
final class EndingRepairs {

  private static final int OTHER_KARVAI = 2;
  private static final int OTHER_STATEMENT = 4;
  private static final int MOST_CHANGE = 24;
  private static final int SHORTEST_STATEMENT = 3;
  private static final int MOST_STATEMENTS = 3;

  private final RepairBench bench;
  private final Lexicon lexicon;
  private final Ratio move;
  private final String phrase;
  private final Threefold ending;

  private EndingRepairs(
      RepairBench bench, Lexicon lexicon, Ratio move, String phrase, Threefold ending) {
    this.bench = bench;
    this.lexicon = lexicon;
    this.move = move;
    this.phrase = phrase;
    this.ending = ending;
  }

  static void offer(RepairBench bench, Lexicon lexicon) {
    Map<Ratio, List<String>> byMove = LengthRepairs.phrasesByMove(bench, lexicon);
    byMove.forEach(
        (move, phrases) -> {
          for (String phrase : phrases) {
            List<Element> body = bench.composition().phrases().get(phrase).elements();
            Threefold.ending(body)
                .map(found -> new EndingRepairs(bench, lexicon, move, phrase, found))
                .ifPresent(EndingRepairs::offer);
          }
        });
  }

  private void offer() {
    for (int change = 1; change <= MOST_CHANGE; change++) {
      boolean less = offerKarvai(ending.karvai() - change, change);
      boolean more = offerKarvai(ending.karvai() + change, change);
      if (less || more) {
        break;
      }
    }
    for (int change = 1; change <= MOST_CHANGE && ending.isPlainGroup(); change++) {
      boolean less = offerStatements(-change);
      boolean more = offerStatements(change);
      if (less || more) {
        break;
      }
    }
  }

  private boolean offerKarvai(int karvai, int change) {
    return karvai >= 0
        && bench.landsMovedBy(move.times(2L * (karvai - ending.karvai())))
        && offer(ending.withKarvai(karvai), OTHER_KARVAI + 2 * change);
  }

  private boolean offerStatements(int change) {
    int matras = ending.groupMatras() + change;
    if (matras < 0 || !bench.landsMovedBy(move.times(change))) {
      return false;
    }
    return Endings.equal(matras).stream()
            .filter(other -> other.longestStatement() != ending.groupSize())
            .filter(other -> other.longestStatement() >= SHORTEST_STATEMENT)
            .filter(other -> other.longestStatement() <= Lexicon.LARGEST_GROUP)
            .limit(MOST_STATEMENTS)
            .filter(other -> offer(other, OTHER_STATEMENT + Math.abs(change)))
            .count()
        > 0;
  }

  private boolean offer(Ending other, int cost) {
    int size = other.longestStatement();
    Element.Group statement = bench.composition().wording().group(size, 1, 0, lexicon);
    return offer(ending.withStatement(statement).withKarvai(other.longestKarvai()), cost);
  }

  private boolean offer(List<Element> now, int cost) {
    int to = ending.from() + ending.elements();
    return bench.offer(
        Repair.Kind.ENDING,
        List.of(new Edit.Splice(phrase, ending.from(), to, now)),
        "say "
            + ElementWords.of(now)
            + " at the end of "
            + phrase
            + " instead of "
            + ElementWords.of(ending.withKarvai(ending.karvai())),
        cost);
  }
}
