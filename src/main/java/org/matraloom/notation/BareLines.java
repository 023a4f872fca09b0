package org.matraloom.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.matraloom.notation.Token.TokenKind;
import org.matraloom.score.Lexicon;

/**
 * Lines of sollus without a name, as they are written in a hurry. Where a text has no phrases and
 * no plan they are the piece: each a phrase, one after another, in adi unless a tala is given.
 */
final class BareLines {

  static final String TALA = "adi";

  private static final String WHOLE = "Song";
  private static final String PART = "Line";
  private static final Set<TokenKind> OPENING =
      Set.of(
          TokenKind.NUMBER,
          TokenKind.COMMA,
          TokenKind.SEMICOLON,
          TokenKind.DOT,
          TokenKind.BAR,
          TokenKind.DOUBLE_BAR,
          TokenKind.ROUND_OPEN,
          TokenKind.SQUARE_OPEN,
          TokenKind.CURLY_OPEN);

  private final Lexicon lexicon;
  private final List<List<Token>> lines = new ArrayList<>();

  BareLines(Lexicon lexicon) {
    this.lexicon = lexicon;
  }

  /** Whether a line without a name is one of sollus, or goes on with one. */
  boolean sounds(Token first) {
    return OPENING.contains(first.kind())
        || (first.is(TokenKind.WORD) && lexicon.split(first.text()).isPresent());
  }

  /** Takes a line; an indented one goes on with the line before. */
  void add(List<Token> tokens) {
    if (!lines.isEmpty() && tokens.get(0).start() > 0) {
      List<Token> last = lines.get(lines.size() - 1);
      last.remove(last.size() - 1);
      last.addAll(tokens);
    } else {
      lines.add(new ArrayList<>(tokens));
    }
  }

  boolean isEmpty() {
    return lines.isEmpty();
  }

  List<List<Token>> lines() {
    return lines;
  }

  /** The lines with the names that they get, the whole last. */
  List<List<Token>> named() {
    List<List<Token>> named = new ArrayList<>();
    for (int index = 0; index < lines.size(); index++) {
      List<Token> line = lines.get(index);
      List<Token> tokens = written(line.get(0).line().number(), name(index) + " =");
      tokens.remove(tokens.size() - 1);
      tokens.addAll(line);
      named.add(tokens);
    }
    if (lines.size() > 1) {
      named.add(written(lines.get(0).get(0).line().number(), whole()));
    }
    return named;
  }

  /** Says what is taken for granted. */
  void tell(boolean talaGiven, boolean tempoGiven, Problems problems) {
    problems.warning(
        lines.get(0).get(0),
        "taken as a piece"
            + (talaGiven ? "" : " in " + TALA)
            + (tempoGiven ? "" : " at " + Headers.USUAL_TEMPO.beatsPerMinute() + " beats a minute")
            + ", said once in four",
        Optional.of(
            talaGiven
                ? "write Song = before the sollus, and under a line perform what is said how often"
                : "write a line such as tala rupaka, and Song = before the sollus, to say more"));
  }

  /** A text of such lines with all that it leaves out. */
  String inFull(String text, boolean talaGiven) {
    EditedLines edited = EditedLines.of(text);
    for (int index = 0; index < lines.size(); index++) {
      int at = lines.get(index).get(0).line().number() - 1;
      edited.replace(at, 0, 0, name(index) + " = ");
      if (index == 0 && !talaGiven) {
        edited.replace(at, 0, 0, "tala " + TALA + "\n\n" + name(index) + " = ");
      }
    }
    String full = edited.text();
    String end = full.endsWith("\n") ? "" : "\n";
    return lines.size() > 1 ? full + end + whole() + "\n" : full;
  }

  private String name(int index) {
    return lines.size() == 1 ? WHOLE : PART + (index + 1);
  }

  private String whole() {
    StringBuilder text = new StringBuilder(WHOLE + " =");
    for (int index = 0; index < lines.size(); index++) {
      text.append(' ').append(name(index));
    }
    return text.toString();
  }

  private static List<Token> written(int number, String text) {
    return new ArrayList<>(Lexer.tokens(new SourceLine(number, text)));
  }
}
