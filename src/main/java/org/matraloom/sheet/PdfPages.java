package org.matraloom.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.matraloom.paper.Drawn;
import org.matraloom.paper.Figure;
import org.matraloom.paper.PdfCanvas;
import org.matraloom.picture.Lettering;
import org.matraloom.picture.PdfGlyph;
import org.matraloom.picture.PdfObjects;
import org.matraloom.picture.Points;
import org.matraloom.picture.Typeface;

/**
 * The sheet as a PDF file.
 *
 * <p>Letterings are the glyphs of Type 3 fonts (ISO 32000-1, 9.6.5): outlines that look the same
 * everywhere, each stored once, with their text beside them so that it can be searched and copied.
 * Nothing in the file tells when or where it was made: the same sheet gives the same bytes.
 */
public final class PdfPages {

  private final String title;
  private final List<List<Drawn>> pages;
  private final Map<Integer, Lettering> letterings = new LinkedHashMap<>();
  private final Map<Integer, Integer> glyphs = new LinkedHashMap<>();

  private PdfPages(String title, List<List<Drawn>> pages) {
    this.title = title;
    this.pages = pages;
    for (List<Drawn> page : pages) {
      for (Drawn drawn : page) {
        if (drawn instanceof Drawn.Text text) {
          letterings.putIfAbsent(text.lettering().number(), text.lettering());
          glyphs.putIfAbsent(text.lettering().number(), glyphs.size());
        }
      }
    }
  }

  /**
   * Writes a sheet.
   *
   * @param sheet what to write
   * @param out where the file goes
   * @throws IOException if it cannot be written
   */
  public static void write(Sheet sheet, OutputStream out) throws IOException {
    write(new SheetWords(sheet).title(), PageSetter.set(sheet, new Typeface()), out);
  }

  static void write(String title, List<List<Drawn>> pages, OutputStream out) throws IOException {
    new PdfPages(title, pages).write(out);
  }

  private void write(OutputStream out) throws IOException {
    PdfObjects objects = new PdfObjects(out);
    int catalog = objects.reserve();
    int tree = objects.reserve();
    int info = objects.reserve();
    List<Integer> fonts = fonts(objects);
    int resources = objects.reserve();
    StringBuilder fontNames = new StringBuilder();
    for (int font = 0; font < fonts.size(); font++) {
      fontNames.append("/F" + font + " " + fonts.get(font) + " 0 R ");
    }
    StringBuilder figures = new StringBuilder();
    for (Figure figure : Figure.values()) {
      String entries = "/Type /XObject /Subtype /Form /BBox [-2 -2 26 26] ";
      int form = objects.stream(entries, PdfCanvas.form(figure));
      figures.append("/" + figure + " " + form + " 0 R ");
    }
    objects.write(resources, "<< /Font << " + fontNames + ">> /XObject << " + figures + ">> >>");
    List<Integer> leaves = new ArrayList<>();
    for (List<Drawn> page : pages) {
      int content = objects.stream(content(page));
      int leaf = objects.reserve();
      objects.write(
          leaf,
          "<< /Type /Page /Parent "
              + tree
              + " 0 R /MediaBox [0 0 "
              + Points.text(PageStyle.WIDTH)
              + " "
              + Points.text(PageStyle.HEIGHT)
              + "] /Resources "
              + resources
              + " 0 R /Contents "
              + content
              + " 0 R >>");
      leaves.add(leaf);
    }
    StringBuilder kids = new StringBuilder();
    leaves.forEach(leaf -> kids.append(leaf).append(" 0 R "));
    objects.write(tree, "<< /Type /Pages /Count " + leaves.size() + " /Kids [" + kids + "] >>");
    objects.write(
        catalog,
        "<< /Type /Catalog /Pages "
            + tree
            + " 0 R /Lang (en) /ViewerPreferences << /DisplayDocTitle true >> >>");
    objects.write(info, "<< /Title " + PdfObjects.text(title) + " /Producer (Matraloom) >>");
    objects.finish(catalog, info);
  }

  private String content(List<Drawn> page) {
    PdfCanvas canvas = new PdfCanvas(PageStyle.HEIGHT, glyphs);
    StringBuilder operators = new StringBuilder();
    page.forEach(drawn -> operators.append(drawn.told(canvas)));
    return operators.toString();
  }

  private List<Integer> fonts(PdfObjects objects) throws IOException {
    List<Lettering> all = List.copyOf(letterings.values());
    List<Integer> fonts = new ArrayList<>();
    for (int from = 0; from < all.size(); from += PdfCanvas.GLYPHS_PER_FONT) {
      fonts.add(
          font(all.subList(from, Math.min(all.size(), from + PdfCanvas.GLYPHS_PER_FONT)), objects));
    }
    return fonts;
  }

  private static int font(List<Lettering> glyphs, PdfObjects objects) throws IOException {
    StringBuilder procedures = new StringBuilder();
    StringBuilder names = new StringBuilder();
    StringBuilder widths = new StringBuilder();
    StringBuilder texts = new StringBuilder();
    for (int index = 0; index < glyphs.size(); index++) {
      Lettering glyph = glyphs.get(index);
      int code = index + 1;
      int procedure = objects.stream(PdfGlyph.procedure(glyph));
      procedures.append("/g" + code + " " + procedure + " 0 R ");
      names.append("/g" + code + " ");
      widths.append(Math.round(glyph.advance()) + " ");
      texts.append(
          String.format("<%02X> <%s>%n", code, PdfObjects.utf16(glyph.text() + " "))
              .replace("\r", ""));
    }
    int unicode = objects.stream(toUnicode(texts.toString()));
    int font = objects.reserve();
    objects.write(
        font,
        "<< /Type /Font /Subtype /Type3 /FontBBox [0 0 0 0] /FontMatrix [0.001 0 0 0.001 0 0]"
            + " /FirstChar 1 /LastChar "
            + glyphs.size()
            + " /Widths ["
            + widths
            + "] /Encoding << /Type /Encoding /Differences [1 "
            + names
            + "] >> /CharProcs << "
            + procedures
            + ">> /ToUnicode "
            + unicode
            + " 0 R /Resources << >> >>");
    return font;
  }

  /** The table from codes to texts; at most 100 lines a block (Adobe technical note 5014). */
  private static String toUnicode(String lines) {
    List<String> all = lines.lines().toList();
    StringBuilder map =
        new StringBuilder(
            """
            /CIDInit /ProcSet findresource begin
            12 dict begin
            begincmap
            /CMapType 2 def
            /CMapName /Sollus def
            1 begincodespacerange
            <00> <FF>
            endcodespacerange
            """);
    for (int from = 0; from < all.size(); from += 100) {
      List<String> block = all.subList(from, Math.min(all.size(), from + 100));
      map.append(block.size() + " beginbfchar\n");
      map.append(String.join("\n", block)).append("\nendbfchar\n");
    }
    map.append("endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n");
    return map.toString();
  }
}
