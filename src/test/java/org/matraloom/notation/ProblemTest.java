package org.matraloom.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.matraloom.score.Place;

class ProblemTest {

  private static String format(String line, int column, int width) {
    return new Problem(
            Problem.Severity.ERROR,
            "a.loom",
            new Place(3, column),
            width,
            line,
            "wrong",
            Optional.empty())
        .format();
  }

  @Test
  void theCaretStandsUnderThePlace() {
    assertEquals("a.loom:3:4: error: wrong\nta ki ta\n   ^~", format("ta ki ta", 4, 2));
  }

  @Test
  void helpComesLast() {
    Problem problem =
        new Problem(
            Problem.Severity.WARNING,
            "a.loom",
            new Place(1, 1),
            1,
            "x",
            "odd",
            Optional.of("drop it"));
    assertEquals("a.loom:1:1: warning: odd\nx\n^\nhelp: drop it", problem.format());
  }

  @Test
  void tabsAreCopiedUnderThePlace() {
    assertEquals("a.loom:3:5: error: wrong\n\tta\tki\n\t  \t^~", format("\tta\tki", 5, 2));
  }

  @Test
  void aLetterWithItsMarksIsOneColumn() {
    assertEquals("a.loom:3:3: error: wrong\nt\u0323a\u0304 \n  ^", format("t\u0323a\u0304 ", 3, 1));
  }

  @Test
  void aProblemOfTheFileShowsNoLine() {
    assertEquals("a.loom:3:1: error: wrong", format("", 1, 0));
  }

  @Test
  void theCaretNeverPassesTheLine() {
    assertEquals("a.loom:3:9: error: wrong\nta\n  ^", format("ta", 9, 5));
    assertEquals("a.loom:3:2: error: wrong\nta\n ^", format("ta", 2, 5));
  }

  @Test
  void aLongLineIsCutAroundThePlace() {
    String line = "a".repeat(500) + "b" + "c".repeat(500);
    assertEquals(
        "a.loom:3:501: error: wrong\n..."
            + "a".repeat(50)
            + "b"
            + "c".repeat(23)
            + "...\n"
            + " ".repeat(53)
            + "^",
        format(line, 501, 1));
  }

  @Test
  void controlCharactersDoNotReachATerminal() {
    assertEquals(
        "a.loom:3:1: error: wrong\n\ufffd[31mta\ufffd\n^", format("\u001b[31mta\u202e", 1, 1));
  }
}
