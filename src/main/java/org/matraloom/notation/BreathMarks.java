package org.matraloom.notation;

import java.util.List;
import org.matraloom.notation.Token.TokenKind;
import org.matraloom.score.Element;
import org.matraloom.score.Sequence;

/** Reads the marks that ask for a breath, {@code '}, or forbid one, {@code '!}. */
final class BreathMarks {

  private BreathMarks() {}

  /** Reads a mark whose first sign has been taken; it speaks of the sollu before it. */
  static void read(Token token, Cursor cursor, List<Element> elements, Problems problems) {
    boolean forbids = cursor.is(TokenKind.BANG) && cursor.peek().tight();
    if (forbids) {
      cursor.next();
    }
    if (new Sequence(elements).saysNothing()) {
      PhraseMistakes.wishBeforeWords(token, problems);
    } else if (elements.get(elements.size() - 1) instanceof Element.BreathWish) {
      PhraseMistakes.twoWishes(token, problems);
    } else {
      elements.add(new Element.BreathWish(!forbids));
    }
  }

  /** A word that follows a mark without a space was meant otherwise. */
  static void checkSpace(Token before, Token token, Problems problems) {
    boolean mark = before.is(TokenKind.BREATH) || before.is(TokenKind.BANG);
    if (mark && token.tight() && (token.is(TokenKind.WORD) || token.is(TokenKind.NAME))) {
      PhraseMistakes.apostrophe(before, token, problems);
    }
  }
}
