package org.matraloom.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.matraloom.kanakku.SumWords;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Kriya;
import org.matraloom.score.Nadai;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.score.Step;
import org.matraloom.time.Ratio;

/**
 * One round laid out in two nadais, so that one sees what lands on the claps in each.
 *
 * <p>Both begin where the round begins and keep every sollu; only the beats fall elsewhere.
 *
 * @param before the sheet of the round as it is performed
 * @param after the sheet of the same round in the other nadai
 */
public record Rebar(Sheet before, Sheet after) {

  private static final int BEAT_WIDTH = 22;
  private static final int LEAST_WIDTH = 12;

  /**
   * Lays a round out twice.
   *
   * @param round the round
   * @param composition the piece it belongs to
   * @param nadai the other nadai, 1 to {@value Composition#HIGHEST_NADAI}
   * @param options what goes on the page; breaths are left out
   * @return both layouts
   */
  public static Rebar of(
      Span.Round round, Composition composition, int nadai, SheetOptions options) {
    SheetOptions plain =
        new SheetOptions(SheetOptions.Lines.AVARTANA, options.large(), false, options.writing());
    return new Rebar(
        Sheet.of(alone(round, composition, round.nadai()), plain, List.of()),
        Sheet.of(alone(round, composition, nadai), plain, List.of()));
  }

  private static Performance alone(Span.Round round, Composition composition, int nadai) {
    return Performance.of(
        new Composition(
            composition.title(),
            composition.avartana(),
            composition.tempo(),
            composition.avartana().placeOf(round.startBeat()),
            composition.eduppuBeat(),
            composition.phrases(),
            List.of(new Step.Say(round.phrase(), 1, nadai, round.kalam()))));
  }

  /**
   * Both layouts on one sheet, avartana under avartana.
   *
   * @return a sheet for the drawn forms
   */
  public Sheet together() {
    List<Row> rows = new ArrayList<>();
    for (int index = 0; index < Math.max(before.rows().size(), after.rows().size()); index++) {
      add(before, index, rows);
      add(after, index, rows);
    }
    return new Sheet(
        before.performance(), before.options(), rows, List.of(end(before), end(after)));
  }

  private static void add(Sheet sheet, int index, List<Row> rows) {
    if (index < sheet.rows().size()) {
      Row row = sheet.rows().get(index);
      rows.add(
          new Row(
              row.number(),
              "in " + round(sheet).nadai(),
              row.cells(),
              row.parts(),
              row.turns(),
              List.of(),
              row.landing(),
              row.tags()));
    }
  }

  private static Span.Round round(Sheet sheet) {
    return sheet.performance().rounds().get(0);
  }

  private static String end(Sheet sheet) {
    Span.Round round = round(sheet);
    Avartana avartana = sheet.performance().avartana();
    return "In "
        + Nadai.inWords(round.nadai())
        + ": "
        + SumWords.counted(round.matras(), "matra")
        + " are "
        + SumWords.counted(round.beats(), "beat")
        + ", from "
        + avartana.say(round.startBeat())
        + " to "
        + avartana.say(round.endBeat())
        + "; on the claps: "
        + onClaps(sheet)
        + ".";
  }

  /** What sounds on each clap; in brackets where it began before. */
  private static String onClaps(Sheet sheet) {
    return CueMap.rows(sheet).stream()
        .flatMap(row -> row.cells().stream())
        .filter(cell -> cell.kriya().filter(Kriya.Clap.class::isInstance).isPresent())
        .flatMap(cell -> cell.marks().stream())
        .map(Mark::sign)
        .collect(Collectors.joining(" "));
  }

  /**
   * Both layouts as a table of plain text, a line a beat.
   *
   * @param out where it goes; each line ends with a line feed
   * @throws IOException if it cannot be written
   */
  public void write(Appendable out) throws IOException {
    List<Cell> left = cells(before);
    List<Cell> right = cells(after);
    int width = left.stream().map(cell -> signs(cell).length()).reduce(LEAST_WIDTH, Math::max);
    SheetWords words = new SheetWords(before);
    TextSheet.say(words.title() + ", " + round(before).phrase(), out);
    TextSheet.say(words.setting(), out);
    out.append('\n');
    line("", "in " + round(before).nadai(), "in " + round(after).nadai(), width, out);
    for (int index = 0; index < Math.max(left.size(), right.size()); index++) {
      Cell beat = index < left.size() ? left.get(index) : right.get(index);
      String mine = index < left.size() ? signs(left.get(index)) : "";
      String other = index < right.size() ? signs(right.get(index)) : "";
      line(words.beat(beat), mine, other, width, out);
      out.append(beat.end() == Cell.End.AVARTANA ? "\n" : "");
    }
    TextSheet.say(end(before), out);
    TextSheet.say(end(after), out);
  }

  private static void line(String beat, String left, String right, int width, Appendable out)
      throws IOException {
    String text = padded(beat, BEAT_WIDTH) + " | " + padded(left, width) + " | " + right;
    out.append(text.stripTrailing()).append('\n');
  }

  private static String padded(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }

  private static List<Cell> cells(Sheet sheet) {
    Ratio end = sheet.performance().endBeat();
    return sheet.rows().stream()
        .flatMap(row -> row.cells().stream())
        .filter(cell -> cell.from().compareTo(end) < 0)
        .toList();
  }

  private static String signs(Cell cell) {
    return cell.marks().stream().map(Mark::sign).collect(Collectors.joining(" "));
  }
}
