package org.matraloom.film;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.stream.LongStream;
import org.matraloom.picture.Typeface;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Avartana;
import org.matraloom.score.Kriya;
import org.matraloom.sheet.DrawnLine;
import org.matraloom.sheet.Row;
import org.matraloom.sheet.SheetWords;
import org.matraloom.time.Ratio;

/**
 * What is seen in a pass, from moment to moment: on every beat, and where a sign of the sheet
 * begins. Only the line that goes on and the one after it are held.
 */
final class PassViews implements Iterator<ScreenView> {

  private final FilmPass pass;
  private final Timeline timeline;
  private final Avartana avartana;
  private final SheetWords words;
  private final PassWords sections;
  private final Typeface typeface;
  private final double body;
  private final Iterator<Row> rows;
  private final Deque<DrawnLine> drawn = new ArrayDeque<>();
  private final Deque<Ratio> marks = new ArrayDeque<>();
  private ShownLine line;
  private Optional<ShownLine> next;
  private Ratio nextBeat;

  PassViews(FilmPass pass, Typeface typeface, double body) {
    this.pass = pass;
    this.timeline = pass.timeline();
    this.avartana = timeline.performance().avartana();
    this.words = new SheetWords(pass.sheet());
    this.sections = new PassWords(pass);
    this.typeface = typeface;
    this.body = body;
    this.rows = pass.sheet().rows().iterator();
    this.line = takeLine().orElseThrow(() -> new IllegalArgumentException("a sheet has rows"));
    this.next = takeLine();
    this.nextBeat = timeline.originBeat();
  }

  /** The line with which the piece begins. */
  ShownLine first() {
    return line;
  }

  private Optional<ShownLine> takeLine() {
    while (drawn.isEmpty() && rows.hasNext()) {
      drawn.addAll(DrawnLine.of(pass.sheet(), rows.next(), typeface, body));
    }
    if (drawn.isEmpty()) {
      return Optional.empty();
    }
    DrawnLine taken = drawn.remove();
    taken.marks().stream().map(DrawnLine.Stretch::from).forEach(marks::add);
    return Optional.of(new ShownLine(taken));
  }

  @Override
  public boolean hasNext() {
    return nextBeat.compareTo(timeline.endBeat()) <= 0 || !marks.isEmpty();
  }

  @Override
  public ScreenView next() {
    if (!hasNext()) {
      throw new NoSuchElementException("the pass is over");
    }
    boolean handFirst =
        nextBeat.compareTo(timeline.endBeat()) <= 0
            && (marks.isEmpty() || nextBeat.compareTo(marks.element()) <= 0);
    Ratio beat = handFirst ? nextBeat : marks.element();
    if (beat.equals(nextBeat)) {
      nextBeat = nextBeat.plus(Ratio.ONE);
    }
    while (!marks.isEmpty() && marks.element().compareTo(beat) <= 0) {
      marks.remove();
    }
    while (next.isPresent() && next.get().line().from().compareTo(beat) <= 0) {
      line = next.get();
      next = takeLine();
    }
    return view(beat);
  }

  private ScreenView view(Ratio beat) {
    long hand = Math.min(beat.floor(), timeline.endBeat().floor());
    Avartana now = avartana.goingOnAt(Ratio.of(hand));
    int count = (int) avartana.placeOf(Ratio.of(hand)).floor() + 1;
    Kriya kriya = avartana.kriyaAt(hand);
    return new ScreenView(
        beat,
        new ScreenView.Head(
            words.title(), sections.setting(), sections.section(beat), sections.place(beat)),
        new ScreenView.LineView(
            line, holding(line.line().cells(), beat), holding(line.line().marks(), beat)),
        next,
        new ScreenView.HandView(
            kriya, words.kriya(kriya), count, avartana.repeatsKriya(hand), cycle(now, hand)),
        sections.news(beat));
  }

  private List<Kriya> cycle(Avartana now, long hand) {
    long samam = avartana.samamBefore(Ratio.of(hand));
    return LongStream.range(samam, samam + now.beats()).mapToObj(avartana::kriyaAt).toList();
  }

  private static Optional<DrawnLine.Stretch> holding(List<DrawnLine.Stretch> all, Ratio beat) {
    return all.stream().filter(one -> one.holds(beat)).findFirst();
  }
}
