package org.matraloom.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.matraloom.paper.Drawn;
import org.matraloom.paper.Figure;
import org.matraloom.picture.Typeface;
import org.matraloom.score.Performance;
import org.matraloom.script.Script;

/** Names, figures, brackets and headings; dense rows; three speeds; booklets. */
class AboveTheRowsTest {

  private static final String SONG =
      "tala adi\ntempo 60\nstart beat 4\nFall = takadimi takita\nSong = Fall , 7(2)7(2)7 ,\n"
          + "perform\n Song x2 nadai 4\n";

  private static List<List<Drawn>> pages(Sheet sheet) {
    return PageSetter.set(sheet, new Typeface());
  }

  private static List<Drawn.Text> texts(Sheet sheet) {
    return pages(sheet).stream()
        .flatMap(List::stream)
        .filter(Drawn.Text.class::isInstance)
        .map(Drawn.Text.class::cast)
        .toList();
  }

  /** A fill-in counts, and three of five at the end are a mora (common practice). */
  @Test
  void wordsThatOnlyCountHaveNoBrackets() {
    for (String counted : List.of("(3) x12", "(4) x3", "(takadimi) x6", "(5) x6")) {
      assertEquals(0, statements("A = " + counted + "\n"), counted);
    }
    for (String mora : List.of("takadimi (5) x3", "4(1)4(1)4", "7 5 5 5")) {
      assertEquals(3, statements("A = " + mora + "\n"), mora);
    }
  }

  private static long statements(String phrase) {
    return TagReader.of(Performance.of(Sheets.score("tala adi\n" + phrase))).stream()
        .filter(tag -> tag.kind() == Row.Tag.Kind.STATEMENT)
        .count();
  }

  /** The last matra ends half a beat after the clap: the drop stands behind it, not at the next. */
  @Test
  void theDropStandsWhereThePieceEndsInsideABeat() throws IOException {
    String words = "Song = " + "takadimi takajunu ".repeat(4) + "\nperform\n Song nadai 4\n";
    List<String> inside =
        HtmlSheet.rowsApart(
            Sheets.plain(Sheets.score("tala adi\nstart +1/2\neduppu +1/2\n" + words)));
    assertTrue(
        inside.get(inside.size() - 1).contains("nu</span> <b class=\"land inside\">"),
        inside.get(inside.size() - 1));
    List<String> onTheBeat = HtmlSheet.rowsApart(Sheets.plain(Sheets.score("tala adi\n" + words)));
    String last = onTheBeat.get(onTheBeat.size() - 1);
    assertTrue(last.contains("</span><span class=\"land\">"), last);
  }

  @Test
  void aRoundThatNamesNoPhraseBearsItsOwnName() {
    Sheet sheet =
        Sheets.plain(
            Sheets.score(
                "tala adi\nSong = (takadimi) x8\nWhole = Song Song\n"
                    + "perform\n Song x2 nadai 4\n Whole nadai 8\n rest 2 beats\n Song nadai 4\n"));
    List<String> names =
        sheet.rows().stream()
            .flatMap(row -> row.tags().stream())
            .distinct()
            .map(tag -> tag.text() + " " + tag.from().toMixed() + " to " + tag.to().toMixed())
            .toList();
    assertEquals(
        List.of(
            "Song 32 0 to 8",
            "Song 32 8 to 16",
            "Song 32 16 to 20",
            "Song 32 20 to 24",
            "Song 32 26 to 34"),
        names);
  }

  /** By hand: Fall is 4 + 3 = 7 matras from beat 3; after a comma 7, 2, 7, 2, 7. */
  @Test
  void namesFiguresAndStatementsHaveTheirPlaces() {
    Sheet sheet = Sheets.plain(Sheets.score(SONG));
    List<String> first =
        sheet.rows().stream()
            .flatMap(row -> row.tags().stream())
            .distinct()
            .limit(7)
            .map(tag -> tag.text() + " " + tag.from().toMixed() + " to " + tag.to().toMixed())
            .toList();
    assertEquals(
        List.of(
            "Fall 7 3 to 4 3/4",
            "7 5 to 6 3/4",
            " 5 to 6 3/4",
            "7 7 1/4 to 9",
            " 7 1/4 to 9",
            "7 9 1/2 to 11 1/4",
            " 9 1/2 to 11 1/4"),
        first);
  }

  /** The heading stands above the beat, and a thick stem beside it, not at the head of the row. */
  @Test
  void aRoundThatBeginsInsideARowIsHeadedThere() {
    Sheet sheet = Sheets.plain(Sheets.score(SONG));
    List<List<Drawn>> pages = pages(sheet);
    List<Drawn.Text> headings =
        texts(sheet).stream().filter(text -> text.lettering().text().equals("Round")).toList();
    assertEquals(2, headings.size());
    for (Drawn.Text heading : headings) {
      assertTrue(heading.x() > PageStyle.LEFT + 20, "not at the margin: " + heading.x());
      boolean stem =
          pages.stream()
              .flatMap(List::stream)
              .anyMatch(
                  drawn ->
                      drawn instanceof Drawn.Rule rule
                          && rule.width() == 2.4
                          && rule.x1() > heading.x() - 6
                          && rule.x1() < PageStyle.WIDTH - PageStyle.RIGHT
                          && rule.y1() >= heading.y()
                          && rule.y1() < heading.y() + 10);
      assertTrue(stem, "a stem below " + heading.x());
    }
  }

  @Test
  void fiveDenseAvartanasNeverTakeThreePages() {
    for (String song :
        List.of(
            "([[takadimi takajunu takadimi takajunu]]) x40",
            "([takadimi takajunu takita takita]) x22 takita takita")) {
      Sheet sheet = Sheets.plain(Sheets.score("tala adi\nSong = " + song + "\n"));
      assertTrue(pages(sheet).size() <= 2, song + ": " + pages(sheet).size());
    }
  }

  @Test
  void aDenseBeatHasItsOwnWidth() {
    Sheet sheet =
        Sheets.plain(Sheets.score("tala adi\nSong = takadimi [takadimi takajunu] (takadimi) x6\n"));
    List<Drawn.Rule> upright =
        pages(sheet).get(0).stream()
            .filter(Drawn.Rule.class::isInstance)
            .map(Drawn.Rule.class::cast)
            .filter(rule -> rule.x1() == rule.x2() && rule.x1() > 76)
            .toList();
    double first = upright.stream().mapToDouble(Drawn.Rule::y1).min().orElseThrow();
    List<Double> bars =
        upright.stream()
            .filter(rule -> rule.y1() == first)
            .map(Drawn.Rule::x1)
            .distinct()
            .sorted()
            .toList();
    assertTrue(bars.size() >= 4, bars.toString());
    assertTrue(bars.get(2) - bars.get(1) > 1.3 * (bars.get(1) - bars.get(0)), bars.toString());
  }

  @ParameterizedTest
  @EnumSource(
      value = Script.class,
      names = {"LATIN", "TAMIL", "KANNADA", "TELUGU", "MALAYALAM", "DEVANAGARI"})
  void whatIsBoldIsHeavierInEveryScript(Script script) {
    Performance performance = Performance.of(Sheets.score(SONG));
    Sheet sheet = Sheets.of(performance, script, SheetOptions.Lines.AVARTANA);
    Typeface typeface = new Typeface();
    String first = ((Mark.Said) Sheets.marks(sheet).get(0)).text();
    assertNotEquals(
        typeface.lettering(first, false).outline(), typeface.lettering(first, true).outline());
    List<Drawn.Text> same =
        texts(sheet).stream().filter(text -> text.lettering().text().equals(first)).toList();
    long looks = same.stream().map(text -> text.lettering().outline()).distinct().count();
    assertEquals(2, looks, "some are plain and some are heavier");
  }

  /** Two kalai: eight signs, each with the same once more, with two dots, in an avartana of 16. */
  @Test
  void aKriyaGivenASecondTimeHasDots() throws IOException {
    Sheet sheet = Sheets.plain(Sheets.score("tala adi\nkalai 2\nSong = (takadimi) x16\n"));
    long dots =
        pages(sheet).stream()
            .flatMap(List::stream)
            .filter(drawn -> drawn instanceof Drawn.Symbol sign && sign.figure() == Figure.AGAIN)
            .count();
    assertEquals(8 + 1, dots, "in the row and in the legend");
    StringBuilder html = new StringBuilder();
    HtmlSheet.write(sheet, html);
    assertEquals(9, Pattern.compile("href=\"#f-again\"").matcher(html).results().count());
  }

  /** By hand: 16 matras are 4 beats, said twice at eight and four times at sixteen a beat. */
  @Test
  void threeSpeedsStandUnderOneAnother() {
    Performance performance =
        Performance.of(Sheets.score("tala adi\nSong = takadimi takajunu takadimi takajunu\n"));
    Sheet plain = Sheets.of(performance, Script.LATIN, SheetOptions.Lines.AVARTANA);
    Sheet three = Trikala.of(performance, plain.options());
    assertEquals(List.of(1, 2, 3, 1, 2, 3), three.rows().stream().map(Row::number).toList());
    assertEquals(
        List.of(8L, 16L, 32L, 8L, 16L, 32L),
        three.rows().stream()
            .map(row -> row.cells().stream().mapToLong(cell -> cell.marks().size()).sum())
            .toList());
    for (int row = 0; row < 6; row += 3) {
      assertEquals(three.rows().get(row).startBeat(), three.rows().get(row + 2).startBeat());
      assertEquals(three.rows().get(row).endBeat(), three.rows().get(row + 2).endBeat());
    }
    assertEquals(1, pages(three).size());
    assertEquals(
        "Line 3: kalam 3, 16 matras 4 times, from samam to beat 5.", three.closing().get(2));
  }

  @Test
  void aBookletTellsThePagesOfItsPieces() throws IOException {
    Sheet one = Sheets.plain(Sheets.sample("gutter-song"));
    Sheet other = Sheets.plain(Sheets.sample("culvert"));
    List<List<Drawn>> pages = new Booklet("Rain", List.of(one, other)).pages(new Typeface());
    assertEquals(3, pages.size());
    List<String> contents =
        pages.get(0).stream()
            .filter(drawn -> drawn instanceof Drawn.Text text && text.size() == 12)
            .map(drawn -> ((Drawn.Text) drawn).lettering().text())
            .toList();
    assertEquals(List.of("Gutter", "Song", "2", "Culvert", "3"), contents);
    StringBuilder html = new StringBuilder();
    new Booklet("Rain <b>", List.of(one, other)).writeHtml(html);
    assertTrue(html.indexOf("<h1>Rain &lt;b&gt;</h1>") > 0);
    assertTrue(html.indexOf("<a href=\"#piece-2\">Culvert</a>") > 0);
    List<String> ids =
        Pattern.compile(" id=\"([^\"]+)\"").matcher(html).results().map(m -> m.group(1)).toList();
    assertEquals(ids.size(), ids.stream().distinct().count(), "every name is given once");
    assertTrue(ids.size() > 300, "marks were found");
  }

  @Test
  void aLeadInIsToldWhereItIsAskedFor() {
    Performance performance = Performance.of(Sheets.score(SONG));
    SheetOptions plain =
        Sheets.of(performance, Script.LATIN, SheetOptions.Lines.AVARTANA).options();
    SheetOptions led =
        new SheetOptions(plain.lines(), false, false, Optional.of(0), plain.writing());
    String with = new SheetWords(Sheet.of(performance, led, List.of())).places();
    String without = new SheetWords(Sheet.of(performance, plain, List.of())).places();
    assertTrue(with.startsWith(without + "; lead-in from samam: "), with);
  }
}
