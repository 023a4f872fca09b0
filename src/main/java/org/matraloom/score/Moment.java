package org.matraloom.score;

import org.matraloom.time.Ratio;

/**
 * What comes next when a performance is read from its beginning to its end; the one reading that
 * sound, pages and sums are made from. Handed out by {@link Performance#moments()}.
 */
public sealed interface Moment
    permits Spoken,
        Moment.Rest,
        Moment.SpanStart,
        Moment.PhraseStart,
        Moment.PhraseEnd,
        Moment.GroupStart,
        Moment.GridStart,
        Moment.NewNadai,
        Moment.BarPassed,
        Moment.BreathWished {

  /**
   * Where it is.
   *
   * @return beats; 0 is the samam of the avartana in which the performance starts
   */
  Ratio beat();

  /**
   * Tells a listener which kind of moment this is.
   *
   * @param listener who hears it
   */
  void tell(MomentListener listener);

  /**
   * Nothing sounds.
   *
   * @param matras where and how long
   * @param round the round that is going on, from 1; 0 before the first
   */
  record Rest(Matras matras, int round) implements Moment {
    @Override
    public Ratio beat() {
      return matras.beat();
    }

    @Override
    public void tell(MomentListener listener) {
      listener.rests(this);
    }
  }

  /**
   * A round or a planned silence begins.
   *
   * @param span which; a planned silence is longer than nothing
   */
  record SpanStart(Span span) implements Moment {
    @Override
    public Ratio beat() {
      return span.startBeat();
    }

    @Override
    public void tell(MomentListener listener) {
      listener.spanStarts(this);
    }
  }

  /**
   * A phrase named in another begins.
   *
   * @param beat where
   * @param name the phrase's name
   * @param depth 1 for a phrase named in the round's own phrase, 2 for one inside that, and so on
   * @param round the round it belongs to, from 1
   */
  record PhraseStart(Ratio beat, String name, int depth, int round) implements Moment {
    @Override
    public void tell(MomentListener listener) {
      listener.phraseStarts(this);
    }
  }

  /**
   * A phrase named in another has been said.
   *
   * @param beat where
   * @param name the phrase's name
   * @param depth the depth of its beginning
   */
  record PhraseEnd(Ratio beat, String name, int depth) implements Moment {
    @Override
    public void tell(MomentListener listener) {
      listener.phraseEnds(this);
    }
  }

  /**
   * Matras are counted afresh from here on: a round, a planned silence or a passage with a nadai of
   * its own begins, or such a passage ends.
   *
   * @param beat where
   * @param matrasPerBeat matras a beat from here on, kalam included
   * @param round the round that is going on, from 1; 0 before the first
   */
  record GridStart(Ratio beat, int matrasPerBeat, int round) implements Moment {
    @Override
    public void tell(MomentListener listener) {
      listener.gridStarts(this);
    }
  }

  /**
   * A beat holds another number of matras than before. It is told once, where the first sound or
   * silence in it begins; passages that end where others begin change it once, and one that ends
   * where all ends does not change it.
   *
   * @param beat where
   * @param from matras a beat before, kalam included
   * @param to matras a beat from here on, kalam included
   */
  record NewNadai(Ratio beat, int from, int to) implements Moment {
    @Override
    public void tell(MomentListener listener) {
      listener.nadaiChanges(this);
    }
  }

  /**
   * A kanakku group begins.
   *
   * @param beat where, in beats of the performance
   * @param size its number
   * @param hold how many matras each of its sollus is held; 1 unless it says otherwise
   * @param beats how long it is without its karvai, in beats
   */
  record GroupStart(Ratio beat, int size, int hold, Ratio beats) implements Moment {
    @Override
    public void tell(MomentListener listener) {
      listener.groupStarts(this);
    }
  }

  /**
   * The score wishes for a breath, or for none.
   *
   * @param beat where it stands; the wish concerns the sollu before it
   * @param asks whether a breath is wanted; otherwise none may be taken
   */
  record BreathWished(Ratio beat, boolean asks) implements Moment {
    @Override
    public void tell(MomentListener listener) {
      listener.breathWished(this);
    }
  }

  /**
   * A bar is passed.
   *
   * @param beat where
   * @param bar the bar as written
   */
  record BarPassed(Ratio beat, Element.Bar bar) implements Moment {
    @Override
    public void tell(MomentListener listener) {
      listener.barPassed(this);
    }
  }
}
