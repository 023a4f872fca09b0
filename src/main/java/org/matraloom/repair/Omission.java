package org.matraloom.repair;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.matraloom.form.ElementWords;
import org.matraloom.form.Threefold;
import org.matraloom.score.Composition;
import org.matraloom.score.Edit;
import org.matraloom.score.Element;
import org.matraloom.score.Length;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Sequence;
import org.matraloom.score.Sollu;
import org.matraloom.time.Ratio;

/**
 * A place in a phrase from which matras can be taken out.
 *
 * @param edit the change
 * @param words what is taken out
 * @param harm how much it hurts the phrase: 0 for a karvai or a silence at its very end, where one
 *     is easily counted by mistake, more for words
 */
record Omission(Edit.Splice edit, String words, int harm) {

  private static final int ONE_WORD = 1;
  private static final int SHORTER_GROUP = 2;
  private static final int SEVERAL = 2;
  private static final int WHOLE_PHRASE = 3;
  private static final int OTHER_KARVAI = 3;
  private static final int CUT_WORD = 4;

  /** The place that hurts least, in any of the phrases. */
  static Optional<Omission> easiest(
      Composition composition, List<String> phrases, int matras, Lexicon lexicon) {
    List<Omission> found = new ArrayList<>();
    for (String phrase : phrases) {
      Sequence whole = composition.phrases().get(phrase);
      if (isMost(Length.of(whole, composition.phrases()), matras)) {
        continue;
      }
      for (int from = 0; from < whole.elements().size(); from++) {
        run(composition, phrase, from, matras).ifPresent(found::add);
        shorter(composition, phrase, from, matras, lexicon).ifPresent(found::add);
      }
    }
    return found.stream()
        .filter(omission -> omission.keepsTheForm(composition))
        .min(Comparator.comparingInt(Omission::harm));
  }

  /** Whether less than half of a phrase would be left. */
  private static boolean isMost(Length phrase, int matras) {
    return phrase.innerBeats().signum() == 0
        && phrase.matras().compareTo(Ratio.of(2L * matras)) < 0;
  }

  /** Neither breaks a threefold form nor takes the sound away that a karvai holds. */
  private boolean keepsTheForm(Composition composition) {
    List<Element> body = composition.phrases().get(edit.phrase()).elements();
    boolean quiet = body.subList(edit.from(), edit.to()).stream().allMatch(Omission::isQuiet);
    boolean karvaiHangs =
        edit.elements().isEmpty()
            && !quiet
            && edit.to() < body.size()
            && body.get(edit.to()) instanceof Element.Karvai;
    return !karvaiHangs && !Threefold.isSpoiled(body, edit.from(), edit.to());
  }

  private static Optional<Omission> run(
      Composition composition, String phrase, int from, int matras) {
    List<Element> body = composition.phrases().get(phrase).elements();
    Ratio sum = Ratio.ZERO;
    for (int to = from; to < body.size(); to++) {
      if (body.get(to) instanceof Element.Timeless) {
        return Optional.empty();
      }
      Length length = Length.of(Sequence.of(body.get(to)), composition.phrases());
      sum = sum.plus(length.matras());
      if (length.innerBeats().signum() != 0 || sum.compareTo(Ratio.of(matras)) > 0) {
        return Optional.empty();
      }
      if (sum.equals(Ratio.of(matras)) && isSomethingLeft(body, from, to + 1)) {
        List<Element> run = body.subList(from, to + 1);
        Edit.Splice edit = new Edit.Splice(phrase, from, to + 1, List.of());
        return Optional.of(
            new Omission(edit, words(body, from, to + 1), harm(run, endsThePhrase(body, to + 1))));
      }
    }
    return Optional.empty();
  }

  private static String words(List<Element> body, int from, int to) {
    List<Element> run = body.subList(from, to);
    if (from == 0 || !run.stream().allMatch(Omission::isQuiet)) {
      return "leave out " + ElementWords.of(run);
    }
    return endsThePhrase(body, to)
        ? "leave out the karvai at its end"
        : "leave out the karvai after " + ElementWords.of(body.get(from - 1));
  }

  private static boolean isSomethingLeft(List<Element> body, int from, int to) {
    return Stream.concat(body.subList(0, from).stream(), body.subList(to, body.size()).stream())
        .anyMatch(element -> !(element instanceof Element.Timeless));
  }

  private static boolean endsThePhrase(List<Element> body, int to) {
    return body.subList(to, body.size()).stream().allMatch(Element.Timeless.class::isInstance);
  }

  private static int harm(List<Element> run, boolean endsThePhrase) {
    if (run.stream().allMatch(Omission::isQuiet)) {
      return endsThePhrase ? 0 : OTHER_KARVAI;
    }
    int harm = run.size() == 1 ? ONE_WORD : SEVERAL + run.size();
    return run.stream().allMatch(e -> isQuiet(e) || e instanceof Element.Word)
        ? harm
        : harm + WHOLE_PHRASE;
  }

  private static boolean isQuiet(Element element) {
    return element instanceof Element.Karvai || element instanceof Element.Silence;
  }

  private static Optional<Omission> shorter(
      Composition composition, String phrase, int at, int matras, Lexicon lexicon) {
    Element element = composition.phrases().get(phrase).elements().get(at);
    if (element instanceof Element.Karvai karvai && karvai.matras() > matras) {
      Element now = new Element.Karvai(karvai.matras() - matras);
      return Optional.of(replaced(phrase, at, element, now, OTHER_KARVAI));
    } else if (element instanceof Element.Group g && g.karvai() >= matras) {
      Element now = g.ringing(g.karvai() - matras);
      return Optional.of(replaced(phrase, at, element, now, OTHER_KARVAI));
    } else if (element instanceof Element.Group g && g.hold() == 1 && g.size() > matras) {
      int size = g.size() - matras;
      Element now = composition.wording().group(size, 1, g.karvai(), lexicon);
      return Optional.of(replaced(phrase, at, element, now, SHORTER_GROUP));
    } else if (element instanceof Element.Word word && word.sollus().size() > matras) {
      List<Sollu> kept = word.sollus().subList(0, word.sollus().size() - matras);
      String written = kept.stream().map(Sollu::spelling).collect(Collectors.joining());
      return Optional.of(replaced(phrase, at, element, new Element.Word(written, kept), CUT_WORD));
    }
    return Optional.empty();
  }

  private static Omission replaced(String phrase, int at, Element was, Element now, int harm) {
    String words = ElementWords.of(now) + " for " + ElementWords.of(was);
    return new Omission(new Edit.Splice(phrase, at, at + 1, List.of(now)), words, harm);
  }
}
