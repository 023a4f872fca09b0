package org.matraloom.breath;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import org.matraloom.form.Joint;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;

/**
 * Writes rounds as lines of sollus with breath marks in a line above.
 *
 * <p>A line ends where a line of the piece ends, a section, or a statement of a mora. One that is
 * too wide is cut where a phrase ends, then at long sounds, then at beats. A mark stands above the
 * first sign that begins with the breath or after it; where there is none before the next sollu, it
 * stands after the last one.
 */
final class MarkedLines {

  private static final int WIDTH = 76;

  /** Where a line that is too wide may be cut, the best places first. */
  private static final List<BiPredicate<Sign, Sign>> CUTS =
      List.of(
          (before, sign) -> sign.sollu() && sign.joint().endsPhrase(),
          (before, sign) -> sign.sollu() && sign.joint() != Joint.INSIDE,
          (before, sign) -> before.beat().floor() != sign.beat().floor(),
          (before, sign) -> true);

  private final StringBuilder out;
  private final List<Breath> breaths;
  private final List<Sign> all;
  private int nextSign;
  private int written;
  private int nextBreath;

  MarkedLines(StringBuilder out, Performance performance, List<Breath> breaths) {
    this.out = out;
    this.breaths = breaths;
    this.all = Sign.of(performance);
  }

  /** Writes the lines of the next round or silence. */
  void add(Span span) {
    int from = nextSign;
    while (nextSign < all.size() && all.get(nextSign).beat().compareTo(span.endBeat()) < 0) {
      nextSign++;
    }
    List<Sign> signs = all.subList(from, nextSign);
    for (List<Sign> line : parts(signs, (before, sign) -> endsLine(sign))) {
      cut(line, 0).forEach(this::write);
    }
  }

  private static boolean endsLine(Sign sign) {
    return sign.sollu() && sign.joint().compareTo(Joint.LINE) <= 0;
  }

  private static List<List<Sign>> parts(List<Sign> signs, BiPredicate<Sign, Sign> begins) {
    List<List<Sign>> parts = new ArrayList<>();
    int from = 0;
    for (int to = 1; to <= signs.size(); to++) {
      if (to == signs.size() || begins.test(signs.get(to - 1), signs.get(to))) {
        parts.add(signs.subList(from, to));
        from = to;
      }
    }
    return parts;
  }

  /** Cuts what is too wide into as few, and as even, lines as the places of a kind allow. */
  private static List<List<Sign>> cut(List<Sign> line, int kind) {
    if (width(line) <= WIDTH || kind == CUTS.size()) {
      return List.of(line);
    }
    List<List<Sign>> parts = parts(line, CUTS.get(kind));
    List<List<Sign>> lines = joined(parts, WIDTH);
    int widest = width(line) / lines.size();
    while (joined(parts, widest).size() > lines.size()) {
      widest++;
    }
    return joined(parts, widest).stream().flatMap(part -> cut(part, kind + 1).stream()).toList();
  }

  /** Joins parts to lines of no more than a width, if the parts are not wider themselves. */
  private static List<List<Sign>> joined(List<List<Sign>> parts, int widest) {
    List<List<Sign>> lines = new ArrayList<>();
    List<Sign> open = new ArrayList<>();
    for (List<Sign> part : parts) {
      if (!open.isEmpty() && width(open) + width(part) > widest) {
        lines.add(List.copyOf(open));
        open.clear();
      }
      open.addAll(part);
    }
    lines.add(List.copyOf(open));
    return lines;
  }

  private static int width(List<Sign> signs) {
    return signs.stream().mapToInt(Sign::width).sum();
  }

  private void write(List<Sign> line) {
    StringBuilder marks = new StringBuilder();
    StringBuilder words = new StringBuilder();
    for (Sign sign : line) {
      if (begunBy(sign) && sign.sollu()) {
        mark(marks, Math.max(0, words.length() - 1));
      } else if (begunBy(sign)) {
        mark(marks, words.length());
      }
      words.append(sign.text()).append(' ');
    }
    written += line.size();
    if (beginsBeforeNext()) {
      mark(marks, Math.max(0, words.length() - 1));
    }
    if (!marks.isEmpty()) {
      out.append(marks).append('\n');
    }
    out.append(words.toString().stripTrailing()).append('\n');
  }

  /** Whether a breath begins after the last sign written and before the sollu that follows. */
  private boolean beginsBeforeNext() {
    if (nextBreath == breaths.size()) {
      return false;
    }
    Breath breath = breaths.get(nextBreath);
    boolean toCome = written < all.size() && all.get(written).sollu();
    return toCome && breath.startBeat().compareTo(all.get(written).beat()) < 0;
  }

  private boolean begunBy(Sign sign) {
    return nextBreath < breaths.size()
        && breaths.get(nextBreath).startBeat().compareTo(sign.beat()) <= 0;
  }

  private void mark(StringBuilder marks, int column) {
    marks.append(" ".repeat(Math.max(0, column - marks.length())));
    marks.append(BreathText.mark(breaths.get(nextBreath).kind()));
    nextBreath++;
  }
}
