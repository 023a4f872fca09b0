package org.matraloom.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.breath.Breath;
import org.matraloom.score.Performance;
import org.matraloom.score.Sollu;
import org.matraloom.score.Span;
import org.matraloom.time.Ratio;

/**
 * The content of a written page, before it has a form: what every form of it says.
 *
 * @param performance what is written down
 * @param options what goes on the page
 * @param rows the rows, in order
 * @param closing the sentences below them, the last one the verdict
 */
public record Sheet(
    Performance performance, SheetOptions options, List<Row> rows, List<String> closing) {

  /** The most matras, kalam included, that are written on one sheet. */
  public static final long MOST_MATRAS = 250_000;

  /** Copies the lists. */
  public Sheet {
    rows = List.copyOf(rows);
    closing = List.copyOf(closing);
  }

  /**
   * Whether a performance is short enough to be written down.
   *
   * @param performance what is performed
   * @return true if it has at most {@value #MOST_MATRAS} matras
   */
  public static boolean canHold(Performance performance) {
    return performance.spans().stream()
            .map(Span::matras)
            .reduce(Ratio.ZERO, Ratio::plus)
            .compareTo(Ratio.of(MOST_MATRAS))
        <= 0;
  }

  /**
   * Writes a performance down.
   *
   * @param performance what is performed
   * @param options what goes on the page
   * @param breaths the breaths of the plan, in order; none for an unmarked page
   * @return its sheet
   * @throws IllegalArgumentException if it is too long, see {@link #canHold}
   */
  public static Sheet of(Performance performance, SheetOptions options, List<Breath> breaths) {
    if (!canHold(performance)) {
      throw new IllegalArgumentException("a sheet holds at most " + MOST_MATRAS + " matras");
    }
    MarkReader said = MarkReader.read(performance, breaths);
    boolean byPhrase = options.lines() == SheetOptions.Lines.PHRASE;
    List<Row.Tag> tags =
        TagReader.of(performance).stream()
            .filter(tag -> !byPhrase || tag.kind() != Row.Tag.Kind.NAME)
            .toList();
    RowBuilder builder =
        new RowBuilder(performance, written(said.marks(), options), said.turns(), tags);
    List<Row> rows = byPhrase ? builder.byPhrase(said.openings()) : builder.byAvartana();
    SheetWords words = new SheetWords(performance, options.writing().script(), options.leadIn());
    return new Sheet(performance, options, rows, List.of(words.sum(), words.landing()));
  }

  private static List<Mark> written(List<Mark> marks, SheetOptions options) {
    List<Mark> written = new ArrayList<>(marks.size());
    for (int index = 0; index < marks.size(); index++) {
      Mark mark = marks.get(index);
      if (mark instanceof Mark.Said said) {
        Optional<Sollu> before = index == 0 ? Optional.empty() : sollu(marks.get(index - 1));
        Optional<Sollu> after =
            index + 1 == marks.size() ? Optional.empty() : sollu(marks.get(index + 1));
        written.add(said.written(options.writing().write(before, said.sollu(), after)));
      } else {
        written.add(mark);
      }
    }
    return written;
  }

  /**
   * Whether a breath is marked somewhere.
   *
   * @return true if any row has one
   */
  public boolean marksBreaths() {
    return rows.stream().anyMatch(row -> !row.breaths().isEmpty());
  }

  /** Whether a sound rings on for a matra of its own somewhere. */
  boolean rings() {
    return rows.stream()
        .flatMap(row -> row.cells().stream())
        .flatMap(cell -> cell.marks().stream())
        .anyMatch(Mark.Karvai.class::isInstance);
  }

  /** Whether a mora is marked somewhere. */
  boolean hasStatements() {
    return rows.stream()
        .flatMap(row -> row.tags().stream())
        .anyMatch(tag -> tag.kind() == Row.Tag.Kind.STATEMENT);
  }

  private static Optional<Sollu> sollu(Mark mark) {
    return mark instanceof Mark.Said said ? Optional.of(said.sollu()) : Optional.empty();
  }
}
