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
 * words written side by side make a line up to the next karvai or silence. A mora is one statement
 * three times with equal karvais, however it is written; the uttaranga is the one that ends the
 * phrase, if there is one. Korvai = purvanga, often of a yati shape, + uttaranga (Balaji, "Yatis as
 * Purvanga of Korvai").
 *
 * @param phrase the name of the phrase
 * @param parts lines and moras in order
 */
public record Structure(String phrase, List<Part> parts) {

  private static final int TIMES = 3;

  /**
   * Lines side by side, or a mora.
   *
   * @param mora what it is called; empty for plain lines
   * @param ends whether it is a mora that ends the phrase
   * @param lines its lines, at least one
   */
  public record Part(String mora, boolean ends, List<Line> lines) {
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
    List<List<Element>> lines = PhraseLines.named(composition, phrase);
    Moras moras = new Moras(composition);
    List<Part> parts = new ArrayList<>();
    List<Line> plain = new ArrayList<>();
    int at = 0;
    while (at < lines.size()) {
      Optional<Mora> mora = moras.at(lines, at);
      int end = at + mora.map(Mora::lines).orElse(1);
      List<Line> these =
          lines.subList(at, end).stream().map(line -> line(composition, line, nadai)).toList();
      if (mora.isEmpty()) {
        plain.addAll(these);
      } else {
        addPlain(plain, parts);
        parts.add(new Part(mora.get().words(), end == lines.size(), these));
      }
      at = end;
    }
    addPlain(plain, parts);
    return new Structure(phrase, parts);
  }

  private static void addPlain(List<Line> plain, List<Part> parts) {
    if (!plain.isEmpty()) {
      parts.add(new Part("", false, plain));
      plain.clear();
    }
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

  private static Line line(Composition composition, List<Element> line, int nadai) {
    Length length = Length.of(new Sequence(line), composition.phrases());
    Ratio matras = length.beats(nadai, 1).times(nadai);
    int times =
        line.get(0) instanceof Element.Repeat repeat && line.size() == 1 ? repeat.times() : 1;
    return new Line(ElementWords.of(line), times, matras.dividedBy(times));
  }
}
