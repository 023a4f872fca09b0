package org.matraloom.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.Sequence;
import org.matraloom.score.Step;
import org.matraloom.spell.ScorePrinter;
import org.matraloom.time.Ratio;

/**
 * The sheet as plain text that is itself a score.
 *
 * <p>Rows stand in columns under their kriyas for the eye; kriyas, headings and sums are notes, and
 * each line is a phrase, so that the text can be pasted into a chat message and read back: the same
 * sollus at the same places, in the same rounds. Nothing depends on spaces at the beginning of a
 * line.
 */
public final class TextSheet {

  private static final int WIDEST = 80;
  private static final int GAP = 2;
  private static final int NARROWEST_CELL = 7;
  private static final int NAME_WIDTH = 8;
  private static final int LAST_BAR = 2;

  private final Sheet sheet;
  private final SheetWords words;
  private final Performance performance;
  private final Avartana avartana;
  private final Lexicon lexicon;
  private final TextPlan plan;
  private final String rowLetter;
  private final int cellWidth;
  private int rowNumber;

  /** Rows of avartanas are named by a letter and their number, rounds by a word. */
  TextSheet(Sheet sheet, Lexicon lexicon, String rowLetter, String roundName, int cellWidth) {
    this.rowLetter = rowLetter;
    this.sheet = sheet;
    this.words = new SheetWords(sheet);
    this.performance = sheet.performance();
    this.avartana = performance.avartana();
    this.plan = new TextPlan(performance, WIDEST, roundName);
    this.lexicon = lexicon;
    this.cellWidth = cellWidth;
  }

  /**
   * Writes a sheet.
   *
   * @param sheet what to write
   * @param lexicon the sollus that a reader of the text will know
   * @param out where the text goes; each line ends with a line feed
   * @throws IOException if it cannot be written
   */
  public static void write(Sheet sheet, Lexicon lexicon, Appendable out) throws IOException {
    new TextSheet(sheet, lexicon, "A", "Round", cellWidth(sheet, lexicon)).write(out);
  }

  private void write(Appendable out) throws IOException {
    writeHead(out);
    for (Row row : sheet.rows()) {
      writeRow(row, out);
    }
    out.append('\n');
    plan.write(out);
    out.append('\n');
    for (String sentence : sheet.closing()) {
      told(sentence, out);
    }
  }

  void writeHead(Appendable out) throws IOException {
    out.append(header());
    told(words.setting() + ". " + words.places() + ".", out);
    String loss = sheet.options().writing().script().loss();
    if (!loss.isEmpty()) {
      told(loss, out);
    }
  }

  void writeRow(Row row, Appendable out) throws IOException {
    int perLine = Math.max(1, (WIDEST - NAME_WIDTH - LAST_BAR) / (cellWidth + GAP));
    LineBreaks breaks = LineBreaks.of(avartana.goingOnAt(row.startBeat()), perLine);
    write(row, breaks, out);
  }

  /** The rounds and the plan, once the rows are written. */
  TextPlan plan() {
    return plan;
  }

  /** The head of the score that the text is, with the start of what is written. */
  private String header() {
    Composition whole = performance.composition();
    Ratio start = performance.startBeat();
    Composition head =
        new Composition(
            whole.title(),
            avartana.goingOnAt(start),
            whole.tempo(),
            start.signum() < 0 ? start : avartana.placeOf(start),
            whole.eduppuBeat(),
            Map.of("Row", Sequence.of()),
            List.of(new Step.Say("Row", 1, 4, 1)),
            performance.closing(),
            whole.wording().strokesAlone());
    String text = ScorePrinter.print(head);
    return text.substring(0, text.indexOf("\n\n") + 2);
  }

  private void write(Row row, LineBreaks breaks, Appendable out) throws IOException {
    rowNumber++;
    out.append('\n');
    for (String told : words.above(row)) {
      note(told, out);
    }
    String heading = words.heading(row);
    if (!heading.isEmpty()) {
      told(heading, out);
    }
    if (!row.label().isEmpty()) {
      told(row.label(), out);
    }
    List<TextColumns> lines =
        breaks.lines(row, avartana).stream()
            .map(cells -> new TextColumns(cells, row, cellWidth, GAP, NAME_WIDTH))
            .toList();
    long pieces =
        lines.stream().mapToLong(line -> row.parts().stream().filter(line::has).count()).sum();
    int piece = 0;
    for (int index = 0; index < lines.size(); index++) {
      TextColumns line = lines.get(index);
      writeNotes(line, out);
      List<TextColumns> below = lines.subList(index + 1, lines.size());
      for (RoundPart part : row.parts().stream().filter(line::has).toList()) {
        String name = name(row) + (pieces == 1 ? "" : letters(piece++));
        String sum = below.stream().noneMatch(other -> other.has(part)) ? "   # " + part.sum() : "";
        out.append(name).append(" ".repeat(Math.max(1, NAME_WIDTH - 2 - name.length())));
        String said = "= " + line.sollus(part, lexicon);
        boolean fits = NAME_WIDTH + said.length() + sum.length() <= WIDEST;
        out.append(said).append(fits ? sum : "").append('\n');
        if (!fits && !sum.isEmpty()) {
          note(part.sum(), out);
        }
        plan.add(part.round(), name);
      }
    }
  }

  private void writeNotes(TextColumns line, Appendable out) throws IOException {
    note(line.kriyas(), out);
    if (!sheet.options().writing().isAsSpelt() || line.isBesideTheRounds()) {
      note(line.script(), out);
    }
    if (line.hasBreaths()) {
      note(line.breaths(), out);
    }
  }

  /** A name for a row: A and its avartana, or L and which line it is. */
  private String name(Row row) {
    boolean byPhrase = sheet.options().lines() == SheetOptions.Lines.PHRASE;
    return byPhrase ? "L" + rowNumber : rowLetter + row.number();
  }

  private static String letters(int piece) {
    String letter = Character.toString('a' + piece % 26);
    return piece < 26 ? letter : letters(piece / 26 - 1) + letter;
  }

  /** How wide a beat is, in characters. */
  static int cellWidth(Sheet sheet, Lexicon lexicon) {
    return sheet.rows().stream()
        .flatMap(row -> row.cells().stream().map(cell -> TextColumns.widthOf(cell, row, lexicon)))
        .reduce(NARROWEST_CELL, Math::max);
  }

  /** Sentences as notes that stay within the width of a terminal. */
  static void told(String text, Appendable out) throws IOException {
    for (String line : lines(text, WIDEST - "# ".length())) {
      note(line, out);
    }
  }

  /** Sentences in lines that stay within the width of a terminal. */
  static void say(String text, Appendable out) throws IOException {
    for (String line : lines(text, WIDEST)) {
      out.append(line).append('\n');
    }
  }

  private static List<String> lines(String text, int columns) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split("\\s+")) {
      if (line.length() > 0 && line.length() + word.length() + 1 > columns) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.isEmpty() ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  private static void note(String text, Appendable out) throws IOException {
    String clean = text.lines().collect(Collectors.joining(" "));
    out.append(("# " + clean).stripTrailing()).append('\n');
  }
}
