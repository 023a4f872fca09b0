package org.matraloom.form;

import java.util.ArrayList;
import java.util.List;

/**
 * One turn of a koraippu: equal groups, then the gap that is left of the turn.
 *
 * @param matras the length of the turn
 * @param group the length of a group, at least 1
 */
public record KoraippuTurn(int matras, int group) {

  /**
   * Turns that are halved again and again, as long as a group still goes in and the turn stays
   * whole.
   *
   * @param matras the length of the first turn
   * @param group the length of a group, at least 1
   * @return the turns, the longest first; none if no group goes into the first turn
   * @throws IllegalArgumentException if a turn or a group has no matra
   */
  public static List<KoraippuTurn> halving(int matras, int group) {
    if (matras < 1 || group < 1) {
      throw new IllegalArgumentException(
          "a turn and a group have at least 1 matra, given " + matras + " and " + group);
    }
    List<KoraippuTurn> turns = new ArrayList<>();
    for (int turn = matras; turn >= group; turn /= 2) {
      turns.add(new KoraippuTurn(turn, group));
      if (turn % 2 != 0) {
        break;
      }
    }
    return List.copyOf(turns);
  }

  /**
   * How many groups go in.
   *
   * @return 0 or more
   */
  public int groups() {
    return matras / group;
  }

  /**
   * The gap that is left.
   *
   * @return matras, less than a group
   */
  public int gapMatras() {
    return matras % group;
  }
}
