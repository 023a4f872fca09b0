package org.matraloom.notation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.matraloom.notation.Token.TokenKind;
import org.matraloom.score.Edit;
import org.matraloom.score.Sequence;
import org.matraloom.spell.ScorePrinter;

/** Replaces elements of a phrase in a text, whichever lines they stand on. */
final class PhraseEditor {

  private static final Map<TokenKind, TokenKind> CLOSERS =
      Map.of(
          TokenKind.ROUND_OPEN, TokenKind.ROUND_CLOSE,
          TokenKind.SQUARE_OPEN, TokenKind.SQUARE_CLOSE,
          TokenKind.CURLY_OPEN, TokenKind.CURLY_CLOSE);

  /** An element as it is written: its first and its last token. */
  private record Written(Token first, Token last) {
    static Written of(List<Token> tokens) {
      return new Written(tokens.get(0), tokens.get(tokens.size() - 1));
    }
  }

  private PhraseEditor() {}

  /**
   * Makes the change. A repeat with endings for some of the times is written out only where the
   * change lies in it.
   */
  static EditedLines splice(EditedLines lines, Edit.Splice splice) {
    List<Written> asRead = new ArrayList<>();
    for (List<Token> element : elements(tokens(lines, splice.phrase()))) {
      Written written = Written.of(element);
      if (LastTimes.in(element)) {
        List<Token> full = LastTimes.writtenOut(element, new Problems(""));
        int from = asRead.size();
        int to = from + elements(full).size();
        if (from < splice.to() && splice.from() < to) {
          replace(lines, List.of(written), text(full));
          return splice(EditedLines.of(lines.text()), splice);
        }
        asRead.addAll(Collections.nCopies(to - from, written));
      } else {
        asRead.add(written);
      }
    }
    String text = ScorePrinter.print(new Sequence(splice.elements()));
    if (splice.from() == splice.to()) {
      insert(lines, asRead, splice.from(), text);
    } else {
      replace(lines, asRead.subList(splice.from(), splice.to()), text);
    }
    return lines;
  }

  /** What a phrase says, without its name. */
  private static List<Token> tokens(EditedLines lines, String phrase) {
    List<Token> tokens = new ArrayList<>();
    for (ScoreLine line : lines.before()) {
      if (line.name().equals(phrase) && line.use() != ScoreLine.Use.HEADER) {
        boolean begins = line.use() == ScoreLine.Use.PHRASE;
        tokens.addAll(line.tokens().subList(begins ? 2 : 0, line.tokens().size() - 1));
      }
    }
    return tokens;
  }

  /** Tokens as a text; two words never grow into one, whatever stood between them. */
  private static String text(List<Token> tokens) {
    StringBuilder text = new StringBuilder();
    for (int index = 0; index < tokens.size(); index++) {
      Token token = tokens.get(index);
      boolean merges =
          index > 0
              && !tokens.get(index - 1).is(TokenKind.TIMES)
              && Character.isLetterOrDigit(token.text().codePointAt(0))
              && Character.isLetterOrDigit(text.codePointBefore(text.length()));
      text.append(index > 0 && (!token.tight() || merges) ? " " : "").append(token.text());
    }
    return text.toString();
  }

  private static void insert(EditedLines lines, List<Written> elements, int at, String text) {
    if (at < elements.size()) {
      Token next = elements.get(at).first();
      lines.replace(next.line().number() - 1, next.start(), next.start(), text + " ");
    } else {
      Token last = elements.get(at - 1).last();
      lines.replace(last.line().number() - 1, last.end(), last.end(), " " + text);
    }
  }

  /** The new text stands where the first element stood; the others are taken out of their lines. */
  private static void replace(EditedLines lines, List<Written> elements, String text) {
    int first = elements.get(0).first().line().number() - 1;
    int last = elements.get(elements.size() - 1).last().line().number() - 1;
    for (int index = first; index <= last; index++) {
      ScoreLine line = lines.before().get(index);
      int from = index == first ? elements.get(0).first().start() : line.tokens().get(0).start();
      int to = index == last ? elements.get(elements.size() - 1).last().end() : line.lastEnd();
      if (line.use() != ScoreLine.Use.EMPTY) {
        replace(lines, index, from, to, index == first ? text : "");
      }
    }
  }

  private static void replace(EditedLines lines, int index, int from, int to, String text) {
    String line = lines.before().get(index).text();
    if (text.isEmpty()) {
      takeOut(lines, index, from, to);
      return;
    }
    boolean spaceAfter = to < line.length() && !Lexer.isSpace(line.charAt(to));
    boolean ringsBefore = from > 0 && line.charAt(from - 1) == ')' && startsWithDigit(text);
    boolean spaceBefore = from > 0 && !Lexer.isSpace(line.charAt(from - 1)) && !ringsBefore;
    String after = spaceAfter && !staysTight(text, line, to) ? " " : "";
    lines.replace(index, from, to, (spaceBefore ? " " : "") + text + after);
  }

  private static void takeOut(EditedLines lines, int index, int from, int to) {
    String line = lines.before().get(index).text();
    int end = to;
    while (end < line.length() && Lexer.isSpace(line.charAt(end))) {
      end++;
    }
    int start = from;
    while (end == line.length() && start > 0 && Lexer.isSpace(line.charAt(start - 1))) {
      start--;
    }
    boolean touches = start > 0 && end < line.length() && !Lexer.isSpace(line.charAt(start - 1));
    lines.replace(index, start, end, touches ? " " : "");
  }

  /** A group that rings stands tight before the next group, as in 9(1)9. */
  private static boolean staysTight(String text, String line, int next) {
    return text.endsWith(")") && Character.isDigit(line.charAt(next));
  }

  private static boolean startsWithDigit(String text) {
    return !text.isEmpty() && Character.isDigit(text.charAt(0));
  }

  /** The tokens of each element. */
  private static List<List<Token>> elements(List<Token> tokens) {
    List<List<Token>> elements = new ArrayList<>();
    int at = 0;
    while (at < tokens.size()) {
      int end = end(tokens, at);
      elements.add(tokens.subList(at, end));
      at = end;
    }
    return elements;
  }

  /** The index after the element that begins at a token. */
  private static int end(List<Token> tokens, int at) {
    Token first = tokens.get(at);
    int end = at + 1;
    if (first.is(TokenKind.NUMBER)) {
      end += is(tokens, end, TokenKind.STAR) ? 2 : 0;
      boolean karvai = is(tokens, end, TokenKind.ROUND_OPEN) && tokens.get(end).tight();
      return end + (karvai ? 3 : 0);
    }
    if (first.is(TokenKind.BREATH)) {
      return end + (is(tokens, end, TokenKind.BANG) ? 1 : 0);
    }
    if (CLOSERS.containsKey(first.kind())) {
      int depth = 1;
      while (depth > 0) {
        TokenKind kind = tokens.get(end++).kind();
        depth += CLOSERS.containsKey(kind) ? 1 : CLOSERS.containsValue(kind) ? -1 : 0;
      }
    } else if (!first.is(TokenKind.NAME)) {
      return end;
    }
    return end + (is(tokens, end, TokenKind.TIMES) ? 2 : 0);
  }

  private static boolean is(List<Token> tokens, int at, TokenKind kind) {
    return at < tokens.size() && tokens.get(at).is(kind);
  }
}
