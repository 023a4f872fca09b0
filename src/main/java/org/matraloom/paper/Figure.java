package org.matraloom.paper;

import java.util.List;
import org.matraloom.picture.Points;
import org.matraloom.score.Finger;
import org.matraloom.score.Kriya;

/**
 * The drawn signs of the page: what the hand does, where to breathe, where it lands.
 *
 * <p>Each is drawn in a square of {@value #BOX} units, y downwards. The counting hand is the
 * reader's own right hand seen from the palm: little finger left, thumb right, and the finger that
 * counts is filled.
 */
public enum Figure {
  /** Two palms that meet, with a splash above. */
  CLAP(
      List.of(
          new Part("M4 22 L4 14 C4 11 8 8 11 6 L11 22 Z", 0),
          new Part("M20 22 L20 14 C20 11 16 8 13 6 L13 22 Z", 0),
          new Part("M12 1 L12 4", 1.6),
          new Part("M5.5 3 L7.5 6", 1.6),
          new Part("M18.5 3 L16.5 6", 1.6))),
  /** The little finger counts. */
  LITTLE(hand(Finger.LITTLE)),
  /** The ring finger counts. */
  RING(hand(Finger.RING)),
  /** The middle finger counts. */
  MIDDLE(hand(Finger.MIDDLE)),
  /** The index finger counts. */
  INDEX(hand(Finger.INDEX)),
  /** The thumb counts. */
  THUMB(hand(Finger.THUMB)),
  /** Two waves of a river. */
  WAVE(
      List.of(
          new Part("M2 12 C5 4 9 4 12 10 C15 16 19 16 22 8", 2.6),
          new Part("M2 19 C5 13 9 13 12 17 C15 21 19 21 22 16", 1.4))),
  /** A still surface: the hand stays. */
  HOLD(List.of(new Part("M5 16 L19 16", 2))),
  /** Two dots: the same once more, as in two kalai. */
  AGAIN(List.of(new Part("M12 8 L12 8.01", 6), new Part("M12 18 L12 18.01", 6))),
  /** A raised tick: breathe here. */
  BREATH(List.of(new Part("M5 12 L10 18 L19 4", 3))),
  /** A drop: here it lands. */
  LANDING(
      List.of(
          new Part(
              "M12 2 C15 8 19 12 19 16 C19 20 16 23 12 23 C8 23 5 20 5 16 C5 12 9 8 12 2 Z", 0)));

  /** The side of the square it is drawn in. */
  public static final int BOX = 24;

  /**
   * A path of a figure in the words M, L, C and Z of SVG.
   *
   * @param path the path
   * @param width how wide its line is; 0 for a filled shape
   */
  public record Part(String path, double width) {}

  private final List<Part> parts;

  Figure(List<Part> parts) {
    this.parts = parts;
  }

  /**
   * Its paths as SVG, for a drawing in which its square is {@value #BOX} wide.
   *
   * @param colour of lines and shapes, as SVG writes it
   * @return elements of SVG
   */
  public String svg(String colour) {
    StringBuilder svg = new StringBuilder();
    for (Figure.Part part : parts) {
      svg.append("<path d=\"").append(part.path()).append('"');
      if (part.width() == 0) {
        svg.append(" fill=\"").append(colour).append("\"/>");
      } else {
        svg.append(" fill=\"none\" stroke=\"").append(colour);
        svg.append("\" stroke-width=\"").append(Points.text(part.width()));
        svg.append("\" stroke-linecap=\"round\" stroke-linejoin=\"round\"/>");
      }
    }
    return svg.toString();
  }

  /**
   * What it is made of.
   *
   * @return its paths, in the order of drawing
   */
  public List<Part> parts() {
    return parts;
  }

  /**
   * The sign of a kriya.
   *
   * @param kriya what the hand does
   * @return its sign
   */
  public static Figure of(Kriya kriya) {
    if (kriya instanceof Kriya.Clap) {
      return CLAP;
    } else if (kriya instanceof Kriya.Count count) {
      return valueOf(count.finger().name());
    }
    return kriya instanceof Kriya.Wave ? WAVE : HOLD;
  }

  private static List<Part> hand(Finger counting) {
    return List.of(
        finger(2.5, 8, counting == Finger.LITTLE),
        finger(7, 4, counting == Finger.RING),
        finger(11.5, 2, counting == Finger.MIDDLE),
        finger(16, 4, counting == Finger.INDEX),
        finger(20.5, 11, counting == Finger.THUMB));
  }

  /** A finger is a bar that is filled when it counts and an open line otherwise. */
  private static Part finger(double x, double top, boolean counting) {
    return new Part("M" + x + " 22 L" + x + " " + top, counting ? 4 : 1);
  }
}
