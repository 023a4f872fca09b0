package org.matraloom.score;

import java.util.List;

/** A part of a phrase as it is written; lengths are in matras of the place where it stands. */
public sealed interface Element {

  /**
   * Asks a visitor about this element by its kind.
   *
   * @param visitor who is asked
   * @param <R> what it says
   * @return what it says
   */
  <R> R told(ElementVisitor<R> visitor);

  /**
   * A written word of one or more sollus, one matra each.
   *
   * @param written the word as typed
   * @param sollus its sollus in order, at least one
   */
  record Word(String written, List<Sollu> sollus) implements Element {
    /** Copies the list. */
    public Word {
      sollus = List.copyOf(sollus);
    }

    @Override
    public <R> R told(ElementVisitor<R> visitor) {
      return visitor.word(this);
    }
  }

  /**
   * Karvai: the sound before it rings on.
   *
   * @param matras 1 for a comma, 2 for a semicolon
   */
  record Karvai(int matras) implements Element {
    @Override
    public <R> R told(ElementVisitor<R> visitor) {
      return visitor.karvai(this);
    }
  }

  /** One silent matra, written as a dot. */
  record Silence() implements Element {
    @Override
    public <R> R told(ElementVisitor<R> visitor) {
      return visitor.silence(this);
    }
  }

  /**
   * Kanakku shorthand: a group given by its size and spoken with words for it.
   *
   * @param size how many matras, or how many held sollus
   * @param hold matras each sollu lasts, 1 unless written {@code 5*6}
   * @param karvai matras the last sollu rings on, as in {@code 9(1)}; 0 for none
   * @param plain the words outside an ending, of {@code size} matras before they are held
   * @param mora the words in an ending; often the same
   * @param inEnding whether it stands in one; {@link Sequence} sees to it
   */
  record Group(int size, int hold, int karvai, GroupWords plain, GroupWords mora, boolean inEnding)
      implements Element {

    /**
     * A group whose sollus take a matra each, or are held alike.
     *
     * @param size how many sollus
     * @param hold how many matras each sollu lasts
     * @param karvai how many matras the last one rings on
     * @param sollus what is said, {@code size} of them
     */
    public Group(int size, int hold, int karvai, List<Sollu> sollus) {
      this(size, hold, karvai, GroupWords.plain(sollus), GroupWords.plain(sollus), false);
    }

    /**
     * The words that are said where it stands.
     *
     * @return sollus and how long they are
     */
    public GroupWords words() {
      return inEnding ? mora : plain;
    }

    /**
     * What is said.
     *
     * @return the sollus in order; fewer than matras where the words have karvai inside
     */
    public List<Sollu> sollus() {
      return words().sollus();
    }

    /**
     * The same group with another karvai after it.
     *
     * @param matras how long it is, 0 for none
     * @return a copy
     */
    public Group ringing(int matras) {
      return new Group(size, hold, matras, plain, mora, inEnding);
    }

    /** The same group where it stands in an ending, or where it does not. */
    Group standing(boolean ends) {
      return ends == inEnding ? this : new Group(size, hold, karvai, plain, mora, ends);
    }

    @Override
    public <R> R told(ElementVisitor<R> visitor) {
      return visitor.group(this);
    }
  }

  /** An element around others. */
  sealed interface Bracket extends Element {
    /**
     * What is said inside.
     *
     * @return the elements in it
     */
    Sequence body();
  }

  /**
   * Said twice or four times as fast.
   *
   * @param factor 2 for single brackets, 4 for double ones
   * @param body what is said
   */
  record Faster(int factor, Sequence body) implements Bracket {
    @Override
    public <R> R told(ElementVisitor<R> visitor) {
      return visitor.faster(this);
    }
  }

  /**
   * Said several times.
   *
   * @param body what is said
   * @param times at least 1
   */
  record Repeat(Sequence body, int times) implements Bracket {
    @Override
    public <R> R told(ElementVisitor<R> visitor) {
      return visitor.repeat(this);
    }
  }

  /**
   * A passage in which a beat holds another number of matras than in the round around it.
   *
   * @param nadai matras a beat inside
   * @param body what is said
   */
  record InnerNadai(int nadai, Sequence body) implements Bracket {
    @Override
    public <R> R told(ElementVisitor<R> visitor) {
      return visitor.innerNadai(this);
    }
  }

  /**
   * Another phrase, by name.
   *
   * @param name a phrase of the same composition
   */
  record Reference(String name) implements Element {
    @Override
    public <R> R told(ElementVisitor<R> visitor) {
      return visitor.reference(this);
    }
  }

  /** An element that takes no time and says nothing. */
  sealed interface Timeless extends Element {}

  /**
   * What the reciter wants about breath after the sollu before it.
   *
   * @param asks true for {@code '}, a breath is wanted there; false for {@code '!}, none may be
   *     taken there and on to the end of the phrase
   */
  record BreathWish(boolean asks) implements Timeless {
    @Override
    public <R> R told(ElementVisitor<R> visitor) {
      return visitor.breathWish(this);
    }
  }

  /**
   * A claim that an anga or an avartana ends here in the first round; it takes no time.
   *
   * @param endsAvartana true for {@code ||}, false for {@code |}
   * @param place where it is written
   */
  record Bar(boolean endsAvartana, Place place) implements Timeless {
    @Override
    public <R> R told(ElementVisitor<R> visitor) {
      return visitor.bar(this);
    }
  }
}
