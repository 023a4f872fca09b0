package org.matraloom.breath;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import org.matraloom.form.Joint;
import org.matraloom.form.Joints;
import org.matraloom.form.Mora;
import org.matraloom.score.Moment;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.score.Spoken;
import org.matraloom.time.Ratio;

/**
 * Follows a performance sollu by sollu and keeps the places where the voice may stop.
 *
 * <p>Stops at equal places of rounds that say the same phrase in the same nadai and kalam have one
 * place; the end of such a round is the same place if what follows takes as long to come and is
 * said in the same nadai.
 */
final class VoiceReader {

  private final Map<String, Joints> joints;
  private final List<VoiceStop> stops = new ArrayList<>();
  private final NavigableSet<Ratio> changeBeats = new TreeSet<>();
  private Optional<Spoken> first = Optional.empty();
  private Optional<Spoken> last = Optional.empty();
  private Optional<Span.Round> round = Optional.empty();
  private Optional<Span.Round> roundOfLast = Optional.empty();
  private int inRound;
  private long sollus;
  private VoiceStop.Wish wish = VoiceStop.Wish.NONE;
  private boolean banned;

  private VoiceReader(Map<String, Joints> joints) {
    this.joints = joints;
  }

  /** Reads a performance; empty if it says nothing. */
  static Optional<Voice> read(Performance performance) {
    List<String> said = performance.rounds().stream().map(Span.Round::phrase).toList();
    VoiceReader reader = new VoiceReader(Joints.of(performance.composition(), said));
    Iterator<Moment> moments = performance.moments();
    while (moments.hasNext()) {
      reader.take(moments.next());
    }
    return reader.last.map(reader::finished);
  }

  private void take(Moment moment) {
    if (moment instanceof Spoken spoken) {
      take(spoken);
    } else if (moment instanceof Moment.NewNadai change) {
      changeBeats.add(change.beat());
    } else if (moment instanceof Moment.SpanStart start
        && start.span() instanceof Span.Round next) {
      round = Optional.of(next);
    } else if (moment instanceof Moment.BreathWished wished) {
      wish = wished.asks() ? VoiceStop.Wish.ASKED : VoiceStop.Wish.FORBIDDEN;
    }
  }

  private void take(Spoken spoken) {
    last.map(before -> stop(before, spoken)).filter(VoiceStop::leavesTime).ifPresent(stops::add);
    boolean begins = spoken.opens() == Spoken.Opens.ROUND;
    inRound = begins ? 0 : inRound + 1;
    first = first.or(() -> Optional.of(spoken));
    last = Optional.of(spoken);
    roundOfLast = round;
    wish = VoiceStop.Wish.NONE;
    sollus++;
  }

  private VoiceStop stop(Spoken before, Spoken next) {
    Span.Round said = roundOfLast.orElseThrow();
    Joints inPhrase = joints.get(said.phrase());
    boolean ends = next.opens() == Spoken.Opens.ROUND;
    Joint joint = ends ? Joint.ROUND : inPhrase.after(inRound);
    VoiceStop.Wish here = wish;
    if (here == VoiceStop.Wish.NONE && banned && !joint.endsPhrase()) {
      here = VoiceStop.Wish.FORBIDDEN;
    }
    banned = !joint.endsPhrase() && (banned || wish == VoiceStop.Wish.FORBIDDEN);
    VoiceStop.Last sounding =
        new VoiceStop.Last(
            before.sollu().spelling(), before.beat(), before.ownBeats(), before.round());
    Object place =
        ends
            ? roundEnd(said, sounding, before, next)
            : List.of(said.phrase(), said.matrasPerBeat(), inPhrase.place(inRound));
    boolean mora =
        inPhrase.lastMora().map(Mora::start).filter(start -> start == inRound + 1).isPresent();
    return new VoiceStop(
        sounding,
        before.endBeat(),
        resumption(next),
        sollus,
        new VoiceStop.Standing(joint, place, mora && !ends, here));
  }

  private Object roundEnd(Span.Round said, VoiceStop.Last sounding, Spoken before, Spoken next) {
    return List.of(
        said.phrase(),
        said.matrasPerBeat(),
        round.orElseThrow().matrasPerBeat(),
        before.ownBeats(),
        before.endBeat().minus(sounding.ownEnd()),
        next.beat().minus(before.endBeat()));
  }

  private static VoiceStop.Resumption resumption(Spoken spoken) {
    return new VoiceStop.Resumption(spoken.beat(), spoken.round(), spoken.phrase());
  }

  private Voice finished(Spoken end) {
    return new Voice(resumption(first.orElseThrow()), stops, changeBeats, end.endBeat(), sollus);
  }
}
