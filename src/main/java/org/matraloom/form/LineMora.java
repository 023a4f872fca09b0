package org.matraloom.form;

import java.util.Collections;
import java.util.List;
import org.matraloom.score.Composition;
import org.matraloom.score.Element;

/**
 * A mora that whole lines of a phrase make up.
 *
 * <p>In the middle of a phrase three statements without a gap are lines said three times, and three
 * that grow are lines of the purvanga, unless they are kanakku groups or moras.
 *
 * @param lines how many lines it takes up; 0 for none
 * @param name what it is called
 * @param written its statements
 */
record LineMora(int lines, String name, String written) {

  private static final LineMora NONE = new LineMora(0, "", "");
  private static final int TIMES = 3;

  /**
   * The longest one that begins with a line.
   *
   * @param lines the lines of the phrase
   * @param written the same as elements
   * @param from which line
   * @param joints those of the phrase
   * @param composition the piece
   * @return it, or one of no lines
   */
  static LineMora at(
      List<Structure.Line> lines,
      List<List<Element>> written,
      int from,
      Joints joints,
      Composition composition) {
    int start = from == 0 ? 0 : lines.get(from - 1).end();
    LineMora longest = NONE;
    for (Mora mora : joints.moras()) {
      int to = endLine(lines, from, mora);
      if (mora.start() == start && lines.get(from).end() > start && to - from > longest.lines) {
        boolean ofMoras = isOfMoras(mora, joints);
        boolean groups =
            written.subList(from, to).stream()
                .allMatch(line -> Statement.of(List.of(line)).groupSize() > 0);
        boolean certain = mora.isEqual() || ofMoras || groups;
        if (isForm(mora, certain, mora.end() == joints.sollus())) {
          longest = new LineMora(to - from, ofMoras ? "mora of moras" : "mora", mora.written());
        }
      }
    }
    boolean last = from + 1 == lines.size();
    return longest == NONE && last && times(written.get(from), composition) == TIMES
        ? threeTimes(lines.get(from))
        : longest;
  }

  /** Words said three times at once, which only the brackets of their repeat part. */
  private static LineMora threeTimes(Structure.Line line) {
    String each = line.matras().dividedBy(TIMES).toMixed();
    return new LineMora(1, "mora", String.join(" ", Collections.nCopies(TIMES, each)));
  }

  private static int times(List<Element> line, Composition composition) {
    if (line.size() == 1 && line.get(0) instanceof Element.Repeat repeat) {
      return repeat.times();
    } else if (line.size() == 1 && line.get(0) instanceof Element.Reference reference) {
      List<List<Element>> named = PhraseLines.named(composition, reference.name());
      return named.size() == 1 ? times(named.get(0), composition) : 1;
    }
    return 1;
  }

  /** The line after its last one; 0 if it ends inside a line. */
  private static int endLine(List<Structure.Line> lines, int from, Mora mora) {
    for (int line = from; line < lines.size() && lines.get(line).end() <= mora.end(); line++) {
      if (lines.get(line).end() == mora.end()) {
        return line + 1;
      }
    }
    return 0;
  }

  private static boolean isForm(Mora mora, boolean certain, boolean ends) {
    int times = mora.starts().size();
    return mora.gap().signum() > 0
        ? (times == TIMES || times == TIMES * TIMES) && (certain || ends)
        : times == TIMES && ends;
  }

  /** Nine statements with equal gaps are three times three. */
  private static boolean isOfMoras(Mora mora, Joints joints) {
    int second = mora.starts().get(1);
    return mora.starts().size() == TIMES * TIMES
        || joints.moras().stream()
            .anyMatch(other -> other.start() == mora.start() && other.end() == second);
  }
}
