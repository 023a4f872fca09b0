package org.matraloom.notation;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.matraloom.score.Closing;
import org.matraloom.score.Length;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Sequence;
import org.matraloom.score.Step;
import org.matraloom.spell.MeantWord;
import org.matraloom.spell.PlanLine;
import org.matraloom.time.Ratio;

/** Reads all lines under {@code perform}, with what they take over from elsewhere. */
final class PlanReader {

  private final Headers.Head head;
  private final Problems problems;
  private final Lexicon lexicon;
  private final PlanParser parser;
  private final PlanPosition position;
  private final Map<String, Length> lengths;
  private final BorrowedPhrases borrowed;
  private final List<PlanCheck.Line> lines = new ArrayList<>();
  private boolean takesOver;

  /** The lengths of the phrases may be added to. */
  PlanReader(
      Headers.Head head,
      Set<String> phrases,
      Lexicon lexicon,
      Map<String, Length> lengths,
      Problems problems) {
    this.head = head;
    this.problems = problems;
    this.lexicon = lexicon;
    this.position = new PlanPosition(head.avartana(), head.startBeat(), lengths);
    this.parser = new PlanParser(position, phrases, lexicon, problems);
    this.lengths = lengths;
    this.borrowed = new BorrowedPhrases(phrases, lengths);
  }

  /**
   * A plan as read.
   *
   * @param lines its steps, each with the place of its line
   * @param borrowed phrases that the score says without writing them
   * @param lengths the lengths of all phrases
   * @param closing what follows the last matra
   * @param takesOver whether a line becomes other lines or names phrases that are not written
   */
  record Plan(
      List<PlanCheck.Line> lines,
      Map<String, Sequence> borrowed,
      Map<String, Length> lengths,
      Closing closing,
      boolean takesOver) {

    /** Whether a phrase is said. */
    boolean says() {
      for (PlanCheck.Line line : lines) {
        if (line.step() instanceof Step.Say) {
          return true;
        }
      }
      return false;
    }
  }

  /** The plan of a score without one: the last phrase, once. */
  static Plan lastOnce(
      Collection<PhraseGraph.Definition> phrases, Map<String, Length> lengths, Closing closing) {
    List<PlanCheck.Line> once = new ArrayList<>();
    for (PhraseGraph.Definition phrase : phrases) {
      Step say = new Step.Say(phrase.name(), 1, PlanParser.USUAL_NADAI, 1);
      once = List.of(new PlanCheck.Line(say, phrase.token()));
    }
    return new Plan(once, Map.of(), lengths, closing, false);
  }

  /** Whether a line says what is not written in the score itself. */
  static boolean takesOver(List<Token> line) {
    return line.get(0).is(UsedPiece.USE) || line.get(0).is(FillIn.FILL);
  }

  /**
   * Reads the lines.
   *
   * @param plan their tokens
   * @param shelf where other scores are found
   * @param openEnd whether the head leaves the close to a piece that stands last
   */
  Plan read(List<List<Token>> plan, Optional<PieceShelf> shelf, boolean openEnd) {
    UsedPiece used = new UsedPiece(shelf, head, borrowed, problems);
    FillIn fillIn = new FillIn(head.wording(), lexicon, borrowed, problems);
    SecondLines second = new SecondLines(problems);
    Closing closing = head.closing();
    for (int index = 0; index < plan.size() && lines.size() <= PlanCheck.MOST_SPANS; index++) {
      List<Token> tokens = plan.get(index);
      Token first = tokens.get(0);
      boolean says = parser.says(first);
      if (first.is(UsedPiece.USE) && !says) {
        Optional<UsedPiece.Lines> piece = used.read(first, new Cursor(tokens, 1), position);
        boolean last = index == plan.size() - 1 && openEnd;
        closing = piece.filter(found -> last).map(UsedPiece.Lines::closing).orElse(closing);
        takesOver = true;
        piece.ifPresent(found -> add(found, last, first));
      } else if (first.is(FillIn.FILL) && !says) {
        Cursor cursor = new Cursor(tokens, 1);
        Optional<Step> step = fillIn.read(first, cursor, position);
        takesOver = true;
        step.ifPresent(found -> add(found, first));
        tellRest(step, cursor);
      } else if (first.is(PlanLine.WITH) && !says) {
        second.read(tokens, parser).forEach(step -> add(step, first));
      } else {
        for (Step step : parser.steps(tokens)) {
          add(step, first);
        }
      }
    }
    checkEduppu();
    second.check(lines);
    return new Plan(lines, borrowed.phrases(), lengths, closing, takesOver);
  }

  private void add(UsedPiece.Lines piece, boolean last, Token token) {
    piece.steps().forEach(step -> add(step, token));
    if (!last) {
      piece.stroke().ifPresent(step -> add(step, token));
    }
  }

  /** The eduppu is a place of the tala in which the piece ends. */
  private void checkEduppu() {
    Ratio eduppu = head.eduppuBeat();
    Ratio beats = Ratio.of(position.avartana().beats());
    if (eduppu.compareTo(beats) >= 0 || eduppu.compareTo(beats.negate()) <= 0) {
      lines.stream()
          .filter(line -> line.step() instanceof Step.ToTala)
          .reduce((earlier, later) -> later)
          .ifPresent(
              line ->
                  problems.error(
                      line.token(),
                      "the piece ends in this tala of "
                          + beats.toMixed()
                          + " beats, which has no place for the eduppu of the head",
                      "give an eduppu that the last tala has"));
    }
  }

  private void add(Step step, Token token) {
    lines.add(new PlanCheck.Line(step, token));
    position.pass(step);
  }

  private void tellRest(Optional<Step> step, Cursor cursor) {
    if (step.isPresent() && !cursor.isAtEnd()) {
      problems.error(
          cursor.peek(),
          "expected nadai 5 or the end of the line, found " + cursor.peek().said(),
          () ->
              MeantWord.of(cursor.peek().text(), List.of("nadai")).map("the nearest is "::concat));
    }
  }
}
