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

  /** A line that takes no time: a name, a word to students, a claim. */
  sealed interface Timeless extends Step {}

  /**
   * A part of the piece begins.
   *
   * @param name what it is called, such as Purvanga; one line, not blank
   */
  record Part(String name) implements Timeless {
    @Override
    public <R> R told(StepVisitor<R> visitor) {
      return visitor.part(this);
    }
  }

  /**
   * Something said to students, which stands on their sheet.
   *
   * @param text what they read; one line, not blank
   */
  record Tell(String text) implements Timeless {
    @Override
    public <R> R told(StepVisitor<R> visitor) {
      return visitor.tell(this);
    }
  }

  /**
   * A claim that the tala stands at a place here; checked, never obeyed.
   *
   * @param place beats after samam, from 0 up to the avartana
   * @param whose the part that enters or lands here; empty if that is not said
   */
  record Stands(Ratio place, String whose) implements Timeless {
    @Override
    public <R> R told(StepVisitor<R> visitor) {
      return visitor.stands(this);
    }
  }

  /**
   * The second reciter says or keeps silent for this, beside the line before.
   *
   * @param step what the second one does: a phrase, a rest or a wait
   */
  record With(Step step) implements Timeless {
    @Override
    public <R> R told(StepVisitor<R> visitor) {
      return visitor.with(this);
    }
  }

  /**
   * The tala changes here, on a samam, in the same kalai.
   *
   * @param tala the tala from here on
   */
  record ToTala(Tala tala) implements Timeless {
    @Override
    public <R> R told(StepVisitor<R> visitor) {
      return visitor.toTala(this);
    }
  }
}
