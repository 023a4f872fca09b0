package org.matraloom.notation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.matraloom.notation.Token.TokenKind;
import org.matraloom.score.Composition;
import org.matraloom.spell.PlanLine;
import org.matraloom.time.Ratio;

/**
 * Writes places that are counted in matras, {@code beat 4, 3rd matra} or {@code beat 4, 3rd matra
 * of 5}, as parts of a beat, {@code beat 4 1/2}, before they are read.
 *
 * <p>Without {@code of} the matras are those of the rounds beside the place; where these differ, or
 * are written elsewhere, the place is refused.
 */
final class MatraPlaces {

  private static final Set<String> ORDINALS = Set.of("st", "nd", "rd", "th");
  private static final Set<String> MATRA = Set.of("matra", "matras");

  /** Matras a beat of a line of the plan; none if they are written elsewhere. */
  private record Round(int line, boolean second, Optional<Integer> matrasPerBeat) {}

  private final List<List<Token>> plan;
  private final Problems problems;
  private final List<Round> rounds = new ArrayList<>();
  private final Map<Integer, String> changed = new HashMap<>();

  /** Takes the lines under perform; the usual nadai stands in for a plan without any. */
  MatraPlaces(List<List<Token>> plan, Set<String> phrases, Problems problems) {
    this.plan = plan;
    this.problems = problems;
    for (int index = 0; index < plan.size(); index++) {
      List<Token> line = plan.get(index);
      boolean second = line.get(0).is(PlanLine.WITH) && !isNamed(line.get(0), phrases);
      Token first = line.get(second ? 1 : 0);
      boolean phrase = isNamed(first, phrases);
      boolean used = first.is(UsedPiece.USE) && !phrase;
      boolean fills = first.is(FillIn.FILL) && !phrase;
      if (used || fills || phrase) {
        rounds.add(new Round(index, second, used ? Optional.empty() : Optional.of(density(line))));
      }
    }
    if (plan.isEmpty()) {
      rounds.add(new Round(0, false, Optional.of(PlanParser.USUAL_NADAI)));
    }
  }

  private static boolean isNamed(Token token, Set<String> phrases) {
    return token.is(TokenKind.NAME) && phrases.contains(token.name());
  }

  /** Matras a beat of a round; what is wrong in the line is told where it is read. */
  private static int density(List<Token> line) {
    int nadai = PlanParser.USUAL_NADAI;
    int kalam = 1;
    Problems toldElsewhere = new Problems("");
    for (int at = 1; at + 1 < line.size(); at++) {
      if (PlanParser.isNadai(line.get(at))) {
        nadai = NadaiReader.read(line.get(at + 1), toldElsewhere).orElse(nadai);
      } else if (PlanParser.isKalam(line.get(at)) && line.get(at + 1).is(TokenKind.NUMBER)) {
        kalam = Math.max(1, Math.min(Composition.HIGHEST_KALAM, line.get(at + 1).value()));
      }
    }
    return nadai * Composition.density(kalam);
  }

  /** The line of a start: in matras of the first round. */
  List<Token> start(List<Token> tokens) {
    return inBeats(tokens, rounds.stream().filter(round -> !round.second()).limit(1).toList());
  }

  /** The line of an eduppu: in matras of the rounds, if they are alike. */
  List<Token> eduppu(List<Token> tokens) {
    return inBeats(tokens, rounds.stream().filter(round -> !round.second()).toList());
  }

  /** The lines of the plan: in matras of the rounds of the same reciter before and after. */
  List<List<Token>> plan() {
    List<List<Token>> lines = new ArrayList<>();
    for (int index = 0; index < plan.size(); index++) {
      int here = index;
      boolean second = plan.get(index).get(0).is(PlanLine.WITH);
      boolean says = false;
      for (Round round : rounds) {
        says |= round.line() == here;
      }
      boolean fills = plan.get(index).get(0).is(FillIn.FILL);
      lines.add(says && !fills ? plan.get(index) : inBeats(plan.get(index), beside(here, second)));
    }
    return lines;
  }

  /** The last round before a line and the first after it, of one reciter. */
  private List<Round> beside(int line, boolean second) {
    Round before = null;
    Round after = null;
    for (Round round : rounds) {
      if (round.second() == second && round.line() < line) {
        before = round;
      } else if (round.second() == second && round.line() > line && after == null) {
        after = round;
      }
    }
    List<Round> beside = new ArrayList<>();
    if (before != null) {
      beside.add(before);
    }
    if (after != null) {
      beside.add(after);
    }
    return beside;
  }

  /** A text with the places as they were read; the same where none is counted in matras. */
  String written(String text) {
    StringBuilder written = new StringBuilder();
    int number = 1;
    for (String line : text.split("(?<=\n)|(?<=\r)(?!\n)", -1)) {
      String other = changed.get(number++);
      int end = line.replaceFirst("[\r\n]+$", "").length();
      written.append(other == null ? line : other + line.substring(end));
    }
    return written.toString();
  }

  private List<Token> inBeats(List<Token> tokens, List<Round> beside) {
    int at = 0;
    while (at < tokens.size() && !(tokens.get(at).is("beat") && isCounted(tokens, at + 1))) {
      at++;
    }
    if (at == tokens.size()) {
      return tokens;
    }
    Cursor cursor = new Cursor(tokens, at + 1);
    Token beat = cursor.next();
    cursor.took(TokenKind.COMMA);
    Token matra = cursor.next();
    cursor.next();
    Token last = cursor.next();
    Optional<Integer> of = matrasPerBeat(beside);
    if (cursor.peek().is("of") && cursor.peek(1).is(TokenKind.NUMBER)) {
      cursor.next();
      last = cursor.next();
      of = Optional.of(last.value());
    }
    if (of.isEmpty() || matra.value() < 1 || matra.value() > of.get()) {
      refuse(beat, matra, last, of);
      return relexed(beat, last, "");
    }
    Ratio part = Ratio.of(matra.value() - 1L, of.get());
    List<Token> read = relexed(beat, last, part.signum() == 0 ? "" : " " + part);
    changed.put(beat.line().number(), read.get(0).line().text());
    return read;
  }

  /** The line with something else between a beat and a later token. */
  private static List<Token> relexed(Token beat, Token last, String part) {
    String text = beat.line().text();
    String other = text.substring(0, beat.end()) + part + text.substring(last.end());
    return Lexer.tokens(new SourceLine(beat.line().number(), other));
  }

  private static boolean isCounted(List<Token> tokens, int at) {
    Cursor cursor = new Cursor(tokens, at);
    if (!cursor.took(TokenKind.NUMBER)) {
      return false;
    }
    cursor.took(TokenKind.COMMA);
    return cursor.took(TokenKind.NUMBER)
        && ORDINALS.contains(cursor.next().text())
        && PlanParser.isOneOf(cursor.peek(), MATRA);
  }

  /** Matras a beat of the rounds beside a place, if all of them say the same. */
  private static Optional<Integer> matrasPerBeat(List<Round> beside) {
    List<Optional<Integer>> said = beside.stream().map(Round::matrasPerBeat).distinct().toList();
    return said.size() == 1 ? said.get(0) : Optional.empty();
  }

  private void refuse(Token beat, Token matra, Token last, Optional<Integer> of) {
    String message =
        of.map(most -> "a beat has matras 1 to " + most + " here, given " + matra.brief())
            .orElse("the rounds beside this place do not agree on the matras of a beat");
    problems.error(
        beat.line(),
        beat.start(),
        last.end(),
        message,
        () -> Optional.of("say of which nadai, as in beat 4, 3rd matra of 5, or write beat 4 2/5"));
  }
}
