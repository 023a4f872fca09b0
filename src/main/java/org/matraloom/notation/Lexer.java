package org.matraloom.notation;

import java.util.ArrayList;
import java.util.List;

/** Cuts one line into tokens; what follows a {@code #} is a note and left out. */
final class Lexer {

  private static final String MARKS = ",;.|()[]{}:*=+-/\u00d7'\u2018\u2019!";
  private static final Token.TokenKind[] KINDS = {
    Token.TokenKind.COMMA,
    Token.TokenKind.SEMICOLON,
    Token.TokenKind.DOT,
    Token.TokenKind.BAR,
    Token.TokenKind.ROUND_OPEN,
    Token.TokenKind.ROUND_CLOSE,
    Token.TokenKind.SQUARE_OPEN,
    Token.TokenKind.SQUARE_CLOSE,
    Token.TokenKind.CURLY_OPEN,
    Token.TokenKind.CURLY_CLOSE,
    Token.TokenKind.COLON,
    Token.TokenKind.STAR,
    Token.TokenKind.EQUALS,
    Token.TokenKind.PLUS,
    Token.TokenKind.DASH,
    Token.TokenKind.SLASH,
    Token.TokenKind.TIMES,
    Token.TokenKind.BREATH,
    Token.TokenKind.BREATH,
    Token.TokenKind.BREATH,
    Token.TokenKind.BANG
  };
  private static final String INVISIBLE = "\u200b\u200e\u200f\u2060\ufeff\u00a0\u202f\u2007";
  private static final String DASHES = "\u2010\u2011\u2012\u2013\u2014\u2212";
  private static final char NOTE = '#';

  private final SourceLine line;
  private final String text;
  private final List<Token> tokens = new ArrayList<>();
  private int at;

  private Lexer(SourceLine line) {
    this.line = line;
    this.text = line.text();
  }

  /** The tokens of a line, the last of them {@link Token.TokenKind#END}. */
  static List<Token> tokens(SourceLine line) {
    return new Lexer(line).run();
  }

  /** The index at which the note of a line begins, or its length. */
  static int noteStart(String text) {
    int note = text.indexOf(NOTE);
    return note < 0 ? text.length() : note;
  }

  static boolean isSpace(int letter) {
    return Character.isWhitespace(letter) || INVISIBLE.indexOf(letter) >= 0;
  }

  /** A text with plain spaces. */
  static String spaced(String text) {
    StringBuilder plain = new StringBuilder();
    for (int index = 0; index < text.length(); index++) {
      char letter = text.charAt(index);
      plain.append(isSpace(letter) ? ' ' : letter);
    }
    return plain.toString();
  }

  private List<Token> run() {
    int end = noteStart(text);
    boolean tight = false;
    int wordsEnd = 0;
    while (at < end) {
      int start = at;
      int letter = text.codePointAt(at);
      if (isSpace(letter)) {
        at += Character.charCount(letter);
        tight = false;
        continue;
      }
      Token.TokenKind kind = kindAt(letter, end);
      tokens.add(new Token(kind, line, start, at, tight));
      wordsEnd = at;
      tight = true;
    }
    tokens.add(new Token(Token.TokenKind.END, line, wordsEnd, wordsEnd, false));
    return tokens;
  }

  private Token.TokenKind kindAt(int letter, int end) {
    int start = at;
    at += Character.charCount(letter);
    if (isDigit(letter)) {
      while (at < end && isDigit(text.charAt(at))) {
        at++;
      }
      return Token.TokenKind.NUMBER;
    }
    if (Character.isUpperCase(letter) || Character.isTitleCase(letter)) {
      takeLetters(end, true);
      return Token.TokenKind.NAME;
    }
    if (Character.isLetter(letter)) {
      takeLetters(end, false);
      return letter == 'x' && at == start + 1 ? Token.TokenKind.TIMES : Token.TokenKind.WORD;
    }
    if (letter == '|' && at < end && text.charAt(at) == '|') {
      at++;
      return Token.TokenKind.DOUBLE_BAR;
    }
    if (letter == '/' && at < end && text.charAt(at) == '/') {
      at++;
      return Token.TokenKind.DOUBLE_BAR;
    }
    if (DASHES.indexOf(letter) >= 0) {
      return Token.TokenKind.DASH;
    }
    int mark = MARKS.indexOf(letter);
    if (mark >= 0) {
      return KINDS[mark];
    }
    at = SourceLine.clusterEnd(text, start, end);
    return Token.TokenKind.STRANGE;
  }

  /** Letters and their marks; in a name digits and low lines too, in a word hyphens between. */
  private void takeLetters(int end, boolean name) {
    while (at < end) {
      int letter = text.codePointAt(at);
      boolean more =
          Character.isLetter(letter)
              || isMark(letter)
              || (name && (isDigit(letter) || letter == '_'))
              || (!name
                  && letter == '-'
                  && at + 1 < end
                  && Character.isLetter(text.codePointAt(at + 1)));
      if (!more) {
        return;
      }
      at += Character.charCount(letter);
    }
  }

  private static boolean isMark(int letter) {
    int type = Character.getType(letter);
    return type == Character.NON_SPACING_MARK
        || type == Character.COMBINING_SPACING_MARK
        || type == Character.ENCLOSING_MARK
        || letter == '\u200c'
        || letter == '\u200d';
  }

  private static boolean isDigit(int letter) {
    return letter >= '0' && letter <= '9';
  }
}
