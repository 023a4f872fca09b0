package org.matraloom.notation;

import java.util.List;

/** Reads tokens one after another; the last one, an END, is never passed. */
final class Cursor {

  private final List<Token> tokens;
  private int at;

  Cursor(List<Token> tokens, int at) {
    this.tokens = tokens;
    this.at = Math.min(at, tokens.size() - 1);
  }

  Token peek() {
    return peek(0);
  }

  Token peek(int ahead) {
    return tokens.get(Math.min(at + ahead, tokens.size() - 1));
  }

  boolean is(Token.TokenKind kind) {
    return peek().is(kind);
  }

  boolean isAtEnd() {
    return is(Token.TokenKind.END);
  }

  /** The token taken last, or the first one if none has been. */
  Token previous() {
    return tokens.get(Math.max(0, at - 1));
  }

  Token next() {
    Token token = peek();
    at = Math.min(at + 1, tokens.size() - 1);
    return token;
  }

  /** Takes the next token if it is of a kind. */
  boolean took(Token.TokenKind kind) {
    if (!is(kind)) {
      return false;
    }
    next();
    return true;
  }
}
