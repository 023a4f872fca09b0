package org.matraloom.sheet;

import java.io.IOException;
import java.util.Iterator;
import java.util.List;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Span;
import org.matraloom.score.TwoReciters.SideBySide;
import org.matraloom.spell.PlanLine;

/** The sheet of two reciters as plain text that is itself a score for two. */
public final class TwoReciterText {

  private final TwoReciterSheet sheet;
  private final TextSheet first;
  private final TextSheet second;

  private TwoReciterText(TwoReciterSheet sheet, Lexicon lexicon) {
    this.sheet = sheet;
    int width =
        Math.max(
            TextSheet.cellWidth(sheet.first(), lexicon),
            TextSheet.cellWidth(sheet.second(), lexicon));
    this.first = new TextSheet(sheet.first(), lexicon, "A", "Round", width);
    this.second = new TextSheet(sheet.second(), lexicon, "B", "Answer", width);
  }

  /**
   * Writes the sheet.
   *
   * @param sheet what to write
   * @param lexicon the sollus that a reader of the text will know
   * @param out where the text goes; each line ends with a line feed
   * @throws IOException if it cannot be written
   */
  public static void write(TwoReciterSheet sheet, Lexicon lexicon, Appendable out)
      throws IOException {
    new TwoReciterText(sheet, lexicon).write(out);
  }

  private void write(Appendable out) throws IOException {
    first.writeHead(out);
    Iterator<Row> below = sheet.labelled(sheet.second(), Row.SECOND).iterator();
    for (Row row : sheet.labelled(sheet.first(), "")) {
      first.writeRow(row, out);
      if (below.hasNext()) {
        belowIt(below.next(), out);
      }
    }
    while (below.hasNext()) {
      belowIt(below.next(), out);
    }
    out.append('\n');
    first.plan().writeRounds(out);
    second.plan().writeRounds(out);
    out.append("\nperform\n");
    perform(out);
    out.append('\n');
    for (String sentence : sheet.closing()) {
      TextSheet.told(sentence, out);
    }
  }

  private void belowIt(Row row, Appendable out) throws IOException {
    if (TwoReciterSheet.says(row)) {
      second.writeRow(row, out);
    }
  }

  /** The lines of the first reciter, and below each what the second one says beside it. */
  private void perform(Appendable out) throws IOException {
    List<Span> spans = sheet.first().performance().spans();
    List<SideBySide> stretches = sheet.reciters().stretches();
    int next = 0;
    for (int index = 0; index < spans.size(); index++) {
      first.plan().notices(index, out);
      first.plan().perform(spans.get(index), out);
      boolean takesTime = spans.get(index).beats().signum() > 0;
      while (takesTime
          && next < stretches.size()
          && stretches.get(next).lineFrom().equals(spans.get(index).startBeat())) {
        answer(stretches.get(next++), out);
      }
    }
    first.plan().notices(spans.size(), out);
  }

  private void answer(SideBySide stretch, Appendable out) throws IOException {
    for (Span span : sheet.second().performance().spans()) {
      boolean inside =
          span.startBeat().compareTo(stretch.from()) >= 0
              && span.startBeat().compareTo(stretch.to()) < 0;
      if (inside && span.beats().signum() > 0) {
        out.append(PlanLine.WITH + " ");
        second.plan().perform(span, out);
      }
    }
  }
}
