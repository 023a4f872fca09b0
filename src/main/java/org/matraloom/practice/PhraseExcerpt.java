package org.matraloom.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.score.Composition;
import org.matraloom.score.Element;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Matras;
import org.matraloom.score.Moment;
import org.matraloom.score.Performance;
import org.matraloom.score.Sequence;
import org.matraloom.score.Sollu;
import org.matraloom.score.Span;
import org.matraloom.score.Spoken;
import org.matraloom.time.Ratio;

/**
 * What a round says between two places, as it could be written.
 *
 * @param startBeat where the first sound or written silence begins, in beats of the performance
 * @param endBeat where the last one ends
 * @param sequence what is said, in matras of the round
 */
record PhraseExcerpt(Ratio startBeat, Ratio endBeat, Sequence sequence) {

  /** A sollu, a karvai or a silence with its length, or a wish about breath, which has none. */
  private record Piece(
      Optional<Sollu> sollu,
      boolean rings,
      Ratio matras,
      int nadai,
      Optional<Element.BreathWish> wish) {}

  /** Keeps what lies inside whole; a karvai whose sollu lies before the cut becomes silence. */
  private static final class Cutter {
    private final Ratio from;
    private final Ratio to;
    private final int kalamDensity;
    private final List<Piece> pieces = new ArrayList<>();
    private Ratio start;
    private Ratio end;

    Cutter(Span.Round round, Ratio from, Ratio to) {
      this.from = from;
      this.to = to;
      this.kalamDensity = Composition.density(round.kalam());
      this.start = to;
      this.end = to;
    }

    void take(Moment moment) {
      if (moment instanceof Spoken spoken) {
        keep(
            spoken.beat(),
            spoken.ownBeats(),
            spoken.matrasPerBeat(),
            Optional.of(spoken.sollu()),
            false);
        spoken.rings().forEach(ring -> keep(ring, true));
      } else if (moment instanceof Moment.Rest rest) {
        keep(rest.matras(), false);
      } else if (moment instanceof Moment.BreathWished wished
          && !pieces.isEmpty()
          && wished.beat().compareTo(to) <= 0) {
        Piece last = pieces.get(pieces.size() - 1);
        if (last.wish().isPresent()) {
          pieces.remove(pieces.size() - 1);
        }
        Optional<Element.BreathWish> wish = Optional.of(new Element.BreathWish(wished.asks()));
        pieces.add(new Piece(Optional.empty(), false, Ratio.ZERO, last.nadai(), wish));
      }
    }

    private void keep(Matras matras, boolean rings) {
      List<Matras> inside =
          matras.each().stream().filter(one -> isInside(one.beat(), one.endBeat())).toList();
      if (!inside.isEmpty()) {
        Ratio begins = inside.get(0).beat();
        Ratio ends = inside.get(inside.size() - 1).endBeat();
        keep(
            begins,
            ends.minus(begins),
            matras.matrasPerBeat(),
            Optional.empty(),
            rings && !pieces.isEmpty());
      }
    }

    private void keep(
        Ratio begins, Ratio beats, int matrasPerBeat, Optional<Sollu> sollu, boolean rings) {
      if (!isInside(begins, begins.plus(beats))) {
        return;
      }
      if (pieces.isEmpty()) {
        start = begins;
      }
      end = begins.plus(beats);
      int nadai = matrasPerBeat / kalamDensity;
      pieces.add(new Piece(sollu, rings, beats.times(matrasPerBeat), nadai, Optional.empty()));
    }

    private boolean isInside(Ratio begins, Ratio ends) {
      return begins.compareTo(from) >= 0 && ends.compareTo(to) <= 0;
    }
  }

  /**
   * Cuts a round.
   *
   * @param round the round
   * @param composition what it belongs to
   * @param from the earliest place kept, in beats of the performance
   * @param to the latest place kept
   * @param lexicon knows how the words are read
   */
  static PhraseExcerpt of(
      Span.Round round, Composition composition, Ratio from, Ratio to, Lexicon lexicon) {
    Cutter cutter = new Cutter(round, from, to);
    new Performance(composition, List.of(round)).moments().forEachRemaining(cutter::take);
    List<Element> elements = new ArrayList<>();
    int at = 0;
    while (at < cutter.pieces.size()) {
      Piece first = cutter.pieces.get(at);
      int next = at + 1;
      while (next < cutter.pieces.size() && isLike(first, cutter.pieces.get(next))) {
        next++;
      }
      Sequence run = new Sequence(written(cutter.pieces.subList(at, next), lexicon));
      elements.addAll(
          first.nadai() == round.nadai()
              ? run.elements()
              : List.of(new Element.InnerNadai(first.nadai(), run)));
      at = next;
    }
    return new PhraseExcerpt(cutter.start, cutter.end, new Sequence(elements));
  }

  private static boolean isLike(Piece first, Piece other) {
    return first.nadai() == other.nadai()
        && (first.matras().den() == other.matras().den()
            || other.rings()
            || other.wish().isPresent());
  }

  /** Writes pieces of one density; a denominator of 2 or more is written as double speed. */
  private static List<Element> written(List<Piece> pieces, Lexicon lexicon) {
    long speed = pieces.stream().mapToLong(piece -> piece.matras().den()).max().orElse(1);
    if (speed > 1) {
      int factor = speed % 4 == 0 ? 4 : 2;
      List<Piece> slower =
          pieces.stream()
              .map(
                  piece ->
                      new Piece(
                          piece.sollu(),
                          piece.rings(),
                          piece.matras().times(factor),
                          piece.nadai(),
                          piece.wish()))
              .toList();
      return List.of(new Element.Faster(factor, new Sequence(written(slower, lexicon))));
    }
    List<Element> elements = new ArrayList<>();
    List<Sollu> sollus = new ArrayList<>();
    WordMaker words = new WordMaker(lexicon);
    for (Piece piece : pieces) {
      long silent = piece.matras().num();
      if (piece.sollu().isPresent()) {
        sollus.add(piece.sollu().get());
        silent--;
      }
      if (silent > 0 || piece.wish().isPresent()) {
        elements.addAll(words.words(sollus));
        sollus.clear();
        boolean karvai = piece.rings() || piece.sollu().isPresent();
        elements.addAll(karvai ? karvais(silent) : silences(silent));
        piece.wish().ifPresent(elements::add);
      }
    }
    elements.addAll(words.words(sollus));
    return elements;
  }

  private static List<Element> karvais(long matras) {
    List<Element> elements = new ArrayList<>();
    for (long left = matras; left > 0; left -= 2) {
      elements.add(new Element.Karvai(left >= 2 ? 2 : 1));
    }
    return elements;
  }

  private static List<Element> silences(long matras) {
    List<Element> elements = new ArrayList<>();
    for (long matra = 0; matra < matras; matra++) {
      elements.add(new Element.Silence());
    }
    return elements;
  }
}
