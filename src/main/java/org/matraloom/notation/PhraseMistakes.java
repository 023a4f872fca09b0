package org.matraloom.notation;

import java.text.Normalizer;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.matraloom.notation.Token.TokenKind;
import org.matraloom.score.Lexicon;
import org.matraloom.spell.MeantWord;
import org.matraloom.spell.Quoted;

/** What to say about the things that musicians write and that a phrase does not take. */
final class PhraseMistakes {

  private static final Map<String, String> MEANT =
      Map.of(
          "\u2026", "write . . . for three silent matras",
          "\u00b7", "write . for a silent matra",
          "\u2022", "write . for a silent matra",
          "\u00bd", "write [ ] for half matras",
          "!", "'! forbids a breath; a phrase takes no accents");

  private static final String LOW_LINE = "_";

  private static final Set<String> PLAN_WORDS =
      Set.of("nadai", "gati", "kalam", "rest", "until", "perform", "beats", "matras");

  private PhraseMistakes() {}

  /** Something that cannot stand in a phrase. */
  static void stray(Token token, Problems problems) {
    switch (token.kind()) {
      case DASH ->
          problems.error(
              token,
              token.said() + " between numbers can mean a list or a karvai",
              "write 5 4 for two groups, 5(1)4 for a karvai of 1 between them");
      case STAR ->
          problems.error(
              token,
              "expected the size of a group before *",
              "5*6 is five sollus, each lasting 6 matras");
      case EQUALS ->
          problems.error(
              token,
              "a phrase has one = only, after its name",
              "begin each phrase on a line of its own");
      case COLON ->
          problems.error(
              token,
              token.said() + " stands only after a nadai in curly brackets",
              "write {5: takatakita} for five matras a beat");
      default ->
          problems.error(
              token,
              token.said() + " has no meaning in a phrase",
              () ->
                  Optional.of(
                      MEANT.getOrDefault(
                          token.text(),
                          "a phrase takes sollus, numbers, names and , ; . ' [ ] ( ) xN {5: } | ||")));
    }
  }

  /**
   * Whether a dash or a low line is meant as people write them in messages: a matra, in which the
   * sound before rings on. It is told once; what is not meant so is told as a mistake.
   */
  static boolean isKarvai(Token before, Token token, Token next, Problems problems) {
    boolean between =
        token.tight() && next.tight() && before.is(TokenKind.NUMBER) && next.is(TokenKind.NUMBER);
    if (between || !(token.is(TokenKind.DASH) || token.text().equals(LOW_LINE))) {
      stray(token, problems);
      return false;
    }
    problems.warnOnce(
        token,
        token.said() + " is taken as a matra in which the sound before rings on",
        "write , for that, . for a silent matra, or only a space between phrases");
    return true;
  }

  /** A wish about breath where nothing has been said yet. */
  static void wishBeforeWords(Token token, Problems problems) {
    problems.error(
        token,
        token.said() + " speaks of the sollu before it, and there is none",
        "write it after the sollu, or its karvai, that is followed by the breath");
  }

  /** A word that follows the sign of a breath without a space. */
  static void apostrophe(Token sign, Token word, Problems problems) {
    problems.error(
        sign,
        "expected a space between " + sign.said() + " and " + word.said(),
        "ta' ki asks for a breath after ta; to split a word write -, as in ta-ki");
  }

  /** Two wishes about one place. */
  static void twoWishes(Token token, Problems problems) {
    problems.error(
        token,
        "a place bears one breath mark",
        "' asks for a breath there, '! forbids one; take one of them out");
  }

  /** A word that the lexicon cannot split. */
  static void unknownWord(Token token, Lexicon lexicon, Problems problems) {
    problems.error(
        token,
        "no sollus known for " + Quoted.quote(token.text()),
        () ->
            Optional.of(
                PLAN_WORDS.contains(token.text())
                    ? "rounds and rests stand under a line perform"
                    : lexicon
                        .nearest(token.text())
                        .map(near -> "the nearest is " + near)
                        .orElse("a hyphen shows where one sollu ends, as in tan-gu")));
  }

  /** {@code 9 (1) 9}: the bracket of a karvai stands loose. Passes over it. */
  static void looseKarvai(Token group, Cursor cursor, Problems problems) {
    Token opener = cursor.next();
    Token number = cursor.next();
    cursor.next();
    String karvai = group.brief() + "(" + number.brief() + ")";
    problems.error(
        opener,
        "expected x and a number after (" + number.brief() + ")",
        "write " + karvai + " without a space for a karvai of " + number.brief());
  }

  /** {@code 5 x3}: five threes or three fives. Passes over it. */
  static void timesAfterNumber(Token group, Cursor cursor, Problems problems) {
    Token times = cursor.next();
    String count = cursor.is(TokenKind.NUMBER) ? cursor.next().brief() : "3";
    String size = group.brief();
    problems.error(
        times,
        "x after a bare number can mean a repeat or a hold",
        "("
            + size
            + ") x"
            + count
            + " says the group again and again; "
            + size
            + "*"
            + count
            + " holds each of its sollus");
  }

  /** An x that follows nothing it could repeat. Passes over its number. */
  static void strayTimes(Token token, Cursor cursor, Problems problems) {
    cursor.took(TokenKind.NUMBER);
    problems.error(
        token,
        "x must follow a closing bracket or a phrase name",
        "write (takita) x3 to say takita three times");
  }

  /** A round bracket closed without saying how often. */
  static void missingTimes(Cursor cursor, Problems problems) {
    Token closer = cursor.previous();
    boolean capital = cursor.is(TokenKind.NAME) && cursor.peek().text().matches("X[0-9]*");
    problems.error(
        closer,
        "expected x and a number after ), found " + cursor.peek().said(),
        capital
            ? "write the x small"
            : "write (takita) x2 to say it twice, [takita] for double speed");
    if (capital && !cursor.next().text().matches("X[0-9]+")) {
      cursor.took(TokenKind.NUMBER);
    }
  }

  /** A word and a number that touch. */
  static void touching(Token token, Problems problems) {
    problems.error(
        token,
        "a word and a number need a space between them",
        "write ta 5 for a sollu and a group of five, (ta) x5 for a repeat");
  }

  /** A name that no phrase has. */
  static Optional<String> unknownName(String name, Collection<String> phrases, Lexicon lexicon) {
    Optional<String> nearest = MeantWord.of(name, phrases);
    if (nearest.isPresent()) {
      return Optional.of("the nearest is " + nearest.get());
    }
    String small = Normalizer.normalize(name, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
    return lexicon
        .split(small)
        .map(
            sollus ->
                "spoken words are written small: "
                    + small
                    + (sollus.size() > 1 ? "" : "; twice as long is " + small + " ,"));
  }

  /** The sign of a closing bracket. */
  static String sign(TokenKind closer) {
    return switch (closer) {
      case ROUND_CLOSE -> ") x2";
      case SQUARE_CLOSE -> "]";
      default -> "}";
    };
  }
}
