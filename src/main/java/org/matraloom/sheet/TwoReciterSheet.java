package org.matraloom.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import org.matraloom.breath.Breath;
import org.matraloom.score.Performance;
import org.matraloom.score.TwoReciters;
import org.matraloom.score.TwoReciters.SideBySide;
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

  /** The label of the rows of the second reciter. */
  static final String SECOND = "reciter 2";

  /** The label of the rows of the first reciter in the drawn forms. */
  static final String FIRST = "reciter 1";

  private static final int MOST_MARKS_A_LINE = 28;
  private static final int HALF = 4;

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
   * Both as one sheet for the drawn forms. A dense avartana is cut into lines of both reciters.
   *
   * @return the sheet
   */
  public Sheet together() {
    List<Row> rows = new ArrayList<>();
    int beats = beatsALine();
    List<Row> above = labelled(first, FIRST);
    List<Row> below = labelled(second, SECOND);
    for (int index = 0; index < Math.max(above.size(), below.size()); index++) {
      Optional<Row> one = at(above, index);
      Optional<Row> other = at(below, index).filter(TwoReciterSheet::says);
      int cells = one.or(() -> other).map(row -> row.cells().size()).orElse(0);
      for (int from = 0; from < cells; from += beats) {
        int begin = from;
        int end = Math.min(cells, from + beats);
        one.ifPresent(row -> rows.add(part(row, begin, end)));
        other
            .map(row -> part(row, begin, end))
            .filter(TwoReciterSheet::hasMarks)
            .ifPresent(rows::add);
      }
    }
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
    return sheet.rows().stream()
        .map(
            row ->
                new Row(
                    row.number(),
                    label,
                    row.cells(),
                    row.parts(),
                    row.turns(),
                    row.breaths(),
                    row.landing().filter(beat -> lands),
                    row.tags()))
        .toList();
  }

  /** Whether there is something to say in a row. */
  static boolean says(Row row) {
    return !row.parts().isEmpty() || row.landing().isPresent();
  }

  private static Optional<Row> at(List<Row> rows, int index) {
    return index < rows.size() ? Optional.of(rows.get(index)) : Optional.empty();
  }

  /** A whole avartana where it is not dense, else four beats, two, or one. */
  private int beatsALine() {
    int most = most(row -> row.cells().stream().mapToInt(c -> c.marks().size()).max().orElse(1));
    int beats = most(row -> row.cells().size());
    for (int tried : List.of(beats, HALF, HALF / 2)) {
      if (most * tried <= MOST_MARKS_A_LINE) {
        return tried;
      }
    }
    return 1;
  }

  private int most(ToIntFunction<Row> of) {
    return Math.max(
        first.rows().stream().mapToInt(of).max().orElse(1),
        second.rows().stream().mapToInt(of).max().orElse(1));
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
