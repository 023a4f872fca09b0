package org.matraloom.app.hear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.CommandLineRun;
import org.matraloom.app.cli.ExitCode;

/**
 * Two rounds at 72 and a five at another tempo, said by the program's voice: what the landing is
 * off is known from the two tempi alone.
 */
class SlowFiveTest {

  private static final String SCORE =
      "tala adi\ntempo 72\nRain = (takadimi takajunu) x5\n"
          + "perform\n  Rain x2 nadai 4\n  Rain nadai 5\n";
  private static final int HEADER = 44;

  /** Where the header of a WAVE file of one channel has its rate, and the length of its samples. */
  private static final int RATE_AT = 24;

  private static final int LENGTH_AT = 40;

  /** Half way between two sollus at every tempo of the table there is nothing but a vowel. */
  private static final double BEFORE_ONSET_SECONDS = 0.05;

  private static final int FIRST_OF_FIVE = 80;
  private static final int LAST = 119;

  @TempDir private Path folder;

  private Path said(String score, double tempo) {
    Path file = folder.resolve("at" + tempo + ".wav");
    CommandLineRun run =
        CommandLineRun.of(
            "render", score, "--only", "voice", "--mono", "--tempo", "" + tempo, "-o", "" + file);
    assertEquals(ExitCode.DONE, run.code(), run.err());
    return file;
  }

  private static String heard(String score, Path recording) {
    return CommandLineRun.of("take", score, "" + recording, "--json", "--no-log").out();
  }

  /** What stands first after some words of the answer. */
  private static String after(String json, String words) {
    Matcher found = Pattern.compile(words + "\"\\s*:\\s*\"?(.+?)\"?,?\\n").matcher(json);
    assertTrue(found.find(), words + " in " + json);
    return found.group(1);
  }

  /** Where the recording is cut, in bytes: right before the first sollu of the five. */
  private static int seam(String score, Path recording) throws IOException {
    String sollu = "\"place\"\\s*:\\s*" + FIRST_OF_FIVE + ",[^}]*\"onsetSeconds";
    double at = Double.parseDouble(after(heard(score, recording), sollu)) - BEFORE_ONSET_SECONDS;
    int ratePerSecond = header(Files.readAllBytes(recording)).getInt(RATE_AT);
    return HEADER + 2 * (int) (at * ratePerSecond);
  }

  private static ByteBuffer header(byte[] wave) {
    return ByteBuffer.wrap(wave).order(ByteOrder.LITTLE_ENDIAN);
  }

  @Test
  void theChangeIsToldAndTheLandingIsAsFarOffAsItIs() throws IOException {
    String score = Files.writeString(folder.resolve("rain.loom"), SCORE).toString();
    Path even = said(score, 72);
    byte[] rounds = Files.readAllBytes(even);
    int seam = seam(score, even);
    for (double tempo : new double[] {70, 68.4, 66, 64.8, 75.6}) {
      Path other = said(score, tempo);
      byte[] five = Files.readAllBytes(other);
      int from = seam(score, other);
      byte[] both = Arrays.copyOf(rounds, seam + five.length - from);
      System.arraycopy(five, from, both, seam, five.length - from);
      header(both).putInt(LENGTH_AT, both.length - HEADER);
      String found = heard(score, Files.write(folder.resolve("both.wav"), both));
      double truth = (60 / tempo - 60.0 / 72) * (LAST - FIRST_OF_FIVE) / 5;
      double error = Double.parseDouble(after(found, "errorSeconds"));
      assertEquals(truth, error, 0.020, "five at " + tempo);
      assertEquals("the pulse before the change", after(found, "against"));
      double giveOrTake = Double.parseDouble(after(found, "giveOrTakeSeconds"));
      assertTrue(giveOrTake > 0.003 && giveOrTake < 0.030, "" + giveOrTake);
      String wrong = after(found, "wrong");
      assertTrue(wrong.startsWith("The khanda nadai (5) was "), wrong);
      assertTrue(wrong.contains(tempo < 72 ? "% slow" : "% quick"), wrong);
      assertTrue(wrong.endsWith(truth > 0 ? " s late." : " s early."), wrong);
    }
  }
}
