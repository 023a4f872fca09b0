package org.matraloom.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.cli.ExitCode;

/**
 * Words that lead in, wherever a piece is shown or heard. From samam to beat 4 1/2 of adi there are
 * three words of four matras and one of two; an avartana more has eight more of four.
 */
class LeadInEverywhereTest {

  private static final String HERON = "src/test/resources/org/matraloom/pieces/late-heron.loom";
  private static final String GUTTER = "samples-synth/gutter-song.loom";

  @TempDir private Path folder;

  private static String said(String... arguments) {
    CommandLineRun run = CommandLineRun.of(arguments);
    assertEquals(ExitCode.DONE, run.code(), run.err());
    return run.out().replaceAll("\\s+#?\\s*", " ");
  }

  @Test
  void aSheetTellsThem() {
    String plain = said("sheet", HERON);
    assertTrue(!plain.contains("lead-in"), plain);
    String words = "lead-in from samam: 3 x takadimi, taka";
    assertTrue(said("sheet", HERON, "--lead-in").contains(words));
    String more = "lead-in from samam: 11 x takadimi, taka";
    assertTrue(said("sheet", HERON, "--lead-in-avartanas", "1").contains(more));
    assertTrue(said("sheet", HERON, "--lead-in", "--lead-in-avartanas", "1").contains(more));
    // A start on samam has no way to fill, but a whole avartana of rupaka before it.
    assertTrue(said("sheet", GUTTER, "--lead-in-avartanas", "1").contains("samam: 6 x takadimi"));
  }

  @Test
  void eventsHaveEachWordOnItsBeat() {
    String events = said("events", HERON, "--lead-in-avartanas", "1", "--count-in", "2");
    assertEquals(8 * 4 + 14, Pattern.compile("sollu,0,").matcher(events).results().count());
    assertTrue(events.contains("sollu,0,-8,"), "from the samam an avartana before");
  }

  /** The page counts in as many avartanas as have words, and one without them. */
  @Test
  void aPageSpeaksThemInItsCountIn() throws IOException {
    assertPage("1", "0", 14, "--lead-in");
    assertPage("1", "-8", 14 + 32, "--lead-in-avartanas", "1");
    assertPage("2", "-16", 14 + 64, "--lead-in-avartanas", "2");
  }

  private void assertPage(String countIn, String first, int words, String... options)
      throws IOException {
    Path page = folder.resolve("page" + words + ".html");
    String[] command = {"page", HERON, "-o", page.toString(), "--rounds", "1"};
    String[] all = new String[command.length + options.length];
    System.arraycopy(command, 0, all, 0, command.length);
    System.arraycopy(options, 0, all, command.length, options.length);
    said(all);
    String html = Files.readString(page);
    assertTrue(html.contains("\"countIn\":" + countIn + ","), options[0]);
    Matcher sollus = Pattern.compile("\"sollus\":\\[([^\\]]*)\\]").matcher(html);
    assertTrue(sollus.find());
    String[] beats = sollus.group(1).split(",");
    assertEquals(Double.parseDouble(first), Double.parseDouble(beats[0]));
    long before = java.util.Arrays.stream(beats).filter(b -> Double.parseDouble(b) < 3.5).count();
    assertEquals(words, before);
  }

  @Test
  void howManyIsSaidWhereItIsTooMany() {
    CommandLineRun run = CommandLineRun.of("sheet", HERON, "--lead-in-avartanas", "17");
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertTrue(run.err().contains("--lead-in-avartanas takes 0 to 16 avartanas, given 17"));
  }
}
