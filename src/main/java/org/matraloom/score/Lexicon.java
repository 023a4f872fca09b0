package org.matraloom.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The sollus that are known: their sounds, their spellings, and the words for groups.
 *
 * <p>Immutable. A user's own list is added with {@link #plus(String, String)}. The form of a list
 * is explained at the head of the built-in one, {@code sollus.txt}.
 */
public final class Lexicon {

  /** The largest group there are words for. */
  public static final int LARGEST_GROUP = LexiconText.LARGEST_GROUP;

  /** The largest group with words of its own; larger ones are put together from these. */
  public static final int LARGEST_OWN_GROUP = LexiconText.LARGEST_OWN_GROUP;

  private static final char FORCED_SPLIT = '-';

  private final LexiconText contents;
  private final LexiconWords words;

  private Lexicon(LexiconText contents) {
    this.contents = contents;
    this.words = new LexiconWords(contents);
  }

  /**
   * The built-in lexicon.
   *
   * @return the sollus in common use
   */
  public static Lexicon standard() {
    return new Lexicon(LexiconText.standard());
  }

  /**
   * This lexicon with a list of the user's added; where both know a spelling or a sound, the user's
   * line counts, and the user's words for a group come first.
   *
   * @param text a list in the form of {@code sollus.txt}
   * @param sourceName the name of the list, for messages
   * @return a new lexicon
   * @throws LexiconException if any line is faulty; it names all of them
   */
  public Lexicon plus(String text, String sourceName) {
    return new Lexicon(contents.plus(text, sourceName));
  }

  /**
   * The sound of one sollu.
   *
   * @param spelling how it is written, in any known romanisation
   * @return the sound, or nothing if the spelling is not known
   */
  public Optional<SolluSound> sound(String spelling) {
    return contents.bySpelling(Spelling.normal(spelling));
  }

  /**
   * The sound of a sollu that was read with this lexicon.
   *
   * @param sollu a sollu whose {@link Sollu#sound()} is a name of this lexicon
   * @return the sound, or nothing if the name is not known
   */
  public Optional<SolluSound> sound(Sollu sollu) {
    return contents.byName(sollu.sound());
  }

  /**
   * All sounds.
   *
   * @return in the order of the lists
   */
  public List<SolluSound> sounds() {
    return contents.sounds();
  }

  /**
   * Splits a run-together word into sollus: the fewest that cover it completely, and of equally few
   * those that are longer at the front. A hyphen forces a split, as in {@code tan-gu}. A consonant
   * such as th is never cut in half.
   *
   * @param word as written; the sollus keep this spelling
   * @return the sollus, at least one, or nothing if the word cannot be covered
   */
  public Optional<List<Sollu>> split(String word) {
    List<Sollu> sollus = new ArrayList<>();
    int from = 0;
    while (from <= word.length()) {
      int hyphen = word.indexOf(FORCED_SPLIT, from);
      int to = hyphen < 0 ? word.length() : hyphen;
      Optional<List<Sollu>> part = cover(word.substring(from, to));
      if (part.isEmpty()) {
        return Optional.empty();
      }
      sollus.addAll(part.get());
      from = to + 1;
    }
    return Optional.of(words.joined(sollus));
  }

  /**
   * A sollu as it is said after another one: ta is said ṭa after ki.
   *
   * @param before the sollu before it, with nothing between
   * @param sollu the sollu by itself
   * @return the sollu with the sound it takes there, its spelling unchanged
   */
  public Sollu inCompany(Sollu before, Sollu sollu) {
    return words.inCompany(before, sollu);
  }

  /**
   * The usual words for a group.
   *
   * @param size how many sollus, from 1 to {@value #LARGEST_GROUP}
   * @return as many sollus
   * @throws IllegalArgumentException if the size is outside the range
   */
  public List<Sollu> words(int size) {
    return wordChoices(size).get(0);
  }

  /**
   * The usual words for a group in a score, which may have karvai inside.
   *
   * @param size how many matras, from 1 to {@value #LARGEST_GROUP}
   * @return the first words of the user's list for it, else the plain ones
   * @throws IllegalArgumentException if the size is outside the range
   */
  public GroupWords groupWords(int size) {
    return words.usual(size);
  }

  /**
   * The usual words for a group in an ending, such as ta , di , gi na tom for 7.
   *
   * @param size how many matras, from 1 to {@value #LARGEST_GROUP}
   * @return the first words of the user's list for it; those of a mora; else the plain ones
   * @throws IllegalArgumentException if the size is outside the range
   */
  public GroupWords moraWords(int size) {
    return moraChoices(size).stream().findFirst().orElse(groupWords(size));
  }

  /**
   * All words for a group in an ending, the usual ones first.
   *
   * @param size how many matras
   * @return the first words of the user's list for it and those of a mora; none for sizes that are
   *     said plainly
   */
  public List<GroupWords> moraChoices(int size) {
    return words.inEndings(size);
  }

  /**
   * All words for a group without karvai, the usual ones first. Groups above {@value
   * #LARGEST_OWN_GROUP} without words of their own are put together from nearly equal smaller ones,
   * longer ones first.
   *
   * @param size how many sollus, from 1 to {@value #LARGEST_GROUP}
   * @return at least two choices, each of {@code size} sollus
   * @throws IllegalArgumentException if the size is outside the range
   */
  public List<List<Sollu>> wordChoices(int size) {
    return words.choices(size);
  }

  /**
   * The known word that is most like an unknown one.
   *
   * @param word a word that {@link #split} does not cover
   * @return a word that it does cover, or nothing if none is near
   */
  public Optional<String> nearest(String word) {
    StringBuilder letters = new StringBuilder();
    Spelling.normal(word)
        .codePoints()
        .filter(Character::isLetter)
        .forEach(letters::appendCodePoint);
    return new NearestWord(contents).to(letters.toString()).filter(near -> split(near).isPresent());
  }

  /** Covers a word without hyphens, from the fewest sollus that reach its end from each letter. */
  private Optional<List<Sollu>> cover(String word) {
    int end = word.length();
    int[] fewest = new int[end + 1];
    int[] cut = new int[end + 1];
    for (int at = end - 1; at >= 0; at--) {
      fewest[at] = Integer.MAX_VALUE;
      for (int to = Math.min(end, at + contents.longestSpelling()); to > at; to--) {
        if (fewest[to] < fewest[at] - 1 && isBoundary(word, to) && known(word, at, to)) {
          fewest[at] = fewest[to] + 1;
          cut[at] = to;
        }
      }
    }
    if (word.isEmpty() || fewest[0] == Integer.MAX_VALUE) {
      return Optional.empty();
    }
    List<Sollu> sollus = new ArrayList<>();
    for (int at = 0; at < end; at = cut[at]) {
      String spelling = word.substring(at, cut[at]);
      sollus.add(new Sollu(spelling, sound(spelling).orElseThrow().name()));
    }
    return Optional.of(sollus);
  }

  private boolean known(String word, int from, int to) {
    return sound(word.substring(from, to)).isPresent();
  }

  private static boolean isBoundary(String word, int at) {
    if (at == word.length()) {
      return true;
    }
    char after = word.charAt(at);
    return Character.getType(after) != Character.NON_SPACING_MARK
        && !Character.isLowSurrogate(after)
        && !Spelling.cutsConsonant(word.charAt(at - 1), after);
  }

  /**
   * How fast the mouth of its owner is, by the line {@code fastest} of a list.
   *
   * @return sollus a second, 1 to 20; empty if no list says so
   */
  public OptionalDouble fastestPerSecond() {
    return contents.fastest();
  }
}
