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

  /**
   * A line of the text.
   *
   * @param index which line it is
   * @param from its first step
   * @param to the step after its last one; a line with a last time of its own has two
   */
  private record Written(int index, int from, int to) {

    /** Whether it has several steps, of which some lie in a range. */
    boolean isTorn(int first, int end) {
      return to - from > 1 && from < end && first < to;
    }
  }

  /** Makes the change. A line with a last time of its own stays one where it can. */
  static EditedLines replace(EditedLines lines, List<Step> was, List<Step> now) {
    List<Written> written = written(lines, was);
    if (written.isEmpty()) {
      List<String> plan = new ArrayList<>(List.of("", Headers.PERFORM));
      now.forEach(step -> plan.add(INDENT + ScorePrinter.print(step)));
      lines.insertAfter(lines.before().size() - 1, plan);
      return lines;
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
    int end = was.size() - keptAtEnd;
    int before = lines.indicesOf(ScoreLine.Use.PERFORM).get(0);
    List<Integer> places = new ArrayList<>();
    for (Written line : written) {
      if (line.isTorn(from, end)) {
        List<Step> asWritten = was.size() == now.size() ? joined(lines, line, was, now) : was;
        if (asWritten.equals(was)) {
          writeOut(lines, line, was);
        }
        return replace(EditedLines.of(lines.text()), asWritten, now);
      } else if (line.to() <= from) {
        before = line.index();
      } else if (line.from() < end) {
        places.add(line.index());
      }
    }
    replace(lines, places, now.subList(from, now.size() - keptAtEnd), before);
    return lines;
  }

  private static List<Written> written(EditedLines lines, List<Step> was) {
    List<Written> written = new ArrayList<>();
    int from = 0;
    for (int index : lines.indicesOf(ScoreLine.Use.STEP)) {
      boolean with = was.get(from) instanceof Step.With;
      boolean says = with || was.get(from) instanceof Step.Say;
      boolean twice =
          says
              && lines.before().get(index).tokens().stream()
                  .skip(with ? 2 : 1)
                  .anyMatch(token -> token.is(LastTimes.LAST));
      int to = from + (twice ? 2 : 1);
      written.add(new Written(index, from, to));
      from = to;
    }
    return written;
  }

  /** Changes nadai and kalam of a line with a last time, if both its steps change alike. */
  private static List<Step> joined(
      EditedLines lines, Written line, List<Step> was, List<Step> now) {
    boolean alike =
        now.get(line.from()) instanceof Step.Say first
            && now.get(line.from() + 1) instanceof Step.Say last
            && first.nadai() == last.nadai()
            && first.kalam() == last.kalam()
            && was.get(line.from()).equals(in(was.get(line.from()), first))
            && was.get(line.from() + 1).equals(in(was.get(line.from() + 1), last));
    if (!alike) {
      return was;
    }
    Step.Say first = (Step.Say) now.get(line.from());
    Step.Say last = (Step.Say) now.get(line.from() + 1);
    Step all = new Step.Say(first.phrase(), first.times() + 1, first.nadai(), first.kalam());
    overwrite(lines, line.index(), all, " " + LastTimes.LAST + " " + last.phrase());
    List<Step> changed = new ArrayList<>(was);
    changed.set(line.from(), first);
    changed.set(line.from() + 1, last);
    return changed;
  }

  /** What another step says, in the nadai and kalam of this one. */
  private static Step in(Step here, Step.Say other) {
    return here instanceof Step.Say say
        ? new Step.Say(other.phrase(), other.times(), say.nadai(), say.kalam())
        : other;
  }

  private static void writeOut(EditedLines lines, Written line, List<Step> was) {
    ScoreLine text = lines.before().get(line.index());
    int start = text.tokens().get(0).start();
    String indent = text.text().substring(0, start);
    lines.replace(line.index(), start, text.lastEnd(), ScorePrinter.print(was.get(line.from())));
    lines.insertAfter(line.index(), List.of(indent + ScorePrinter.print(was.get(line.from() + 1))));
  }

  private static void replace(
      EditedLines lines, List<Integer> places, List<Step> steps, int placeBefore) {
    int last = placeBefore;
    int over = Math.min(places.size(), steps.size());
    for (int i = 0; i < over; i++) {
      last = places.get(i);
      overwrite(lines, last, steps.get(i), "");
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
  private static void overwrite(EditedLines lines, int index, Step step, String more) {
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
    lines.replace(
        index, line.tokens().get(0).start(), line.lastEnd(), ScorePrinter.print(step) + more);
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
