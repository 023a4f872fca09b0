package org.matraloom.sheet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.matraloom.score.Performance;
import org.matraloom.script.Script;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The files of the drawn page: well formed, whole, the same every time, and small. */
class PageFilesTest {

  private static final int MOST_BYTES = 200_000;

  @Test
  void aPdfPointsToEachOfItsObjects() throws IOException {
    byte[] pdf = pdf("gutter-song", Script.LATIN);
    String text = new String(pdf, StandardCharsets.ISO_8859_1);
    assertTrue(text.startsWith("%PDF-1.5"));
    Matcher end = Pattern.compile("startxref\n(\\d+)\n%%EOF\n$").matcher(text);
    assertTrue(end.find());
    int table = Integer.parseInt(end.group(1));
    assertTrue(text.startsWith("xref\n", table));
    Matcher entry = Pattern.compile("(\\d{10}) 00000 n ").matcher(text.substring(table));
    int number = 0;
    while (entry.find()) {
      number++;
      assertTrue(text.startsWith(number + " 0 obj\n", Integer.parseInt(entry.group(1))));
    }
    assertTrue(number > 50, "objects were found: " + number);
    assertTrue(pdf.length < MOST_BYTES, "bytes: " + pdf.length);
  }

  @Test
  void theSameSheetGivesTheSameBytes() throws IOException {
    assertArrayEquals(pdf("reed-bed", Script.TELUGU), pdf("reed-bed", Script.TELUGU));
    assertEquals(svg("reed-bed"), svg("reed-bed"));
  }

  @Test
  void anSvgIsWellFormedAndDrawsOnlyWhatItDefines() throws Exception {
    String svg = svg("gutter-song");
    Document document =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    Set<String> defined = new HashSet<>();
    NodeList all = document.getElementsByTagName("*");
    for (int index = 0; index < all.getLength(); index++) {
      Element element = (Element) all.item(index);
      defined.add("#" + element.getAttribute("id"));
    }
    NodeList uses = document.getElementsByTagName("use");
    assertTrue(uses.getLength() > 200, "letterings were drawn: " + uses.getLength());
    for (int index = 0; index < uses.getLength(); index++) {
      Element use = (Element) uses.item(index);
      assertTrue(defined.contains(use.getAttribute("xlink:href")));
    }
    assertTrue(svg.length() < MOST_BYTES, "bytes: " + svg.length());
  }

  @Test
  void aTitleFromTheScoreCannotBreakOutOfItsPlace() throws IOException {
    Sheet sheet =
        Sheets.plain(
            Sheets.score("title <script>alert(1)</script> & \"rain\"\ntala adi\nA = ta\n"));
    StringBuilder html = new StringBuilder();
    HtmlSheet.write(sheet, html);
    assertFalse(html.toString().contains("<script>alert"));
    assertTrue(html.toString().contains("&lt;script&gt;alert(1)&lt;/script&gt; &amp; &quot;rain"));
  }

  @Test
  void anHtmlSheetFetchesNothing() throws IOException {
    for (Script script : Script.values()) {
      StringBuilder html = new StringBuilder();
      Performance performance = Performance.of(Sheets.sample("gutter-song"));
      HtmlSheet.write(Sheets.of(performance, script, SheetOptions.Lines.AVARTANA), html);
      assertFalse(
          Pattern.compile("(?:src|href)\\s*=\\s*\"(?!#)|url\\((?!data:)|@import|https?:")
              .matcher(html)
              .find(),
          script.word());
    }
  }

  private static byte[] pdf(String name, Script script) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Performance performance = Performance.of(Sheets.sample(name));
    PdfPages.write(Sheets.of(performance, script, SheetOptions.Lines.AVARTANA), out);
    return out.toByteArray();
  }

  private static String svg(String name) throws IOException {
    StringBuilder out = new StringBuilder();
    SvgPages.of(Sheets.plain(Sheets.sample(name))).write(1, out);
    return out.toString();
  }
}
