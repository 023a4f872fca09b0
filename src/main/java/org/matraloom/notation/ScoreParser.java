package org.matraloom.notation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.matraloom.notation.Token.TokenKind;
import org.matraloom.score.Composition;
import org.matraloom.score.Length;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Sequence;
import org.matraloom.spell.ScorePrinter;

/** Sorts the lines of a score into headers, phrases and the perform plan, and joins their parts. */
final class ScoreParser {

  private final Lexicon lexicon;
  private final Problems problems;
  private final Headers headers;
  private final PhraseParser phraseParser;
  private final Map<String, PhraseGraph.Definition> phrases = new LinkedHashMap<>();
  private final List<List<Token>> plan = new ArrayList<>();
  private Optional<Token> perform = Optional.empty();
  private List<Token> phrase = new ArrayList<>();
  private final BareLines bare;
  private MatraPlaces places;
  private boolean headersOver;
  private boolean lineLost;
  private boolean takesOver;
  private final Optional<PieceShelf> shelf;

  ScoreParser(Lexicon lexicon, Problems problems, Optional<PieceShelf> shelf) {
    this.lexicon = lexicon;
    this.shelf = shelf;
    this.problems = problems;
    this.headers = new Headers(lexicon, problems);
    this.bare = new BareLines(lexicon);
    this.phraseParser = new PhraseParser(lexicon, problems);
    this.places = new MatraPlaces(plan, phrases.keySet(), problems);
  }

  /** Takes the next line of the text. */
  void take(SourceLine line) {
    if (line.text().length() > SourceLine.LONGEST) {
      lineLost = true;
      problems.error(
          line,
          0,
          0,
          "a line has at most "
              + SourceLine.LONGEST
              + " characters, this one has "
              + line.text().length(),
          () -> Optional.of("go on in an indented line"));
      return;
    }
    List<Token> tokens = Lexer.tokens(line);
    Token first = tokens.get(0);
    if (first.is(TokenKind.END)) {
      return;
    }
    Optional<String> keyword = Headers.keyword(first);
    boolean equals = tokens.get(1).is(TokenKind.EQUALS);
    if (equals && first.is(TokenKind.NAME)) {
      beginPhrase(tokens);
    } else if (first.is(Headers.PERFORM) && tokens.get(1).is(TokenKind.END) && !isPhrase(first)) {
      beginPlan(first);
    } else if (keyword.isPresent() && !headersOver) {
      headers.add(keyword.get(), tokens);
    } else if (equals && first.is(TokenKind.NUMBER) && !headersOver) {
      headers.addWords(tokens);
    } else if (equals && first.is(TokenKind.WORD) && keyword.isEmpty()) {
      LineMistakes.smallName(first, problems);
      beginPhrase(tokens);
    } else if (perform.isPresent()
        && !equals
        && PlanParser.mayBegin(first, keyword, isPhrase(first))) {
      plan.add(tokens);
    } else if (!phrase.isEmpty() && first.start() > 0 && !equals) {
      phrase.remove(phrase.size() - 1);
      phrase.addAll(tokens);
    } else if (!headersOver
        && !equals
        && (bare.sounds(first) || (!bare.isEmpty() && first.start() > 0))) {
      bare.add(tokens);
    } else {
      LineMistakes.tell(tokens, headersOver, this::isNamed, problems);
    }
  }

  /** Whether sollus without a name are all that there is to say. */
  boolean isBare() {
    return !bare.isEmpty() && phrases.isEmpty() && phrase.isEmpty() && perform.isEmpty();
  }

  /** Whether a tempo is written. */
  boolean namesTempo() {
    return headers.has("tempo");
  }

  /** The text with all that it leaves out, after the last line; the same if that is nothing. */
  String inFull(String text) {
    boolean isBare = isBare();
    boolean talaGiven = headers.has("tala");
    Optional<Composition> read = finish();
    String exact = places.written(text);
    if (isBare) {
      return bare.inFull(exact, talaGiven);
    }
    return takesOver ? read.map(ScorePrinter::print).orElse(exact) : exact;
  }

  private void nameBareLines() {
    if (isBare()) {
      bare.tell(headers.has("tala"), headers.has("tempo"), problems);
      headers.assumeTala(BareLines.TALA);
      bare.named().forEach(this::beginPhrase);
      endPhrase();
    } else {
      LineMistakes.nameless(bare.lines(), problems);
    }
  }

  /** Joins everything, after the last line; nothing if there was any error. */
  Optional<Composition> finish() {
    nameBareLines();
    endPhrase();
    places = new MatraPlaces(plan, phrases.keySet(), problems);
    Headers.Head head = headers.read(places);
    if (phrases.isEmpty() && !lineLost && plan.stream().noneMatch(PlanReader::takesOver)) {
      problems.error(
          "there is no phrase", Optional.of("add a line such as Song = takita takadimi"));
    }
    PhraseGraph graph = new PhraseGraph(phrases, lexicon, problems);
    Map<String, Length> lengths = graph.lengths();
    PlanReader.Plan read = plan(places.plan(), head, new HashMap<>(lengths));
    PlanCheck check = new PlanCheck(read.lines(), problems);
    if (problems.hasErrors()) {
      return Optional.empty();
    }
    Map<String, Sequence> said = graph.sequences();
    said.putAll(read.borrowed());
    Composition composition =
        new Composition(
            head.title(),
            head.avartana(),
            head.tempo(),
            head.startBeat(),
            head.eduppuBeat(),
            said,
            check.steps(),
            read.closing(),
            head.wording());
    check.check(composition, read.lengths());
    if (problems.hasErrors()) {
      return Optional.empty();
    }
    warnOfUnsaid(graph.saidBy(check.saidOf(phrases.keySet())));
    return Optional.of(composition);
  }

  private boolean isPhrase(Token token) {
    return token.is(TokenKind.NAME) && phrases.containsKey(token.name());
  }

  /** Whether a phrase of this name is written, the one being gathered among them. */
  private boolean isNamed(Token token) {
    return isPhrase(token) || (!phrase.isEmpty() && phrase.get(0).name().equals(token.name()));
  }

  private void beginPhrase(List<Token> tokens) {
    endPhrase();
    headersOver = true;
    phrase.addAll(tokens);
  }

  /** Reads the phrase whose lines have been gathered, if there is one. */
  private void endPhrase() {
    if (phrase.isEmpty()) {
      return;
    }
    if (phrases.isEmpty()) {
      phraseParser.use(headers.wording());
    }
    Token name = phrase.get(0);
    List<Token> written = LastTimes.writtenOut(phrase, problems);
    PhraseParser.Body body = phraseParser.parse(name, new Cursor(written, 2));
    String key = name.is(TokenKind.NAME) ? name.name() : LineMistakes.capital(name);
    PhraseGraph.Definition definition =
        new PhraseGraph.Definition(key, name, body.sequence(), body.references());
    PhraseGraph.Definition first = phrases.putIfAbsent(key, definition);
    if (first != null) {
      problems.error(
          name,
          "phrase "
              + name.brief()
              + " is given twice, first in line "
              + first.token().line().number(),
          "give one of the two another name");
    }
    phrase = new ArrayList<>();
  }

  private void beginPlan(Token token) {
    endPhrase();
    headersOver = true;
    if (perform.isPresent()) {
      problems.error(
          token,
          "perform is given twice, first in line " + perform.get().line().number(),
          "put all rounds under one perform");
      return;
    }
    perform = Optional.of(token);
  }

  private PlanReader.Plan plan(
      List<List<Token>> lines, Headers.Head head, Map<String, Length> lengths) {
    if (perform.isEmpty()) {
      return PlanReader.lastOnce(phrases.values(), lengths, head.closing());
    }
    PlanReader reader = new PlanReader(head, phrases.keySet(), lexicon, lengths, problems);
    PlanReader.Plan read =
        reader.read(lines, shelf, !headers.has("stroke") && !headers.has("after"));
    takesOver |= read.takesOver();
    if (!read.says() && !problems.hasErrors()) {
      problems.error(
          perform.get(), "nothing is said under perform", "add a line such as Song x2 nadai 4");
    }
    return read;
  }

  private void warnOfUnsaid(Set<String> said) {
    for (Map.Entry<String, PhraseGraph.Definition> entry : phrases.entrySet()) {
      if (!said.contains(entry.getKey())) {
        Token token = entry.getValue().token();
        problems.warning(
            token,
            "phrase " + token.brief() + " is never said",
            Headers.keyword(token).map(word -> "a header is written small: " + word + " ..."));
      }
    }
  }
}
