package org.matraloom.score;

import org.matraloom.time.Ratio;

/** One line of the perform plan. */
public sealed interface Step {

  /**
   * Has a visitor say something about it.
   *
   * @param visitor the visitor
   * @param <R> what is said
   * @return what was said
   */
  <R> R told(StepVisitor<R> visitor);

  /**
   * Say a phrase one or more times; each time is a round.
   *
   * @param phrase the phrase's name
   * @param times how many rounds, at least 1
   * @param nadai matras a beat in the first kalam
   * @param kalam 1, 2 or 3: once, twice or four times as many matras a beat
   */
  record Say(String phrase, int times, int nadai, int kalam) implements Step {
    @Override
    public <R> R told(StepVisitor<R> visitor) {
      return visitor.say(this);
    }
  }

  /**
   * Be silent for a number of beats.
   *
   * @param beats the length, not negative
   */
  record RestBeats(Ratio beats) implements Step {
    @Override
    public <R> R told(StepVisitor<R> visitor) {
      return visitor.restBeats(this);
    }
  }

  /**
   * Be silent for a number of matras.
   *
   * @param matras the length, not negative
   * @param nadai matras a beat
   */
  record RestMatras(int matras, int nadai) implements Step {
    @Override
    public <R> R told(StepVisitor<R> visitor) {
      return visitor.restMatras(this);
    }
  }

  /**
   * Be silent until the tala comes to a place; nothing if it is there already.
   *
   * @param place beats after samam
   */
  record Until(Ratio place) implements Step {
    @Override
    public <R> R told(StepVisitor<R> visitor) {
      return visitor.until(this);
    }
  }
}
