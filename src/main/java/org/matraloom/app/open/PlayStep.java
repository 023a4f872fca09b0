package org.matraloom.app.open;

import java.util.Optional;
import org.matraloom.app.cli.UserError;
import org.matraloom.live.LivePiece;
import org.matraloom.live.PieceSection;
import org.matraloom.live.PieceSections;
import org.matraloom.time.Ratio;

/**
 * Where a key goes from the place that is heard, as {@code play} does: sections are named phrases
 * and rounds.
 *
 * <p>The place is sent in thousandths of a beat, as only the page knows what has left the
 * loudspeaker.
 */
final class PlayStep {

  private static final int THOUSANDTHS = 1000;

  private PlayStep() {}

  /** The section that {@code go} names: this one again, the next, the one before, the first. */
  static Optional<PieceSection> asked(JsonFields sent, LivePiece piece) {
    PieceSections sections = PieceSections.of(piece.passages());
    return sent.find("go")
        .map(
            step ->
                switch (step) {
                  case "first" -> sections.first();
                  case "again" -> here(sent, sections);
                  case "next" -> sections.neighbour(here(sent, sections), 1);
                  case "previous" -> sections.neighbour(here(sent, sections), -1);
                  default ->
                      throw new UserError("go takes first, again, next or previous, given " + step);
                });
  }

  /** What comes again and again by {@code loop}: this section or this round. */
  static Optional<PieceSection> looped(JsonFields sent, LivePiece piece) {
    PieceSections sections = PieceSections.of(piece.passages());
    return sent.find("loop")
        .map(
            what ->
                switch (what) {
                  case "section" -> here(sent, sections);
                  case "round" -> sections.roundOf(here(sent, sections));
                  default -> throw new UserError("loop takes section or round, given " + what);
                });
  }

  private static PieceSection here(JsonFields sent, PieceSections sections) {
    return sections.at(0, Ratio.of(sent.number("at"), THOUSANDTHS));
  }
}
