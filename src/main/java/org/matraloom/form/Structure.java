package org.matraloom.form;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.matraloom.score.Composition;
import org.matraloom.score.Element;
import org.matraloom.score.Length;
import org.matraloom.score.Sequence;
import org.matraloom.time.Ratio;

/**
 * The parts of a phrase as they show in its text: lines, purvanga and uttaranga.
 *
 * <p>A named phrase, a repeat, a passage in brackets and a kanakku group are lines of their own;
 * words written side by side make a line up to the next karvai or silence. A mora is one statement
 * three times with equal karvais, however it is written; the uttaranga is the one that ends the
 * phrase, if there is one. Moras inside a line are no parts. Korvai = purvanga, often of a yati
 * shape, + uttaranga (Balaji, "Yatis as Purvanga of Korvai").
 *
 * @param phrase the name of the phrase
 * @param parts lines and moras in order
 * @param joints what ends with each of its sollus
 */
public record Structure(String phrase, List<Part> parts, Joints joints) {

  private static final int TIMES = 3;

  /**
   * Lines side by side, or a mora.
   *
   * @param mora what it is called; empty for plain lines
   * @param written the statements of the mora; empty for plain lines
   * @param ends whether it is a mora that ends the phrase
   * @param lines its lines, at least one
   */
  public record Part(String mora, String written, boolean ends, List<Line> lines) {
    /** Copies the list. */
    public Part {
      lines = List.copyOf(lines);
    }

    /**
     * Whether it is a mora.
     *
     * @return false for plain lines
     */
    public boolean isMora() {
      return !mora.isEmpty();
    }
  }

  /**
   * One line.
   *
   * @param text the line as it is written in the score
   * @param times how often it is said
   * @param matrasEach its length each time; a passage with a nadai of its own is counted in the
   *     nadai of the round
   * @param end the sollu of the phrase after its last one, counted from 0
   */
  public record Line(String text, int times, Ratio matrasEach, int end) {
    /**
     * The length of all times together.
     *
     * @return matras
     */
    public Ratio matras() {
      return matrasEach.times(times);
    }
  }

  /** Copies the list. */
  public Structure {
    parts = List.copyOf(parts);
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
    Joints joints = Joints.of(composition, phrase, nadai);
    List<Line> lines = new ArrayList<>();
    int sollus = 0;
    List<List<Element>> written = PhraseLines.named(composition, phrase);
    for (List<Element> line : written) {
      Length length = Length.of(new Sequence(line), composition.phrases());
      Ratio matras = length.beats(nadai, 1).times(nadai);
      int times =
          line.get(0) instanceof Element.Repeat repeat && line.size() == 1 ? repeat.times() : 1;
      sollus += line.stream().mapToInt(element -> sollus(element, composition)).sum();
      lines.add(new Line(ElementWords.of(line), times, matras.dividedBy(times), sollus));
    }
    return new Structure(phrase, parts(lines, written, joints, composition), joints);
  }

  /** How many sollus are said; a group of an ending has fewer of them than outside one. */
  private static int sollus(Element element, Composition composition) {
    return element instanceof Element.Group group
        ? group.sollus().size()
        : Math.toIntExact(Length.of(Sequence.of(element), composition.phrases()).sollus());
  }

  private static List<Part> parts(
      List<Line> lines, List<List<Element>> written, Joints joints, Composition composition) {
    List<Part> parts = new ArrayList<>();
    List<Line> plain = new ArrayList<>();
    int at = 0;
    while (at < lines.size()) {
      LineMora found = LineMora.at(lines, written, at, joints, composition);
      if (found.lines() == 0) {
        plain.add(lines.get(at));
        at++;
      } else {
        addPlain(plain, parts);
        int end = at + found.lines();
        List<Line> these = lines.subList(at, end);
        parts.add(new Part(found.name(), found.written(), end == lines.size(), these));
        at = end;
      }
    }
    addPlain(plain, parts);
    return parts;
  }

  private static void addPlain(List<Line> plain, List<Part> parts) {
    if (!plain.isEmpty()) {
      parts.add(new Part("", "", false, plain));
      plain.clear();
    }
  }

  /**
   * What ends with a line.
   *
   * @param line a line of this phrase
   * @return the joint; empty if the phrase goes on, or ends there
   */
  public Optional<Joint> jointAfter(Line line) {
    return line.end() == 0 || line.end() == joints.sollus()
        ? Optional.empty()
        : Optional.of(joints.after(line.end() - 1)).filter(joint -> joint != Joint.INSIDE);
  }

  /**
   * The joints at which no line ends.
   *
   * @return the sollus before them, counted from 0
   */
  public List<Integer> jointsInsideLines() {
    Set<Integer> ends = new HashSet<>();
    parts.forEach(part -> part.lines().forEach(line -> ends.add(line.end())));
    return IntStream.range(0, joints.sollus())
        .filter(sollu -> joints.after(sollu) != Joint.INSIDE && !ends.contains(sollu + 1))
        .boxed()
        .toList();
  }

  /**
   * The moras that lie inside plain lines.
   *
   * @return in order, those that hold others before these
   */
  public List<Mora> morasInsideLines() {
    List<Mora> inside = new ArrayList<>();
    int start = 0;
    for (Part part : parts) {
      for (Line line : part.lines()) {
        int from = start;
        joints.moras().stream()
            .filter(mora -> !part.isMora() && mora.start() >= from && mora.end() <= line.end())
            .forEach(inside::add);
        start = line.end();
      }
    }
    return inside;
  }

  /**
   * What comes before the uttaranga.
   *
   * @return lines and moras, possibly none
   */
  public List<Part> purvanga() {
    return parts.stream().filter(part -> !part.ends()).toList();
  }

  /**
   * The mora that ends the phrase.
   *
   * @return the mora; empty if the phrase ends otherwise
   */
  public Optional<Part> uttaranga() {
    return parts.stream().filter(Part::ends).findFirst();
  }

  /**
   * The shape of the plain lines of the purvanga; a mora in the middle has no part in it.
   *
   * @return its yati
   */
  public Yati yati() {
    return Yati.of(lengths());
  }

  /**
   * The steps between the plain lines of the purvanga.
   *
   * @return the steps
   */
  public YatiSteps steps() {
    return YatiSteps.of(lengths());
  }

  /**
   * The length of some parts together.
   *
   * @param parts parts of this phrase
   * @return matras
   */
  public static Ratio matras(List<Part> parts) {
    return parts.stream()
        .flatMap(part -> part.lines().stream())
        .map(Line::matras)
        .reduce(Ratio.ZERO, Ratio::plus);
  }

  /** The lengths for a shape; more than three equal neighbours say no more than three. */
  private List<Ratio> lengths() {
    List<Ratio> lengths = new ArrayList<>();
    for (Part part : purvanga()) {
      for (Line line : part.isMora() ? List.<Line>of() : part.lines()) {
        lengths.addAll(Collections.nCopies(Math.min(line.times(), TIMES), line.matrasEach()));
      }
    }
    return lengths;
  }
}
