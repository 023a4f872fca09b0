package org.matraloom.score;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which words the groups of a piece are spoken with, and which strokes a drum plays its sollus
 * with.
 *
 * <p>In an ending such as {@code 9(1)9(1)9} everybody says the words of a mora, with karvai inside;
 * elsewhere a sollu a matra (common practice).
 *
 * @param kind which of the usual words
 * @param own words of the piece's own by their matras; they go before the usual ones
 * @param strokes strokes of the piece's own by sollu, of which no two have one sound; they go
 *     before the usual ones
 */
public record Wording(
    Kind kind, Map<Integer, GroupWords> own, Map<Sollu, List<DrumStroke>> strokes) {

  /** Which of the usual words are taken. */
  public enum Kind {
    /** Those of a mora in an ending, plain ones elsewhere. */
    USUAL,
    /** A sollu a matra everywhere. */
    PLAIN,
    /** Those of a mora everywhere. */
    MORA
  }

  /** The wording of a piece that says nothing of it. */
  public static final Wording USUAL = new Wording(Kind.USUAL, Map.of(), Map.of());

  /** Copies the maps, keeping their order. */
  public Wording {
    own = Collections.unmodifiableMap(new LinkedHashMap<>(own));
    strokes = Collections.unmodifiableMap(new LinkedHashMap<>(strokes));
  }

  /**
   * What it says of strokes, with the usual words.
   *
   * @return a wording
   */
  public Wording strokesAlone() {
    return new Wording(Kind.USUAL, Map.of(), strokes);
  }

  /**
   * Whether groups are spoken alike.
   *
   * @param other another wording
   * @return true if they differ in strokes at most
   */
  public boolean speaksLike(Wording other) {
    return kind == other.kind && own.equals(other.own);
  }

  /**
   * A group with its words.
   *
   * @param size how many sollus, from 1 to {@value Lexicon#LARGEST_GROUP}
   * @param hold how many matras each sollu lasts; held sollus have no karvai between
   * @param karvai how many matras the last one rings on
   * @param lexicon the usual words
   * @return the group
   */
  public Element.Group group(int size, int hold, int karvai, Lexicon lexicon) {
    if (hold > 1) {
      return held(size, hold, lexicon).ringing(karvai);
    }
    Optional<GroupWords> mine = Optional.ofNullable(own.get(size));
    GroupWords plain = GroupWords.plain(lexicon.words(size));
    GroupWords mora = lexicon.moraWords(size);
    GroupWords usual = kind == Kind.MORA ? mora : lexicon.groupWords(size);
    return new Element.Group(
        size,
        hold,
        karvai,
        mine.orElse(kind == Kind.PLAIN ? plain : usual),
        mine.orElse(kind == Kind.PLAIN ? plain : mora),
        false);
  }

  /**
   * A group whose sollus are all held alike, as in {@code 5*6}: its words have no karvai inside,
   * also where they are held for one matra.
   *
   * @param size how many sollus, from 1 to {@value Lexicon#LARGEST_GROUP}
   * @param hold how many matras each sollu lasts
   * @param lexicon the usual words
   * @return the group
   */
  public Element.Group held(int size, int hold, Lexicon lexicon) {
    GroupWords words =
        Optional.ofNullable(own.get(size))
            .filter(GroupWords::isPlain)
            .orElseGet(() -> GroupWords.plain(lexicon.words(size)));
    return new Element.Group(size, hold, 0, words, words, false);
  }
}
