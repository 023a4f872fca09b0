package org.matraloom.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.matraloom.app.cli.ExitCode;

/**
 * Pieces as a teacher writes them, with everything at once: mixed talas, moras with words, a drum,
 * two reciters, other scores, a change of tala, other endings, a pasted text.
 *
 * <p>The sums were added up by hand with fractions, from the rules in docs/score.md.
 */
class TeachersPiecesTest {

  private static final Path PIECES = Path.of("src/test/resources/org/matraloom/app/teacher");

  @TempDir private Path folder;

  private static String said(String... arguments) {
    CommandLineRun run = CommandLineRun.of(arguments);
    assertTrue(run.code() <= ExitCode.CHECK_FAILED, String.join(" ", arguments) + run.err());
    return run.out().replaceAll("\\s+", " ");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // Bank 12, Fall 7 with 3 after two of them: 24 + 27 + 8 = 59 matras; 7 x 7 + 2 5/8 beats.
        "ferry-steps | 14 3/4 + 14 3/4 + 14 3/4 + 7 3/8 = 51 5/8 beats = 7 avartanas and 2 5/8",
        "ferry-steps | falls on beat 3 5/8, 21 matras (2 5/8 beats) too late for samam",
        // 4 + 4, then 2 1/2 asked and 2 1/2 answered from beat 3 1/2, 3 to samam and 8 filled.
        "rain-and-drain | 4 + 4 + 2 1/2 + 2 1/2 + 3 + 8 = 24 beats = 3 avartanas.",
        "rain-and-drain | 4 + 4 + 2 1/2 + 2 1/2 = 13 beats = 1 avartana and 5 beats.",
        "rain-and-drain | They begin and end together.",
        // 16 + 96 + a stroke of 4 + 12 to samam, then two avartanas of six in three: 36.
        "evening | 4 + 12 + 12 + 1 + 3 + 12 = 44 beats",
        "evening | 4 avartanas of adi and 2 avartanas of chatusra rupaka.",
        "evening | Small Pipe lands on beat 5, 4 beats too late for samam.",
        // Line 31; 31 + 10 + 4 + 19 = 64 in five, 31 + 14 + 4 + 19 = 68 in seven, from +1/2.
        "weir-five | 12 4/5 + 12 4/5 + 6 1/5 + 9 5/7 = 41 18/35 beats = 4 avartanas and 5 18/35",
        "weir-five | on beat 7 1/70, 24 2/5 matras (3 17/35 beats) too early for beat 1 1/2."
      })
  void sumsAndLandingsAreThoseAddedUpByHand(String piece, String words) {
    String check = said("check", PIECES.resolve(piece + ".loom").toString());
    assertTrue(check.contains(words.strip()), check);
  }

  /** 59 - 3 = 56 and 59 + 5 = 64 matras: 3 1/2 times 14 and 16 beats, 49 and 56, sevens both. */
  @Test
  void theRepairsLandAndKeepTheOtherEnding() throws IOException {
    String score = PIECES.resolve("ferry-steps.loom").toString();
    String ways = said("fit", score);
    assertTrue(ways.contains("drop 3 matras from Song"), ways);
    assertTrue(ways.contains("add 5 matras in front of Song"), ways);
    for (int way = 1; way <= 5; way++) {
      Path mended = folder.resolve("mended" + way + ".loom");
      said("fit", score, "--apply", Integer.toString(way), "-o", mended.toString());
      CommandLineRun proof = CommandLineRun.of("check", mended.toString());
      assertEquals(ExitCode.DONE, proof.code(), proof.out());
      assertTrue(Files.readString(mended).contains("(Fall {not last: , ;}) x3"), "kept");
      assertTrue(Files.readString(mended).contains("drum dhim = thom + chapu"), "kept");
    }
  }

  /** 3 x 59/5 beats and 59/5 for the last: 47 1/5, which is 1 4/5 short of 49. */
  @Test
  void anotherNadaiComesToWhatItShould() {
    String five = said("convert", PIECES.resolve("ferry-steps.loom").toString(), "--nadai", "5");
    assertTrue(five.contains("47 1/5 beats, 9 matras (1 4/5 beats) early"), five);
    String shape = said("shape", PIECES.resolve("ferry-steps.loom").toString());
    assertTrue(shape.contains("a mora 7(3)7(3)7"), shape);
  }

  @Test
  void everyFormOfPageIsMadeOfThem() throws IOException {
    for (String piece : List.of("ferry-steps", "rain-and-drain", "evening", "weir-five")) {
      for (String ending : List.of("txt", "pdf", "html")) {
        Path page = folder.resolve(piece + "." + ending);
        said("sheet", PIECES.resolve(piece + ".loom").toString(), "-o", page.toString());
        assertTrue(Files.size(page) > 500, page.toString());
      }
      Path back = folder.resolve(piece + ".loom");
      Files.copy(folder.resolve(piece + ".txt"), back);
      String again = said("check", back.toString());
      String once = said("check", PIECES.resolve(piece + ".loom").toString());
      assertEquals(landing(once), landing(again), "what the text sheet says, read back");
    }
  }

  private static String landing(String check) {
    return check.replaceAll(".*(It lands|It misses)", "$1").replaceAll("\\. .*", "");
  }

  @Test
  void aMessageIsPutInOrder() throws IOException {
    Path tidy = folder.resolve("tidy.loom");
    said("tidy", PIECES.resolve("message.txt").toString(), "-o", tidy.toString());
    String score = Files.readString(tidy);
    assertTrue(score.contains("title   Korvai for Tuesday\n"), score);
    assertTrue(score.contains("kalai   2\n"), score);
    // 15 + 10 + 8 + 3 + 8 + 3 + 8 = 55 matras: 13 3/4 counts.
    String check = said("check", tidy.toString());
    assertTrue(check.contains("Sum: 55 matras; 13 3/4 beats"), check);
  }
}
