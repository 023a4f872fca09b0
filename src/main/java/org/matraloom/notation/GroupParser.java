package org.matraloom.notation;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.matraloom.notation.Token.TokenKind;
import org.matraloom.score.Element;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Wording;
import org.matraloom.spell.Quoted;

/** Reads kanakku shorthand: {@code 9}, {@code 9(1)}, {@code 5*6}, {@code 5*6(2)}. */
final class GroupParser {

  private static final int MOST_MATRAS = 99;

  /** No hold is written; {@code 7*1} is held for one matra, and its words have no karvai inside. */
  private static final int NOT_HELD = 0;

  private final Lexicon lexicon;
  private final Problems problems;
  private final Map<List<Integer>, Element.Group> known = new HashMap<>();
  private Wording wording = Wording.USUAL;

  GroupParser(Lexicon lexicon, Problems problems) {
    this.lexicon = lexicon;
    this.problems = problems;
  }

  /** Takes the wording of the head, before the first phrase. */
  void use(Wording other) {
    wording = other;
    known.clear();
  }

  /** Reads the group whose size has just been taken. */
  void parse(Token token, Cursor cursor, List<Element> elements) {
    int size = token.value();
    boolean sound = inRange(token, 1, Lexicon.LARGEST_GROUP, "a group has", "sollus");
    int hold = NOT_HELD;
    if (cursor.took(TokenKind.STAR)) {
      if (!cursor.is(TokenKind.NUMBER)) {
        problems.error(
            cursor.peek(),
            "expected a number after *, found " + cursor.peek().said(),
            "5*6 is five sollus, each lasting 6 matras");
        return;
      }
      Token held = cursor.next();
      hold = held.value();
      sound &= inRange(held, 1, MOST_MATRAS, "a sollu is held", "matras");
    }
    int karvai = 0;
    if (isNumberInBrackets(cursor) && cursor.peek().tight()) {
      cursor.next();
      Token rings = cursor.next();
      cursor.next();
      karvai = rings.value();
      sound &= inRange(rings, 0, MOST_MATRAS, "a karvai in brackets has", "matras");
    } else if (isNumberInBrackets(cursor) && !cursor.peek(3).is(TokenKind.TIMES)) {
      PhraseMistakes.looseKarvai(token, cursor, problems);
      sound = false;
    } else if (cursor.is(TokenKind.TIMES)) {
      PhraseMistakes.timesAfterNumber(token, cursor, problems);
      sound = false;
    }
    if (sound) {
      elements.add(group(size, hold).ringing(karvai));
    }
  }

  private Element.Group group(int size, int hold) {
    return known.computeIfAbsent(
        List.of(size, hold),
        key ->
            hold == NOT_HELD
                ? wording.group(size, 1, 0, lexicon)
                : wording.held(size, hold, lexicon));
  }

  private static boolean isNumberInBrackets(Cursor cursor) {
    return cursor.is(TokenKind.ROUND_OPEN)
        && cursor.peek(1).is(TokenKind.NUMBER)
        && cursor.peek(2).is(TokenKind.ROUND_CLOSE);
  }

  private boolean inRange(Token number, int least, int most, String what, String unit) {
    if (number.value() >= least && number.value() <= most) {
      return true;
    }
    String range = " " + least + " to " + most + " " + unit + ", given ";
    problems.error(number, what + range + Quoted.brief(number.text()));
    return false;
  }
}
