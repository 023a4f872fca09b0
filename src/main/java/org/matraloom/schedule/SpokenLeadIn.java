package org.matraloom.schedule;

import java.util.List;
import java.util.Optional;
import org.matraloom.score.Avartana;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.Sollu;
import org.matraloom.score.Span;
import org.matraloom.time.Ratio;

/** The plain words that lead from samam to a start off samam. */
public final class SpokenLeadIn {

  private SpokenLeadIn() {}

  /**
   * The words as text: "2 x takita"; nothing for a start on samam.
   *
   * @param performance what is led into
   * @return the words
   */
  public static Optional<String> words(Performance performance) {
    return words(performance, 0);
  }

  /**
   * The words as text, whole avartanas of them first.
   *
   * @param performance what is led into
   * @param wholeAvartanas how many avartanas of words, 0 or more, before the way from samam
   * @return the words, such as "11 x takadimi"; nothing where there are none
   */
  public static Optional<String> words(Performance performance, int wholeAvartanas) {
    Span.Round first = performance.rounds().get(0);
    Avartana avartana = performance.avartana().goingOnAt(performance.startBeat());
    return LeadIn.of(avartana, placeIn(performance), first.nadai(), wholeAvartanas)
        .map(lead -> lead.said(size -> PlainWords.of(size).orElse("")))
        .filter(words -> !words.isEmpty());
  }

  /**
   * The timeline with the words spoken in it, and whole avartanas of them before as far as there is
   * room; as it is where there are no words, or no room for them.
   *
   * @param timeline what is led into, its count-in included
   * @param wholeAvartanas how many avartanas of words at most, 0 or more, before the way from
   *     samam; empty for no words
   * @return the timeline with the words
   */
  public static Timeline before(Timeline timeline, Optional<Integer> wholeAvartanas) {
    return wholeAvartanas.map(avartanas -> before(timeline, avartanas.intValue())).orElse(timeline);
  }

  private static Timeline before(Timeline timeline, int wholeAvartanas) {
    Performance performance = timeline.performance();
    Span.Round first = performance.rounds().get(0);
    Avartana avartana = performance.avartana().goingOnAt(performance.startBeat());
    Ratio way = placeIn(performance);
    Ratio room = performance.startBeat().minus(timeline.originBeat()).minus(way);
    int cycles =
        (int) Math.min(wholeAvartanas, Math.max(0, room.dividedBy(avartana.beats()).floor()));
    Optional<LeadIn> lead = LeadIn.of(avartana, placeIn(performance), first.nadai(), cycles);
    if (lead.isEmpty()) {
      return timeline;
    }
    Ratio from = performance.startBeat().minus(lead.get().beats());
    List<Sollu> sollus =
        lead.get().wordMatras().stream()
            .flatMap(matras -> Lexicon.standard().words(matras).stream())
            .toList();
    return sollus.isEmpty() || from.compareTo(timeline.originBeat()) < 0
        ? timeline
        : new LeadInTimeline(timeline, from, lead.get().matrasPerBeat(), sollus);
  }

  private static Ratio placeIn(Performance performance) {
    return performance.avartana().placeOf(performance.startBeat());
  }
}
