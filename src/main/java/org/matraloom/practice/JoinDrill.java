package org.matraloom.practice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.Sequence;
import org.matraloom.score.Span;
import org.matraloom.score.Step;
import org.matraloom.time.Ratio;

/**
 * The join: the last beats before a change of nadai and the first after it, over and over, each
 * time at the same place of the tala.
 *
 * <p>Practising the seam alone, a few beats on either side, is common practice.
 */
public final class JoinDrill {

  /** The usual number of beats on either side. */
  public static final int USUAL_BEATS = 4;

  private static final int MOST_BEATS = 32;
  private static final int MOST_LOOPS = 200;

  private JoinDrill() {}

  /**
   * How many changes of nadai a score has between its rounds.
   *
   * @param composition the score
   * @return 0 or more
   */
  public static int joins(Composition composition) {
    return seams(Performance.of(composition)).size();
  }

  /**
   * Loops one join; where the two sides do not fill whole avartanas, the hand alone goes on until
   * the place where the loop began.
   *
   * @param composition the score
   * @param join which change of nadai, from 1
   * @param beats beats on either side, 1 to 32
   * @param loops how often, 1 to 200
   * @param lexicon knows how the words are read
   * @return the drill
   * @throws IllegalArgumentException if there is no such join or a number is out of range
   */
  public static Composition of(
      Composition composition, int join, int beats, int loops, Lexicon lexicon) {
    return of(composition, join, beats, beats, loops, lexicon);
  }

  /**
   * The same with a lead of another length.
   *
   * @param composition the score
   * @param join which change of nadai, from 1
   * @param leadBeats beats before the change, 1 to 32
   * @param beats beats after it, 1 to 32
   * @param loops how often, 1 to 200
   * @param lexicon knows how the words are read
   * @return the drill
   * @throws IllegalArgumentException if there is no such join or a number is out of range
   */
  public static Composition of(
      Composition composition, int join, int leadBeats, int beats, int loops, Lexicon lexicon) {
    Performance performance = Performance.of(composition);
    List<Span.Round> seams = seams(performance);
    if (seams.isEmpty()) {
      throw new IllegalArgumentException("the score has no change of nadai between its rounds");
    }
    Drill.requireRange("the join", join, 1, seams.size());
    Drill.requireRange("the number of beats on either side", beats, 1, MOST_BEATS);
    Drill.requireRange("the number of beats of lead", leadBeats, 1, MOST_BEATS);
    Drill.requireRange("the number of loops", loops, 1, MOST_LOOPS);
    Span.Round after = seams.get(join - 1);
    List<Span.Round> rounds = performance.rounds();
    Span.Round before = rounds.get(rounds.indexOf(after) - 1);

    Ratio seam = after.startBeat();
    Ratio from = seam.minus(Ratio.of(leadBeats));
    Ratio to = seam.plus(Ratio.of(beats));
    PhraseExcerpt first = PhraseExcerpt.of(before, composition, from, seam, lexicon);
    PhraseExcerpt second = PhraseExcerpt.of(after, composition, seam, to, lexicon);

    Avartana avartana = composition.avartana();
    Ratio place = avartana.placeOf(from);
    List<Step> loop = new ArrayList<>();
    rest(from, first.startBeat(), loop);
    say("Before", first, before, loop);
    rest(first.endBeat(), second.startBeat(), loop);
    say("After", second, after, loop);
    rest(second.endBeat(), to, loop);
    if (!avartana.placeOf(to).equals(place)) {
      loop.add(new Step.Until(place));
    }
    List<Step> plan = new ArrayList<>();
    for (int time = 0; time < loops; time++) {
      plan.addAll(loop);
    }
    Map<String, Sequence> phrases = new LinkedHashMap<>();
    phrases.put("Before", first.sequence());
    phrases.put("After", second.sequence());
    phrases.values().removeIf(sequence -> sequence.elements().isEmpty());
    String title =
        "Join " + join + " of " + (composition.title().isEmpty() ? "a score" : composition.title());
    return Drill.of(title, avartana, composition.tempo(), place, phrases, plan);
  }

  private static List<Span.Round> seams(Performance performance) {
    List<Span.Round> rounds = performance.rounds();
    List<Span.Round> seams = new ArrayList<>();
    for (int at = 1; at < rounds.size(); at++) {
      if (rounds.get(at).matrasPerBeat() != rounds.get(at - 1).matrasPerBeat()) {
        seams.add(rounds.get(at));
      }
    }
    return seams;
  }

  private static void say(String phrase, PhraseExcerpt said, Span.Round round, List<Step> loop) {
    if (!said.sequence().elements().isEmpty()) {
      loop.add(new Step.Say(phrase, 1, round.nadai(), round.kalam()));
    }
  }

  private static void rest(Ratio from, Ratio to, List<Step> loop) {
    if (to.compareTo(from) > 0) {
      loop.add(new Step.RestBeats(to.minus(from)));
    }
  }
}
