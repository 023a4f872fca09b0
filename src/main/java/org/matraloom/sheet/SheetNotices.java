package org.matraloom.sheet;

import java.util.ArrayList;
import java.util.List;
import org.matraloom.score.Notice;
import org.matraloom.score.Performance;
import org.matraloom.score.Step;
import org.matraloom.time.Ratio;

/** The parts of a piece that begin in a row, and what is told to students there. */
final class SheetNotices {

  private SheetNotices() {}

  /**
   * What stands above a row, each on a line of its own.
   *
   * @param performance what is written down
   * @param row a row of its sheet
   * @return names of parts and words to students, in order; none for a row without
   */
  static List<String> above(Row row, Performance performance) {
    List<String> lines = new ArrayList<>();
    if (row.isBelow()) {
      return lines;
    }
    for (Notice notice : performance.notices()) {
      if (standsAt(notice, row, performance)) {
        boolean tells = notice.step() instanceof Step.Tell;
        String where = tells ? "" : where(notice.beat(), row, performance);
        notice.words().ifPresent(words -> lines.add(words + where));
      }
    }
    return lines;
  }

  /**
   * Whether it stands in a row; what stands at the end of all stands in the row that ends there.
   */
  private static boolean standsAt(Notice notice, Row row, Performance performance) {
    Ratio beat = notice.beat();
    boolean inside = beat.compareTo(row.startBeat()) >= 0 && beat.compareTo(row.endBeat()) < 0;
    boolean atEnd = beat.equals(performance.endBeat());
    boolean lastRow =
        performance.endBeat().compareTo(row.startBeat()) > 0
            && performance.endBeat().compareTo(row.endBeat()) <= 0;
    return atEnd ? lastRow : inside;
  }

  private static String where(Ratio beat, Row row, Performance performance) {
    return beat.equals(row.startBeat()) ? "" : ", from " + performance.avartana().say(beat);
  }
}
