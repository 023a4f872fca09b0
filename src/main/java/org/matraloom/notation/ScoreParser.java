package org.matraloom.notation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.matraloom.notation.Token.TokenKind;
import org.matraloom.score.Composition;
import org.matraloom.score.Length;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Step;

/** Sorts the lines of a score into headers, phrases and the perform plan, and joins their parts. */
final class ScoreParser {

  static final String PERFORM = "perform";

  private final Lexicon lexicon;
  private final Problems problems;
  private final Headers headers;
  private final PhraseParser phraseParser;
  private final Map<String, Definition> phrases = new LinkedHashMap<>();
  private final List<List<Token>> plan = new ArrayList<>();
  private Optional<Token> perform = Optional.empty();
  private List<Token> phrase = new ArrayList<>();
  private boolean headersOver;
  private boolean lineLost;

  ScoreParser(Lexicon lexicon, Problems problems) {
    this.lexicon = lexicon;
    this.problems = problems;
    this.headers = new Headers(problems);
    this.phraseParser = new PhraseParser(lexicon, problems);
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
    } else if (first.is(PERFORM) && tokens.get(1).is(TokenKind.END) && !isPhrase(first)) {
      beginPlan(first);
    } else if (keyword.isPresent() && !headersOver) {
      headers.add(keyword.get(), tokens);
    } else if (equals && first.is(TokenKind.WORD) && keyword.isEmpty()) {
      LineMistakes.smallName(first, problems);
      beginPhrase(tokens);
    } else if (perform.isPresent() && !equals && (keyword.isEmpty() || isPhrase(first))) {
      plan.add(tokens);
    } else if (!phrase.isEmpty() && first.start() > 0 && !equals) {
      phrase.remove(phrase.size() - 1);
      phrase.addAll(tokens);
    } else {
      LineMistakes.tell(tokens, headersOver, this::isNamed, problems);
    }
  }

  /** Joins everything, after the last line; nothing if there was any error. */
  Optional<Composition> finish() {
    endPhrase();
    Headers.Head head = headers.read();
    if (phrases.isEmpty() && !lineLost) {
      problems.error(
          "there is no phrase", Optional.of("add a line such as Song = takita takadimi"));
    }
    PhraseGraph graph = new PhraseGraph(phrases, lexicon, problems);
    Map<String, Length> lengths = graph.lengths();
    PlanCheck check = new PlanCheck(plan(head), problems);
    if (problems.hasErrors()) {
      return Optional.empty();
    }
    Composition composition =
        new Composition(
            head.title(),
            head.avartana(),
            head.tempo(),
            head.startBeat(),
            head.eduppuBeat(),
            graph.sequences(),
            check.steps());
    check.check(composition, lengths);
    if (problems.hasErrors()) {
      return Optional.empty();
    }
    warnOfUnsaid(graph.saidBy(check.said()));
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
    Token name = phrase.get(0);
    PhraseParser.Body body = phraseParser.parse(name, new Cursor(phrase, 2));
    String key = name.is(TokenKind.NAME) ? name.name() : LineMistakes.capital(name);
    Definition definition = new Definition(key, name, body.sequence(), body.references());
    Definition first = phrases.putIfAbsent(key, definition);
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

  private List<PlanCheck.Line> plan(Headers.Head head) {
    List<PlanCheck.Line> lines = new ArrayList<>();
    if (perform.isEmpty()) {
      lastPhraseOnce().ifPresent(lines::add);
      return lines;
    }
    PlanParser parser = new PlanParser(head.avartana(), phrases.keySet(), lexicon, problems);
    int before = problems.errors();
    for (List<Token> tokens : plan) {
      parser.step(tokens).ifPresent(step -> lines.add(new PlanCheck.Line(step, tokens.get(0))));
    }
    boolean silent = lines.stream().noneMatch(line -> line.step() instanceof Step.Say);
    if (silent && before == problems.errors()) {
      problems.error(
          perform.get(), "nothing is said under perform", "add a line such as Song x2 nadai 4");
    }
    return lines;
  }

  private Optional<PlanCheck.Line> lastPhraseOnce() {
    Optional<PlanCheck.Line> last = Optional.empty();
    for (Map.Entry<String, Definition> entry : phrases.entrySet()) {
      Step once = new Step.Say(entry.getKey(), 1, PlanParser.USUAL_NADAI, 1);
      last = Optional.of(new PlanCheck.Line(once, entry.getValue().token()));
    }
    return last;
  }

  private void warnOfUnsaid(Set<String> said) {
    for (Map.Entry<String, Definition> entry : phrases.entrySet()) {
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
