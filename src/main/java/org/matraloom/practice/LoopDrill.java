package org.matraloom.practice;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Moment;
import org.matraloom.score.Performance;
import org.matraloom.score.Sequence;
import org.matraloom.score.Span;
import org.matraloom.score.Step;
import org.matraloom.time.Ratio;

/**
 * One phrase of a score over and over, each time at the place of the tala where it is first said.
 */
public final class LoopDrill {

  private static final int MOST_LOOPS = 500;
  private static final int MOST_LEAD = 32;

  private LoopDrill() {}

  /** Where a phrase is said for the first time. */
  private record First(Ratio beat, int nadai, int kalam) {}

  /**
   * Loops a phrase; where it does not fill whole avartanas, the hand alone goes on until the place
   * where the loop began.
   *
   * @param composition the score
   * @param phrase the phrase
   * @param loops how often, 1 to 500
   * @return the drill
   * @throws IllegalArgumentException if the phrase is never said or the number is out of range
   */
  public static Composition of(Composition composition, String phrase, int loops) {
    Drill.requireRange("the number of loops", loops, 1, MOST_LOOPS);
    First first = first(composition, phrase);
    Ratio place = composition.avartana().placeOf(first.beat);
    List<Step> plan = new ArrayList<>();
    for (int time = 0; time < loops; time++) {
      plan.add(new Step.Say(phrase, 1, first.nadai, first.kalam));
      plan.add(new Step.Until(place));
    }
    return Drill.of(
        phrase + " in a loop",
        composition.avartana(),
        composition.tempo(),
        place,
        composition.phrases(),
        plan);
  }

  /**
   * The same with what is said before it, so that the way in is practised as well; where nothing
   * comes before it, the hand alone leads in.
   *
   * @param composition the score
   * @param phrase the phrase
   * @param leadBeats beats before the phrase, 1 to 32
   * @param loops how often, 1 to 500
   * @param lexicon knows how the words are read
   * @return the drill
   * @throws IllegalArgumentException if the phrase is never said or a number is out of range
   */
  public static Composition of(
      Composition composition, String phrase, int leadBeats, int loops, Lexicon lexicon) {
    Drill.requireRange("the number of loops", loops, 1, MOST_LOOPS);
    Drill.requireRange("the number of beats of lead", leadBeats, 1, MOST_LEAD);
    First first = first(composition, phrase);
    Ratio from = first.beat.minus(Ratio.of(leadBeats));
    Map<String, Sequence> phrases = new LinkedHashMap<>(composition.phrases());
    List<Step> loop = new ArrayList<>();
    Ratio at = from;
    for (Span.Round round : Performance.of(composition).rounds()) {
      Ratio begin = round.startBeat().compareTo(from) > 0 ? round.startBeat() : from;
      Ratio end = first.beat.min(round.endBeat());
      if (begin.compareTo(end) < 0) {
        PhraseExcerpt lead = PhraseExcerpt.of(round, composition, begin, end, lexicon);
        if (!lead.sequence().elements().isEmpty()) {
          rest(at, lead.startBeat(), loop);
          String name = freeName(phrases);
          phrases.put(name, lead.sequence());
          loop.add(new Step.Say(name, 1, round.nadai(), round.kalam()));
          at = lead.endBeat();
        }
      }
    }
    rest(at, first.beat, loop);
    loop.add(new Step.Say(phrase, 1, first.nadai, first.kalam));
    Ratio place = composition.avartana().placeOf(from);
    loop.add(new Step.Until(place));
    List<Step> plan = new ArrayList<>();
    for (int time = 0; time < loops; time++) {
      plan.addAll(loop);
    }
    String title = phrase + " in a loop, with what leads there";
    return Drill.of(title, composition.avartana(), composition.tempo(), place, phrases, plan);
  }

  private static void rest(Ratio from, Ratio to, List<Step> loop) {
    if (to.compareTo(from) > 0) {
      loop.add(new Step.RestBeats(to.minus(from)));
    }
  }

  private static String freeName(Map<String, Sequence> phrases) {
    String name = "Lead";
    while (phrases.containsKey(name)) {
      name += "In";
    }
    return name;
  }

  private static First first(Composition composition, String phrase) {
    Performance performance = Performance.of(composition);
    List<Span.Round> rounds = performance.rounds();
    Iterator<Moment> moments = performance.moments();
    while (moments.hasNext()) {
      Moment moment = moments.next();
      if (moment instanceof Moment.SpanStart start
          && start.span() instanceof Span.Round round
          && round.phrase().equals(phrase)) {
        return new First(round.startBeat(), round.nadai(), round.kalam());
      } else if (moment instanceof Moment.PhraseStart start && start.name().equals(phrase)) {
        Span.Round round = rounds.get(start.round() - 1);
        return new First(start.beat(), round.nadai(), round.kalam());
      }
    }
    throw new IllegalArgumentException(
        "the score never says " + phrase + "; its phrases are " + composition.phrases().keySet());
  }
}
