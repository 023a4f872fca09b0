package org.matraloom.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.notation.Token.TokenKind;
import org.matraloom.score.Composition;
import org.matraloom.score.Jati;
import org.matraloom.spell.JatiNames;
import org.matraloom.spell.MeantWord;

/** How many matras a beat has, as a number or by name. */
final class NadaiReader {

  private NadaiReader() {}

  /** Reads a nadai from one token. */
  static Optional<Integer> read(Token token, Problems problems) {
    return read(token, List.of(), problems);
  }

  /** Reads the nadai of a curly bracket, where the word of an ending may be meant. */
  static Optional<Integer> inBrackets(Token token, Problems problems) {
    return read(token, LastTimes.WORDS, problems);
  }

  private static Optional<Integer> read(Token token, List<String> also, Problems problems) {
    if (token.is(TokenKind.NUMBER)
        && token.value() >= 1
        && token.value() <= Composition.HIGHEST_NADAI) {
      return Optional.of(token.value());
    }
    boolean isName = token.is(TokenKind.WORD) || token.is(TokenKind.NAME);
    Optional<Jati> jati = isName ? JatiNames.jati(token.text()) : Optional.empty();
    if (jati.isPresent()) {
      return Optional.of(jati.get().aksharas());
    }
    List<String> names = new ArrayList<>();
    for (Jati known : Jati.values()) {
      names.add(known.word());
    }
    List<String> meant = new ArrayList<>(names);
    meant.addAll(also);
    problems.error(
        token,
        "a nadai is 1 to "
            + Composition.HIGHEST_NADAI
            + " or "
            + String.join(", ", names)
            + "; found "
            + token.said(),
        () -> MeantWord.of(token.text(), meant).map(near -> "the nearest is " + near));
    return Optional.empty();
  }
}
