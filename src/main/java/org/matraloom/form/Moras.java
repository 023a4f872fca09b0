package org.matraloom.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.score.Composition;
import org.matraloom.score.Element;

/**
 * Finds threefold statements among the lines of a phrase: the same lines three times with equal
 * karvais, three groups or three moras that grow or shrink by equal steps, a phrase or a repeat
 * that is one. In the middle of a phrase there must be a karvai, or every line said three times
 * would be one.
 */
final class Moras {

  private static final int TIMES = 3;
  private static final int MOST_LINES_OF_A_STATEMENT = 60;

  private final Composition composition;

  Moras(Composition composition) {
    this.composition = composition;
  }

  /** The longest one that begins with a line. */
  Optional<Mora> at(List<List<Element>> lines, int from) {
    if (isGraded(lines, from, TIMES)) {
      return Optional.of(new Mora(TIMES * TIMES, true));
    }
    int most = Math.min(MOST_LINES_OF_A_STATEMENT, (lines.size() - from) / TIMES);
    for (int size = most; size >= 1; size--) {
      if (isEqual(lines, from, size)) {
        List<List<Element>> statement = new ArrayList<>(lines.subList(from, from + size));
        statement.set(size - 1, Statement.of(statement.subList(size - 1, size)).said());
        return Optional.of(new Mora(TIMES * size, isMora(statement)));
      }
    }
    if (isGraded(lines, from, 1)) {
      return Optional.of(new Mora(TIMES, false));
    }
    return inOneLine(lines.get(from), from + 1 == lines.size());
  }

  /** Whether lines are a threefold statement and nothing else. */
  private boolean isMora(List<List<Element>> lines) {
    return !lines.isEmpty()
        && at(lines, 0).filter(mora -> mora.lines() == lines.size()).isPresent();
  }

  private Optional<Mora> inOneLine(List<Element> line, boolean last) {
    List<Element> said = Statement.of(List.of(line)).said();
    if (said.size() != 1) {
      return Optional.empty();
    }
    if (said.get(0) instanceof Element.Repeat repeat && repeat.times() == TIMES) {
      List<List<Element>> lines = PhraseLines.of(repeat.body().elements(), composition);
      boolean karvai = Statement.of(lines).gapMatras() > 0;
      return karvai || last
          ? Optional.of(new Mora(1, isMora(withoutGap(lines))))
          : Optional.empty();
    } else if (said.get(0) instanceof Element.Reference reference) {
      List<List<Element>> lines = PhraseLines.named(composition, reference.name());
      return isMora(lines)
          ? at(lines, 0)
              .filter(mora -> last || hasKarvai(lines, mora))
              .map(mora -> new Mora(1, mora.ofMoras()))
          : Optional.empty();
    }
    return Optional.empty();
  }

  private static List<List<Element>> withoutGap(List<List<Element>> lines) {
    List<List<Element>> bare = new ArrayList<>(lines);
    int last = bare.size() - 1;
    bare.set(last, Statement.of(bare.subList(last, last + 1)).said());
    return bare;
  }

  private static boolean hasKarvai(List<List<Element>> lines, Mora mora) {
    int size = Math.max(1, mora.lines() / TIMES);
    return mora.lines() < TIMES || Statement.of(lines.subList(0, size)).gapMatras() > 0;
  }

  /** The same lines three times, no oftener, with equal karvais after the first two. */
  private static boolean isEqual(List<List<Element>> lines, int from, int size) {
    Statement first = Statement.of(lines.subList(from, from + size));
    for (int time = 1; time < TIMES; time++) {
      int at = from + time * size;
      Statement other = Statement.of(lines.subList(at, at + size));
      boolean sameGap = time == TIMES - 1 || other.gapMatras() == first.gapMatras();
      if (!sameGap || !other.said().equals(first.said())) {
        return false;
      }
    }
    int end = from + TIMES * size;
    boolean before =
        from >= size && Statement.of(lines.subList(from - size, from)).said().equals(first.said());
    boolean after =
        end + size <= lines.size()
            && Statement.of(lines.subList(end, end + size)).said().equals(first.said());
    return !before && !after && (first.gapMatras() > 0 || end == lines.size());
  }

  /** Three groups, or three moras of three groups each, that grow or shrink by equal steps. */
  private static boolean isGraded(List<List<Element>> lines, int from, int linesEach) {
    if (from + TIMES * linesEach > lines.size()) {
      return false;
    }
    List<Integer> sizes = new ArrayList<>();
    List<Integer> gaps = new ArrayList<>();
    for (int time = 0; time < TIMES; time++) {
      int at = from + time * linesEach;
      Statement last = Statement.of(lines.subList(at + linesEach - 1, at + linesEach));
      if (last.groupSize() == 0 || linesEach > 1 && !isEqualGroups(lines, at)) {
        return false;
      }
      sizes.add(last.groupSize());
      gaps.add(last.gapMatras());
    }
    int step = sizes.get(1) - sizes.get(0);
    return step != 0
        && sizes.get(2) - sizes.get(1) == step
        && gaps.get(0) > 0
        && gaps.get(0).equals(gaps.get(1));
  }

  private static boolean isEqualGroups(List<List<Element>> lines, int at) {
    Statement first = Statement.of(lines.subList(at, at + 1));
    Statement second = Statement.of(lines.subList(at + 1, at + 2));
    Statement third = Statement.of(lines.subList(at + 2, at + TIMES));
    return first.said().equals(second.said())
        && second.said().equals(third.said())
        && first.gapMatras() == second.gapMatras();
  }
}
