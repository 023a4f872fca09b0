package org.matraloom.notation;

import java.util.Optional;
import org.matraloom.notation.Token.TokenKind;
import org.matraloom.score.Avartana;
import org.matraloom.score.Step;
import org.matraloom.spell.TalaReader;

/** Reads a change of tala under perform, {@code tala rupaka}; it stands on samam only. */
final class TalaChange {

  private TalaChange() {}

  /** Reads a line whose first word has just been taken; the whole line is taken. */
  static Optional<Step> read(Token first, Cursor cursor, PlanPosition position, Problems problems) {
    if (cursor.is(TokenKind.COLON) || cursor.is(TokenKind.EQUALS)) {
      cursor.next();
    }
    SourceLine line = first.line();
    int start = cursor.peek().start();
    while (!cursor.isAtEnd()) {
      cursor.next();
    }
    int end = Math.max(start, Lexer.noteStart(line.text()));
    TalaReader.Result result =
        TalaReader.read(Lexer.spaced(line.text().substring(start, end)).stripTrailing());
    result
        .fault()
        .ifPresent(
            fault ->
                problems.error(
                    line,
                    start + fault.start(),
                    start + fault.end(),
                    fault.message(),
                    fault::help));
    Avartana avartana = position.avartana();
    if (result.tala().isPresent() && !problems.hasErrors() && position.place().signum() != 0) {
      problems.error(
          first,
          "the tala changes on samam only; here it stands on " + avartana.say(position.place()),
          "write until samam or fill until samam before it, or mend what comes before");
      return Optional.empty();
    }
    return result.tala().map(Step.ToTala::new);
  }
}
