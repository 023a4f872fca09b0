package org.matraloom.sheet;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.matraloom.score.Performance;
import org.matraloom.score.Recitation;
import org.matraloom.score.Span;
import org.matraloom.score.Utterance;
import org.matraloom.time.Ratio;

/**
 * Says a performance once and keeps its marks in order.
 *
 * <p>Whether a mark is written faster follows from its length: it is, if it is not a whole number
 * of matras. A held sollu is written as one matra and karvais, which take the same time.
 */
final class MarkReader {

  private final Performance performance;
  private final List<Mark> marks = new ArrayList<>();
  private final List<NadaiTurn> turns = new ArrayList<>();
  private final List<Opening> openings = new ArrayList<>();
  private Ratio spanStart = Ratio.ZERO;
  private int round;
  private int matrasPerBeat;
  private boolean opens;
  private boolean insideNamed;

  private MarkReader(Performance performance) {
    this.performance = performance;
  }

  static MarkReader read(Performance performance) {
    MarkReader reader = new MarkReader(performance);
    performance.spans().forEach(reader::take);
    reader.turns.removeIf(turn -> turn.beat().equals(performance.endBeat()));
    reader.openings.removeIf(opening -> opening.beat().equals(performance.endBeat()));
    return reader;
  }

  List<Mark> marks() {
    return marks;
  }

  List<NadaiTurn> turns() {
    return turns;
  }

  List<Opening> openings() {
    return openings;
  }

  private void take(Span span) {
    if (span.beats().signum() == 0) {
      return;
    }
    spanStart = span.startBeat();
    setDensity(spanStart, span.matrasPerBeat());
    if (span instanceof Span.Round begun) {
      round = begun.number();
      open(spanStart, "", round);
      insideNamed = false;
      opens = true;
      Iterator<Utterance> said = Recitation.of(begun, performance.composition());
      said.forEachRemaining(this::take);
    } else {
      open(spanStart, "", 0);
      silence(spanStart, span.beats());
    }
  }

  private void take(Utterance utterance) {
    Ratio beat = spanStart.plus(utterance.atBeat());
    if (utterance instanceof Utterance.Sound sound) {
      Ratio unit = unit(sound.beats());
      marks.add(new Mark.Said(beat, unit, matrasPerBeat, speed(unit), sound.sollu(), "", opens));
      opens = false;
      ring(beat.plus(unit), sound.beats().minus(unit));
    } else if (utterance instanceof Utterance.Ring ring) {
      ring(beat, ring.beats());
    } else if (utterance instanceof Utterance.Quiet quiet) {
      silence(beat, quiet.beats());
    } else if (utterance instanceof Utterance.Entry entry) {
      opens = true;
      if (entry.depth() == 1) {
        open(beat, entry.name(), round);
        insideNamed = true;
      }
    } else if (utterance instanceof Utterance.Leave leave) {
      if (leave.depth() == 1 && insideNamed) {
        open(beat, "", round);
        insideNamed = false;
      }
    } else if (utterance instanceof Utterance.GroupHead) {
      opens = true;
    } else if (utterance instanceof Utterance.Density density) {
      setDensity(beat, density.matrasPerBeat());
    }
  }

  private void open(Ratio beat, String name, int inRound) {
    if (!openings.isEmpty() && openings.get(openings.size() - 1).beat().equals(beat)) {
      openings.remove(openings.size() - 1);
    }
    openings.add(new Opening(beat, name, inRound));
  }

  private void setDensity(Ratio beat, int density) {
    matrasPerBeat = density;
    if (!turns.isEmpty() && lastTurn().beat().equals(beat)) {
      turns.remove(turns.size() - 1);
    }
    if (turns.isEmpty() || lastTurn().matrasPerBeat() != density) {
      turns.add(new NadaiTurn(beat, density));
    }
  }

  private NadaiTurn lastTurn() {
    return turns.get(turns.size() - 1);
  }

  private void ring(Ratio from, Ratio beats) {
    Ratio end = from.plus(beats);
    Ratio unit = unit(beats);
    for (Ratio beat = from; beat.compareTo(end) < 0; beat = beat.plus(unit)) {
      marks.add(new Mark.Karvai(beat, unit, matrasPerBeat, speed(unit)));
    }
  }

  private void silence(Ratio from, Ratio beats) {
    Ratio end = from.plus(beats);
    Ratio matra = Ratio.of(1, matrasPerBeat);
    Ratio unit = beats.compareTo(matra) < 0 ? beats : matra;
    for (Ratio beat = from; beat.compareTo(end) < 0; beat = beat.plus(unit)) {
      Ratio left = end.minus(beat);
      Ratio length = left.compareTo(unit) < 0 ? left : unit;
      marks.add(new Mark.Silent(beat, length, matrasPerBeat, speed(length)));
    }
  }

  /** The longest of a matra, half of it and so on of which a length is a whole number. */
  private Ratio unit(Ratio beats) {
    Ratio unit = Ratio.of(1, matrasPerBeat);
    Ratio matras = beats.times(matrasPerBeat);
    while (!matras.isWhole() && matras.den() % 2 == 0) {
      matras = matras.times(2);
      unit = unit.dividedBy(2);
    }
    return matras.isWhole() ? unit : beats;
  }

  /** How many marks of a length go into a matra, where that is 2, 4, 8 and so on; else 1. */
  private int speed(Ratio beats) {
    Ratio perMatra = Ratio.ONE.dividedBy(beats.times(matrasPerBeat));
    boolean doubling = perMatra.isWhole() && Long.bitCount(perMatra.num()) == 1;
    return doubling ? (int) perMatra.num() : 1;
  }
}
