package org.matraloom.session;

import java.util.List;

/**
 * The words of the beat before and of the beat that is heard, with a mark over what was said early
 * and under what was said late.
 *
 * @param early marks above: a dot up to 20 ms, a small o up to 45 ms, a large one beyond
 * @param words of both beats
 * @param late marks below, the same signs
 */
record SaidLines(String early, String words, String late) {

  private static final double NEAR_SECONDS = 0.020;
  private static final double FAR_SECONDS = 0.045;
  private static final String BETWEEN = "  |  ";

  /** Lines of at most so many columns; of a dense beat before only the end is left. */
  static SaidLines of(BeatSheet sheet, SaidMarks said, long beat, List<String> words, int width) {
    String before = words.get(0);
    String now = words.get(1);
    int cut = Math.max(0, before.length() + BETWEEN.length() + now.length() - width);
    int from = Math.min(before.length(), cut);
    StringBuilder early = new StringBuilder();
    StringBuilder late = new StringBuilder();
    mark(sheet, said.ofBeat(beat - 1), -from, early, late);
    mark(sheet, said.ofBeat(beat), before.length() - from + BETWEEN.length(), early, late);
    return new SaidLines(early.toString(), before.substring(from) + BETWEEN + now, late.toString());
  }

  private static void mark(
      BeatSheet sheet, List<SaidMark> marks, int shift, StringBuilder early, StringBuilder late) {
    for (SaidMark mark : marks) {
      int column = sheet.columnOf(mark.beat()).orElse(0) + shift;
      StringBuilder line = mark.lateSeconds() < 0 ? early : late;
      if (column >= 0) {
        line.append(" ".repeat(Math.max(0, column - line.length())));
        line.append(sign(Math.abs(mark.lateSeconds())));
      }
    }
  }

  private static char sign(double awaySeconds) {
    if (awaySeconds <= NEAR_SECONDS) {
      return '.';
    }
    return awaySeconds <= FAR_SECONDS ? 'o' : 'O';
  }
}
