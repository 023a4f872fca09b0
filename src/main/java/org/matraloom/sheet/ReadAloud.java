package org.matraloom.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.kanakku.SumWords;
import org.matraloom.score.Kriya;

/**
 * The sheet as sentences in the order in which they happen, for a screen reader.
 *
 * <p>Nothing depends on columns, signs or colours: every beat has its number, its kriya and its
 * sollus in words.
 */
public final class ReadAloud {

  private ReadAloud() {}

  /**
   * Writes a sheet.
   *
   * @param sheet what to write
   * @param out where the text goes; each line ends with a line feed
   * @throws IOException if it cannot be written
   */
  public static void write(Sheet sheet, Appendable out) throws IOException {
    SheetWords words = new SheetWords(sheet);
    line(words.title() + ".", out);
    line(words.setting() + ".", out);
    line(words.places() + ".", out);
    String loss = sheet.options().writing().script().loss();
    if (!loss.isEmpty()) {
      line(loss, out);
    }
    for (Row row : sheet.rows()) {
      out.append('\n');
      for (String told : words.above(row)) {
        line(told.matches(".*[.!?]") ? told : told + ".", out);
      }
      String heading = words.heading(row);
      if (!heading.isEmpty()) {
        line(heading.replace(" · ", ". ") + ".", out);
      }
      line(opening(row), out);
      for (Cell cell : row.cells()) {
        line(beat(cell, row, words), out);
      }
      for (RoundPart part : row.parts()) {
        line(sum(part), out);
      }
    }
    out.append('\n');
    for (String sentence : sheet.closing()) {
      line(sentence, out);
    }
    if (sheet.options().cues()) {
      cues(sheet, words, out);
    }
  }

  private static String opening(Row row) {
    return row.label().isEmpty()
        ? "Avartana " + row.number() + "."
        : "Phrase " + row.label() + ", in avartana " + row.number() + ".";
  }

  /** A beat with its sollus; a round that begins later than its row is told where it begins. */
  private static String beat(Cell cell, Row row, SheetWords words) {
    List<String> said = new ArrayList<>();
    List<Mark> rest = cell.marks();
    for (RoundPart part : row.parts()) {
      if (part.opensHere() && cell.holds(part.from()) && !part.from().equals(row.startBeat())) {
        int before = (int) rest.stream().takeWhile(mark -> isBefore(mark, part)).count();
        if (before > 0) {
          said.add(BeatWords.of(rest.subList(0, before)));
          rest = rest.subList(before, rest.size());
        }
        String place = part.from().isWhole() ? "" : " on " + words.place(part.from());
        said.add("round " + part.round() + " begins" + place);
      }
    }
    if (said.isEmpty() || !rest.isEmpty()) {
      said.add(BeatWords.of(rest));
    }
    return words.beat(cell) + ": " + String.join("; ", said) + ".";
  }

  private static boolean isBefore(Mark mark, RoundPart part) {
    return mark.beat().compareTo(part.from()) < 0;
  }

  private static String sum(RoundPart part) {
    return "Round "
        + part.round()
        + ": "
        + SumWords.counted(part.matras(), "matra")
        + ", "
        + part.soFar().toMixed()
        + " of "
        + part.total().toMixed()
        + ".";
  }

  private static void cues(Sheet sheet, SheetWords words, Appendable out) throws IOException {
    out.append('\n');
    line("What falls on each kriya.", out);
    for (Row row : CueMap.rows(sheet)) {
      String heading = words.heading(row);
      if (!heading.isEmpty()) {
        line(heading.replace(" · ", ". ") + ".", out);
      }
      line(opening(row), out);
      for (Cell cell : row.cells()) {
        Optional<Kriya> kriya = cell.kriya();
        if (kriya.isPresent() && !cell.marks().isEmpty()) {
          line(words.beat(cell) + ": " + cue(cell) + ".", out);
        }
      }
    }
  }

  private static String cue(Cell cell) {
    String cue = cell.marks().get(0).sign();
    if (cue.equals(CueMap.SILENCE)) {
      return "silent";
    }
    return cue.startsWith("(") ? cue.substring(1, cue.length() - 1) + " rings on" : cue;
  }

  private static void line(String text, Appendable out) throws IOException {
    TextSheet.say(text, out);
  }
}
