package org.matraloom.notation;

import java.text.Normalizer;
import org.matraloom.score.Place;
import org.matraloom.spell.Quoted;

/**
 * The smallest meaningful piece of a line.
 *
 * @param kind what it is
 * @param line the line it stands in
 * @param start its first index in the line
 * @param end the index after it
 * @param tight whether it follows the token before it without a space
 */
record Token(TokenKind kind, SourceLine line, int start, int end, boolean tight) {

  /** What a token is. */
  enum TokenKind {
    /** Letters that begin with a small one: sollus, or a keyword. */
    WORD,
    /** Letters and digits that begin with a capital. */
    NAME,
    NUMBER,
    /** The x of a repeat. */
    TIMES,
    COMMA,
    SEMICOLON,
    DOT,
    BAR,
    DOUBLE_BAR,
    ROUND_OPEN,
    ROUND_CLOSE,
    SQUARE_OPEN,
    SQUARE_CLOSE,
    CURLY_OPEN,
    CURLY_CLOSE,
    COLON,
    STAR,
    EQUALS,
    PLUS,
    DASH,
    SLASH,
    /** Asks for a breath. */
    BREATH,
    /** Set tight after the sign of a breath, it forbids one. */
    BANG,
    /** A character that has no meaning in a score. */
    STRANGE,
    /** The end of the line or of the phrase. */
    END
  }

  private static final int DIGITS_COUNTED = 9;
  private static final char LAST_PLAIN = '\u007e';

  String text() {
    return line.text().substring(start, end);
  }

  /** The name that it gives; equal names are equal however their marks are typed. */
  String name() {
    String text = text();
    for (int index = 0; index < text.length(); index++) {
      if (text.charAt(index) > LAST_PLAIN) {
        return Normalizer.normalize(text, Normalizer.Form.NFC);
      }
    }
    return text;
  }

  boolean is(TokenKind other) {
    return kind == other;
  }

  boolean is(String word) {
    return (kind == TokenKind.WORD || kind == TokenKind.NAME) && text().equalsIgnoreCase(word);
  }

  /** The value of a number; one with very many digits counts as the largest value. */
  int value() {
    return end - start > DIGITS_COUNTED ? Integer.MAX_VALUE : Integer.parseInt(text());
  }

  Place place() {
    return line.place(start);
  }

  /** The text for a message, harmless and not too long. */
  String brief() {
    return Quoted.brief(text());
  }

  /** The token for a message, in quotation marks. */
  String said() {
    return kind == TokenKind.END ? "the end of the line" : Quoted.quote(text());
  }
}
