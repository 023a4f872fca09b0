package org.matraloom.score;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.Queue;
import org.matraloom.time.Ratio;

/**
 * Reads a performance moment by moment, and holds no more of it than one sollu and what lies inside
 * its karvai.
 */
final class MomentReader implements Iterator<Moment> {

  private final Performance performance;
  private final Queue<Moment> ready = new ArrayDeque<>();
  private final List<Moment> waiting = new ArrayList<>();
  private final Deque<String> phrases = new ArrayDeque<>();

  private int nextSpan;
  private Iterator<Utterance> utterances = Collections.emptyIterator();
  private Ratio spanStart = Ratio.ZERO;
  private int round;
  private int matrasPerBeat;
  private int toldMatrasPerBeat;
  private Spoken.Opens opens = Spoken.Opens.NOTHING;

  private boolean struck;
  private Spoken begun;
  private final List<Matras> rings = new ArrayList<>();

  MomentReader(Performance performance) {
    this.performance = performance;
  }

  @Override
  public boolean hasNext() {
    while (ready.isEmpty()) {
      if (utterances.hasNext()) {
        take(utterances.next());
      } else if (!openSpan()) {
        finish();
        return !ready.isEmpty();
      }
    }
    return true;
  }

  @Override
  public Moment next() {
    if (!hasNext()) {
      throw new NoSuchElementException("the performance has been read");
    }
    return ready.remove();
  }

  private boolean openSpan() {
    if (nextSpan == performance.spans().size()) {
      return strike();
    }
    Span span = performance.spans().get(nextSpan++);
    if (span instanceof Span.Round begins) {
      round = begins.number();
      open(span);
      phrases.clear();
      phrases.push(begins.phrase());
      utterances = Recitation.of(begins, performance.composition());
      opens = Spoken.Opens.ROUND;
    } else if (span.beats().signum() > 0) {
      finish();
      open(span);
      rest(span.startBeat(), span.beats());
    }
    return true;
  }

  /** The last stroke, counted in the matras of the last round; it belongs to that round. */
  private boolean strike() {
    Optional<Closing.Stroke> stroke = performance.closing().stroke();
    if (stroke.isEmpty() || struck) {
      return false;
    }
    struck = true;
    matrasPerBeat = performance.lastMatrasPerBeat();
    toldMatrasPerBeat = matrasPerBeat;
    Ratio matra = Ratio.of(1, matrasPerBeat);
    Ratio beat = performance.endBeat();
    begin(beat, new Utterance.Sound(beat, matra, stroke.get().sollu()));
    Ratio left = stroke.get().beats(matrasPerBeat).minus(matra);
    if (left.signum() > 0) {
      ring(beat.plus(matra), left);
    }
    return true;
  }

  private void open(Span span) {
    spanStart = span.startBeat();
    mark(new Moment.SpanStart(span));
    startGrid(spanStart, span.matrasPerBeat());
    if (toldMatrasPerBeat == 0) {
      toldMatrasPerBeat = matrasPerBeat;
    }
  }

  private void take(Utterance utterance) {
    Ratio beat = spanStart.plus(utterance.atBeat());
    if (utterance instanceof Utterance.Sound sound) {
      begin(beat, sound);
    } else if (utterance instanceof Utterance.Ring ring) {
      ring(beat, ring.beats());
    } else if (utterance instanceof Utterance.Quiet quiet) {
      finish();
      rest(beat, quiet.beats());
    } else if (utterance instanceof Utterance.Entry entry) {
      phrases.push(entry.name());
      mark(new Moment.PhraseStart(beat, entry.name(), entry.depth(), round));
      nextOpens(Spoken.Opens.PHRASE);
    } else if (utterance instanceof Utterance.Leave leave) {
      phrases.pop();
      mark(new Moment.PhraseEnd(beat, leave.name(), leave.depth()));
      nextOpens(Spoken.Opens.REST_OF_PHRASE);
    } else if (utterance instanceof Utterance.GroupHead head) {
      mark(new Moment.GroupStart(beat, head.size(), head.hold(), head.beats()));
      nextOpens(Spoken.Opens.PHRASE);
    } else if (utterance instanceof Utterance.Density density) {
      startGrid(beat, density.matrasPerBeat());
    } else if (utterance instanceof Utterance.Claim claim) {
      mark(new Moment.BarPassed(beat, claim.bar()));
    } else if (utterance instanceof Utterance.Wish wish) {
      mark(new Moment.BreathWished(beat, wish.wish().asks()));
    }
  }

  /** A beginning of more hides one of less until the next sollu. */
  private void nextOpens(Spoken.Opens other) {
    opens = other.compareTo(opens) < 0 ? other : opens;
  }

  private void startGrid(Ratio beat, int density) {
    matrasPerBeat = density;
    mark(new Moment.GridStart(beat, density, round));
  }

  private void begin(Ratio beat, Utterance.Sound sound) {
    finish();
    tellNadai(beat);
    Ratio own = sound.beats();
    begun =
        new Spoken(
            beat, own, List.of(), sound.sollu(), matrasPerBeat, opens, phrases.element(), round);
    opens = Spoken.Opens.NOTHING;
  }

  /** A karvai after silence, or before anything has sounded, is silence that goes on. */
  private void ring(Ratio beat, Ratio beats) {
    if (begun == null) {
      rest(beat, beats);
      return;
    }
    tellNadai(beat);
    Matras next = Matras.ringing(beat, beats, matrasPerBeat);
    int last = rings.size() - 1;
    if (last >= 0 && rings.get(last).goOnWith(next)) {
      rings.set(last, rings.get(last).with(next));
    } else {
      rings.add(next);
    }
  }

  private void rest(Ratio beat, Ratio beats) {
    tellNadai(beat);
    mark(new Moment.Rest(Matras.silent(beat, beats, matrasPerBeat), round));
  }

  private void tellNadai(Ratio beat) {
    if (toldMatrasPerBeat != matrasPerBeat) {
      mark(new Moment.NewNadai(beat, toldMatrasPerBeat, matrasPerBeat));
      toldMatrasPerBeat = matrasPerBeat;
    }
  }

  private void mark(Moment moment) {
    (begun == null ? ready : waiting).add(moment);
  }

  private void finish() {
    if (begun != null) {
      ready.add(begun.ringing(rings));
      for (Moment moment : waiting) {
        ready.add(moment);
      }
      rings.clear();
      waiting.clear();
      begun = null;
    }
  }
}
