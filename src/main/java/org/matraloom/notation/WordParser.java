package org.matraloom.notation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.matraloom.score.Element;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Sollu;

/** Reads spoken words, written apart or run together. */
final class WordParser {

  private static final int LONGEST = 200;

  private final Lexicon lexicon;
  private final Problems problems;
  private final Map<String, Optional<List<Sollu>>> split = new HashMap<>();

  WordParser(Lexicon lexicon, Problems problems) {
    this.lexicon = lexicon;
    this.problems = problems;
  }

  /** Adds one word; what was said before it can change its first sound. */
  void parse(Token token, List<Element> elements) {
    String written = token.text();
    if (written.length() > LONGEST) {
      problems.error(token, "a word has at most " + LONGEST + " letters", "split it");
      return;
    }
    Optional<List<Sollu>> sollus = split.get(written);
    if (sollus == null) {
      sollus = lexicon.split(written);
      split.put(written, sollus);
    }
    if (sollus.isEmpty()) {
      PhraseMistakes.unknownWord(token, lexicon, problems);
      return;
    }
    elements.add(new Element.Word(written, inCompany(elements, sollus.get())));
  }

  /** The sollus of a word as they are said after the word before it, bars and wishes aside. */
  private List<Sollu> inCompany(List<Element> before, List<Sollu> sollus) {
    int last = before.size() - 1;
    while (last >= 0 && before.get(last) instanceof Element.Timeless) {
      last--;
    }
    if (last < 0 || !(before.get(last) instanceof Element.Word word)) {
      return sollus;
    }
    Sollu previous = word.sollus().get(word.sollus().size() - 1);
    Sollu first = lexicon.inCompany(previous, sollus.get(0));
    if (first.equals(sollus.get(0))) {
      return sollus;
    }
    List<Sollu> changed = new ArrayList<>(sollus);
    changed.set(0, first);
    return changed;
  }
}
