package org.matraloom.score;

/** Hears the moments of a performance, each by its kind; a new kind is a new method for all. */
public interface MomentListener {

  /**
   * A sollu is said. It is told once it is known how long it rings; what lies inside its karvai is
   * told after it.
   *
   * @param spoken the sollu
   */
  void spoken(Spoken spoken);

  /**
   * Nothing sounds.
   *
   * @param rest where and how long
   */
  void rests(Moment.Rest rest);

  /**
   * A round or a planned silence begins.
   *
   * @param start which
   */
  void spanStarts(Moment.SpanStart start);

  /**
   * A phrase named in another begins.
   *
   * @param start which
   */
  void phraseStarts(Moment.PhraseStart start);

  /**
   * A phrase named in another has been said.
   *
   * @param end which
   */
  void phraseEnds(Moment.PhraseEnd end);

  /**
   * Matras are counted afresh.
   *
   * @param start from where on, and how many a beat
   */
  void gridStarts(Moment.GridStart start);

  /**
   * A beat holds another number of matras than before.
   *
   * @param change where, and how many
   */
  void nadaiChanges(Moment.NewNadai change);

  /**
   * A bar is passed.
   *
   * @param passed which, and where
   */
  void barPassed(Moment.BarPassed passed);

  /**
   * A kanakku group begins.
   *
   * @param start which, and where
   */
  void groupStarts(Moment.GroupStart start);

  /**
   * The score wishes for a breath, or for none.
   *
   * @param wished which, and where
   */
  void breathWished(Moment.BreathWished wished);
}
