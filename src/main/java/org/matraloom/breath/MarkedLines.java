package org.matraloom.breath;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;

/**
 * Writes rounds as lines of sollus with breath marks in a line above.
 *
 * <p>A line holds an avartana; one that is too wide is cut at beats into as few lines of the same
 * number of beats as fit. A mark stands above the first sign that begins with the breath or after
 * it; where there is none before the next sollu, it stands after the last one.
 */
final class MarkedLines {

  private static final int WIDTH = 76;

  private final StringBuilder out;
  private final Composition composition;
  private final List<Breath> breaths;
  private final List<Sign> all;
  private final List<Sign> signs = new ArrayList<>();
  private int nextSign;
  private int nextBreath;

  MarkedLines(StringBuilder out, Performance performance, List<Breath> breaths) {
    this.out = out;
    this.composition = performance.composition();
    this.breaths = breaths;
    this.all = Sign.of(performance);
  }

  /** Writes the lines of the next round or silence. */
  void add(Span span) {
    while (nextSign < all.size() && all.get(nextSign).beat().compareTo(span.endBeat()) < 0) {
      add(all.get(nextSign++));
    }
    endAvartana();
  }

  private void add(Sign sign) {
    if (!signs.isEmpty() && avartanaOf(sign) != avartanaOf(signs.get(0))) {
      endAvartana();
    }
    signs.add(sign);
  }

  private void endAvartana() {
    if (signs.isEmpty()) {
      return;
    }
    long first = signs.get(0).beat().floor();
    long beats = signs.get(signs.size() - 1).beat().floor() - first + 1;
    long beatsPerLine = beats;
    for (long lines = 2; lines <= beats && widest(first, beatsPerLine) > WIDTH; lines++) {
      beatsPerLine = (beats + lines - 1) / lines;
    }
    int from = 0;
    for (int to = 1; to <= signs.size(); to++) {
      if (to == signs.size()
          || line(signs.get(to), first, beatsPerLine)
              != line(signs.get(from), first, beatsPerLine)) {
        write(signs.subList(from, to));
        from = to;
      }
    }
    signs.clear();
  }

  private int widest(long first, long beatsPerLine) {
    return signs.stream()
        .collect(
            Collectors.groupingBy(
                sign -> line(sign, first, beatsPerLine),
                Collectors.summingInt(sign -> sign.text().length() + 1)))
        .values()
        .stream()
        .mapToInt(Integer::intValue)
        .max()
        .orElse(0);
  }

  private static long line(Sign sign, long first, long beatsPerLine) {
    return (sign.beat().floor() - first) / beatsPerLine;
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
    if (!marks.isEmpty()) {
      out.append(marks).append('\n');
    }
    out.append(words.toString().stripTrailing()).append('\n');
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

  private long avartanaOf(Sign sign) {
    return sign.beat().dividedBy(composition.avartana().beats()).floor();
  }
}
