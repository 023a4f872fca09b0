package org.matraloom.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.matraloom.notation.Token.TokenKind;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Step;
import org.matraloom.spell.JatiNames;
import org.matraloom.spell.MeantWord;
import org.matraloom.spell.PlanLine;
import org.matraloom.time.Ratio;

/** Reads the lines under {@code perform}. */
final class PlanParser {

  /** The nadai of a line that names none. */
  static final int USUAL_NADAI = 4;

  private static final List<String> WORDS =
      List.of(
          "rest",
          "until",
          PlanLine.PART,
          PlanLine.TELL,
          PlanLine.AT,
          FillIn.FILL,
          PlanLine.WITH,
          UsedPiece.USE);

  private static final Set<String> NADAI = Set.of("nadai", "nade", "nada", "gati");
  private static final Set<String> KALAM = Set.of("kala", "kalam");
  private static final Set<String> BEATS = Set.of("beat", "beats");
  private static final Set<String> MATRAS = Set.of("matra", "matras");

  private final PlanPosition position;
  private final Set<String> phrases;
  private final Lexicon lexicon;
  private final Problems problems;

  PlanParser(PlanPosition position, Set<String> phrases, Lexicon lexicon, Problems problems) {
    this.position = position;
    this.phrases = phrases;
    this.lexicon = lexicon;
    this.problems = problems;
  }

  /** Whether a line under perform is one of the plan, and not a header at the wrong place. */
  static boolean mayBegin(Token first, Optional<String> keyword, boolean isPhrase) {
    return keyword.isEmpty() || isPhrase || first.is(PlanLine.TALA);
  }

  /** Whether a nadai comes next. */
  static boolean isNadai(Token token) {
    return isOneOf(token, NADAI);
  }

  /** Whether a line says a phrase, one of which may be called Part or Use. */
  boolean says(Token first) {
    return first.is(TokenKind.NAME) && phrases.contains(first.name());
  }

  /** Whether a kalam comes next. */
  static boolean isKalam(Token token) {
    return isOneOf(token, KALAM);
  }

  /** Reads one line; its first token is there. */
  List<Step> steps(List<Token> tokens) {
    Cursor cursor = new Cursor(tokens, 0);
    int before = problems.errors();
    Token first = cursor.next();
    List<Step> steps;
    if (says(first)) {
      steps = say(first, cursor);
    } else if (first.is("rest")) {
      steps = rest(cursor).stream().toList();
    } else if (first.is("until")) {
      steps =
          BeatPlace.read(cursor, position.avartana(), problems).map(this::until).stream().toList();
    } else if (PlanWords.begins(first)) {
      steps = PlanWords.read(first, cursor, position, problems).stream().toList();
    } else {
      unknown(first);
      return List.of();
    }
    if (before == problems.errors() && !cursor.isAtEnd()) {
      problems.error(
          cursor.peek(),
          "expected the end of the line, found " + cursor.peek().said(),
          "each round, rest or wait stands on a line of its own");
    }
    return steps;
  }

  private Step until(Ratio place) {
    return new Step.Until(position.avartana().placeOf(place));
  }

  private void unknown(Token first) {
    if (first.is(TokenKind.NAME)) {
      problems.error(
          first,
          "no phrase is called " + first.brief(),
          () -> PhraseMistakes.unknownName(first.text(), phrases, lexicon));
      return;
    }
    List<String> expected = new ArrayList<>(phrases);
    expected.addAll(WORDS);
    problems.error(
        first,
        "expected a phrase name, rest or until; found " + first.said(),
        () ->
            Optional.of(
                MeantWord.of(first.text(), expected)
                    .map(near -> "the nearest is " + near)
                    .orElse("write a line such as Song x2 nadai 4, or rest 2 beats")));
  }

  private List<Step> say(Token name, Cursor cursor) {
    Optional<Integer> times = Optional.empty();
    Optional<Integer> nadai = Optional.empty();
    Optional<Integer> kalam = Optional.empty();
    Optional<Token> last = Optional.empty();
    while (!cursor.isAtEnd()) {
      Token token = cursor.peek();
      if (token.is(TokenKind.TIMES)) {
        once(times, token, "x");
        times = RepeatCount.read(cursor, problems);
      } else if (isOneOf(token, NADAI)) {
        once(nadai, cursor.next(), "nadai");
        nadai = NadaiReader.read(cursor.next(), problems);
      } else if (isOneOf(token, KALAM)) {
        once(kalam, cursor.next(), "kalam");
        kalam = kalam(cursor.next());
      } else if (token.is(LastTimes.LAST)) {
        once(last, cursor.next(), LastTimes.LAST);
        last = lastTime(cursor.next());
      } else {
        problems.error(
            token,
            "expected x2, nadai 5 or kalam 2; found " + token.said(),
            () ->
                Optional.of(
                    MeantWord.of(token.text(), List.of("nadai", "kalam", "gati", LastTimes.LAST))
                        .map("the nearest is "::concat)
                        .orElse("each round, rest or wait stands on a line of its own")));
        return List.of();
      }
    }
    Step.Say all =
        new Step.Say(name.name(), times.orElse(1), nadai.orElse(USUAL_NADAI), kalam.orElse(1));
    return last.isPresent() ? lastOther(all, last.get()) : List.of(all);
  }

  /** The phrase that is said the last time in place of the one that is repeated. */
  private Optional<Token> lastTime(Token name) {
    if (name.is(TokenKind.NAME) && phrases.contains(name.name())) {
      return Optional.of(name);
    }
    problems.error(
        name,
        "expected the phrase that is said the last time, found " + name.said(),
        () ->
            Optional.of(
                MeantWord.of(name.text(), phrases)
                    .map("the nearest is "::concat)
                    .orElse("write Song x3 last Close")));
    return Optional.empty();
  }

  private List<Step> lastOther(Step.Say all, Token last) {
    if (all.times() == 1) {
      problems.error(
          last, "there is no last time of what is said once", "write x3, or take the word out");
      return List.of(all);
    }
    return List.of(
        new Step.Say(all.phrase(), all.times() - 1, all.nadai(), all.kalam()),
        new Step.Say(last.name(), 1, all.nadai(), all.kalam()));
  }

  private void once(Optional<?> earlier, Token token, String what) {
    if (earlier.isPresent()) {
      problems.error(token, what + " is given twice in this line", "write two lines");
    }
  }

  private Optional<Integer> kalam(Token token) {
    if (token.is(TokenKind.NUMBER)
        && token.value() >= 1
        && token.value() <= Composition.HIGHEST_KALAM) {
      return Optional.of(token.value());
    }
    problems.error(
        token,
        "a kalam is 1 to " + Composition.HIGHEST_KALAM + ", found " + token.said(),
        "kalam 2 is twice as dense, kalam 3 four times");
    return Optional.empty();
  }

  private Optional<Step> rest(Cursor cursor) {
    Token first = cursor.peek();
    Optional<Ratio> length = Quantity.readBeats(cursor, "how long to rest", problems);
    if (length.isEmpty()) {
      return Optional.empty();
    }
    Token unit = cursor.peek();
    if (length.get().signum() == 0) {
      problems.error(first, "a rest takes some time, given 0", "take the line out");
      return Optional.empty();
    } else if (isOneOf(unit, BEATS)) {
      cursor.next();
      return Optional.of(new Step.RestBeats(length.get()));
    } else if (!isOneOf(unit, MATRAS)) {
      problems.error(
          unit,
          "expected beats or matras, found " + unit.said(),
          "write rest 2 beats, or rest 16 matras nadai 5");
      return Optional.empty();
    } else if (!length.get().isWhole()) {
      problems.error(first, "a rest in matras is a whole number", "use a nadai with finer matras");
      return Optional.empty();
    }
    cursor.next();
    return restMatras((int) length.get().num(), cursor);
  }

  private Optional<Step> restMatras(int matras, Cursor cursor) {
    if (!isOneOf(cursor.peek(), NADAI)) {
      problems.error(
          cursor.peek(),
          "expected nadai and a number, found " + cursor.peek().said(),
          "say which matras: rest " + matras + " matras nadai 5");
      return Optional.empty();
    }
    cursor.next();
    return NadaiReader.read(cursor.next(), problems)
        .map(nadai -> new Step.RestMatras(matras, nadai));
  }

  static boolean isOneOf(Token token, Set<String> words) {
    return (token.is(TokenKind.WORD) || token.is(TokenKind.NAME))
        && words.contains(JatiNames.fold(token.text()));
  }
}
