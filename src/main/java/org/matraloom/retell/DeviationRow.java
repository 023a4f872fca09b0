package org.matraloom.retell;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.matraloom.measure.Tolerance;
import org.matraloom.picture.Picture;
import org.matraloom.picture.Picture.Anchor;
import org.matraloom.picture.Picture.Tone;
import org.matraloom.picture.Picture.Type;
import org.matraloom.picture.PictureMarks;
import org.matraloom.pulse.PulseLine;
import org.matraloom.score.Avartana;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;

/** One row of the picture of a take: some avartanas, time to the right, late above early. */
final class DeviationRow {

  static final double HEIGHT = 158;
  static final double RADIUS = 4.5;
  static final double SMALL = 3.2;
  static final double RING = 7.5;

  private static final double LEFT = 108;
  private static final double FLAGS = 24;
  private static final double BEAT_TO_RADIUS = 10;
  private static final double LEAST_SHARE = 0.35;
  private static final double AGAIN_BESIDE = 7;
  private static final double AGAIN_OVER = 3;
  private static final double PLOT = 88;
  private static final double LEAST_BEAT = 9;
  private static final double LEAST_AVARTANA = 40;
  private static final double LEAST_NUMBERED = 24;

  private static final Type FLAG = new Type(13, true, Tone.INK);
  private static final Type SCALE = new Type(13, false, Tone.QUIET);
  private static final Type WORD = new Type(12.5, false, Tone.INK);

  private final Picture picture;
  private final double from;
  private final double to;
  private final double left;
  private final double beatWidth;
  private final double top;
  private final DeviationScale scale;

  /** Marks shrink where many stand close together. */
  private final double size;

  DeviationRow(Picture picture, double top, double fromBeat, double beats, DeviationScale scale) {
    this.picture = picture;
    this.from = fromBeat;
    this.to = fromBeat + beats;
    this.left = DeviationPage.MARGIN + LEFT;
    this.beatWidth = (DeviationPage.WIDTH - DeviationPage.MARGIN - left) / beats;
    this.top = top + FLAGS;
    this.scale = scale;
    this.size = Math.max(LEAST_SHARE, Math.min(1, beatWidth / BEAT_TO_RADIUS / RADIUS));
  }

  void draw(Performance performance, DeviationMarks marks, PulseLine line) {
    ground(performance, line);
    grid(performance.avartana());
    new RoundFlags(picture, performance.rounds(), from, to).draw(left, beatWidth, top, PLOT);
    marks(marks);
    words(marks.words());
  }

  private void ground(Performance performance, PulseLine line) {
    for (Span span : performance.spans()) {
      double begin = Math.max(from, span.startBeat().toDouble());
      double end = Math.min(to, span.endBeat().toDouble());
      if (begin < end) {
        double matra = line.beatSeconds(begin) / span.matrasPerBeat();
        double half = PLOT / 2 * scale.part(Tolerance.displacementSeconds(matra));
        picture.fill(
            new Rectangle2D.Double(x(begin), zero() - half, x(end) - x(begin), 2 * half),
            Tone.FAINT);
      }
    }
  }

  private void grid(Avartana avartana) {
    int cycle = avartana.beats();
    for (double beat = from; beat <= to; beat++) {
      boolean samam = avartana.isSamam((long) beat);
      if (samam) {
        boolean wide = cycle * beatWidth >= LEAST_AVARTANA;
        picture.line(
            x(beat), top, x(beat), top + PLOT, wide ? 1.8 : 0.8, wide ? Tone.INK : Tone.RULE);
      } else if (!samam && beatWidth >= LEAST_BEAT) {
        picture.line(x(beat), top, x(beat), top + PLOT, 1, Tone.RULE);
      }
      if (beat < to && beatWidth >= LEAST_NUMBERED) {
        long inCycle = Math.floorMod((long) beat, (long) cycle) + 1;
        picture.text(x(beat) + 2, top - 5, Anchor.BEGIN, SCALE, Long.toString(inCycle));
      }
    }
    picture.line(left, zero(), x(to), zero(), 0.6, Tone.QUIET);
    long number = Math.round(from / cycle) + 1;
    long last = Math.round(to / cycle);
    picture.text(
        DeviationPage.MARGIN,
        top - 6,
        Anchor.BEGIN,
        FLAG,
        number == last ? "avartana " + number : "avartana " + number + " on");
    String edge = scale.milliseconds() + " ms ";
    picture.text(left - 8, top + 11, Anchor.END, SCALE, edge + "late");
    picture.text(left - 8, top + PLOT, Anchor.END, SCALE, edge + "early");
  }

  private void marks(DeviationMarks marks) {
    for (DeviationMarks.Word word : marks.missed()) {
      if (isHere(word.beat())) {
        picture.fill(PictureMarks.dot(x(word.beat()), zero(), size * RADIUS), Tone.PAPER);
        picture.outline(
            PictureMarks.dot(x(word.beat()), zero(), size * RADIUS), 1.6, false, Tone.INK);
      }
    }
    for (double beat : marks.againBeats()) {
      if (isHere(beat)) {
        double x = x(beat) - AGAIN_BESIDE;
        picture.outline(
            new Line2D.Double(x, top - AGAIN_OVER, x, top + PLOT + AGAIN_OVER), 2, true, Tone.INK);
      }
    }
    for (double beat : marks.addedBeats()) {
      if (isHere(beat)) {
        picture.outline(
            PictureMarks.plus(x(beat), top + PLOT - 9, size * (RADIUS + 1)), 1.8, false, Tone.INK);
      }
    }
    marks.said().stream().filter(said -> isHere(said.beat())).forEach(this::said);
  }

  private void said(DeviationMarks.Said said) {
    double x = x(said.beat());
    double y = zero() - PLOT / 2 * scale.part(said.deviationSeconds());
    if (said.isNoticed()) {
      picture.line(x, zero(), x, y, 1.2, Tone.QUIET);
    }
    if (scale.isBeyond(said.deviationSeconds())) {
      boolean late = said.deviationSeconds() > 0;
      picture.fill(
          PictureMarks.triangle(
              x, late ? y + size * RADIUS : y - size * RADIUS, size * RADIUS, late),
          Tone.INK);
    } else {
      picture.fill(
          PictureMarks.dot(x, y, size * (said.isNoticed() ? RADIUS : SMALL)),
          said.isNoticed() ? Tone.INK : Tone.QUIET);
    }
    if (said.last()) {
      picture.outline(PictureMarks.dot(x, y, RING), 1.4, false, Tone.INK);
    }
  }

  /** A sollu is written only where it does not run into the next one. */
  private void words(List<DeviationMarks.Word> words) {
    for (int i = 0; i < words.size(); i++) {
      DeviationMarks.Word word = words.get(i);
      double next = i + 1 < words.size() ? words.get(i + 1).beat() : word.beat() + 1;
      boolean fits =
          picture.widthOf(WORD, word.text()) + 2 <= Math.max(0, next - word.beat()) * beatWidth;
      if (isHere(word.beat()) && fits) {
        picture.text(x(word.beat()), top + PLOT + 16, Anchor.MIDDLE, WORD, word.text());
      }
    }
  }

  private boolean isHere(double beat) {
    return beat >= from && beat < to;
  }

  private double x(double beat) {
    return left + (beat - from) * beatWidth;
  }

  private double zero() {
    return top + PLOT / 2;
  }
}
