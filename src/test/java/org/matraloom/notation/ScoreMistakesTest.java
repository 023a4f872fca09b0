package org.matraloom.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.matraloom.score.Lexicon;

/** Full texts of the errors that are made most; the form of the list is explained at its head. */
class ScoreMistakesTest {

  private static final Lexicon LEXICON = Lexicon.standard();
  private static final String HEAD = "tala adi\ntempo 60\n";

  private record Mistake(String title, String score, String expected) {}

  private static List<Mistake> mistakes() throws IOException {
    String list;
    try (InputStream in = ScoreMistakesTest.class.getResourceAsStream("mistakes.txt")) {
      list = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
    List<Mistake> mistakes = new ArrayList<>();
    for (String part : list.substring(list.indexOf("== ")).split("(?m)^== ")) {
      if (!part.isEmpty()) {
        int title = part.indexOf('\n');
        int end = part.indexOf("--\n");
        mistakes.add(
            new Mistake(
                part.substring(0, title),
                part.substring(title + 1, end),
                part.substring(end + 3).stripTrailing()));
      }
    }
    return mistakes;
  }

  @TestFactory
  List<DynamicTest> everyMistakeIsExplained() throws IOException {
    List<Mistake> mistakes = mistakes();
    assertTrue(mistakes.size() > 70, "mistakes were found: " + mistakes.size());
    return mistakes.stream()
        .map(mistake -> DynamicTest.dynamicTest(mistake.title(), () -> check(mistake)))
        .toList();
  }

  private static void check(Mistake mistake) {
    String head = mistake.title().startsWith("phrase") ? HEAD : "";
    Reading reading = ScoreReader.read(head + mistake.score(), "m.loom", LEXICON);
    assertEquals(mistake.expected(), reading.format());
    boolean error = mistake.expected().contains(": error: ");
    assertEquals(error, reading.composition().isEmpty());
  }

  @Test
  void allErrorsAreToldAtOnceInTheOrderOfTheText() {
    String score =
        """
        titel Rain
        tala adii
        tempo 9999
        Song = takadimo - Fall (ta) x0
        Song = ]
        perform
          Sogn
        """;
    List<Problem> problems = ScoreReader.read(score, "m.loom", LEXICON).problems();
    assertEquals(
        List.of("1:1", "3:7", "4:8", "4:17", "4:19", "4:30", "5:1", "5:8", "7:3"),
        problems.stream()
            .map(problem -> problem.place().line() + ":" + problem.place().column())
            .toList());
  }

  @Test
  void atMostAHundredErrorsAreShown() {
    String score = HEAD + "Song =" + " $".repeat(250);
    List<Problem> problems = ScoreReader.read(score, "m.loom", LEXICON).problems();
    assertEquals(101, problems.size());
    assertEquals("m.loom:3:206: error: and 150 more", problems.get(100).format());
  }
}
