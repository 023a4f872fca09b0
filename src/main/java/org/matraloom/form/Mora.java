package org.matraloom.form;

import java.util.List;
import java.util.stream.Collectors;
import org.matraloom.time.Ratio;

/**
 * Statements said one after another with equal gaps: three (or six, nine ...) equal ones, or three
 * that grow or shrink by equal steps.
 *
 * <p>Terms statement and gap: Reina, Applying Karnatic Rhythmical Techniques, Routledge 2016.
 *
 * @param starts the sollus with which the statements begin, counted from 0 in the phrase
 * @param end the sollu after the last one
 * @param statements how long the statements are, without their gaps, in matras of the round
 * @param gap how long a gap is, in matras of the round, 0 where none is
 */
public record Mora(List<Integer> starts, int end, List<Ratio> statements, Ratio gap) {

  /** Copies the lists. */
  public Mora {
    starts = List.copyOf(starts);
    statements = List.copyOf(statements);
  }

  /** Written out, for the sake of the start: see {@link Ratio}. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Mora mora
        && end == mora.end
        && starts.equals(mora.starts)
        && statements.equals(mora.statements)
        && gap.equals(mora.gap);
  }

  @Override
  public int hashCode() {
    return 31 * starts.hashCode() + end;
  }

  /**
   * Where it begins.
   *
   * @return the first sollu, counted from 0
   */
  public int start() {
    return starts.get(0);
  }

  /**
   * Whether the statements are equal.
   *
   * @return false if they grow or shrink
   */
  public boolean isEqual() {
    return statements.stream().distinct().count() == 1;
  }

  /**
   * The statements as composers write them.
   *
   * @return their matras, and the gap between them, if there is one, in brackets: "8(3)8(3)8"
   */
  public String written() {
    String between = gap.signum() == 0 ? " " : "(" + gap.toMixed() + ")";
    return statements.stream().map(Ratio::toMixed).collect(Collectors.joining(between));
  }

  /**
   * Those that hold no other, in order.
   *
   * @param moras moras of one phrase
   * @return those whose statements are no moras themselves
   */
  public static List<Mora> inner(List<Mora> moras) {
    return moras.stream()
        .filter(mora -> moras.stream().noneMatch(other -> other != mora && mora.holds(other)))
        .toList();
  }

  /** The sollus after which there is a gap. */
  List<Integer> gaps() {
    return starts.subList(1, starts.size()).stream().map(start -> start - 1).toList();
  }

  /** Whether another mora lies inside one of its statements, or fills it. */
  boolean holds(Mora other) {
    for (int time = 0; time < starts.size(); time++) {
      int to = time + 1 < starts.size() ? starts.get(time + 1) : end;
      if (other.start() >= starts.get(time) && other.end <= to) {
        return true;
      }
    }
    return false;
  }

  /** Whether it lies in no statement of another. */
  boolean isOutermostOf(List<Mora> moras) {
    return moras.stream().noneMatch(other -> other != this && other.holds(this));
  }
}
