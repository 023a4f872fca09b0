package org.matraloom.app.hear;

import java.util.ArrayList;
import java.util.List;
import org.matraloom.log.CleanTempo;
import org.matraloom.log.History;
import org.matraloom.picture.Picture;
import org.matraloom.picture.Picture.Anchor;
import org.matraloom.picture.Picture.Tone;
import org.matraloom.picture.Picture.Type;
import org.matraloom.picture.PictureMarks;

/** Draws tempo over time: a row of panels for each piece, the whole first, then its rounds. */
final class LogPicture {

  private static final int COLUMNS = 2;
  private static final int MOST_ROUNDS = 7;
  private static final int MOST_PIECES = 12;
  private static final double MARGIN = 24;
  private static final double HEAD = 44;
  private static final double FOOT = 52;
  private static final double PIECE_HEAD = 34;
  private static final double GAP = 12;

  private static final Type TITLE = new Type(22, true, Tone.INK);
  private static final Type PIECE = new Type(17, true, Tone.INK);
  private static final Type NOTE = new Type(13, false, Tone.QUIET);

  private final History history;
  private final List<String> pieces;

  private LogPicture(History history, List<String> pieces) {
    this.history = history;
    this.pieces = pieces;
  }

  /** Draws the pieces with takes that were judged; those practised last come first. */
  static Picture of(History history) {
    List<String> pieces = new ArrayList<>();
    for (int i = history.entries().size() - 1; i >= 0; i--) {
      String piece = history.entries().get(i).piece();
      if (!pieces.contains(piece) && !rows(history, piece).isEmpty()) {
        pieces.add(piece);
      }
    }
    return new LogPicture(history, pieces.subList(0, Math.min(MOST_PIECES, pieces.size()))).draw();
  }

  private static List<CleanTempo> rows(History history, String piece) {
    List<CleanTempo> rows =
        CleanTempo.of(history, piece).stream().filter(row -> !row.points().isEmpty()).toList();
    return rows.subList(0, Math.min(rows.size(), MOST_ROUNDS + 1));
  }

  private Picture draw() {
    double height = HEAD + FOOT;
    for (String piece : pieces) {
      height += heightOf(rows(history, piece).size());
    }
    double width = 2 * MARGIN + COLUMNS * TempoPanel.WIDTH + (COLUMNS - 1) * GAP;
    Picture picture = new Picture(width, height, "Tempo of takes over time, piece by piece");
    picture.text(MARGIN, 34, Anchor.BEGIN, TITLE, "Tempo over time, in beats a minute");
    double y = HEAD;
    for (String piece : pieces) {
      List<CleanTempo> rows = rows(history, piece);
      picture.text(MARGIN, y + 22, Anchor.BEGIN, PIECE, piece);
      TempoPanel.Scales scales = TempoPanel.Scales.of(rows);
      for (int i = 0; i < rows.size(); i++) {
        double left = MARGIN + i % COLUMNS * (TempoPanel.WIDTH + GAP);
        double top = y + PIECE_HEAD + i / COLUMNS * (TempoPanel.HEIGHT + GAP);
        new TempoPanel(picture, left, top, scales).draw(rows.get(i));
      }
      y += heightOf(rows.size());
    }
    legend(picture, height - FOOT + 28);
    return picture;
  }

  private static double heightOf(int panels) {
    return PIECE_HEAD + (panels + COLUMNS - 1) / COLUMNS * (TempoPanel.HEIGHT + GAP);
  }

  private void legend(Picture picture, double y) {
    if (pieces.isEmpty()) {
      picture.text(MARGIN, y, Anchor.BEGIN, NOTE, "No take was judged yet.");
      return;
    }
    double x = MARGIN + 6;
    picture.fill(PictureMarks.dot(x, y - 5, TempoPanel.RADIUS), Tone.INK);
    x = label(picture, x + 10, y, "clean");
    picture.outline(PictureMarks.cross(x, y - 5, TempoPanel.RADIUS - 1), 1.6, false, Tone.QUIET);
    x = label(picture, x + 10, y, "missed");
    picture.line(x, y - 5, x + 26, y - 5, 2, Tone.INK);
    label(picture, x + 32, y, "fastest clean so far");
  }

  private static double label(Picture picture, double x, double y, String text) {
    picture.text(x, y, Anchor.BEGIN, NOTE, text);
    return x + picture.widthOf(NOTE, text) + 26;
  }
}
