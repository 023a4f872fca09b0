package org.matraloom.retell;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.matraloom.measure.Pulse;
import org.matraloom.measure.TakeFindings;
import org.matraloom.measure.TakeLanding;
import org.matraloom.picture.Picture;
import org.matraloom.picture.Picture.Anchor;
import org.matraloom.picture.Picture.Tone;
import org.matraloom.picture.Picture.Type;
import org.matraloom.picture.PictureMarks;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Performance;

/**
 * Draws how far every sollu of a take is from the take's own pulse, avartana under avartana.
 *
 * <p>Up is later, down is earlier. The ground shows what a listener does not notice: {@code
 * Tolerance.displacementSeconds}.
 */
public final class DeviationPicture {

  private static final double HEAD = 92;
  private static final double FOOT = 58;
  private static final int USUAL_BEATS = 8;
  private static final int MOST_ROWS = 20;

  private static final Type TITLE = new Type(22, true, Tone.INK);
  private static final Type SUM = new Type(15, false, Tone.INK);
  private static final Type NOTE = new Type(13, false, Tone.QUIET);

  private final TakeFindings findings;
  private final Performance performance;
  private final int cycleBeats;

  private DeviationPicture(TakeFindings findings, Performance performance) {
    this.findings = findings;
    this.performance = performance;
    this.cycleBeats = performance.avartana().goingOnAt(performance.startBeat()).beats();
  }

  /**
   * Draws a take.
   *
   * @param timeline what was to be said
   * @param findings what was measured
   * @return the picture; of a take that has no pulse it tells the reason only
   */
  public static Picture of(Timeline timeline, TakeFindings findings) {
    return new DeviationPicture(findings, timeline.performance()).draw();
  }

  private Picture draw() {
    List<Double> starts = findings.pulse().isPresent() ? rowStarts() : List.of();
    double height = HEAD + starts.size() * DeviationRow.HEIGHT + FOOT;
    String title = performance.composition().title();
    Picture picture =
        new Picture(
            DeviationPage.WIDTH,
            height,
            title + ": how far every sollu is from the pulse of the take");
    picture.text(DeviationPage.MARGIN, 36, Anchor.BEGIN, TITLE, title);
    picture.text(DeviationPage.MARGIN, 60, Anchor.BEGIN, SUM, sum());
    if (findings.pulse().isPresent()) {
      DeviationScale scale = DeviationScale.of(findings.sollus());
      DeviationMarks marks = DeviationMarks.of(findings);
      double beats = rowBeats();
      for (int i = 0; i < starts.size(); i++) {
        double top = HEAD + i * DeviationRow.HEIGHT;
        new DeviationRow(picture, top, starts.get(i), beats, scale)
            .draw(performance, marks, findings.pulse().get().line());
      }
      legend(picture, height - FOOT + 30, scale, !marks.againBeats().isEmpty());
    }
    return picture;
  }

  /** Whole avartanas, about eight beats of them, or more where the page would grow too long. */
  private double rowBeats() {
    int usual = Math.max(1, Math.round((float) USUAL_BEATS / cycleBeats));
    double cycles = (performance.soundEndBeat().toDouble() - firstBeat()) / cycleBeats;
    return Math.max(usual, Math.ceil(cycles / MOST_ROWS)) * cycleBeats;
  }

  private double firstBeat() {
    return Math.floor(performance.startBeat().toDouble() / cycleBeats) * cycleBeats;
  }

  private List<Double> rowStarts() {
    List<Double> starts = new ArrayList<>();
    double end = performance.soundEndBeat().toDouble();
    for (double beat = firstBeat(); beat < end; beat += rowBeats()) {
      starts.add(beat);
    }
    return starts;
  }

  private String sum() {
    StringBuilder sum = new StringBuilder();
    findings.doubt().ifPresent(doubt -> sum.append("Cannot be judged: ").append(doubt.reason()));
    if (findings.doubt().isEmpty() && findings.pulse().isPresent()) {
      Pulse pulse = findings.pulse().get();
      sum.append(String.format(Locale.ROOT, "%.1f beats a minute, ", pulse.beatsPerMinute()));
      sum.append(drift(pulse.driftPercent())).append("; ");
      sum.append(
          findings
              .landing()
              .map(
                  found ->
                      findings.knownLanding().isPresent()
                          ? landing(found)
                          : "something is missing or left over, so the landing is not known")
              .orElse("the last sollu is missing"));
    }
    return sum.toString();
  }

  private static String drift(double percent) {
    String size = String.format(Locale.ROOT, "%.1f", Math.abs(percent));
    if (size.equals("0.0")) {
      return "steady";
    }
    return size + " % " + (percent > 0 ? "faster" : "slower") + " at the end than at the beginning";
  }

  private static String landing(TakeLanding landing) {
    long ms = Math.round(1000 * landing.errorSeconds());
    if (ms == 0) {
      return "lands on its place";
    }
    return "the last sollu is " + Math.abs(ms) + " ms " + (ms > 0 ? "late" : "early");
  }

  private static void legend(Picture picture, double y, DeviationScale scale, boolean again) {
    double radius = DeviationRow.RADIUS;
    double x = DeviationPage.MARGIN;
    picture.fill(new Rectangle2D.Double(x, y - 12, 22, 14), Tone.FAINT);
    picture.fill(PictureMarks.dot(x + 11, y - 5, DeviationRow.SMALL), Tone.QUIET);
    x = label(picture, x + 28, y, "too small to be noticed");
    picture.fill(PictureMarks.dot(x, y - 5, radius), Tone.INK);
    x = label(picture, x + 10, y, "noticed");
    picture.fill(PictureMarks.triangle(x, y - 5, radius, true), Tone.INK);
    x = label(picture, x + 10, y, "beyond " + scale.milliseconds() + " ms");
    picture.outline(PictureMarks.dot(x, y - 5, radius), 1.6, false, Tone.INK);
    x = label(picture, x + 10, y, "missed");
    picture.outline(PictureMarks.plus(x, y - 5, radius + 1), 1.8, false, Tone.INK);
    x = label(picture, x + 11, y, "added");
    picture.fill(PictureMarks.dot(x, y - 5, DeviationRow.SMALL), Tone.INK);
    picture.outline(PictureMarks.dot(x, y - 5, DeviationRow.RING), 1.4, false, Tone.INK);
    x = label(picture, x + 13, y, "the last sollu");
    if (again) {
      picture.outline(new Line2D.Double(x, y - 15, x, y + 4), 2, true, Tone.INK);
      label(picture, x + 9, y, "begun again");
    }
  }

  private static double label(Picture picture, double x, double y, String text) {
    picture.text(x, y, Anchor.BEGIN, NOTE, text);
    return x + picture.widthOf(NOTE, text) + 28;
  }
}
