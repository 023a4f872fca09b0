package org.matraloom.app.handon;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.matraloom.app.CommandLineRun;

/** The commands sheet, export and page. */
class SheetCommandsTest {

  private static final String SCORE = "samples-synth/gutter-song.loom";

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({
    "sheet, page.pdf, %PDF",
    "sheet, page.svg, <?xml",
    "sheet, page.html, <!DOCTYPE html>",
    "sheet, page.txt, title   Gutter Song",
    "export, song.mid, MThd",
    "export, song.musicxml, <?xml",
    "export, song.vtt, WEBVTT",
    "export, song.csv, 'kind,round,beat'",
    "export, song.json, [",
    "page, song.html, <!DOCTYPE html>"
  })
  void everyFormIsWrittenAndNamed(String verb, String name, String begins) throws IOException {
    Path target = folder.resolve(name);
    CommandLineRun run = CommandLineRun.of(verb, SCORE, "-o", target.toString());
    assertEquals("", run.err());
    assertEquals(0, run.code());
    assertEquals(target + System.lineSeparator(), run.out());
    byte[] head = new byte[begins.length()];
    System.arraycopy(Files.readAllBytes(target), 0, head, 0, head.length);
    assertEquals(begins, new String(head, StandardCharsets.ISO_8859_1));
    assertEquals(List.of(name), names());
  }

  @ParameterizedTest
  @CsvSource({"sheet, a.pdf", "export, a.mid", "export, a.musicxml", "page, a.html"})
  void theSameCommandGivesTheSameBytes(String verb, String name) throws IOException {
    Path first = folder.resolve(name);
    Path second = folder.resolve("again-" + name);
    CommandLineRun.of(verb, SCORE, "-o", first.toString());
    CommandLineRun.of(verb, SCORE, "-o", second.toString());
    assertArrayEquals(Files.readAllBytes(first), Files.readAllBytes(second));
  }

  @Test
  void withoutAFileTheTextIsPrinted() {
    CommandLineRun run = CommandLineRun.of("sheet", SCORE);
    assertEquals(0, run.code());
    assertTrue(run.out().startsWith("title   Gutter Song\n"));
    assertTrue(run.out().endsWith("# Lands: the last matra ends on samam.\n"));
  }

  @Test
  void whatIsReadAloudIsPrinted() {
    CommandLineRun run = CommandLineRun.of("sheet", SCORE, "--read-aloud", "--cues");
    assertEquals(0, run.code());
    assertTrue(run.out().contains("Beat 1, clap: ta ki ta tom.\n"));
    assertTrue(run.out().contains("What falls on each kriya.\n"));
  }

  @Test
  void aSheetOfSeveralPagesIsSeveralDrawings() throws IOException {
    Path target = folder.resolve("large.svg");
    CommandLineRun run = CommandLineRun.of("sheet", SCORE, "--large", "-o", target.toString());
    assertEquals(0, run.code());
    assertEquals(List.of("large-2.svg", "large-3.svg", "large.svg"), names());
  }

  @Test
  void anotherNadaiIsLaidOutBeside() {
    CommandLineRun run = CommandLineRun.of("sheet", SCORE, "--rebar", "5");
    assertEquals(0, run.code());
    assertTrue(run.out().contains("| in 4         | in 5\n"));
    assertTrue(run.out().contains("In khanda nadai (5): 60 matras are 12 beats"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "sheet|page.doc|a sheet is written as .pdf, .svg, .html or .txt",
        "export|song.mp7|an export is written as .mid, .musicxml, .vtt, .csv or .json",
        "page|song.txt|a page is written as .html",
        "sheet|no/such/folder.pdf|does not exist; make it first"
      })
  void aWrongNameIsToldInOneSentence(String verb, String name, String sentence) throws IOException {
    CommandLineRun run = CommandLineRun.of(verb, SCORE, "-o", folder.resolve(name).toString());
    assertEquals(2, run.code());
    assertTrue(run.err().contains(sentence), run.err());
    assertEquals(1, run.err().lines().count(), run.err());
    assertEquals(List.of(), names());
  }

  @Test
  void wrongSettingsAreToldWithWhatIsAllowed() {
    assertTold("--rebar takes a nadai of 1 to 9, given 12", "sheet", SCORE, "--rebar", "12");
    assertTold("--rounds takes a round or a range", "sheet", SCORE, "--rounds", "9");
    assertTold("'runes'", "sheet", SCORE, "--script", "runes");
    assertTold("is written as .txt", "sheet", SCORE, "--read-aloud", "-o", "aloud.pdf");
  }

  private static void assertTold(String sentence, String... arguments) {
    CommandLineRun run = CommandLineRun.of(arguments);
    assertEquals(2, run.code());
    assertTrue(run.err().contains(sentence), run.err());
  }

  @Test
  void captionsMayBeASolluEach() throws IOException {
    Path phrases = folder.resolve("phrases.vtt");
    Path sollus = folder.resolve("sollus.vtt");
    CommandLineRun.of("export", SCORE, "-o", phrases.toString());
    CommandLineRun.of("export", SCORE, "-o", sollus.toString(), "--captions", "sollu");
    assertTrue(Files.readString(phrases).contains(">ki"));
    assertFalse(Files.readString(sollus).contains(">ki"));
  }

  @Test
  void theExportedTableIsWhatEventsPrints() throws IOException {
    Path table = folder.resolve("events.csv");
    CommandLineRun.of("export", SCORE, "-o", table.toString());
    assertEquals(CommandLineRun.of("events", SCORE, "--csv").out(), Files.readString(table));
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
