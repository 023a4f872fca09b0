package org.matraloom.breath;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import org.matraloom.score.Performance;
import org.matraloom.score.Recitation;
import org.matraloom.score.Span;
import org.matraloom.score.Utterance;
import org.matraloom.time.Ratio;

/** Follows a performance sollu by sollu and keeps the places where the voice may stop. */
final class VoiceReader {

  private record Begun(String spelling, Ratio attackBeat, Ratio ownMatra, int round) {}

  private final Deque<String> phrases = new ArrayDeque<>();
  private final List<VoiceStop> stops = new ArrayList<>();
  private final NavigableSet<Ratio> changeBeats = new TreeSet<>();
  private Optional<VoiceStop.Resumption> begin = Optional.empty();
  private Optional<Begun> begun = Optional.empty();
  private Ratio soundEnd = Ratio.ZERO;
  private boolean silent = true;
  private boolean phraseEnded;
  private boolean roundEnded;
  private long sollus;
  private int matrasPerBeat;
  private int round;

  private VoiceReader() {}

  /** Reads a performance; empty if it says nothing. */
  static Optional<Voice> read(Performance performance) {
    VoiceReader reader = new VoiceReader();
    performance.spans().forEach(span -> reader.take(span, performance));
    return reader.begin.map(first -> reader.finished(first));
  }

  private void take(Span span, Performance performance) {
    roundEnded = true;
    phraseEnded = true;
    setDensity(span.startBeat(), span.matrasPerBeat());
    if (span instanceof Span.Round said) {
      round = said.number();
      phrases.push(said.phrase());
      Recitation utterances = Recitation.of(said, performance.composition());
      while (utterances.hasNext()) {
        take(utterances.next(), said.startBeat());
      }
      phrases.pop();
    } else if (span.beats().signum() > 0) {
      silent = true;
    }
  }

  private void take(Utterance utterance, Ratio roundStart) {
    if (utterance instanceof Utterance.Sound sound) {
      sound(sound, roundStart.plus(sound.atBeat()));
    } else if (utterance instanceof Utterance.Ring ring) {
      soundEnd = silent ? soundEnd : soundEnd.plus(ring.beats());
    } else if (utterance instanceof Utterance.Quiet) {
      silent = true;
    } else if (utterance instanceof Utterance.Entry entry) {
      phrases.push(entry.name());
      phraseEnded = true;
    } else if (utterance instanceof Utterance.Leave) {
      phrases.pop();
      phraseEnded = true;
    } else if (utterance instanceof Utterance.GroupHead) {
      phraseEnded = true;
    } else if (utterance instanceof Utterance.Density density) {
      setDensity(roundStart.plus(density.atBeat()), density.matrasPerBeat());
    }
  }

  private void setDensity(Ratio beat, int density) {
    if (matrasPerBeat != 0 && matrasPerBeat != density) {
      changeBeats.add(beat);
    }
    matrasPerBeat = density;
  }

  private void sound(Utterance.Sound sound, Ratio attackBeat) {
    VoiceStop.Resumption here = new VoiceStop.Resumption(attackBeat, round, phrases.element());
    begun.map(last -> stop(last, here)).filter(VoiceReader::leavesTime).ifPresent(stops::add);
    begin = begin.or(() -> Optional.of(here));
    Ratio matra = Ratio.of(1, matrasPerBeat);
    Ratio own = sound.beats().compareTo(matra) < 0 ? sound.beats() : matra;
    begun = Optional.of(new Begun(sound.sollu().spelling(), attackBeat, own, round));
    soundEnd = attackBeat.plus(sound.beats());
    silent = false;
    phraseEnded = false;
    roundEnded = false;
    sollus++;
  }

  private VoiceStop stop(Begun last, VoiceStop.Resumption next) {
    return new VoiceStop(
        last.spelling,
        last.attackBeat,
        last.ownMatra,
        soundEnd,
        next,
        sollus,
        last.round,
        roundEnded,
        phraseEnded);
  }

  private static boolean leavesTime(VoiceStop stop) {
    return stop.rings() || stop.endsRound() || stop.silence().signum() > 0;
  }

  private Voice finished(VoiceStop.Resumption first) {
    Ratio end = begun.map(last -> last.attackBeat.plus(last.ownMatra)).orElse(soundEnd);
    return new Voice(first, stops, changeBeats, end, sollus);
  }
}
