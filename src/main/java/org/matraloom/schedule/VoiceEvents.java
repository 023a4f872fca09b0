package org.matraloom.schedule;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Queue;
import org.matraloom.score.Avartana;
import org.matraloom.score.Performance;
import org.matraloom.score.Recitation;
import org.matraloom.score.Sollu;
import org.matraloom.score.Span;
import org.matraloom.score.Utterance;
import org.matraloom.time.Ratio;

/**
 * What the mouth does: sollus with their karvais, silences, and the marks of rounds and sections.
 *
 * <p>A sollu is handed out once it is known how long it rings, which may be after a mark that lies
 * inside its karvai has been met; such marks wait behind it.
 */
final class VoiceEvents implements Iterator<Event> {

  private record Begun(
      Ratio beat, Ratio articulatedBeats, Sollu sollu, Event.Stress stress, int round) {}

  private final Performance performance;
  private final Avartana avartana;
  private final Queue<Event> ready = new ArrayDeque<>();
  private final List<Event> waiting = new ArrayList<>();

  private int nextSpan;
  private Iterator<Utterance> utterances = List.<Utterance>of().iterator();
  private Ratio spanStart = Ratio.ZERO;
  private int round;
  private int matrasPerBeat;
  private int announcedMatrasPerBeat;
  private Event.Stress nextStress = Event.Stress.NONE;

  private Begun begun;
  private Ratio begunEnd = Ratio.ZERO;

  VoiceEvents(Performance performance) {
    this.performance = performance;
    this.avartana = performance.composition().avartana();
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
  public Event next() {
    if (!hasNext()) {
      throw new NoSuchElementException("all has been said");
    }
    return ready.remove();
  }

  private boolean openSpan() {
    if (nextSpan == performance.spans().size()) {
      return false;
    }
    Span span = performance.spans().get(nextSpan++);
    spanStart = span.startBeat();
    matrasPerBeat = span.matrasPerBeat();
    if (announcedMatrasPerBeat == 0) {
      announcedMatrasPerBeat = matrasPerBeat;
    }
    if (span instanceof Span.Round next) {
      round = next.number();
      mark(new Event.RoundStart(spanStart, round, next.phrase(), next.nadai(), next.kalam()));
      utterances = Recitation.of(next, performance.composition());
      nextStress = Event.Stress.ROUND;
    } else {
      finish();
      utterances = List.<Utterance>of().iterator();
      if (span.beats().signum() > 0) {
        announceNadai(spanStart);
        mark(new Event.Silence(spanStart, span.beats(), round));
      }
    }
    return true;
  }

  private void take(Utterance utterance) {
    Ratio beat = spanStart.plus(utterance.atBeat());
    if (utterance instanceof Utterance.Sound sound) {
      finish();
      announceNadai(beat);
      begun = new Begun(beat, sound.beats(), sound.sollu(), stressAt(beat), round);
      begunEnd = beat.plus(sound.beats());
      nextStress = Event.Stress.NONE;
    } else if (utterance instanceof Utterance.Ring ring) {
      announceNadai(beat);
      ringOn(beat, ring.beats());
    } else if (utterance instanceof Utterance.Quiet quiet) {
      finish();
      announceNadai(beat);
      mark(new Event.Silence(beat, quiet.beats(), round));
    } else if (utterance instanceof Utterance.Entry entry) {
      mark(new Event.SectionStart(beat, entry.name(), round));
      headOfPhrase();
    } else if (utterance instanceof Utterance.GroupHead) {
      headOfPhrase();
    } else if (utterance instanceof Utterance.Density density) {
      matrasPerBeat = density.matrasPerBeat();
    }
  }

  private void ringOn(Ratio beat, Ratio beats) {
    if (begun == null) {
      mark(new Event.Silence(beat, beats, round));
    } else {
      begunEnd = begunEnd.plus(beats);
    }
  }

  private void headOfPhrase() {
    if (nextStress == Event.Stress.NONE) {
      nextStress = Event.Stress.PHRASE;
    }
  }

  private Event.Stress stressAt(Ratio beat) {
    boolean samam = avartana.placeOf(beat).signum() == 0;
    return samam && nextStress != Event.Stress.ROUND ? Event.Stress.SAMAM : nextStress;
  }

  /**
   * Marks a change of nadai where the first sound or silence in it begins; passages that end where
   * others begin change it once, and one that ends where all ends does not change it.
   */
  private void announceNadai(Ratio beat) {
    if (announcedMatrasPerBeat != matrasPerBeat) {
      mark(new Event.NadaiChange(beat, announcedMatrasPerBeat, matrasPerBeat));
      announcedMatrasPerBeat = matrasPerBeat;
    }
  }

  private void mark(Event event) {
    (begun == null ? ready : waiting).add(event);
  }

  private void finish() {
    if (begun != null) {
      ready.add(
          new Event.SolluSaid(
              begun.beat,
              begunEnd.minus(begun.beat),
              begun.articulatedBeats,
              begun.sollu,
              begun.stress,
              begun.round));
      ready.addAll(waiting);
      waiting.clear();
      begun = null;
    }
  }
}
