package org.matraloom.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.breath.Breath;
import org.matraloom.score.Avartana;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.score.TalaSections;
import org.matraloom.time.Ratio;

/** Cuts the marks of a performance into rows, front to back. */
final class RowBuilder {

  /**
   * A place where a phrase named in the round's own phrase begins, or where what follows it goes
   * on.
   *
   * @param beat where, in beats of the performance
   * @param name the phrase, or empty where no named phrase begins
   * @param round the round it belongs to; 0 for a silence between rounds
   */
  record Opening(Ratio beat, String name, int round) {}

  private static final String LAST_STROKE = "last stroke";

  private final Performance performance;
  private final Avartana avartana;
  private final List<Mark> marks;
  private final List<Row.NadaiTurn> turns;
  private final List<Breath> breaths;
  private final List<Row.Tag> tags;
  private final List<Row> rows = new ArrayList<>();
  private final long firstAvartana;
  private int nextMark;
  private int nextTurn;
  private int nextBreath;
  private int nextTag;
  private int firstSpan;
  private List<Row.Tag> open = List.of();

  RowBuilder(
      Performance performance, List<Mark> marks, List<Row.NadaiTurn> turns, List<Row.Tag> tags) {
    this.performance = performance;
    this.avartana = performance.avartana();
    this.marks = marks;
    this.turns = turns;
    this.tags = tags;
    this.breaths = marks.stream().flatMap(mark -> mark.breath().stream()).toList();
    this.firstAvartana = avartanaOf(performance.startBeat());
  }

  /** One row an avartana, whole avartanas only. */
  List<Row> byAvartana() {
    Ratio from = Ratio.of(avartana.samamBefore(performance.startBeat()));
    do {
      Ratio to = from.plus(Ratio.of(avartana.goingOnAt(from).beats()));
      add(from, to, "");
      from = to;
    } while (from.compareTo(performance.soundEndBeat()) < 0);
    return List.copyOf(rows);
  }

  /** One row for each opening, from where it is to where the next one is. */
  List<Row> byPhrase(List<Opening> openings) {
    for (int index = 0; index < openings.size(); index++) {
      boolean last = index == openings.size() - 1;
      Ratio to = last ? performance.endBeat() : openings.get(index + 1).beat();
      add(openings.get(index).beat(), to, openings.get(index).name());
    }
    if (performance.closing().stroke().isPresent()) {
      Ratio end = Ratio.of(performance.soundEndBeat().ceil());
      add(performance.endBeat(), end, LAST_STROKE);
    }
    return List.copyOf(rows);
  }

  private void add(Ratio from, Ratio to, String label) {
    List<Cell> cells = new ArrayList<>();
    for (long beat = from.floor(); Ratio.of(beat).compareTo(to) < 0; beat++) {
      cells.add(cell(beat, from, to));
    }
    Ratio end = performance.endBeat();
    boolean landsHere = end.compareTo(from) > 0 && end.compareTo(to) <= 0;
    rows.add(
        new Row(
            (int) (avartanaOf(from) - firstAvartana) + 1,
            label,
            cells,
            parts(from, to),
            turnsBefore(to),
            breathsBefore(to),
            landsHere ? Optional.of(end) : Optional.empty(),
            tagsBefore(from, to)));
  }

  /** The tags that begin before the end of a row and have not ended before it. */
  private List<Row.Tag> tagsBefore(Ratio from, Ratio to) {
    List<Row.Tag> inside = new ArrayList<>(open);
    while (nextTag < tags.size() && tags.get(nextTag).from().compareTo(to) < 0) {
      inside.add(tags.get(nextTag++));
    }
    open = inside.stream().filter(tag -> tag.to().compareTo(to) > 0).toList();
    return inside.stream().filter(tag -> tag.reaches(from, to)).toList();
  }

  private Cell cell(long beat, Ratio rowFrom, Ratio rowTo) {
    Ratio from = max(Ratio.of(beat), rowFrom);
    Ratio to = Ratio.of(beat + 1).min(rowTo);
    List<Mark> inside = new ArrayList<>();
    while (nextMark < marks.size() && marks.get(nextMark).beat().compareTo(to) < 0) {
      inside.add(marks.get(nextMark++));
    }
    boolean onBeat = from.isWhole();
    return new Cell(
        beat,
        from,
        to,
        onBeat ? Optional.of(avartana.kriyaAt(beat)) : Optional.empty(),
        avartana.isSamam(beat),
        avartana.repeatsKriya(beat),
        to.isWhole() ? end(beat + 1) : Cell.End.BEAT,
        inside);
  }

  private Cell.End end(long beat) {
    Ratio position = Ratio.of(beat);
    int place = (int) avartana.placeOf(position).floor();
    if (place == 0) {
      return Cell.End.AVARTANA;
    }
    boolean anga = avartana.goingOnAt(position).angaStarts().contains(place);
    return anga ? Cell.End.ANGA : Cell.End.BEAT;
  }

  private List<RoundPart> parts(Ratio from, Ratio to) {
    List<RoundPart> parts = new ArrayList<>();
    List<Span> spans = performance.spans();
    while (firstSpan < spans.size() && spans.get(firstSpan).endBeat().compareTo(from) <= 0) {
      firstSpan++;
    }
    for (int index = firstSpan;
        index < spans.size() && spans.get(index).startBeat().compareTo(to) < 0;
        index++) {
      if (spans.get(index) instanceof Span.Round round && round.beats().signum() > 0) {
        parts.add(part(round, from, to));
      }
    }
    return parts;
  }

  private static RoundPart part(Span.Round round, Ratio from, Ratio to) {
    Ratio begin = max(round.startBeat(), from);
    Ratio end = round.endBeat().min(to);
    return new RoundPart(
        round,
        round.startBeat().compareTo(from) >= 0,
        begin,
        end.minus(begin),
        end.minus(begin).times(round.matrasPerBeat()),
        end.minus(round.startBeat()).times(round.matrasPerBeat()));
  }

  private List<Row.NadaiTurn> turnsBefore(Ratio to) {
    List<Row.NadaiTurn> inside = new ArrayList<>();
    while (nextTurn < turns.size() && turns.get(nextTurn).beat().compareTo(to) < 0) {
      inside.add(turns.get(nextTurn++));
    }
    return inside;
  }

  private List<Breath> breathsBefore(Ratio to) {
    List<Breath> inside = new ArrayList<>();
    while (nextBreath < breaths.size() && breaths.get(nextBreath).startBeat().compareTo(to) < 0) {
      inside.add(breaths.get(nextBreath++));
    }
    return inside;
  }

  private long avartanaOf(Ratio beat) {
    return TalaSections.numberAt(avartana, beat);
  }

  private static Ratio max(Ratio a, Ratio b) {
    return a.compareTo(b) >= 0 ? a : b;
  }
}
