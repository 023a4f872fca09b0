package org.matraloom.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.matraloom.score.Element;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Sollu;

/** Joins sollus to written words that are read as the same sollus again. */
final class WordMaker {

  private static final int USUAL_LENGTH = 4;

  private final Lexicon lexicon;

  WordMaker(Lexicon lexicon) {
    this.lexicon = lexicon;
  }

  List<Element> words(List<Sollu> sollus) {
    List<Element> words = new ArrayList<>();
    List<Sollu> current = new ArrayList<>();
    for (Sollu sollu : sollus) {
      if (!current.isEmpty() && (current.size() >= USUAL_LENGTH || !fits(current, sollu))) {
        if (standsAlone(sollu)) {
          words.add(word(current));
          current.clear();
        }
      }
      current.add(sollu);
    }
    if (!current.isEmpty()) {
      words.add(word(current));
    }
    return words;
  }

  private boolean fits(List<Sollu> current, Sollu sollu) {
    Sollu last = current.get(current.size() - 1);
    return alone(sollu).map(own -> lexicon.inCompany(last, own)).filter(sollu::equals).isPresent();
  }

  private boolean standsAlone(Sollu sollu) {
    return alone(sollu).filter(sollu::equals).isPresent();
  }

  private Optional<Sollu> alone(Sollu sollu) {
    return lexicon.sound(sollu.spelling()).map(sound -> new Sollu(sollu.spelling(), sound.name()));
  }

  private Element.Word word(List<Sollu> sollus) {
    String joined = sollus.stream().map(Sollu::spelling).collect(Collectors.joining());
    boolean plain = lexicon.split(joined).filter(sollus::equals).isPresent();
    String written =
        plain ? joined : sollus.stream().map(Sollu::spelling).collect(Collectors.joining("-"));
    return new Element.Word(written, sollus);
  }
}
