package org.matraloom.notation;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.matraloom.notation.Token.TokenKind;
import org.matraloom.score.Element;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Sequence;
import org.matraloom.score.Wording;

/** Reads the body of a phrase; every fault is told and passed over, so that all are found. */
final class PhraseParser {
  static final int DEEPEST = 32;
  private static final int LONGEST_NAME = 200;
  private static final Map<TokenKind, TokenKind> CLOSERS =
      Map.of(
          TokenKind.ROUND_OPEN, TokenKind.ROUND_CLOSE,
          TokenKind.SQUARE_OPEN, TokenKind.SQUARE_CLOSE,
          TokenKind.CURLY_OPEN, TokenKind.CURLY_CLOSE);
  private final Problems problems;
  private final WordParser words;
  private final GroupParser groups;
  private final Deque<TokenKind> open = new ArrayDeque<>();
  private List<Token> references = new ArrayList<>();
  private boolean tooDeep;

  PhraseParser(Lexicon lexicon, Problems problems) {
    this.problems = problems;
    this.words = new WordParser(lexicon, problems);
    this.groups = new GroupParser(lexicon, problems);
  }

  /** A phrase as read, with the names it speaks of. */
  record Body(Sequence sequence, List<Token> references) {}

  /** Reads a phrase that begins at a cursor and goes on to its end. */
  Body parse(Token name, Cursor cursor) {
    references = new ArrayList<>();
    tooDeep = false;
    open.clear();
    int before = problems.errors();
    Sequence sequence = sequence(cursor, TokenKind.END);
    if (before == problems.errors() && saysNothing(sequence)) {
      problems.error(
          name,
          "phrase " + name.brief() + " says nothing",
          "write sollus after the =, as in " + name.brief() + " = takadimi");
    }
    return new Body(sequence, List.copyOf(references));
  }

  private Sequence sequence(Cursor cursor, TokenKind closer) {
    List<Element> elements = new ArrayList<>();
    while (!cursor.isAtEnd() && !cursor.is(closer)) {
      if (CLOSERS.containsValue(cursor.peek().kind())) {
        if (!open.isEmpty()) {
          break;
        }
        problems.error(
            cursor.peek(),
            cursor.next().said() + " closes nothing",
            "take it out, or open the bracket before it");
        continue;
      }
      element(cursor, elements);
    }
    return new Sequence(elements);
  }

  /** Takes the wording of the head, before the first phrase. */
  void use(Wording wording) {
    groups.use(wording);
  }

  private void element(Cursor cursor, List<Element> elements) {
    Token before = cursor.previous();
    Token token = cursor.next();
    if (token.tight() && touches(before.kind(), token.kind())) {
      PhraseMistakes.touching(token, problems);
    }
    BreathMarks.checkSpace(before, token, problems);
    switch (token.kind()) {
      case WORD -> words.parse(token, elements).ifPresent(elements::add);
      case NAME -> reference(token, cursor, elements);
      case NUMBER -> groups.parse(token, cursor).ifPresent(elements::add);
      case COMMA -> elements.add(new Element.Karvai(1));
      case SEMICOLON -> elements.add(new Element.Karvai(2));
      case DOT -> elements.add(new Element.Silence());
      case BAR, SLASH -> elements.add(new Element.Bar(false, token.place()));
      case DOUBLE_BAR -> elements.add(new Element.Bar(true, token.place()));
      case BREATH -> BreathMarks.read(token, cursor, elements, problems);
      case ROUND_OPEN -> round(token, cursor, elements);
      case SQUARE_OPEN -> square(token, cursor, elements);
      case CURLY_OPEN -> curly(token, cursor, elements);
      case TIMES -> PhraseMistakes.strayTimes(token, cursor, problems);
      case DASH, STRANGE -> {
        if (PhraseMistakes.isKarvai(before, token, cursor.peek(), problems)) {
          elements.add(new Element.Karvai(1));
        }
      }
      default -> PhraseMistakes.stray(token, problems);
    }
  }

  private static boolean touches(TokenKind before, TokenKind after) {
    return (before == TokenKind.WORD && after == TokenKind.NUMBER)
        || (before == TokenKind.NUMBER && (after == TokenKind.WORD || after == TokenKind.NAME));
  }

  private void reference(Token token, Cursor cursor, List<Element> elements) {
    if (token.text().length() > LONGEST_NAME) {
      problems.error(token, "a name has at most " + LONGEST_NAME + " letters", "shorten it");
      return;
    }
    references.add(token);
    repeatable(new Element.Reference(token.name()), cursor, elements);
  }

  private void round(Token opener, Cursor cursor, List<Element> elements) {
    Optional<Sequence> body = bracketed(opener, cursor);
    if (body.isEmpty()) {
      passTimes(cursor);
      return;
    }
    if (!cursor.is(TokenKind.TIMES)) {
      PhraseMistakes.missingTimes(cursor, problems);
      return;
    }
    RepeatCount.read(cursor, problems)
        .ifPresent(times -> elements.add(new Element.Repeat(body.get(), times)));
  }

  /**
   * Double speed, or four times for a double bracket: {@code [[ta] ka]} begins with two brackets
   * but ends with one, so only the end tells which it is.
   */
  private void square(Token opener, Cursor cursor, List<Element> elements) {
    boolean twoOpen = cursor.is(TokenKind.SQUARE_OPEN) && cursor.peek().tight();
    Optional<Sequence> body = bracketed(opener, cursor);
    if (body.isEmpty()) {
      passTimes(cursor);
      return;
    }
    boolean twoClosed = cursor.previous().tight();
    List<Element> inside = body.get().elements();
    Element faster = new Element.Faster(2, body.get());
    if (twoOpen
        && twoClosed
        && inside.size() == 1
        && inside.get(0) instanceof Element.Faster inner
        && inner.factor() == 2) {
      faster = new Element.Faster(4, inner.body());
    }
    repeatable(faster, cursor, elements);
  }

  private void curly(Token opener, Cursor cursor, List<Element> elements) {
    Optional<Integer> nadai = Optional.empty();
    boolean headed = cursor.peek(1).is(TokenKind.COLON);
    if (headed) {
      nadai = NadaiReader.inBrackets(cursor.next(), problems);
      cursor.next();
    } else {
      problems.error(
          opener,
          "expected a nadai and a colon after {, found " + cursor.peek().said(),
          "write {5: takatakita} for five matras a beat");
    }
    Optional<Sequence> body = bracketed(opener, cursor);
    if (body.isPresent() && nadai.isPresent()) {
      repeatable(new Element.InnerNadai(nadai.get(), body.get()), cursor, elements);
    } else {
      passTimes(cursor);
    }
  }

  private void repeatable(Element element, Cursor cursor, List<Element> elements) {
    if (cursor.is(TokenKind.TIMES)) {
      RepeatCount.read(cursor, problems)
          .ifPresent(times -> elements.add(new Element.Repeat(Sequence.of(element), times)));
    } else {
      elements.add(element);
    }
  }

  /** What stands between an opening bracket, already taken, and the closing one. */
  private Optional<Sequence> bracketed(Token opener, Cursor cursor) {
    TokenKind closer = CLOSERS.get(opener.kind());
    if (open.size() == DEEPEST) {
      if (!tooDeep) {
        problems.error(
            opener,
            "brackets stand at most " + DEEPEST + " deep inside each other",
            "give the inner part a name of its own");
      }
      tooDeep = true;
      skip(cursor);
      return Optional.empty();
    }
    int before = problems.errors();
    open.push(closer);
    Sequence body = sequence(cursor, closer);
    open.pop();
    if (!cursor.took(closer)) {
      tellUnclosed(opener, cursor);
      return Optional.empty();
    }
    if (before == problems.errors() && saysNothing(body)) {
      problems.error(opener, "nothing is said between the brackets", "take them out");
      return Optional.empty();
    }
    return Optional.of(body);
  }

  /** A bracket that ends with the phrase, or with a bracket of another kind. */
  private void tellUnclosed(Token opener, Cursor cursor) {
    String sign = PhraseMistakes.sign(CLOSERS.get(opener.kind()));
    if (cursor.isAtEnd() || open.contains(cursor.peek().kind())) {
      problems.error(opener, opener.said() + " is not closed", "write " + sign + " where it ends");
      return;
    }
    Token other = cursor.next();
    problems.error(
        other, opener.said() + " is closed by " + other.said(), "write " + sign + " here");
  }

  static boolean saysNothing(Sequence sequence) {
    return sequence.elements().stream().allMatch(Element.Timeless.class::isInstance);
  }

  /** Passes over everything up to the bracket that closes the one just taken. */
  private static void skip(Cursor cursor) {
    int depth = 1;
    while (!cursor.isAtEnd() && depth > 0) {
      TokenKind kind = cursor.next().kind();
      depth += CLOSERS.containsKey(kind) ? 1 : CLOSERS.containsValue(kind) ? -1 : 0;
    }
  }

  /** Passes over the repeat of something that was refused. */
  private void passTimes(Cursor cursor) {
    if (cursor.is(TokenKind.TIMES)) {
      RepeatCount.read(cursor, problems);
    }
  }
}
