package org.matraloom.picture;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.TextAttribute;
import java.awt.font.TextLayout;
import java.awt.geom.Area;
import java.awt.geom.PathIterator;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The letters of the drawn page: Noto Sans and its sisters for the Indian scripts, shaped by the
 * platform's text layout and kept as outlines.
 *
 * <p>Outlines look the same everywhere and need no font where the page is read. Letters of a script
 * for which there is no font here are left to the fonts of the machine.
 */
public final class Typeface {

  /** Units of an outline to the type size. */
  public static final int UNITS = 1000;

  /** How much wider a stem of a heavier letter is. */
  private static final float PEN_UNITS = 44;

  private static final String LATIN = "LATIN";
  private static final Map<String, String> FONT_OF_SCRIPT =
      Map.of(
          LATIN,
          "NotoSans-Regular-latin",
          "TAMIL",
          "NotoSansTamil-Regular",
          "KANNADA",
          "NotoSansKannada-Regular",
          "TELUGU",
          "NotoSansTelugu-Regular",
          "MALAYALAM",
          "NotoSansMalayalam-Regular",
          "DEVANAGARI",
          "NotoSansDevanagari-Regular");
  private static final Map<TextAttribute, Integer> KERNED =
      Map.of(TextAttribute.KERNING, TextAttribute.KERNING_ON);
  private static final String BOLD_LATIN = "NotoSans-Bold-latin";

  private final FontRenderContext context = new FontRenderContext(null, true, true);
  private final Map<String, Font> fonts = new HashMap<>();
  private final Map<String, Lettering> regular = new HashMap<>();
  private final Map<String, Lettering> bold = new HashMap<>();
  private final List<Lettering> all = new ArrayList<>();

  /**
   * The lettering of a text; asked for again, the same one.
   *
   * @param text the text, in any script there is a font for
   * @param isBold whether its strokes are heavy
   * @return the lettering
   */
  public Lettering lettering(String text, boolean isBold) {
    return (isBold ? bold : regular).computeIfAbsent(text, key -> draw(key, isBold));
  }

  /** Every lettering made so far, in the order of its numbers. */
  List<Lettering> letterings() {
    return List.copyOf(all);
  }

  /**
   * The bytes of the font for a script by its Unicode name, for pages that carry it along.
   *
   * @param script the name of the script in Unicode, such as TAMIL
   * @return a TrueType file
   */
  public static byte[] fontFile(String script) {
    return bytes(FONT_OF_SCRIPT.getOrDefault(script, FONT_OF_SCRIPT.get(LATIN)));
  }

  private Lettering draw(String text, boolean isBold) {
    List<Lettering.Stroke> outline = new ArrayList<>();
    double advance = 0;
    int from = 0;
    while (from < text.length()) {
      String script = scriptAt(text, from);
      int to = from;
      while (to < text.length() && scriptAt(text, to).equals(script)) {
        to += Character.charCount(text.codePointAt(to));
      }
      String run = text.substring(from, to);
      if (!run.isBlank()) {
        TextLayout layout = new TextLayout(run, font(script, isBold, run), context);
        Shape shape = layout.getOutline(null);
        trace(isBold && !script.equals(LATIN) ? heavier(shape) : shape, advance, outline);
      }
      advance += advanceOf(run, font(script, isBold, run));
      from = to;
    }
    Lettering lettering = new Lettering(all.size(), text, advance, outline);
    all.add(lettering);
    return lettering;
  }

  /** Letters of a script whose bold is not in the program, drawn with a wider pen. */
  private static Shape heavier(Shape letters) {
    Area heavier = new Area(letters);
    BasicStroke pen = new BasicStroke(PEN_UNITS, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    heavier.add(new Area(pen.createStrokedShape(letters)));
    return heavier;
  }

  private double advanceOf(String run, Font font) {
    return new TextLayout(run, font, context).getAdvance();
  }

  /** The script of a letter; signs that all scripts share go with the letter before them. */
  private static String scriptAt(String text, int index) {
    int at = index;
    while (true) {
      Character.UnicodeScript script = Character.UnicodeScript.of(text.codePointAt(at));
      boolean joins = script == Character.UnicodeScript.INHERITED;
      if (!joins || at == 0) {
        return FONT_OF_SCRIPT.containsKey(script.name()) || isForeign(script)
            ? script.name()
            : LATIN;
      }
      at -= Character.charCount(text.codePointBefore(at));
    }
  }

  private static boolean isForeign(Character.UnicodeScript script) {
    return script != Character.UnicodeScript.COMMON
        && script != Character.UnicodeScript.INHERITED
        && script != Character.UnicodeScript.UNKNOWN;
  }

  private Font font(String script, boolean isBold, String run) {
    boolean latin = script.equals(LATIN);
    String file = latin && isBold ? BOLD_LATIN : FONT_OF_SCRIPT.get(script);
    Font own = fonts.computeIfAbsent(file == null ? script : file, name -> load(file));
    return own.canDisplayUpTo(run) < 0 ? own : new Font(Font.SANS_SERIF, Font.PLAIN, UNITS);
  }

  private static Font load(String file) {
    if (file == null) {
      return new Font(Font.SANS_SERIF, Font.PLAIN, UNITS);
    }
    try {
      Font font = Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(bytes(file)));
      return font.deriveFont(KERNED).deriveFont((float) UNITS);
    } catch (FontFormatException | IOException e) {
      throw new IllegalStateException("the font " + file + " of the program is damaged", e);
    }
  }

  private static byte[] bytes(String file) {
    try (InputStream in = Typeface.class.getResourceAsStream("fonts/" + file + ".ttf")) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException("the font " + file + " of the program cannot be read", e);
    }
  }

  private static void trace(Shape shape, double dx, List<Lettering.Stroke> strokes) {
    double[] p = new double[6];
    for (PathIterator path = shape.getPathIterator(null); !path.isDone(); path.next()) {
      int kind = path.currentSegment(p);
      int x1 = units(p[0] + dx);
      int y1 = units(p[1]);
      int x2 = units(p[2] + dx);
      int y2 = units(p[3]);
      strokes.add(
          switch (kind) {
            case PathIterator.SEG_MOVETO -> new Lettering.Stroke.Move(x1, y1);
            case PathIterator.SEG_LINETO -> new Lettering.Stroke.Line(x1, y1);
            case PathIterator.SEG_QUADTO -> new Lettering.Stroke.Bend(x1, y1, x2, y2);
            case PathIterator.SEG_CUBICTO ->
                new Lettering.Stroke.Curve(x1, y1, x2, y2, units(p[4] + dx), units(p[5]));
            default -> new Lettering.Stroke.Close();
          });
    }
  }

  private static int units(double value) {
    return (int) Math.round(value);
  }
}
