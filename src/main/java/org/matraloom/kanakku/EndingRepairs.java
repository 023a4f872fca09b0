package org.matraloom.kanakku;

import java.util.List;
import java.util.Map;
import org.matraloom.score.Edit;
import org.matraloom.score.Element;
import org.matraloom.score.Lexicon;
import org.matraloom.time.Ratio;

/** Repairs that give a threefold ending other karvais. */
final class EndingRepairs {

  private static final int CHANGE = 2;
  private static final int LONGEST_KARVAI = 24;

  private EndingRepairs() {}

  static void offer(RepairBench bench, Lexicon lexicon) {
    Map<Ratio, List<String>> byMove = LengthRepairs.phrasesByMove(bench, lexicon);
    byMove.forEach(
        (move, phrases) -> {
          for (String phrase : phrases) {
            List<Element> body = bench.composition().phrases().get(phrase).elements();
            Threefold.ending(body)
                .ifPresent(found -> offer(bench, move, phrase, body.size(), found));
          }
        });
  }

  private static void offer(RepairBench bench, Ratio move, String phrase, int to, Threefold found) {
    List<Element> was = found.withKarvai(found.karvai());
    for (int change = 1; change <= LONGEST_KARVAI; change++) {
      boolean offered = false;
      for (int karvai : new int[] {found.karvai() - change, found.karvai() + change}) {
        Ratio moved = move.times(2L * (karvai - found.karvai()));
        if (karvai >= 0 && bench.landsMovedBy(moved)) {
          List<Element> now = found.withKarvai(karvai);
          Edit edit = new Edit.Splice(phrase, to - found.elements(), to, now);
          offered |=
              bench.offer(
                  Repair.Kind.ENDING,
                  List.of(edit),
                  "say "
                      + ElementWords.of(now)
                      + " at the end of "
                      + phrase
                      + " instead of "
                      + ElementWords.of(was),
                  CHANGE + 2 * change);
        }
      }
      if (offered) {
        return;
      }
    }
  }
}
