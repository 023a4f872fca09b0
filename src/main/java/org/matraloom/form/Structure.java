package org.matraloom.form;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.matraloom.score.Composition;
import org.matraloom.score.Element;
import org.matraloom.score.Length;
import org.matraloom.score.Sequence;
import org.matraloom.time.Ratio;

/**
 * The parts of a phrase as they show in its text: lines, purvanga and uttaranga.
 *
 * <p>A named phrase, a repeat, a passage in brackets and a kanakku group are lines of their own;
 * words written side by side make a line up to the next karvai or silence. The uttaranga is the
 * threefold ending, if there is one: one statement three times with equal karvais, however it is
 * written. Korvai = purvanga, often of a yati shape, + uttaranga (Balaji, "Yatis as Purvanga of
 * Korvai").
 *
 * @param phrase the name of the phrase
 * @param purvanga the lines before the uttaranga
 * @param uttaranga the lines of the threefold ending, possibly none
 */
public record Structure(String phrase, List<Line> purvanga, List<Line> uttaranga) {

  private static final int TIMES = 3;

  /**
   * One line.
   *
   * @param text the line as it is written in the score
   * @param times how often it is said
   * @param matrasEach its length each time; a passage with a nadai of its own is counted in the
   *     nadai of the round
   */
  public record Line(String text, int times, Ratio matrasEach) {
    /**
     * The length of all times together.
     *
     * @return matras
     */
    public Ratio matras() {
      return matrasEach.times(times);
    }
  }

  /** Copies the lists. */
  public Structure {
    purvanga = List.copyOf(purvanga);
    uttaranga = List.copyOf(uttaranga);
  }

  /**
   * Finds the parts of a phrase.
   *
   * @param composition the piece
   * @param phrase the name of one of its phrases
   * @param nadai the nadai in which passages with a nadai of their own are counted
   * @return its parts
   */
  public static Structure of(Composition composition, String phrase, int nadai) {
    List<List<Element>> lines = lines(unwrapped(composition, phrase));
    int ending = lines.size() - endingLines(composition, lines);
    List<Line> all = lines.stream().map(line -> line(composition, line, nadai)).toList();
    return new Structure(phrase, all.subList(0, ending), all.subList(ending, all.size()));
  }

  /**
   * The shape of the purvanga.
   *
   * @return its yati
   */
  public Yati yati() {
    return Yati.of(lengths(purvanga));
  }

  /**
   * The steps between the lines of the purvanga.
   *
   * @return the steps
   */
  public YatiSteps steps() {
    return YatiSteps.of(lengths(purvanga));
  }

  /**
   * The length of some lines together.
   *
   * @param lines lines of this phrase
   * @return matras
   */
  public static Ratio matras(List<Line> lines) {
    return lines.stream().map(Line::matras).reduce(Ratio.ZERO, Ratio::plus);
  }

  /** The lengths for a shape; more than three equal neighbours say no more than three. */
  private static List<Ratio> lengths(List<Line> lines) {
    List<Ratio> lengths = new ArrayList<>();
    for (Line line : lines) {
      lengths.addAll(Collections.nCopies(Math.min(line.times(), TIMES), line.matrasEach()));
    }
    return lengths;
  }

  private static Line line(Composition composition, List<Element> line, int nadai) {
    Length length = Length.of(new Sequence(line), composition.phrases());
    Ratio matras = length.beats(nadai, 1).times(nadai);
    int times =
        line.get(0) instanceof Element.Repeat repeat && line.size() == 1 ? repeat.times() : 1;
    return new Line(ElementWords.of(line), times, matras.dividedBy(times));
  }

  private static List<Element> unwrapped(Composition composition, String phrase) {
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
    return body;
  }

  private static List<List<Element>> lines(List<Element> body) {
    List<List<Element>> lines = new ArrayList<>();
    List<Element> open = new ArrayList<>();
    boolean quiet = false;
    for (Element element : body) {
      boolean isQuiet = element instanceof Element.Karvai || element instanceof Element.Silence;
      if (element instanceof Element.Timeless) {
        continue;
      }
      boolean word = element instanceof Element.Word;
      if (!isQuiet && (quiet || !word) && !open.isEmpty()) {
        lines.add(List.copyOf(open));
        open.clear();
      }
      open.add(element);
      quiet = isQuiet || !word;
    }
    if (!open.isEmpty()) {
      lines.add(List.copyOf(open));
    }
    return lines;
  }

  /** How many lines at the end belong to a threefold ending: 0, 1 or 3. */
  private static int endingLines(Composition composition, List<List<Element>> lines) {
    if (lines.isEmpty()) {
      return 0;
    }
    List<Element> last = lines.get(lines.size() - 1);
    if (last.size() == 1 && saysThreeTimes(composition, last.get(0))) {
      return 1;
    }
    if (lines.size() < TIMES) {
      return 0;
    }
    List<Element> tail = new ArrayList<>();
    lines.subList(lines.size() - TIMES, lines.size()).forEach(tail::addAll);
    int before = lines.size() - TIMES - 1;
    boolean oftener = before >= 0 && lines.get(before).equals(lines.get(before + 1));
    return !oftener && isThreefold(tail) ? TIMES : 0;
  }

  private static boolean saysThreeTimes(Composition composition, Element element) {
    if (element instanceof Element.Repeat repeat) {
      return repeat.times() == TIMES;
    }
    if (element instanceof Element.Reference reference) {
      List<Element> body = unwrapped(composition, reference.name());
      return isThreefold(body) || body.size() == 1 && saysThreeTimes(composition, body.get(0));
    }
    return false;
  }

  private static boolean isThreefold(List<Element> elements) {
    List<Element> said = elements.stream().filter(e -> !(e instanceof Element.Timeless)).toList();
    Optional<Threefold> ending = Threefold.ending(said);
    return ending.isPresent() && ending.get().from() == 0 || isGraded(said);
  }

  /** Three kanakku groups that grow or shrink by equal steps, with equal karvais. */
  private static boolean isGraded(List<Element> said) {
    if (said.size() != TIMES || !said.stream().allMatch(Element.Group.class::isInstance)) {
      return false;
    }
    List<Element.Group> groups = said.stream().map(Element.Group.class::cast).toList();
    int step = groups.get(1).size() - groups.get(0).size();
    return groups.get(0).karvai() > 0
        && groups.get(0).karvai() == groups.get(1).karvai()
        && groups.get(2).karvai() == 0
        && groups.get(2).size() - groups.get(1).size() == step;
  }
}
