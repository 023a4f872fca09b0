package org.matraloom.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

/** Complaints stay within 80 columns; what the user wrote is shown as it is. */
class ErrorLinesTest {

  private static String printed(String... lines) {
    StringWriter text = new StringWriter();
    PrintWriter err = new PrintWriter(new ErrorLines(text), true);
    for (String line : lines) {
      err.println(line);
    }
    return text.toString();
  }

  @Test
  void longComplaintsAreBrokenAndKeepTheirWords() {
    String said = "matraloom: " + "a rather long word ".repeat(12).strip();
    String score = "a.loom:3:4: warning: " + "the matras of this round ".repeat(6).strip();
    String help = "help: " + "write a line such as tala adi ".repeat(5).strip();
    String text = printed(said, score, help);
    assertTrue(text.lines().allMatch(line -> line.length() <= 80), text);
    assertEquals(String.join(" ", said, score, help), text.replaceAll("\\s+", " ").strip());
    assertTrue(text.lines().count() > 6, text);
  }

  @Test
  void aLineOfAScoreStaysUnderItsMark() {
    String line = "Song = " + "takadimi ".repeat(20).strip();
    assertEquals(line + "\n       ^~~\n", printed(line, "       ^~~"));
  }

  @Test
  void whatIsPrintedPieceByPieceIsThereAtOnce() {
    StringWriter text = new StringWriter();
    PrintWriter err = new PrintWriter(new ErrorLines(text), true);
    err.print("now: ");
    err.flush();
    assertEquals("now: ", text.toString());
    err.println("matraloom: " + "word ".repeat(20).strip());
    assertEquals(1, text.toString().lines().count());
  }
}
