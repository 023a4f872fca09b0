package org.matraloom.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.notation.Token.TokenKind;
import org.matraloom.score.Step;
import org.matraloom.spell.ScorePrinter;

/** Replaces steps of the perform plan in a text; lines whose step stays are not touched. */
final class PlanEditor {

  private static final String INDENT = "  ";

  private PlanEditor() {}

  static void replace(EditedLines lines, List<Step> was, List<Step> now) {
    List<Integer> stepLines = lines.indicesOf(ScoreLine.Use.STEP);
    if (stepLines.isEmpty()) {
      List<String> written = new ArrayList<>(List.of("", Headers.PERFORM));
      now.forEach(step -> written.add(INDENT + ScorePrinter.print(step)));
      lines.insertAfter(lines.before().size() - 1, written);
      return;
    }
    int from = 0;
    while (from < Math.min(was.size(), now.size()) && was.get(from).equals(now.get(from))) {
      from++;
    }
    int keptAtEnd = 0;
    while (keptAtEnd < Math.min(was.size(), now.size()) - from
        && was.get(was.size() - 1 - keptAtEnd).equals(now.get(now.size() - 1 - keptAtEnd))) {
      keptAtEnd++;
    }
    replace(
        lines,
        stepLines.subList(from, was.size() - keptAtEnd),
        now.subList(from, now.size() - keptAtEnd),
        from == 0 ? lines.indicesOf(ScoreLine.Use.PERFORM).get(0) : stepLines.get(from - 1));
  }

  private static void replace(
      EditedLines lines, List<Integer> places, List<Step> steps, int placeBefore) {
    int last = placeBefore;
    int over = Math.min(places.size(), steps.size());
    for (int i = 0; i < over; i++) {
      last = places.get(i);
      overwrite(lines, last, steps.get(i));
    }
    for (int place : places.subList(over, places.size())) {
      lines.clear(place);
    }
    if (over < steps.size()) {
      int model = lines.indicesOf(ScoreLine.Use.STEP).get(0);
      ScoreLine line = lines.before().get(model);
      String indent = line.text().substring(0, line.tokens().get(0).start());
      lines.insertAfter(
          last,
          steps.subList(over, steps.size()).stream()
              .map(step -> indent + ScorePrinter.print(step))
              .toList());
    }
  }

  /** Writes a step over another; a number that changes alone is changed in its place. */
  private static void overwrite(EditedLines lines, int index, Step step) {
    ScoreLine line = lines.before().get(index);
    if (step instanceof Step.Say say && line.tokens().get(0).text().equals(say.phrase())) {
      Optional<Token> times = after(line, TokenKind.TIMES, "");
      Optional<Token> nadai = after(line, TokenKind.WORD, "nadai");
      Optional<Token> kalam = after(line, TokenKind.WORD, "kalam");
      String text = line.text();
      boolean simple =
          times.isPresent() == say.times() > 1
              && nadai.isPresent()
              && kalam.isPresent() == say.kalam() > 1;
      if (simple) {
        StringBuilder changed = new StringBuilder(text.substring(0, line.lastEnd()));
        kalam.ifPresent(token -> set(changed, token, say.kalam()));
        nadai.ifPresent(token -> set(changed, token, say.nadai()));
        times.ifPresent(token -> set(changed, token, say.times()));
        lines.replace(index, 0, line.lastEnd(), changed.toString());
        return;
      }
    }
    lines.replace(index, line.tokens().get(0).start(), line.lastEnd(), ScorePrinter.print(step));
  }

  private static void set(StringBuilder text, Token number, int value) {
    text.replace(number.start(), number.end(), Integer.toString(value));
  }

  /** The number after a mark or a word. */
  private static Optional<Token> after(ScoreLine line, TokenKind kind, String word) {
    List<Token> tokens = line.tokens();
    for (int i = 0; i + 1 < tokens.size(); i++) {
      Token token = tokens.get(i);
      if (token.is(kind) && (word.isEmpty() || token.is(word))) {
        return Optional.of(tokens.get(i + 1)).filter(next -> next.is(TokenKind.NUMBER));
      }
    }
    return Optional.empty();
  }
}
