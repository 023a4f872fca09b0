package org.matraloom.notation;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.matraloom.notation.Token.TokenKind;

/**
 * Writes out repeats that end another way the first or the last time: {@code (takita {not last: tom
 * ,}) x3} becomes {@code (takita tom ,) x2 takita}. The words are those of the text, in their
 * places.
 */
final class LastTimes {

  /** How deep such repeats may stand inside each other: each is written out three times at most. */
  static final int DEEPEST = 3;

  private static final String FIRST = "first";

  /** The word for the last time, in a plan too. */
  static final String LAST = "last";

  /** The words of such an ending. */
  static final List<String> WORDS = List.of(FIRST, LAST);

  private static final String NOT = "not";
  private static final String EXAMPLE =
      "write (takita {not last: tom ,}) x3; the words are first, last, not first, not last";

  /** One of the times that something is said. */
  private record Time(boolean first, boolean last) {
    boolean has(List<Token> header) {
      boolean says = header.get(header.size() - 1).is(FIRST) ? first : last;
      return header.size() == 1 ? says : !says;
    }
  }

  private final List<Token> tokens;
  private final Problems problems;
  private final int[] closers;
  private int nested;

  private LastTimes(List<Token> tokens, Problems problems) {
    this.tokens = tokens;
    this.problems = problems;
    this.closers = closers(tokens);
  }

  /** Whether a phrase has endings of its own for some of the times. */
  static boolean in(List<Token> tokens) {
    for (int at = 0; at < tokens.size(); at++) {
      if (!header(tokens, at).isEmpty()) {
        return true;
      }
    }
    return false;
  }

  /** A phrase with all its repeats written out that end in several ways. */
  static List<Token> writtenOut(List<Token> tokens, Problems problems) {
    if (!in(tokens)) {
      return tokens;
    }
    return new LastTimes(tokens, problems).part(0, tokens.size(), Optional.empty(), 0);
  }

  /** What a part of the phrase says at one time of the repeat around it; none if there is none. */
  private List<Token> part(int from, int to, Optional<Time> time, int deep) {
    List<Token> out = new ArrayList<>();
    int at = from;
    while (at < to) {
      List<Token> header = header(tokens, at);
      int close = closers[at];
      if (close <= at || close >= to || nested > PhraseParser.DEEPEST) {
        out.add(tokens.get(at++));
      } else if (!header.isEmpty()) {
        int body = at + header.size() + 2;
        if (time.isEmpty()) {
          outside(header, close);
        } else if (time.get().has(header)) {
          addLoose(inside(body, close, time, deep), out);
        }
        at = close + 1;
      } else if (tokens.get(at).is(TokenKind.ROUND_OPEN) && endsVariously(at, close)) {
        at = repeat(at, close, out, deep);
      } else {
        boolean repeats = tokens.get(at).is(TokenKind.ROUND_OPEN);
        List<Token> said = inside(at + 1, close, repeats ? Optional.empty() : time, deep);
        int head =
            tokens.get(at + 1).is(TokenKind.NUMBER) && tokens.get(at + 2).is(TokenKind.COLON)
                ? 2
                : 0;
        if (said.size() <= head && close > at + 1 + head && time.isPresent()) {
          at = afterTimes(close + 1, to);
        } else {
          out.add(tokens.get(at));
          out.addAll(said);
          out.add(tokens.get(close));
          at = close + 1;
        }
      }
    }
    return out;
  }

  /** Where the phrase goes on after a bracket of which nothing is said at this time. */
  private int afterTimes(int next, int to) {
    return next + 1 < to && tokens.get(next).is(TokenKind.TIMES) ? next + 2 : next;
  }

  private List<Token> inside(int from, int to, Optional<Time> time, int deep) {
    nested++;
    List<Token> out = part(from, to, time, deep);
    nested--;
    return out;
  }

  /** Writes one repeat out and answers where the phrase goes on. */
  private int repeat(int open, int close, List<Token> out, int deep) {
    Token number = tokens.get(Math.min(close + 2, tokens.size() - 1));
    boolean counted =
        close + 2 < tokens.size()
            && tokens.get(close + 1).is(TokenKind.TIMES)
            && number.is(TokenKind.NUMBER)
            && number.value() >= 1
            && number.value() <= RepeatCount.MOST;
    if (!counted || deep == DEEPEST) {
      out.add(tokens.get(open));
      out.addAll(inside(open + 1, close, Optional.of(new Time(true, true)), deep));
      out.add(tokens.get(close));
      if (deep == DEEPEST) {
        problems.error(
            tokens.get(open),
            "repeats with endings of their own stand at most " + DEEPEST + " deep",
            "give the inner part a name of its own");
      }
      return close + 1;
    }
    int times = number.value();
    List<Token> first = said(open, close, new Time(true, times == 1), deep);
    List<Token> middle = said(open, close, new Time(false, false), deep);
    List<Token> last = said(open, close, new Time(times == 1, true), deep);
    boolean beginsAlike = first.equals(middle);
    boolean endsAlike = middle.equals(last);
    if (times == 1 || (beginsAlike && endsAlike)) {
      several(last, times, close, out);
    } else if (times == 2) {
      several(first, 1, close, out);
      several(last, 1, close, out);
    } else if (beginsAlike) {
      several(first, times - 1, close, out);
      several(last, 1, close, out);
    } else {
      several(first, 1, close, out);
      several(middle, endsAlike ? times - 1 : times - 2, close, out);
      several(last, endsAlike ? 0 : 1, close, out);
    }
    if (first.isEmpty() && middle.isEmpty() && last.isEmpty()) {
      problems.error(tokens.get(open), "nothing is said between the brackets", "take them out");
    }
    return close + 3;
  }

  private List<Token> said(int open, int close, Time time, int deep) {
    return inside(open + 1, close, Optional.of(time), deep + 1);
  }

  private void several(List<Token> said, int times, int close, List<Token> out) {
    if (times == 1) {
      addLoose(said, out);
    } else if (times > 1 && !said.isEmpty()) {
      Token closer = tokens.get(close);
      SourceLine written = new SourceLine(closer.line().number(), "(x" + times + ")");
      out.add(new Token(TokenKind.ROUND_OPEN, written, 0, 1, false));
      out.addAll(said);
      out.add(closer);
      out.add(tokens.get(close + 1));
      out.add(new Token(TokenKind.NUMBER, written, 2, written.text().length() - 1, true));
    }
  }

  /** Adds words that follow a space, whatever they follow in the text. */
  private static void addLoose(List<Token> said, List<Token> out) {
    for (int index = 0; index < said.size(); index++) {
      Token token = said.get(index);
      out.add(
          index > 0
              ? token
              : new Token(token.kind(), token.line(), token.start(), token.end(), false));
    }
  }

  private void outside(List<Token> header, int close) {
    problems.error(
        header.get(0).line(),
        header.get(0).start(),
        header.get(header.size() - 1).end(),
        "an ending for some of the times stands in round brackets that are repeated",
        () -> Optional.of(EXAMPLE));
  }

  /** Whether a bracket holds an ending of its own, not only one of a repeat inside. */
  private boolean endsVariously(int open, int close) {
    int at = open + 1;
    while (at < close) {
      if (!header(tokens, at).isEmpty()) {
        return true;
      }
      boolean skips = tokens.get(at).is(TokenKind.ROUND_OPEN) && closers[at] > at;
      at = skips ? closers[at] + 1 : at + 1;
    }
    return false;
  }

  /** The words of an ending that opens at a token: first, last, not first, not last. */
  private static List<Token> header(List<Token> tokens, int at) {
    if (!tokens.get(at).is(TokenKind.CURLY_OPEN)) {
      return List.of();
    }
    int word = at + 1;
    if (word < tokens.size() && tokens.get(word).is(NOT)) {
      word++;
    }
    boolean is =
        word + 1 < tokens.size()
            && (tokens.get(word).is(FIRST) || tokens.get(word).is(LAST))
            && tokens.get(word + 1).is(TokenKind.COLON);
    return is ? tokens.subList(at + 1, word + 1) : List.of();
  }

  /** Where each bracket is closed; -1 for one that never is, the place itself for other tokens. */
  private static int[] closers(List<Token> tokens) {
    int[] closers = new int[tokens.size()];
    Deque<Integer> open = new ArrayDeque<>();
    for (int at = 0; at < closers.length; at++) {
      closers[at] = at;
      if (tokens.get(at).kind().name().endsWith("_OPEN")) {
        closers[at] = -1;
        open.push(at);
      } else if (tokens.get(at).kind().name().endsWith("_CLOSE") && !open.isEmpty()) {
        closers[open.pop()] = at;
      }
    }
    return closers;
  }
}
