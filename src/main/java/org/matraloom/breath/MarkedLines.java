package org.matraloom.breath;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.matraloom.score.Composition;
import org.matraloom.score.Recitation;
import org.matraloom.score.Span;
import org.matraloom.score.Utterance;
import org.matraloom.time.Ratio;

/**
 * Writes rounds as lines of sollus with breath marks in a line above.
 *
 * <p>A line holds an avartana; one that is too wide is cut at beats into as few lines of the same
 * number of beats as fit. A mark stands above the first sign that begins with the breath or after
 * it; where there is none before the next sollu, it stands after the last one.
 */
final class MarkedLines {

  private static final int WIDTH = 76;

  private record Sign(Ratio beat, String text, boolean sollu) {}

  private final StringBuilder out;
  private final Composition composition;
  private final List<Breath> breaths;
  private final List<Sign> signs = new ArrayList<>();
  private int nextBreath;
  private Ratio spanStart = Ratio.ZERO;
  private Ratio matra = Ratio.ONE;
  private Ratio ownMatra = Ratio.ONE;

  MarkedLines(StringBuilder out, Composition composition, List<Breath> breaths) {
    this.out = out;
    this.composition = composition;
    this.breaths = breaths;
  }

  void add(Span span) {
    spanStart = span.startBeat();
    matra = Ratio.of(1, span.matrasPerBeat());
    if (span instanceof Span.Round round) {
      Recitation.of(round, composition).forEachRemaining(this::add);
      endAvartana();
    } else if (span.beats().signum() > 0) {
      signs.add(new Sign(spanStart, "(silence of " + Counts.beats(span.beats()) + ")", false));
      endAvartana();
    }
  }

  private void add(Utterance utterance) {
    Ratio beat = spanStart.plus(utterance.atBeat());
    if (utterance instanceof Utterance.Sound sound) {
      ownMatra = sound.beats().compareTo(matra) < 0 ? sound.beats() : matra;
      add(new Sign(beat, sound.sollu().spelling(), true));
      commas(beat.plus(ownMatra), sound.beats().minus(ownMatra));
    } else if (utterance instanceof Utterance.Ring ring) {
      commas(beat, ring.beats());
    } else if (utterance instanceof Utterance.Quiet) {
      add(new Sign(beat, ".", false));
    } else if (utterance instanceof Utterance.Density density) {
      matra = Ratio.of(1, density.matrasPerBeat());
    }
  }

  private void commas(Ratio beat, Ratio beats) {
    for (long at = 0; ownMatra.times(at).compareTo(beats) < 0; at++) {
      add(new Sign(beat.plus(ownMatra.times(at)), ",", false));
    }
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
