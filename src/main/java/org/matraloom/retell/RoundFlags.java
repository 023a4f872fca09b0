package org.matraloom.retell;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.matraloom.picture.Picture;
import org.matraloom.picture.Picture.Anchor;
import org.matraloom.picture.Picture.Tone;
import org.matraloom.picture.Picture.Type;
import org.matraloom.score.Span;

/**
 * Marks in a row of the picture where rounds begin; a change of nadai is white on black.
 *
 * <p>Where there is no room for all, changes of nadai are named first.
 */
final class RoundFlags {

  private static final double HEIGHT = 19;
  private static final double ABOVE = 22;
  private static final double PADDING = 6;
  private static final double LEAST_APART = 40;
  private static final Type FLAG = new Type(13, true, Tone.INK);
  private static final Type FLAG_ON_INK = new Type(13, true, Tone.PAPER);

  /** A round that begins in this row. */
  private record Beginning(Span.Round round, boolean changes, double x) {
    String text() {
      return "round " + round.number() + ", nadai " + round.matrasPerBeat();
    }
  }

  private final Picture picture;
  private final List<Span.Round> rounds;
  private final double from;
  private final double to;

  RoundFlags(Picture picture, List<Span.Round> rounds, double fromBeat, double toBeat) {
    this.picture = picture;
    this.rounds = rounds;
    this.from = fromBeat;
    this.to = toBeat;
  }

  void draw(double left, double beatWidth, double top, double plot) {
    List<Beginning> here = new ArrayList<>();
    for (int i = 0; i < rounds.size(); i++) {
      double beat = rounds.get(i).startBeat().toDouble();
      if (beat >= from && beat < to) {
        boolean changes =
            i > 0 && rounds.get(i - 1).matrasPerBeat() != rounds.get(i).matrasPerBeat();
        here.add(new Beginning(rounds.get(i), changes, left + (beat - from) * beatWidth));
      }
    }
    boolean crowded = here.size() > 1 && (to - from) * beatWidth / here.size() < LEAST_APART;
    for (Beginning each : here) {
      double thick = each.changes() ? 4 : crowded ? 1 : 2.6;
      picture.line(each.x(), top, each.x(), top + plot, thick, Tone.INK);
    }
    List<Rectangle2D> taken = new ArrayList<>();
    here.stream().filter(Beginning::changes).forEach(each -> flag(each, top, taken));
    here.stream().filter(each -> !each.changes()).forEach(each -> flag(each, top, taken));
  }

  private void flag(Beginning each, double top, List<Rectangle2D> taken) {
    double width = picture.widthOf(FLAG, each.text()) + 2 * PADDING;
    double x = Math.min(each.x(), DeviationPage.WIDTH - width - PADDING);
    Rectangle2D box = new Rectangle2D.Double(x, top - ABOVE, width, HEIGHT);
    if (taken.stream().anyMatch(box::intersects)) {
      return;
    }
    taken.add(box);
    picture.line(each.x(), top - ABOVE, each.x(), top, 1, Tone.INK);
    picture.fill(box, each.changes() ? Tone.INK : Tone.PAPER);
    if (!each.changes()) {
      picture.outline(box, 1, false, Tone.INK);
    }
    picture.text(
        x + PADDING,
        top - ABOVE + 14,
        Anchor.BEGIN,
        each.changes() ? FLAG_ON_INK : FLAG,
        each.text());
  }
}
