package org.matraloom.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.kanakku.SumWords;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.score.Step;
import org.matraloom.time.Ratio;

/**
 * One line in three speeds under one another: said once, twice in the second kalam, and four times
 * in the third, so that all three take the same beats.
 */
public final class Trikala {

  private static final int SPEEDS = 3;
  private static final int MOST_MARKS_A_LINE = 34;

  private Trikala() {}

  /**
   * Writes the first round of a performance down three times.
   *
   * @param performance what is performed
   * @param options what goes on the page; breaths and cues are left out
   * @return a sheet for the drawn forms, whose rows are numbered by their speed
   */
  public static Sheet of(Performance performance, SheetOptions options) {
    Span.Round round = performance.rounds().get(0);
    Composition composition = performance.composition();
    SheetOptions plain =
        new SheetOptions(SheetOptions.Lines.AVARTANA, options.large(), false, options.writing());
    List<Sheet> speeds = new ArrayList<>();
    for (int kalam = 1; kalam <= SPEEDS; kalam++) {
      speeds.add(Sheet.of(alone(round, composition, kalam), plain, List.of()));
    }
    int beats = beatsALine(speeds.get(SPEEDS - 1));
    List<Row> rows = new ArrayList<>();
    for (int row = 0; row < speeds.get(0).rows().size(); row++) {
      int cells = speeds.get(0).rows().get(row).cells().size();
      for (int from = 0; from < cells; from += beats) {
        for (int kalam = 1; kalam <= SPEEDS; kalam++) {
          Row whole = speeds.get(kalam - 1).rows().get(row);
          part(whole, kalam, from, Math.min(cells, from + beats)).ifPresent(rows::add);
        }
      }
    }
    List<String> closing = new ArrayList<>();
    for (int kalam = 1; kalam <= SPEEDS; kalam++) {
      closing.add(closing(kalam, speeds.get(kalam - 1).performance()));
    }
    SheetOptions drawn =
        new SheetOptions(SheetOptions.Lines.SPEEDS, options.large(), false, options.writing());
    return new Sheet(speeds.get(0).performance(), drawn, rows, closing);
  }

  private static Performance alone(Span.Round round, Composition composition, int kalam) {
    return Performance.of(
        new Composition(
            composition.title(),
            composition.avartana(),
            composition.tempo(),
            composition.avartana().placeOf(round.startBeat()),
            composition.eduppuBeat(),
            composition.phrases(),
            List.of(new Step.Say(round.phrase(), 1 << (kalam - 1), round.nadai(), kalam))));
  }

  /** Two beats where the third speed leaves room for them, four of a slow line, else one. */
  private static int beatsALine(Sheet fastest) {
    int most =
        fastest.rows().stream()
            .flatMap(row -> row.cells().stream())
            .mapToInt(cell -> cell.marks().size())
            .max()
            .orElse(1);
    return most * 4 <= MOST_MARKS_A_LINE ? 4 : most * 2 <= MOST_MARKS_A_LINE ? 2 : 1;
  }

  /** Some beats of an avartana in one speed; nothing where it has ended before them. */
  private static Optional<Row> part(Row whole, int kalam, int from, int to) {
    List<Cell> cells = whole.cells().subList(from, to);
    Ratio start = cells.get(0).from();
    Ratio end = cells.get(cells.size() - 1).to();
    boolean empty = cells.stream().allMatch(cell -> cell.marks().isEmpty());
    return empty
        ? Optional.empty()
        : Optional.of(
            new Row(
                kalam,
                "",
                cells,
                List.of(),
                whole.turns().stream().filter(turn -> lies(turn.beat(), start, end)).toList(),
                List.of(),
                whole
                    .landing()
                    .filter(beat -> beat.compareTo(start) > 0)
                    .filter(beat -> beat.compareTo(end) <= 0 && kalam == SPEEDS),
                whole.tags().stream()
                    .filter(tag -> kalam == 1 && tag.reaches(start, end))
                    .toList()));
  }

  private static boolean lies(Ratio beat, Ratio start, Ratio end) {
    return beat.compareTo(start) >= 0 && beat.compareTo(end) < 0;
  }

  private static String closing(int kalam, Performance performance) {
    Avartana avartana = performance.composition().avartana();
    int times = 1 << (kalam - 1);
    return "Line "
        + kalam
        + ": kalam "
        + kalam
        + ", "
        + SumWords.counted(performance.rounds().get(0).matras(), "matra")
        + (times == 1 ? " once" : " " + times + " times")
        + ", from "
        + avartana.say(performance.startBeat())
        + " to "
        + avartana.say(performance.endBeat())
        + ".";
  }
}
