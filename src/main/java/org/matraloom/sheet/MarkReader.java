package org.matraloom.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.breath.Breath;
import org.matraloom.score.Matras;
import org.matraloom.score.Moment;
import org.matraloom.score.MomentListener;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.score.Spoken;
import org.matraloom.time.Ratio;

/** Writes the moments of a performance down as marks, in order. */
final class MarkReader implements MomentListener {

  private final List<Mark> marks = new ArrayList<>();
  private final List<Row.NadaiTurn> turns = new ArrayList<>();
  private final List<RowBuilder.Opening> openings = new ArrayList<>();
  private int round;
  private boolean insideNamed;

  private final List<Breath> breaths;
  private int nextBreath;

  private MarkReader(List<Breath> breaths) {
    this.breaths = breaths;
  }

  static MarkReader read(Performance performance, List<Breath> breaths) {
    MarkReader reader = new MarkReader(breaths);
    performance.moments().forEachRemaining(moment -> moment.tell(reader));
    reader.openings.removeIf(opening -> opening.beat().equals(performance.endBeat()));
    return reader;
  }

  List<Mark> marks() {
    return marks;
  }

  List<Row.NadaiTurn> turns() {
    return turns;
  }

  List<RowBuilder.Opening> openings() {
    return openings;
  }

  @Override
  public void spanStarts(Moment.SpanStart start) {
    round = start.span() instanceof Span.Round begun ? begun.number() : round;
    open(start.beat(), "", start.span() instanceof Span.Round ? round : 0);
    insideNamed = false;
    if (turns.isEmpty()) {
      turns.add(new Row.NadaiTurn(start.beat(), start.span().matrasPerBeat()));
    }
  }

  @Override
  public void phraseStarts(Moment.PhraseStart start) {
    if (start.depth() == 1) {
      open(start.beat(), start.name(), round);
      insideNamed = true;
    }
  }

  @Override
  public void phraseEnds(Moment.PhraseEnd end) {
    if (end.depth() == 1 && insideNamed) {
      open(end.beat(), "", round);
      insideNamed = false;
    }
  }

  @Override
  public void nadaiChanges(Moment.NewNadai change) {
    turns.removeIf(turn -> turn.beat().equals(change.beat()));
    turns.add(new Row.NadaiTurn(change.beat(), change.to()));
  }

  @Override
  public void spoken(Spoken spoken) {
    Ratio own = spoken.ownBeats();
    int density = spoken.matrasPerBeat();
    boolean opens = spoken.opens() == Spoken.Opens.ROUND || spoken.opens() == Spoken.Opens.PHRASE;
    marks.add(
        new Mark.Said(
            spoken.beat(),
            own,
            density,
            speed(own, density),
            spoken.sollu(),
            "",
            opens,
            breath(spoken.beat().plus(own))));
    for (Matras ring : spoken.rings()) {
      for (Matras one : ring.each()) {
        marks.add(
            new Mark.Karvai(
                one.beat(), one.beats(), one.matrasPerBeat(), speed(one), breath(one.endBeat())));
      }
    }
  }

  @Override
  public void rests(Moment.Rest rest) {
    for (Matras one : rest.matras().each()) {
      marks.add(
          new Mark.Silent(
              one.beat(), one.beats(), one.matrasPerBeat(), speed(one), breath(one.endBeat())));
    }
  }

  @Override
  public void gridStarts(Moment.GridStart start) {
    // a mark knows its matras itself
  }

  @Override
  public void barPassed(Moment.BarPassed passed) {
    // the page has the bars of the tala
  }

  @Override
  public void groupStarts(Moment.GroupStart start) {
    // its figure is a tag
  }

  @Override
  public void breathWished(Moment.BreathWished wished) {
    // the plan has heard it
  }

  private void open(Ratio beat, String name, int inRound) {
    if (!openings.isEmpty() && openings.get(openings.size() - 1).beat().equals(beat)) {
      openings.remove(openings.size() - 1);
    }
    openings.add(new RowBuilder.Opening(beat, name, inRound));
  }

  /** The next breath of the plan, if it begins before the end of the mark that is written. */
  private Optional<Breath> breath(Ratio end) {
    boolean begins =
        nextBreath < breaths.size() && breaths.get(nextBreath).startBeat().compareTo(end) < 0;
    return begins ? Optional.of(breaths.get(nextBreath++)) : Optional.empty();
  }

  private static int speed(Matras one) {
    return speed(one.beats(), one.matrasPerBeat());
  }

  /** How many marks of a length go into a matra, where that is 2, 4, 8 and so on; else 1. */
  private static int speed(Ratio beats, int matrasPerBeat) {
    Ratio perMatra = Ratio.ONE.dividedBy(beats.times(matrasPerBeat));
    boolean doubling = perMatra.isWhole() && Long.bitCount(perMatra.num()) == 1;
    return doubling ? (int) perMatra.num() : 1;
  }
}
