package org.matraloom.notation;

import java.util.List;
import java.util.Optional;
import org.matraloom.score.Step;

/** Reads {@code with Song nadai 5}: what a second reciter says beside the line above. */
final class SecondLines {

  private static final String EXAMPLE = "write with Song nadai 5 below the line it is said beside";

  private final Problems problems;

  SecondLines(Problems problems) {
    this.problems = problems;
  }

  /** Reads a line that begins with the word. */
  List<Step> read(List<Token> tokens, PlanParser parser) {
    Token next = tokens.get(1);
    boolean timed = parser.says(next) || next.is("rest") || next.is("until");
    boolean named = next.is(Token.TokenKind.NAME);
    if (!timed && !named) {
      problems.error(
          next, "expected a phrase, a rest or until after with, found " + next.said(), EXAMPLE);
      return List.of();
    }
    return parser.steps(tokens.subList(1, tokens.size())).stream()
        .<Step>map(Step.With::new)
        .toList();
  }

  /** Tells what two reciters cannot do, once all lines are read. */
  void check(List<PlanCheck.Line> lines) {
    Optional<PlanCheck.Line> with = Optional.empty();
    for (int index = 0; index < lines.size() && with.isEmpty(); index++) {
      if (lines.get(index).step() instanceof Step.With) {
        with = Optional.of(lines.get(index));
      }
    }
    if (with.isEmpty()) {
      return;
    }
    boolean below =
        lines.subList(0, lines.indexOf(with.get())).stream()
            .anyMatch(line -> !(line.step() instanceof Step.Timeless));
    if (!below) {
      problems.error(with.get().token(), "there is no line above to say this beside", EXAMPLE);
    }
    if (lines.stream().noneMatch(line -> saysSomething(line.step()))) {
      problems.error(
          with.get().token(),
          "the second reciter says nothing",
          "add a line such as with Song nadai 5, or take these lines out");
    }
    lines.stream()
        .filter(line -> line.step() instanceof Step.ToTala)
        .findFirst()
        .ifPresent(
            line ->
                problems.error(
                    line.token(),
                    "two reciters keep to one tala, and this line changes it",
                    "make a score of its own of each tala"));
  }

  private static boolean saysSomething(Step step) {
    return step instanceof Step.With with && with.step() instanceof Step.Say;
  }
}
