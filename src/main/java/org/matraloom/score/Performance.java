package org.matraloom.score;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/**
 * A composition laid out in time: its rounds and silences, each with an exact beginning.
 *
 * @param composition what is performed
 * @param spans rounds and silences in order, without gaps
 * @param closing what follows the last of them
 * @param notices the lines of the plan that take no time, in order
 * @param avartana the cycle that it is set in, with the turns to other talas
 */
public record Performance(
    Composition composition,
    List<Span> spans,
    Closing closing,
    List<Notice> notices,
    Avartana avartana) {

  /** Copies the lists. */
  public Performance {
    spans = List.copyOf(spans);
    notices = List.copyOf(notices);
  }

  /**
   * A part of a performance, after which nothing follows.
   *
   * @param composition what is performed
   * @param spans rounds and silences in order, without gaps
   */
  public Performance(Composition composition, List<Span> spans) {
    this(composition, spans, Closing.NONE, List.of(), composition.avartana());
  }

  /**
   * Lays out the perform plan of a composition.
   *
   * @param composition what is performed
   * @return its performance
   * @throws ArithmeticException if it is too long to count
   */
  public static Performance of(Composition composition) {
    PlanLayout layout = PlanLayout.of(composition);
    return new Performance(
        composition, layout.spans(), composition.closing(), layout.notices(), layout.avartana());
  }

  /**
   * The same at another tempo.
   *
   * @param tempo the tempo to take
   * @return a copy
   */
  public Performance at(Tempo tempo) {
    return new Performance(composition.at(tempo), spans, closing, notices, avartana);
  }

  /**
   * The rounds alone.
   *
   * @return in order, at least one for a composition that says something
   */
  public List<Span.Round> rounds() {
    List<Span.Round> rounds = new ArrayList<>();
    for (Span span : spans) {
      if (span instanceof Span.Round round) {
        rounds.add(round);
      }
    }
    return Collections.unmodifiableList(rounds);
  }

  /**
   * What is performed, moment by moment. The first round of a performance that is a part of a
   * longer one begins in silence.
   *
   * @return a new reading from the beginning; it holds no more than one sollu and its karvai
   */
  public Iterator<Moment> moments() {
    return new MomentReader(this);
  }

  /**
   * The sollus that are said, one by one.
   *
   * @return in order, as many as the rounds hold; not more than one is held
   */
  public Stream<Spoken> spoken() {
    Iterable<Moment> moments = this::moments;
    return StreamSupport.stream(moments.spliterator(), false)
        .filter(Spoken.class::isInstance)
        .map(Spoken.class::cast);
  }

  /**
   * A stretch of this performance, each round still at its own place in the tala.
   *
   * @param first the first round kept, from 1
   * @param last the last round kept, not before the first
   * @return the rounds and the silences between them; what closes the whole, if it goes to its end
   * @throws IllegalArgumentException if there are no such rounds
   */
  public Performance onlyRounds(int first, int last) {
    int from = indexOf(first);
    int to = indexOf(last);
    if (from < 0 || to < from) {
      throw new IllegalArgumentException(
          "rounds " + first + " to " + last + " are not among the " + rounds().size() + " rounds");
    }
    boolean toTheEnd = to + 1 == spans.size();
    return new Performance(
        composition,
        spans.subList(from, to + 1),
        toTheEnd ? closing : Closing.NONE,
        noticesOf(from, to, toTheEnd),
        avartana.from(spans.get(from).startBeat()));
  }

  /** The lines without time that belong to some spans, with those that open the first of them. */
  private List<Notice> noticesOf(int from, int to, boolean toTheEnd) {
    List<Notice> kept = new ArrayList<>();
    for (Notice notice : notices) {
      if (notice.span() >= from && notice.span() <= (toTheEnd ? to + 1 : to)) {
        kept.add(notice.inPart(from));
      }
    }
    return kept;
  }

  /**
   * Where a round stands among the rounds and silences.
   *
   * @param round a round of this performance
   * @return its index in {@link #spans()}
   */
  public int indexOf(Span.Round round) {
    return indexOf(round.number());
  }

  private int indexOf(int number) {
    for (int i = 0; i < spans.size(); i++) {
      if (spans.get(i) instanceof Span.Round round && round.number() == number) {
        return i;
      }
    }
    return -1;
  }

  /**
   * Where the first span begins.
   *
   * @return beats; 0 is the samam of the avartana in which the whole performance starts
   */
  public Ratio startBeat() {
    return spans.isEmpty() ? composition.startBeat() : spans.get(0).startBeat();
  }

  /**
   * Where the last matra ends.
   *
   * @return beats; 0 is the samam of the avartana in which the performance starts
   */
  public Ratio endBeat() {
    return spans.isEmpty() ? startBeat() : spans.get(spans.size() - 1).endBeat();
  }

  /**
   * Where the last sound ends.
   *
   * @return {@link #endBeat()}, or where the last stroke on it has rung out
   */
  public Ratio soundEndBeat() {
    return closing
        .stroke()
        .map(stroke -> endBeat().plus(stroke.beats(lastMatrasPerBeat())))
        .orElse(endBeat());
  }

  /**
   * Where the hand stops.
   *
   * @return {@link #soundEndBeat()}, or later where the tala goes on
   */
  public Ratio handEndBeat() {
    Ratio cycles = Ratio.of((long) closing.avartanas() * avartana.goingOnAt(endBeat()).beats());
    Ratio end = endBeat().plus(cycles);
    return end.compareTo(soundEndBeat()) > 0 ? end : soundEndBeat();
  }

  /** The matras a beat of the last round, in which a last stroke is counted. */
  int lastMatrasPerBeat() {
    List<Span.Round> rounds = rounds();
    return rounds.isEmpty()
        ? PlanLayout.FIRST_NADAI
        : rounds.get(rounds.size() - 1).matrasPerBeat();
  }

  /**
   * The length from the first round's beginning to the end of the last span.
   *
   * @return beats
   */
  public Ratio beats() {
    return endBeat().minus(startBeat());
  }
}
