package org.matraloom.schedule;

import java.util.Iterator;
import java.util.List;
import org.matraloom.score.Avartana;
import org.matraloom.score.Performance;
import org.matraloom.time.Ratio;

/**
 * The timeline of a performance with a count-in of whole avartanas before it.
 *
 * <p>The count-in gives the real kriyas from samam to samam. A performance that starts off samam is
 * heard in place: after the count-in the tala runs on from samam to the start, or, for a start
 * before samam, the first sollu falls into the end of the count-in.
 */
public final class ScoreTimeline implements Timeline {

  /** The longest count-in, in avartanas. */
  public static final int MOST_COUNT_IN = 16;

  private final Performance performance;
  private final int countInAvartanas;
  private final Ratio originBeat;

  private ScoreTimeline(Performance performance, int countInAvartanas, Ratio originBeat) {
    this.performance = performance;
    this.countInAvartanas = countInAvartanas;
    this.originBeat = originBeat;
  }

  /**
   * Lays out a performance.
   *
   * @param performance what is performed, with at least one span
   * @param countInAvartanas avartanas counted before it, 0 to {@value #MOST_COUNT_IN}
   * @return its timeline
   * @throws IllegalArgumentException if the count-in is outside its range
   */
  public static ScoreTimeline of(Performance performance, int countInAvartanas) {
    if (countInAvartanas < 0 || countInAvartanas > MOST_COUNT_IN) {
      throw new IllegalArgumentException(
          "a count-in has 0 to " + MOST_COUNT_IN + " avartanas, given " + countInAvartanas);
    }
    Ratio origin = origin(performance.startBeat(), performance.avartana(), countInAvartanas);
    return new ScoreTimeline(performance, countInAvartanas, origin);
  }

  /** Where the hand begins for a start that is counted in. */
  static Ratio origin(Ratio startBeat, Avartana avartana, int countInAvartanas) {
    if (countInAvartanas == 0) {
      return Ratio.of(startBeat.floor());
    }
    int cycleBeats = avartana.goingOnAt(startBeat).beats();
    boolean falls = startBeat.signum() < 0 && avartana.placeOf(startBeat).signum() != 0;
    long samam = avartana.samamBefore(startBeat) + (falls ? cycleBeats : 0);
    return Ratio.of(samam - (long) countInAvartanas * cycleBeats);
  }

  @Override
  public Performance performance() {
    return performance;
  }

  @Override
  public Ratio originBeat() {
    return originBeat;
  }

  @Override
  public Ratio endBeat() {
    return Ratio.of(performance.handEndBeat().ceil());
  }

  @Override
  public Iterator<Event> iterator() {
    return new MergedEvents(
        List.of(
            countIn().iterator(),
            performance.notices().stream()
                .<Event>map(notice -> new Event.NoticePut(notice.beat(), notice))
                .iterator(),
            new VoiceEvents(performance),
            new HandEvents(performance, originBeat, endBeat()),
            new TickEvents(performance, originBeat),
            List.<Event>of(new Event.LandingPoint(performance.endBeat())).iterator()));
  }

  private List<Event> countIn() {
    return countInAvartanas == 0
        ? List.of()
        : List.of(new Event.CountIn(originBeat, countInAvartanas));
  }
}
