package org.matraloom.repair;

import java.util.List;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Tala;

/**
 * Finds the ways to make a written piece land.
 *
 * <p>Every repair is tried out: the changed piece is laid out in time, and kept only if it then
 * ends on its eduppu. What changes least is offered first: first the start, then waits, karvais and
 * matras by their size, then the nadai of the last round, then another tala.
 */
public final class Repairs {

  private Repairs() {}

  /**
   * All repairs of a piece.
   *
   * @param composition the piece
   * @param lexicon gives the words for matras that are added
   * @param talas the talas in which it may be set
   * @return the repairs, the smallest first; none if it lands already
   */
  public static List<Repair> of(Composition composition, Lexicon lexicon, List<Tala> talas) {
    RepairBench bench = new RepairBench(composition);
    if (bench.landing().lands()) {
      return List.of();
    }
    PlaceRepairs.offer(bench, talas);
    PlanRepairs.offer(bench);
    LengthRepairs.offer(bench, lexicon);
    EndingRepairs.offer(bench, lexicon);
    return bench.ranked();
  }
}
