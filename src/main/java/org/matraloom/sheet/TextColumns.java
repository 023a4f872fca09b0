package org.matraloom.sheet;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.time.Ratio;

/** One line of a text sheet: its cells in columns of equal width. */
final class TextColumns {

  private final List<Cell> cells;
  private final Row row;
  private final int cellWidth;
  private final int gap;
  private final int indent;

  TextColumns(List<Cell> cells, Row row, int cellWidth, int gap, int indent) {
    this.cells = cells;
    this.row = row;
    this.cellWidth = cellWidth;
    this.gap = gap;
    this.indent = indent;
  }

  /** How wide a cell must be for all its marks, whichever round they belong to. */
  static int widthOf(Cell cell, Row row, Lexicon lexicon) {
    int roman =
        row.parts().stream()
            .map(part -> String.join(" ", lineOf(part, lexicon).write(within(cell, part))))
            .filter(text -> !text.isEmpty())
            .mapToInt(text -> text.length() + 1)
            .sum();
    return Math.max(roman, scriptOf(cell).length());
  }

  /** The kriyas in words, as far as they fall into the line. */
  String kriyas() {
    return columns(
        cell ->
            cell.kriya()
                .map(kriya -> kriya.words().replace(" finger", "") + (cell.again() ? "'" : ""))
                .orElse(""));
  }

  /** The sollus in the script of the sheet. */
  String script() {
    return columns(TextColumns::scriptOf);
  }

  /** Whether it holds only what belongs to no round: the last stroke. */
  boolean isBesideTheRounds() {
    return row.parts().isEmpty() && cells.stream().anyMatch(cell -> !cell.marks().isEmpty());
  }

  boolean hasBreaths() {
    return cells.stream().anyMatch(this::breathes);
  }

  /** A word over each cell in which a breath begins. */
  String breaths() {
    return columns(cell -> breathes(cell) ? "breath" : "");
  }

  private boolean breathes(Cell cell) {
    return row.breathesIn(cell);
  }

  /** Whether anything of a round stands in the line. */
  boolean has(RoundPart part) {
    return cells.stream().anyMatch(cell -> !within(cell, part).isEmpty());
  }

  /** The marks of one round, with bars where an anga or an avartana ends with a mark. */
  String sollus(RoundPart part, Lexicon lexicon) {
    TextLine line = lineOf(part, lexicon);
    StringBuilder text = new StringBuilder();
    for (Cell cell : cells) {
      List<Mark> marks = within(cell, part);
      String sollus = String.join(" ", line.write(marks));
      boolean exact = !marks.isEmpty() && marks.get(marks.size() - 1).endBeat().equals(cell.to());
      text.append(padded(sollus, cellWidth)).append(exact ? bar(cell.end()) : "  ");
    }
    return text.toString().stripTrailing();
  }

  private static String bar(Cell.End end) {
    return switch (end) {
      case BEAT -> "  ";
      case ANGA -> "| ";
      case AVARTANA -> "||";
    };
  }

  private static TextLine lineOf(RoundPart part, Lexicon lexicon) {
    int kalamDensity = Composition.density(part.kalam());
    return new TextLine(lexicon, part.nadai() * kalamDensity, kalamDensity);
  }

  private static List<Mark> within(Cell cell, RoundPart part) {
    Ratio end = part.from().plus(part.beats());
    return cell.marks().stream()
        .filter(mark -> mark.beat().compareTo(part.from()) >= 0 && mark.beat().compareTo(end) < 0)
        .toList();
  }

  private static String scriptOf(Cell cell) {
    return cell.marks().stream().map(Mark::sign).collect(Collectors.joining(" "));
  }

  private String columns(Function<Cell, String> textOf) {
    return " ".repeat(indent - 2)
        + cells.stream()
            .map(cell -> padded(textOf.apply(cell), cellWidth + gap))
            .collect(Collectors.joining());
  }

  private static String padded(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }
}
