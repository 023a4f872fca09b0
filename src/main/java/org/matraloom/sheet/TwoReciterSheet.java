package org.matraloom.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.matraloom.breath.Breath;
import org.matraloom.score.Avartana;
import org.matraloom.score.Performance;
import org.matraloom.score.TwoReciters;
import org.matraloom.score.TwoReciters.SideBySide;
import org.matraloom.script.SolluWriting;
import org.matraloom.time.Ratio;

/**
 * What two reciters say, written down in one system of rows: below each avartana of the first
 * reciter that of the second, beat under beat.
 *
 * @param reciters what each says
 * @param first the sheet of the first reciter
 * @param second the sheet of the second one, from the same start on
 */
public record TwoReciterSheet(TwoReciters reciters, Sheet first, Sheet second) {

  private static final int MOST_MARKS_A_LINE = 24;

  /** Names of strokes are wider than sollus. */
  private static final int MOST_STROKES_A_LINE = 16;

  /**
   * Writes both down.
   *
   * @param reciters what each says
   * @param options what goes on the page; a row is an avartana, and there is no list of kriyas
   * @param breathing the breaths to mark when one of them performs
   * @return the sheets of both
   * @throws IllegalArgumentException if one is too long, see {@link Sheet#canHold}
   */
  public static TwoReciterSheet of(
      TwoReciters reciters, SheetOptions options, Function<Performance, List<Breath>> breathing) {
    Performance first = Performance.of(reciters.first());
    Performance second = Performance.of(reciters.second());
    return new TwoReciterSheet(
        reciters,
        Sheet.of(first, options, breathing.apply(first)),
        Sheet.of(second, options, breathing.apply(second)));
  }

  /**
   * What is said, and below each line the strokes of a drum that plays it, for the drawn forms.
   *
   * @param said the sheet of the voice, a row an avartana
   * @param strokes how the strokes of its sollus are written
   * @return the sheet of both
   */
  public static Sheet withStrokes(Sheet said, SolluWriting strokes) {
    SheetOptions options = said.options();
    Sheet played =
        Sheet.of(
            said.performance(),
            new SheetOptions(options.lines(), options.large(), false, strokes),
            List.of());
    List<Row> below = played.rows().stream().map(row -> bare(row, Row.DRUM, row.cells())).toList();
    List<Row> above = said.rows().stream().map(row -> labelled(row, Row.VOICE, true)).toList();
    List<Row> rows = new Lines(said.performance().avartana(), MOST_STROKES_A_LINE).of(above, below);
    return new Sheet(said.performance(), options, rows, said.closing());
  }

  /**
   * Both as one sheet for the drawn forms. A dense avartana is cut into lines of both reciters.
   *
   * @return the sheet
   */
  public Sheet together() {
    List<Row> below =
        labelled(second, Row.SECOND).stream().map(row -> says(row) ? row : wordless(row)).toList();
    List<Row> rows =
        new Lines(first.performance().avartana(), MOST_MARKS_A_LINE)
            .of(labelled(first, Row.FIRST), below);
    return new Sheet(first.performance(), first.options(), rows, closing());
  }

  /** The sentences below the rows. */
  List<String> closing() {
    List<String> closing = new ArrayList<>();
    closing.add("First reciter: " + String.join(" ", first.closing()));
    List<String> sentences = second.closing();
    String end =
        reciters.endsThePiece()
            ? String.join(" ", sentences)
            : sentences.get(0)
                + " Silent from "
                + second.performance().avartana().say(second.performance().endBeat())
                + " on.";
    closing.add("Second reciter: " + end);
    boolean even = reciters.stretches().stream().allMatch(SideBySide::isEven);
    closing.add(
        even
            ? "Where both have a line, they begin and end together."
            : "They do not begin and end together everywhere.");
    return closing;
  }

  /** The rows of one reciter; one who does not end the piece lands nowhere. */
  List<Row> labelled(Sheet sheet, String label) {
    boolean lands = sheet == first || reciters.endsThePiece();
    return sheet.rows().stream().map(row -> labelled(row, label, lands)).toList();
  }

  private static Row labelled(Row row, String label, boolean lands) {
    return new Row(
        row.number(),
        label,
        row.cells(),
        row.parts(),
        row.turns(),
        row.breaths(),
        row.landing().filter(beat -> lands),
        row.tags());
  }

  /** The marks of a row and nothing else of it. */
  private static Row bare(Row row, String label, List<Cell> cells) {
    return new Row(
        row.number(), label, cells, List.of(), List.of(), List.of(), Optional.empty(), List.of());
  }

  private static Row wordless(Row row) {
    return bare(row, row.label(), row.cells().stream().map(Cell::withoutMarks).toList());
  }

  /** Whether there is something to say in a row. */
  static boolean says(Row row) {
    return !row.parts().isEmpty() || row.landing().isPresent();
  }

  /**
   * Rows of two, cut into lines at the same beats: after angas, as far as that can be.
   *
   * @param avartana the cycle
   * @param mostMarks how many marks a line holds
   */
  private record Lines(Avartana avartana, int mostMarks) {

    List<Row> of(List<Row> above, List<Row> below) {
      List<Row> lines = new ArrayList<>();
      for (int index = 0; index < Math.max(above.size(), below.size()); index++) {
        List<Row> both = new ArrayList<>();
        both.addAll(
            above.subList(Math.min(index, above.size()), Math.min(index + 1, above.size())));
        int own = both.size();
        both.addAll(
            below.subList(Math.min(index, below.size()), Math.min(index + 1, below.size())));
        List<Integer> cuts = cuts(both.get(0), Math.max(1, mostMarks / densest(both)));
        for (int line = 0; line + 1 < cuts.size(); line++) {
          for (int each = 0; each < both.size(); each++) {
            Row part = part(both.get(each), cuts.get(line), cuts.get(line + 1));
            if (each < own || hasMarks(part)) {
              lines.add(part);
            }
          }
        }
      }
      return lines;
    }

    private List<Integer> cuts(Row row, int mostBeats) {
      Avartana going = avartana.goingOnAt(row.startBeat());
      int cells = row.cells().size();
      List<Integer> cuts = new ArrayList<>(LineBreaks.of(going, mostBeats).starts());
      cuts.removeIf(cut -> cut >= cells);
      cuts.add(cells);
      return cuts;
    }

    private static int densest(List<Row> rows) {
      return rows.stream()
          .flatMap(row -> row.cells().stream())
          .mapToInt(cell -> cell.marks().size())
          .max()
          .orElse(1);
    }
  }

  /** Some beats of a row; a round is summed up where it begins. */
  private static Row part(Row whole, int from, int to) {
    List<Cell> cells = whole.cells().subList(from, Math.min(to, whole.cells().size()));
    Ratio start = cells.get(0).from();
    Ratio end = cells.get(cells.size() - 1).to();
    return new Row(
        whole.number(),
        whole.label(),
        cells,
        whole.parts().stream().filter(part -> lies(part.from(), start, end)).toList(),
        whole.turns().stream().filter(turn -> lies(turn.beat(), start, end)).toList(),
        whole.breathsIn(start, end),
        whole.landing().filter(beat -> beat.compareTo(start) > 0 && beat.compareTo(end) <= 0),
        whole.tags().stream().filter(tag -> tag.reaches(start, end)).toList());
  }

  private static boolean hasMarks(Row row) {
    return row.landing().isPresent()
        || row.cells().stream().anyMatch(cell -> !cell.marks().isEmpty());
  }

  private static boolean lies(Ratio beat, Ratio start, Ratio end) {
    return beat.compareTo(start) >= 0 && beat.compareTo(end) < 0;
  }
}
