package org.matraloom.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.matraloom.notation.Token.TokenKind;
import org.matraloom.score.Element;
import org.matraloom.score.Length;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Nadai;
import org.matraloom.score.Sequence;
import org.matraloom.score.Step;
import org.matraloom.score.Wording;
import org.matraloom.spell.MeantWord;
import org.matraloom.time.Ratio;

/**
 * Reads a fill-in, {@code fill 2 avartanas}, {@code fill 6 beats nadai 5} or {@code fill until
 * samam}: the words of a beat again and again, so that the tala is filled between two pieces.
 */
final class FillIn {

  static final String FILL = "fill";

  private static final String NAME = "Fill";
  private static final String EXAMPLE = "write fill 8 beats, fill 2 avartanas or fill until samam";
  private static final Set<String> BEATS = Set.of("beat", "beats");
  private static final Set<String> AVARTANAS = Set.of("avartana", "avartanas", "cycle", "cycles");

  private final Wording wording;
  private final Lexicon lexicon;
  private final BorrowedPhrases borrowed;
  private final Problems problems;

  FillIn(Wording wording, Lexicon lexicon, BorrowedPhrases borrowed, Problems problems) {
    this.wording = wording;
    this.lexicon = lexicon;
    this.borrowed = borrowed;
    this.problems = problems;
  }

  /** Reads a line whose first word has just been taken. */
  Optional<Step> read(Token first, Cursor cursor, PlanPosition position) {
    Optional<Ratio> beats =
        cursor.is(TokenKind.NUMBER) ? counted(cursor, position) : until(cursor, position);
    if (beats.isEmpty()) {
      return Optional.empty();
    }
    Optional<Integer> nadai = Optional.of(PlanParser.USUAL_NADAI);
    if (PlanParser.isNadai(cursor.peek())) {
      cursor.next();
      nadai = NadaiReader.read(cursor.next(), problems);
    }
    return nadai.flatMap(given -> said(first, beats.get(), given, position));
  }

  private Optional<Ratio> counted(Cursor cursor, PlanPosition position) {
    Optional<Ratio> length = Quantity.readBeats(cursor, "how long to fill", problems);
    Token unit = cursor.peek();
    boolean avartanas = PlanParser.isOneOf(unit, AVARTANAS);
    if (length.isPresent() && !avartanas && !PlanParser.isOneOf(unit, BEATS)) {
      List<String> units = List.of("beats", "avartanas");
      problems.error(
          unit,
          "expected beats or avartanas, found " + unit.said(),
          () ->
              Optional.of(
                  MeantWord.of(unit.text(), units).map("the nearest is "::concat).orElse(EXAMPLE)));
      return Optional.empty();
    }
    cursor.next();
    return length.map(beats -> avartanas ? beats.times(position.avartana().beats()) : beats);
  }

  private Optional<Ratio> until(Cursor cursor, PlanPosition position) {
    Token word = cursor.peek();
    if (!word.is("until")) {
      problems.error(
          word,
          "expected a length or until after fill, found " + word.said(),
          () ->
              Optional.of(
                  MeantWord.of(word.text(), List.of("until"))
                      .map("the nearest is "::concat)
                      .orElse(EXAMPLE)));
      return Optional.empty();
    }
    cursor.next();
    return BeatPlace.read(cursor, position.avartana(), problems)
        .map(place -> position.avartana().placeOf(place.minus(position.place())));
  }

  private Optional<Step> said(Token first, Ratio beats, int nadai, PlanPosition position) {
    Ratio matras = beats.times(nadai);
    String from = position.avartana().say(position.place());
    if (problems.hasErrors()) {
      return Optional.empty();
    } else if (matras.signum() == 0) {
      problems.error(
          first, "there is nothing to fill: the tala stands there already", "take the line out");
      return Optional.empty();
    } else if (!matras.isWhole()) {
      problems.error(
          first,
          "a fill-in is whole matras; from "
              + from
              + " it would be "
              + matras.toMixed()
              + " matras of "
              + Nadai.word(nadai),
          "name a nadai that fits, as in fill until samam nadai 6");
      return Optional.empty();
    } else if (beats.compareTo(Ratio.of(RepeatCount.MOST)) > 0) {
      problems.error(
          first,
          "a fill-in has at most " + RepeatCount.MOST + " beats, given " + beats.toMixed(),
          "write two lines");
      return Optional.empty();
    }
    Sequence words = words((int) matras.num(), toNextBeat(position.place(), nadai), nadai);
    String name = borrowed.nameFor(NAME + matras.num(), words);
    borrowed.add(name, words, Length.of(words, Map.of()));
    return Optional.of(new Step.Say(name, 1, nadai, 1));
  }

  /** The matras up to the next beat, where that is whole matras away; 0 on a beat. */
  private static int toNextBeat(Ratio place, int nadai) {
    Ratio matras = Ratio.of(place.ceil()).minus(place).times(nadai);
    return matras.isWhole() ? (int) matras.num() : 0;
  }

  /** What is left of the beat, then the words of a beat, then what is left at the end. */
  private Sequence words(int matras, int toNextBeat, int nadai) {
    List<Element> elements = new ArrayList<>();
    int left = matras - Math.min(toNextBeat, matras);
    add(Math.min(toNextBeat, matras), 1, elements);
    add(nadai, left / nadai, elements);
    add(left % nadai, 1, elements);
    return new Sequence(elements);
  }

  private void add(int size, int times, List<Element> elements) {
    if (size > 0 && times > 0) {
      Element group = wording.group(size, 1, 0, lexicon);
      elements.add(times == 1 ? group : new Element.Repeat(Sequence.of(group), times));
    }
  }
}
