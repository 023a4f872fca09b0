package org.matraloom.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import org.matraloom.notation.Token.TokenKind;
import org.matraloom.spell.MeantWord;
import org.matraloom.spell.Quoted;

/** What to say about a line that is neither a header nor a phrase nor part of the plan. */
final class LineMistakes {

  private static final String PHRASE_EXAMPLE = "a phrase is written Song = takita takadimi";

  private LineMistakes() {}

  static void tell(
      List<Token> tokens, boolean headersOver, Predicate<Token> isNamed, Problems problems) {
    Token first = tokens.get(0);
    if (Headers.keyword(first).isPresent()) {
      problems.error(
          first,
          first.brief() + " must stand before the phrases",
          "move the line to the head of the score");
    } else if (tokens.get(1).is(TokenKind.EQUALS) && first.is(TokenKind.NUMBER)) {
      problems.error(
          first,
          "words for a group must stand before the phrases",
          "move the line to the head of the score");
    } else if (tokens.get(1).is(TokenKind.EQUALS)) {
      problems.error(
          first, "expected a phrase name before =, found " + first.said(), PHRASE_EXAMPLE);
    } else if (first.is(TokenKind.NAME)) {
      problems.error(
          tokens.get(1),
          "expected = after the name " + first.brief() + ", found " + tokens.get(1).said(),
          () -> nameAdvice(first, headersOver, isNamed));
    } else {
      unknown(first, headersOver, problems);
    }
  }

  /** The phrase name that a word in small letters should be. */
  static String capital(Token word) {
    String name = word.name();
    int first = name.offsetByCodePoints(0, 1);
    return name.substring(0, first).toUpperCase(Locale.ROOT) + name.substring(first);
  }

  static void smallName(Token name, Problems problems) {
    problems.error(
        name,
        "a phrase name begins with a capital letter, found " + name.said(),
        "write " + Quoted.printable(capital(name)) + " =");
  }

  /** Sollus without a name, in a text that has phrases or a plan. */
  static void nameless(List<List<Token>> lines, Problems problems) {
    for (List<Token> tokens : lines) {
      Token first = tokens.get(0);
      problems.error(
          first,
          "sollus stand in a phrase, found " + first.said() + " without a name before it",
          "write a name and = in front, as in Line = " + first.brief());
    }
  }

  private static Optional<String> nameAdvice(
      Token first, boolean headersOver, Predicate<Token> isNamed) {
    if (headersOver) {
      return Optional.of(
          isNamed.test(first)
              ? "what is said stands under a line perform; to go on with a phrase, indent the line"
              : PHRASE_EXAMPLE);
    }
    return Optional.of(
        MeantWord.of(first.text(), Headers.KEYWORDS)
            .map(near -> "the nearest is " + near)
            .orElse(PHRASE_EXAMPLE));
  }

  private static void unknown(Token first, boolean headersOver, Problems problems) {
    if (PlanWords.isWord(first)) {
      problems.error(
          first,
          first.said() + " stands under a line perform",
          "move the line below perform, or write that line above it");
      return;
    }
    List<String> expected = new ArrayList<>(headersOver ? List.of() : Headers.KEYWORDS);
    expected.add("perform");
    problems.error(
        first,
        headersOver
            ? "expected a phrase or perform, found " + first.said()
            : "unknown header " + first.said(),
        () ->
            Optional.of(
                MeantWord.of(first.text(), expected)
                    .map(near -> "the nearest is " + near)
                    .orElse(
                        headersOver
                            ? "to go on with the phrase above, indent the line"
                            : "headers are " + String.join(", ", Headers.KEYWORDS))));
  }
}
