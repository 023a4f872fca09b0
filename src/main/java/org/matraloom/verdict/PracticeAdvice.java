package org.matraloom.verdict;

import java.util.List;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;

/** What to practise next: a drill, named by its numbers. Tempi are in whole beats a minute. */
public sealed interface PracticeAdvice {

  /**
   * The change of nadai at which a round begins, over and over.
   *
   * @param number which change of the score, from 1
   * @param round the number of the round that it leads into
   * @param beatsPerMinute the tempo
   */
  record Join(int number, int round, int beatsPerMinute) implements PracticeAdvice {
    @Override
    public <T> T told(Cases<T> cases) {
      return cases.join(this);
    }
  }

  /**
   * Plain words that change from one nadai to another; no score is needed.
   *
   * @param from the first nadai, 3 to 9 matras a beat
   * @param to the second, 3 to 9 matras a beat
   * @param beatsPerMinute the tempo
   */
  record Switch(int from, int to, int beatsPerMinute) implements PracticeAdvice {
    @Override
    public <T> T told(Cases<T> cases) {
      return cases.switching(this);
    }
  }

  /**
   * One phrase over and over.
   *
   * @param phrase its name
   * @param beatsPerMinute the tempo
   */
  record Loop(String phrase, int beatsPerMinute) implements PracticeAdvice {
    @Override
    public <T> T told(Cases<T> cases) {
      return cases.loop(this);
    }
  }

  /**
   * The piece with the hand falling silent now and then.
   *
   * @param heard how many avartanas in a row the hand is heard
   * @param silent how many it is silent
   * @param beatsPerMinute the tempo
   */
  record Clicks(int heard, int silent, int beatsPerMinute) implements PracticeAdvice {
    @Override
    public <T> T told(Cases<T> cases) {
      return cases.clicks(this);
    }
  }

  /**
   * The piece at growing tempi.
   *
   * @param from the first tempo
   * @param to the last tempo
   * @param by what each step adds
   * @param above whether it leads above the tempo that was said, not up to it
   */
  record Ladder(int from, int to, int by, boolean above) implements PracticeAdvice {
    @Override
    public <T> T told(Cases<T> cases) {
      return cases.ladder(this);
    }
  }

  /**
   * What is to be said of each kind of drill.
   *
   * @param <T> what is made of a drill
   */
  interface Cases<T> {
    /**
     * A change of nadai.
     *
     * @param join the drill
     * @return what is made of it
     */
    T join(Join join);

    /**
     * Plain words that change their nadai.
     *
     * @param words the drill
     * @return what is made of it
     */
    T switching(Switch words);

    /**
     * A phrase.
     *
     * @param loop the drill
     * @return what is made of it
     */
    T loop(Loop loop);

    /**
     * A hand that falls silent.
     *
     * @param clicks the drill
     * @return what is made of it
     */
    T clicks(Clicks clicks);

    /**
     * Growing tempi.
     *
     * @param ladder the drill
     * @return what is made of it
     */
    T ladder(Ladder ladder);
  }

  /**
   * Makes something of this drill according to its kind.
   *
   * @param cases one for each kind
   * @param <T> what is made
   * @return what the case of this kind makes
   */
  <T> T told(Cases<T> cases);

  /**
   * The change of nadai at which a round begins, slowly, or plain words that change so if it begins
   * with none.
   *
   * @param performance what was to be said
   * @param round the number of the round
   * @param from the nadai before, in matras a beat
   * @param to the nadai of the round
   * @param beatsPerMinute the tempo of the take
   * @return the drill
   */
  static PracticeAdvice change(
      Performance performance, int round, int from, int to, double beatsPerMinute) {
    List<Span.Round> rounds = performance.rounds();
    int join = 0;
    for (int at = 1; at < rounds.size(); at++) {
      int nadai = rounds.get(at).matrasPerBeat();
      boolean changes = nadai != rounds.get(at - 1).matrasPerBeat();
      join += changes ? 1 : 0;
      if (changes && rounds.get(at).number() == round) {
        return new Join(join, round, PracticeTempo.slower(beatsPerMinute));
      }
    }
    return Math.min(from, to) >= PracticeTempo.LEAST_NADAI
            && Math.max(from, to) <= PracticeTempo.MOST_NADAI
        ? new Switch(from, to, PracticeTempo.slower(beatsPerMinute))
        : slowly(beatsPerMinute);
  }

  /**
   * One phrase over and over, slowly.
   *
   * @param phrase its name
   * @param beatsPerMinute the tempo of the take
   * @return the drill
   */
  static PracticeAdvice phrase(String phrase, double beatsPerMinute) {
    return new Loop(phrase, PracticeTempo.slower(beatsPerMinute));
  }

  /**
   * The piece with the hand falling silent now and then.
   *
   * @param beatsPerMinute the tempo of the take
   * @return the drill
   */
  static PracticeAdvice pulse(double beatsPerMinute) {
    return new Clicks(2, 1, PracticeTempo.of(beatsPerMinute));
  }

  /**
   * The piece at growing tempi from that of the take.
   *
   * @param beatsPerMinute the tempo of the take
   * @return the drill
   */
  static PracticeAdvice quicker(double beatsPerMinute) {
    return new Ladder(
        PracticeTempo.of(beatsPerMinute),
        PracticeTempo.quicker(beatsPerMinute),
        PracticeTempo.STEP,
        true);
  }

  /**
   * The piece from the beginning, slowly up to its tempo.
   *
   * @param beatsPerMinute the tempo of the take
   * @return the drill
   */
  static PracticeAdvice slowly(double beatsPerMinute) {
    return new Ladder(
        PracticeTempo.slower(beatsPerMinute),
        PracticeTempo.of(beatsPerMinute),
        PracticeTempo.STEP,
        false);
  }
}
