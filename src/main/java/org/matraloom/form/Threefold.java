package org.matraloom.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.score.Element;

/**
 * A statement said three times with equal karvais between, as it stands in a phrase.
 *
 * @param from the element of the phrase with which it begins
 * @param statement what is said, without its karvai
 * @param karvai the karvai after the first and the second time, in matras
 * @param lastKarvai a karvai that a kanakku group carries after the third time
 * @param elements how many elements of the phrase it takes up
 */
public record Threefold(int from, Element statement, int karvai, int lastKarvai, int elements) {

  private static final int TIMES = 3;

  /**
   * The threefold statement that ends a phrase, but for bars and a karvai, if there is one.
   *
   * @param body the elements of the phrase
   * @return the statement; empty if the phrase ends otherwise
   */
  public static Optional<Threefold> ending(List<Element> body) {
    for (int from = body.size() - TIMES; from >= 0; from--) {
      Optional<Threefold> found = at(body, from);
      if (found.isPresent()) {
        int to = from + found.get().elements();
        boolean ends =
            body.subList(to, body.size()).stream()
                .allMatch(rest -> isKarvai(rest) || rest instanceof Element.Timeless);
        return ends ? found : Optional.empty();
      }
    }
    return Optional.empty();
  }

  /**
   * Whether a change of some elements alone would spoil a form: one of three equal statements with
   * equal karvais, or of three groups that grow or shrink around equal karvais.
   *
   * @param body the elements of the phrase
   * @param from the first element that is changed
   * @param to the element after the last one that is changed
   * @return true if such a form holds one of these elements
   */
  public static boolean isSpoiled(List<Element> body, int from, int to) {
    for (int first = 0; first + TIMES <= body.size(); first++) {
      int equal = at(body, first).filter(f -> f.isForm(body)).map(Threefold::elements).orElse(0);
      int end = Math.max(equal, graded(body, first));
      if (first < to && from < first + end) {
        return true;
      }
    }
    return false;
  }

  /** Without karvai between them three are a form only where there are no more than three. */
  private boolean isForm(List<Element> body) {
    boolean before = from > 0 && bare(body.get(from - 1)).equals(statement);
    int end = from + elements;
    boolean after = end < body.size() && bare(body.get(end)).equals(statement);
    return karvai > 0 || !before && !after;
  }

  /** How many elements three groups with equal karvais, whatever their sizes, take up. */
  private static int graded(List<Element> body, int from) {
    boolean groups =
        body.subList(from, from + TIMES).stream().allMatch(Element.Group.class::isInstance);
    int karvai = ownKarvai(body.get(from));
    return groups && karvai > 0 && ownKarvai(body.get(from + 1)) == karvai ? TIMES : 0;
  }

  private static Optional<Threefold> at(List<Element> body, int from) {
    Element statement = bare(body.get(from));
    List<Integer> karvais = new ArrayList<>();
    int at = from;
    for (int time = 1; time <= TIMES; time++) {
      if (at >= body.size() || isKarvai(body.get(at)) || !bare(body.get(at)).equals(statement)) {
        return Optional.empty();
      }
      int karvai = ownKarvai(body.get(at));
      at++;
      while (time < TIMES && at < body.size() && isInGap(body.get(at))) {
        karvai += body.get(at) instanceof Element.Karvai rings ? rings.matras() : 0;
        at++;
      }
      karvais.add(karvai);
    }
    return karvais.get(0).equals(karvais.get(1)) && !(statement instanceof Element.Timeless)
        ? Optional.of(new Threefold(from, statement, karvais.get(0), karvais.get(2), at - from))
        : Optional.empty();
  }

  /**
   * Whether the statement is a kanakku group whose sollus last one matra each.
   *
   * @return whether it is one
   */
  public boolean isPlainGroup() {
    return statement instanceof Element.Group group && group.hold() == 1;
  }

  /**
   * How many sollus the group has that is said.
   *
   * @return sollus, at least 1
   */
  public int groupSize() {
    return ((Element.Group) statement).size();
  }

  /**
   * How long three such groups and the karvais between them are.
   *
   * @return matras
   */
  public int groupMatras() {
    return TIMES * groupSize() + 2 * karvai;
  }

  /**
   * The same karvais around another statement.
   *
   * @param other the statement to be said three times
   * @return the ending with it
   */
  public Threefold withStatement(Element other) {
    return new Threefold(from, other, karvai, lastKarvai, elements);
  }

  /**
   * The same statements with another karvai between them.
   *
   * @param matras how long each karvai is, 0 for none
   * @return the elements from the first statement to the last
   */
  public List<Element> withKarvai(int matras) {
    List<Element> said = new ArrayList<>();
    for (int time = 1; time <= TIMES; time++) {
      int karvai = time < TIMES ? matras : lastKarvai;
      if (statement instanceof Element.Group group) {
        said.add(group.ringing(karvai));
      } else {
        said.add(statement);
        for (int left = karvai; left > 0; left -= 2) {
          said.add(new Element.Karvai(Math.min(left, 2)));
        }
      }
    }
    return said;
  }

  private static boolean isKarvai(Element element) {
    return element instanceof Element.Karvai;
  }

  private static boolean isInGap(Element element) {
    return isKarvai(element) || element instanceof Element.BreathWish;
  }

  private static int ownKarvai(Element element) {
    return element instanceof Element.Group group ? group.karvai() : 0;
  }

  private static Element bare(Element element) {
    return element instanceof Element.Group group ? group.ringing(0) : element;
  }
}
