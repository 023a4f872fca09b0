package org.matraloom.notation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.matraloom.notation.Token.TokenKind;
import org.matraloom.score.Closing;
import org.matraloom.score.Composition;
import org.matraloom.score.Element;
import org.matraloom.score.Length;
import org.matraloom.score.Sequence;
import org.matraloom.score.Step;
import org.matraloom.score.TwoReciters;
import org.matraloom.score.Wording;
import org.matraloom.spell.Quoted;
import org.matraloom.time.Tempo;

/**
 * Reads {@code use "other.loom"}: another score is performed here as it is written. It becomes a
 * part with its name, a claim of where it enters, its plan, and a claim of where it lands.
 */
final class UsedPiece {

  static final String USE = "use";

  private static final String EXAMPLE = "write use \"other.loom\"";
  private static final String QUOTES = "\"\u201c\u201d\u201e";

  private final Optional<PieceShelf> shelf;
  private final Tempo tempo;
  private final Wording wording;
  private final BorrowedPhrases borrowed;
  private final Problems problems;

  /**
   * Prepares to read.
   *
   * @param shelf where other scores are found; none for a text that is in no file
   * @param head what the main score says
   * @param borrowed where the phrases of the other scores go
   */
  UsedPiece(
      Optional<PieceShelf> shelf, Headers.Head head, BorrowedPhrases borrowed, Problems problems) {
    this.shelf = shelf;
    this.tempo = head.tempo();
    this.wording = head.wording();
    this.borrowed = borrowed;
    this.problems = problems;
  }

  /** The lines that a piece becomes, and how it closes where it stands last. */
  record Lines(List<Step> steps, Optional<Step> stroke, Closing closing) {}

  /** Reads a line whose first word has just been taken; the whole line is taken. */
  Optional<Lines> read(Token first, Cursor cursor, PlanPosition position) {
    Optional<Token> name = name(first, cursor);
    if (name.isEmpty()) {
      return Optional.empty();
    }
    if (shelf.isEmpty()) {
      problems.error(
          name.get(),
          "a score that is not in a file cannot use others",
          "save it beside the other score first");
      return Optional.empty();
    }
    String written = name.get().text();
    Optional<PieceShelf.Piece> piece = shelf.get().piece(name.get(), written, problems);
    return piece
        .filter(found -> fits(found, name.get(), position))
        .map(
            found -> {
              tellStrokes(found.composition(), name.get());
              return lines(found.composition(), written);
            });
  }

  /** What stands between the quotation marks. */
  private Optional<Token> name(Token first, Cursor cursor) {
    SourceLine line = first.line();
    String text = line.text();
    int from = first.end();
    int end = Lexer.noteStart(text);
    while (from < end && Lexer.isSpace(text.charAt(from))) {
      from++;
    }
    int to = end;
    while (to > from && Lexer.isSpace(text.charAt(to - 1))) {
      to--;
    }
    Token whole = from < to ? new Token(TokenKind.STRANGE, line, from, to, false) : cursor.peek();
    while (!cursor.isAtEnd()) {
      cursor.next();
    }
    boolean quoted =
        to - from > 2
            && QUOTES.indexOf(text.charAt(from)) >= 0
            && QUOTES.indexOf(text.charAt(to - 1)) >= 0;
    if (!quoted) {
      problems.error(
          whole,
          "expected a file in quotation marks after use, found "
              + (from < to ? Quoted.quote(text.substring(from, to)) : "the end of the line"),
          EXAMPLE);
      return Optional.empty();
    }
    return Optional.of(new Token(TokenKind.STRANGE, line, from + 1, to - 1, true));
  }

  private boolean fits(PieceShelf.Piece piece, Token name, PlanPosition position) {
    Composition other = piece.composition();
    if (piece.namesTempo() && !other.tempo().equals(tempo)) {
      problems.error(
          name,
          name.brief()
              + " is at "
              + other.tempo().beatsPerMinute().toMixed()
              + " beats a minute and this score at "
              + tempo.beatsPerMinute().toMixed(),
          "give both one tempo, or take its tempo line out");
      return false;
    } else if (TwoReciters.in(other)) {
      problems.error(
          name,
          name.brief() + " has two reciters, and only a score with one can be used in another",
          "write its phrases and its with lines in this score");
      return false;
    } else if (!other.avartana().equals(position.avartana())) {
      problems.error(
          name,
          name.brief()
              + " is in "
              + said(other)
              + " and this score in "
              + said(position.avartana().tala().name(), position.avartana().kalai()),
          "scores that are put together share tala, kalai and fingers");
      return false;
    }
    return true;
  }

  /** A drum plays one whole with one set of strokes. */
  private void tellStrokes(Composition other, Token name) {
    if (!wording.strokes().entrySet().containsAll(other.wording().strokes().entrySet())) {
      problems.warning(
          name,
          "the strokes that " + name.brief() + " names for a drum are not taken over",
          Optional.of("write its drum lines in the head of this score"));
    }
  }

  private static String said(Composition piece) {
    return said(piece.avartana().tala().name(), piece.avartana().kalai());
  }

  private static String said(String tala, int kalai) {
    return tala + (kalai == 1 ? "" : " in " + kalai + " kalai");
  }

  private Lines lines(Composition other, String written) {
    Map<String, String> names = names(other);
    Map<String, Length> known = new LinkedHashMap<>();
    other
        .phrases()
        .forEach(
            (name, sequence) ->
                borrowed.add(
                    names.get(name),
                    taken(sequence, other.wording(), names),
                    Length.of(sequence, other.phrases(), known)));
    List<Step> steps = new ArrayList<>();
    String title = PlanWords.plain(other.title());
    String file = written.substring(written.lastIndexOf('/') + 1);
    String name = title.isEmpty() ? file : title;
    steps.add(new Step.Part(name));
    steps.add(new Step.Stands(other.avartana().placeOf(other.startBeat()), name));
    other.plan().forEach(step -> steps.add(renamed(step, names)));
    steps.add(new Step.Stands(other.avartana().placeOf(other.eduppuBeat()), name));
    return new Lines(
        steps, other.closing().stroke().map(stroke -> said(stroke, other)), other.closing());
  }

  /** The last stroke of a piece after which another thing follows: it takes its time. */
  private Step said(Closing.Stroke stroke, Composition piece) {
    Step.Say last =
        (Step.Say)
            piece.plan().stream()
                .filter(Step.Say.class::isInstance)
                .reduce((a, b) -> b)
                .orElseThrow();
    int density = last.nadai() * Composition.density(last.kalam());
    int matras = (int) stroke.beats(density).times(density).num();
    List<Element> elements = new ArrayList<>();
    elements.add(new Element.Word(stroke.sollu().spelling(), List.of(stroke.sollu())));
    for (int left = matras - 1; left > 0; left -= 2) {
      elements.add(new Element.Karvai(Math.min(2, left)));
    }
    Sequence sequence = new Sequence(elements);
    String name = borrowed.nameFor("Stroke", sequence);
    borrowed.add(name, sequence, Length.of(sequence, Map.of()));
    return new Step.Say(name, 1, last.nadai(), last.kalam());
  }

  /** A free name for each phrase; equal phrases of several pieces share one. */
  private Map<String, String> names(Composition other) {
    Map<String, String> names = new LinkedHashMap<>();
    int number = 1;
    do {
      String ending = number == 1 ? "" : "_" + number;
      other.phrases().keySet().forEach(name -> names.put(name, name + ending));
      number++;
    } while (names.keySet().stream().anyMatch(name -> isTaken(name, other, names)));
    return names;
  }

  private boolean isTaken(String name, Composition other, Map<String, String> names) {
    Sequence sequence = taken(other.phrases().get(name), other.wording(), names);
    return borrowed.isTaken(names.get(name), sequence);
  }

  private Sequence taken(Sequence sequence, Wording words, Map<String, String> names) {
    return new TakenOver(names, !words.speaksLike(wording)).sequence(sequence);
  }

  private static Step renamed(Step step, Map<String, String> names) {
    return step instanceof Step.Say say
        ? new Step.Say(names.get(say.phrase()), say.times(), say.nadai(), say.kalam())
        : step;
  }
}
