package org.matraloom.notation;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.matraloom.notation.Token.TokenKind;
import org.matraloom.score.Anga;
import org.matraloom.score.Avartana;
import org.matraloom.score.Closing;
import org.matraloom.score.FingerCustom;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Tala;
import org.matraloom.score.Wording;
import org.matraloom.spell.Quoted;
import org.matraloom.spell.TalaReader;
import org.matraloom.spell.UsedTalas;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/** The lines before the phrases: collected one by one, understood together at the end. */
final class Headers {
  /** The word that begins the plan, after headers and phrases. */
  static final String PERFORM = "perform";

  /** The keywords, in the order in which they are usually written. */
  static final List<String> KEYWORDS =
      List.of("title tala kalai tempo start eduppu stroke after words drum fingers".split(" "));

  private static final int LONGEST_TITLE = 200;

  /** The tempo of a score that names none. */
  static final Tempo USUAL_TEMPO = Tempo.of(60);

  /** What the headers say. */
  record Head(
      String title,
      Avartana avartana,
      Tempo tempo,
      Ratio startBeat,
      Ratio eduppuBeat,
      Closing closing,
      Wording wording) {}

  private record Entry(Token keyword, List<Token> tokens) {

    /** The index of the first token of the value; a colon or an = after the keyword is allowed. */
    int first() {
      return tokens.get(1).is(TokenKind.COLON) || tokens.get(1).is(TokenKind.EQUALS) ? 2 : 1;
    }

    Cursor cursor() {
      return new Cursor(tokens, first());
    }

    int start() {
      return cursor().peek().start();
    }

    /** The value as text; invisible spaces become plain ones. */
    String text() {
      String line = keyword.line().text();
      int end = Math.max(start(), Lexer.noteStart(line));
      return Lexer.spaced(line.substring(start(), end)).stripTrailing();
    }
  }

  private final Problems problems;
  private final SolluHeaders sollus;
  private final Map<String, Entry> entries = new LinkedHashMap<>();

  Headers(Lexicon lexicon, Problems problems) {
    this.problems = problems;
    this.sollus = new SolluHeaders(lexicon, problems);
  }

  /** The keyword that a token is, whatever its case. */
  static Optional<String> keyword(Token token) {
    for (String keyword : KEYWORDS) {
      if (token.is(keyword)) {
        return Optional.of(keyword);
      }
    }
    return Optional.empty();
  }

  /** Takes one header line. */
  void add(String keyword, List<Token> tokens) {
    Entry entry = new Entry(tokens.get(0), tokens);
    if (keyword.equals("drum")) {
      sollus.addStrokes(entry.cursor().peek(), entry.text());
      return;
    }
    Entry first = entries.putIfAbsent(keyword, entry);
    if (first != null) {
      problems.error(
          entry.keyword(),
          keyword + " is given twice, first in line " + first.keyword().line().number(),
          "take one of the two out");
    }
  }

  boolean has(String keyword) {
    return entries.containsKey(keyword);
  }

  /** Takes a tala where none is given. */
  void assumeTala(String name) {
    List<Token> tokens = Lexer.tokens(new SourceLine(1, "tala " + name));
    entries.putIfAbsent("tala", new Entry(tokens.get(0), tokens));
  }

  /** Understands all headers; something usual stands in for what is missing or wrong. */
  Head read(MatraPlaces places) {
    if (!has("tala")) {
      problems.error("the tala is missing", Optional.of("add a line such as: tala adi"));
    }
    // Stands in for a tala that was not understood, so that places can be read all the same.
    Tala widest =
        new Tala(
            "unknown", Collections.nCopies(Tala.MOST_ANGAS, new Anga.Group(Tala.LONGEST_GROUP)));
    Avartana avartana =
        Avartana.of(
            tala().orElse(widest),
            has("kalai") ? value("kalai", cursor -> Quantity.kalai(cursor, problems)).orElse(1) : 1,
            has("fingers")
                ? value("fingers", this::fingers).orElse(FingerCustom.RESTART)
                : FingerCustom.RESTART);
    Ratio eduppu = UsedTalas.usualEduppu(avartana.tala()).times(avartana.kalai());
    return new Head(
        title(),
        avartana,
        tempo(),
        has("start") ? place("start", places::start, avartana).orElse(Ratio.ZERO) : Ratio.ZERO,
        has("eduppu") ? place("eduppu", places::eduppu, avartana).orElse(eduppu) : eduppu,
        closing(),
        wording());
  }

  /** Takes words for groups, as in {@code 7 = ta , di , gi na tom}. */
  void addWords(List<Token> tokens) {
    sollus.add(tokens);
  }

  /** Which words groups are spoken with, as far as the head has been read. */
  Wording wording() {
    if (!sollus.isWorded()) {
      sollus.word(has("words") ? value("words", sollus::kind) : Optional.empty());
    }
    return sollus.wording();
  }

  private Closing closing() {
    Optional<Closing.Stroke> stroke =
        has("stroke") ? value("stroke", sollus::stroke) : Optional.empty();
    int usual = Closing.usualAvartanas(stroke);
    int avartanas = has("after") ? value("after", sollus::after).orElse(usual) : usual;
    return new Closing(stroke, avartanas);
  }

  private String title() {
    Entry entry = entries.get("title");
    if (entry == null) {
      return "";
    }
    String title = Quoted.printable(entry.text());
    if (title.length() > LONGEST_TITLE) {
      problems.error(
          entry.keyword(), "a title has at most " + LONGEST_TITLE + " characters", "shorten it");
    }
    return title;
  }

  private Optional<Tala> tala() {
    Entry entry = entries.get("tala");
    if (entry == null) {
      return Optional.empty();
    }
    TalaReader.Result result = TalaReader.read(entry.text());
    if (result.fault().isPresent()) {
      TalaReader.Fault fault = result.fault().get();
      problems.error(
          entry.keyword().line(),
          entry.start() + fault.start(),
          entry.start() + fault.end(),
          fault.message(),
          fault::help);
    }
    return result.tala();
  }

  /**
   * What a header says that is there. At the start of the program the first reader of some kind
   * takes longer than the reading, so nobody is to be asked for a header that is not there.
   */
  private <T> Optional<T> value(String keyword, Function<Cursor, Optional<T>> reader) {
    Cursor cursor = entries.get(keyword).cursor();
    return toTheEnd(keyword, cursor, reader.apply(cursor));
  }

  private <T> Optional<T> toTheEnd(String keyword, Cursor cursor, Optional<T> value) {
    if (value.isPresent() && !cursor.isAtEnd()) {
      problems.error(
          cursor.peek(),
          "expected the end of the line after the " + keyword + ", found " + cursor.peek().said(),
          "a note begins with #");
    }
    return value;
  }

  private Optional<Ratio> place(
      String keyword, UnaryOperator<List<Token>> inBeats, Avartana avartana) {
    Entry entry = entries.get(keyword);
    entries.put(keyword, new Entry(entry.keyword, inBeats.apply(entry.tokens)));
    return value(keyword, cursor -> BeatPlace.read(cursor, avartana, problems));
  }

  private Optional<FingerCustom> fingers(Cursor cursor) {
    Token token = cursor.next();
    if (token.is("restart")) {
      return Optional.of(FingerCustom.RESTART);
    } else if (token.is("return")) {
      return Optional.of(FingerCustom.RETURN);
    }
    problems.error(
        token,
        "fingers is restart or return, found " + token.said(),
        "after the thumb the count restarts at the little finger, or returns by the index finger");
    return Optional.empty();
  }

  private Tempo tempo() {
    if (!has("tempo")) {
      return USUAL_TEMPO;
    }
    Cursor cursor = entries.get("tempo").cursor();
    return toTheEnd("tempo", cursor, Quantity.tempo(cursor, problems)).orElse(USUAL_TEMPO);
  }
}
