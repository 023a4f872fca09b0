package org.matraloom.sheet;

import java.util.List;

/**
 * The measures of a drawn page, in points.
 *
 * <p>A4 upright with 15 mm margins and 20 mm at the binder's side. The large form keeps to the
 * rules of clear print (UKAAF G003): 18 point for every word, no underlines.
 *
 * @param large whether speed is shown by a box and karvai by a square
 * @param body type size of sollus
 * @param label type size of headings, sums and notes
 * @param title type size of the title
 * @param sign size of a kriya
 * @param numberColumn width left of the beats, for the number of the avartana
 * @param sumColumn width right of the beats; 0 where sums stand below
 * @param lineGap space under a line of beats
 */
record PageStyle(
    boolean large,
    double body,
    double label,
    double title,
    double sign,
    double numberColumn,
    double sumColumn,
    double lineGap) {

  static final double WIDTH = 595.28;
  static final double HEIGHT = 841.89;
  static final double LEFT = 56.69;
  static final double RIGHT = 42.52;
  static final double TOP = 42.52;
  static final double BOTTOM = 42.52;

  private static final double USUAL_BODY = 12;
  private static final List<Double> DENSER = List.of(USUAL_BODY, 10.0, 8.5);
  private static final double A_LITTLE_SMALLER = 0.93;
  private static final double ASCENT = 0.8;
  private static final double DESCENT = 0.32;

  static PageStyle of(boolean large) {
    return large
        ? new PageStyle(true, 18, 18, 24, 22, 30, 0, 12)
        : new PageStyle(false, 12, 10, 19, 11.5, 20, 70, 6);
  }

  /** The style of a line that has the whole width to itself, on a screen. */
  static PageStyle screen(double body) {
    return new PageStyle(false, body, body * 0.8, body, body * 0.96, 0, 0, 0);
  }

  /** This style and those with smaller letters for sollus, for rows that are dense. */
  List<PageStyle> denser() {
    return large
        ? List.of(this)
        : DENSER.stream()
            .map(
                size ->
                    new PageStyle(
                        false,
                        body * size / USUAL_BODY,
                        label,
                        title,
                        sign,
                        numberColumn,
                        sumColumn,
                        lineGap))
            .toList();
  }

  /**
   * This style, those with less space under a line and one that is a little smaller in all, for
   * pieces that nearly fit their pages; the letters of large print stay as they are.
   */
  List<PageStyle> tighter() {
    return large
        ? List.of(this, scaled(1, 0.6), scaled(1, 0.2))
        : List.of(this, scaled(1, 0.6), scaled(1, 0.2), scaled(A_LITTLE_SMALLER, 0.2));
  }

  private PageStyle scaled(double size, double gap) {
    return new PageStyle(
        large,
        body * size,
        label * size,
        title,
        sign * size,
        numberColumn,
        sumColumn,
        lineGap * gap);
  }

  /** This style without room for sums, for lines that stand under one another. */
  PageStyle aligned() {
    return new PageStyle(large, body, label, title, sign, numberColumn, 0, large ? 6 : 3);
  }

  /** Whether lines stand under one another, so that beats are as wide in all of them. */
  boolean isAligned() {
    return !large && sumColumn == 0;
  }

  /** Type size of what stands above a row. */
  double tag() {
    return large ? body : label * 0.75;
  }

  /** The height of the strip above a line that holds names, figures and brackets. */
  double lane() {
    return tag() + (large ? 6 : 3);
  }

  /** From the top of that strip to the brackets, whose hooks end above the signs of the hand. */
  double bracketTop() {
    return lane() - (large ? 4 : 2);
  }

  /** Space under a line whose next line may have a strip above it. */
  double taggedGap() {
    return large ? lineGap : lineGap / 2;
  }

  double textWidth() {
    return WIDTH - LEFT - RIGHT;
  }

  double gridWidth() {
    return textWidth() - numberColumn - sumColumn;
  }

  /** From the top of a line of beats to the top of its letters. */
  double lettersTop() {
    return sign + body * (large ? 0.35 : 0.25);
  }

  /** From the top of a line of beats to the base line of its sollus. */
  double baseLine() {
    return lettersTop() + body * ASCENT;
  }

  /** From the top of a line of beats to its lower edge. */
  double lineHeight() {
    return baseLine() + body * DESCENT + (large ? 4 : 1);
  }

  double cellPadding() {
    return body * 0.4;
  }

  /** Room before a mark for the thick stem at which a round begins inside a beat. */
  double stemRoom() {
    return body * 0.4;
  }

  double markGap() {
    return body * 0.28;
  }
}
