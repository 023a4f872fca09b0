package org.matraloom.form;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.matraloom.score.Composition;
import org.matraloom.score.Element;
import org.matraloom.score.Length;
import org.matraloom.score.Sequence;
import org.matraloom.time.Ratio;

/** Cuts a phrase into the lines that show in its text. */
final class PhraseLines {

  private static final int LONGEST_LINK = 3;
  private static final int LINE_TO_LINK = 3;

  private PhraseLines() {}

  /** The lines of a named phrase; a phrase that only names another has the lines of that one. */
  static List<List<Element>> named(Composition composition, String phrase) {
    List<Element> body = composition.phrases().get(phrase).elements();
    while (body.size() == 1) {
      if (body.get(0) instanceof Element.Reference reference) {
        body = composition.phrases().get(reference.name()).elements();
      } else if (body.get(0) instanceof Element.Repeat repeat && repeat.times() == 1) {
        body = repeat.body().elements();
      } else {
        break;
      }
    }
    return of(body, composition);
  }

  /** The lines of some elements, without what takes no time. */
  static List<List<Element>> of(List<Element> body, Composition composition) {
    List<List<Element>> lines = new ArrayList<>();
    List<Element> open = new ArrayList<>();
    boolean quiet = false;
    for (Element element : writtenOut(body)) {
      boolean isQuiet = Statement.isQuiet(element);
      boolean word = element instanceof Element.Word;
      if (!isQuiet && (quiet || !word) && !open.isEmpty()) {
        add(open, lines, composition);
        open = new ArrayList<>();
      }
      open.add(element);
      quiet = isQuiet || !word;
    }
    if (!open.isEmpty()) {
      add(open, lines, composition);
    }
    return lines;
  }

  /** A single sollu that rings between long lines is no line; it belongs to the one before it. */
  private static void add(List<Element> line, List<List<Element>> lines, Composition composition) {
    int last = lines.size() - 1;
    boolean single =
        line.size() > 1
            && line.get(0) instanceof Element.Word word
            && word.sollus().size() == 1
            && line.subList(1, line.size()).stream().allMatch(Statement::isQuiet);
    if (single && last >= 0) {
      Ratio matras = length(line, composition);
      Ratio before = length(lines.get(last), composition);
      if (matras.compareTo(Ratio.of(LONGEST_LINK)) <= 0
          && before.compareTo(matras.times(LINE_TO_LINK)) >= 0) {
        List<Element> longer = new ArrayList<>(lines.get(last));
        longer.addAll(line);
        lines.set(last, List.copyOf(longer));
        return;
      }
    }
    lines.add(List.copyOf(line));
  }

  private static Ratio length(List<Element> line, Composition composition) {
    return Length.of(new Sequence(line), composition.phrases()).matras();
  }

  /**
   * Without what takes no time; what is said twice and then once more, as in ( A , ) x2 A, is
   * written out.
   */
  private static List<Element> writtenOut(List<Element> body) {
    List<Element> plain = body.stream().filter(e -> !(e instanceof Element.Timeless)).toList();
    List<Element> written = new ArrayList<>();
    for (int i = 0; i < plain.size(); i++) {
      Element element = plain.get(i);
      if (element instanceof Element.Repeat repeat && repeat.times() == 2) {
        List<Element> said = Statement.of(List.of(repeat.body().elements())).said();
        List<Element> rest = plain.subList(i + 1, plain.size());
        boolean again =
            rest.size() >= said.size()
                && Statement.of(List.of(rest.subList(0, said.size()))).said().equals(said);
        if (again) {
          Collections.nCopies(2, writtenOut(repeat.body().elements())).forEach(written::addAll);
          continue;
        }
      }
      written.add(element);
    }
    return written;
  }
}
