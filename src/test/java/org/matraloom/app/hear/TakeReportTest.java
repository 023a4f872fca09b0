package org.matraloom.app.hear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.CommandLineRun;
import org.matraloom.app.cli.ExitCode;

/** Takes that the program's own voice has said, through the command line. */
class TakeReportTest {

  private static final String SCORE =
      """
      title Puddle Count
      tala adi
      tempo 80
      Four = (takadimi takajunu) x3 takadimi tam ;
      Five = (takatakita) x7 tam ; ;
      perform
        Four nadai 4
        Five nadai 5
      """;

  @TempDir private Path folder;
  private String score;
  private String take;

  @BeforeEach
  void say() throws IOException {
    score = Files.writeString(folder.resolve("puddle.loom"), SCORE).toString();
    take = render("take.wav");
  }

  private String render(String name, String... more) {
    String file = folder.resolve(name).toString();
    List<String> words =
        new ArrayList<>(List.of("render", score, "--only", "voice", "--mono", "-o", file));
    words.addAll(List.of(more));
    CommandLineRun run = CommandLineRun.of(words.toArray(String[]::new));
    assertEquals(ExitCode.DONE, run.code(), run.err());
    return file;
  }

  @Test
  void threeSentencesComeFirst() {
    CommandLineRun run = CommandLineRun.of("take", score, take);
    assertEquals("", run.err());
    assertEquals(ExitCode.DONE, run.code(), run.out());
    List<String> lines = run.out().lines().toList();
    assertEquals(
        "The pulse held at 80.0 beats a minute, and all 65 sollus were said.", lines.get(0));
    assertEquals("Nothing is out of its place enough to be heard.", lines.get(1));
    assertEquals("Practise next all of Puddle Count, a little quicker each time:", lines.get(2));
    assertEquals(
        "  matraloom drill ladder " + score + " --from 80 --by 4 --to 88 -o ladder.wav",
        lines.get(3));
    assertTrue(run.out().contains("4 to 5: 1.2"), run.out());
    assertTrue(run.out().contains(": it lands"), run.out());
    for (String line : lines) {
      assertTrue(line.length() <= 80 || line.startsWith("  matraloom"), line);
    }
  }

  @Test
  void aQuarterSlowerIsFollowed() {
    CommandLineRun run = CommandLineRun.of("take", score, render("slow.wav", "--tempo", "62"));
    assertEquals(ExitCode.DONE, run.code(), run.out() + run.err());
    assertTrue(run.out().startsWith("The pulse held at 62.0 beats a minute"), run.out());
  }

  @Test
  void jsonNamesWhatWasMeasured() throws IOException {
    CommandLineRun run = CommandLineRun.of("take", score, take, "--json");
    assertEquals(ExitCode.DONE, run.code(), run.err());
    Map<String, Double> numbers = new HashMap<>();
    int sollus = 0;
    try (JsonParser json = new JsonFactory().createParser(run.out())) {
      while (json.nextToken() != null) {
        if (json.currentToken() == JsonToken.VALUE_NUMBER_FLOAT) {
          numbers.putIfAbsent(json.currentName(), json.getDoubleValue());
        }
        sollus += "onsetSeconds".equals(json.currentName()) ? 1 : 0;
      }
    }
    assertEquals(80, numbers.get("beatsPerMinute"), 0.1);
    assertEquals(0, numbers.get("driftPercent"), 0.2);
    assertEquals(0, numbers.get("errorSeconds"), 0.010);
    assertTrue(numbers.get("giveOrTakeSeconds") >= 1.645 * 0.002, "" + numbers);
    assertTrue(numbers.get("giveOrTakeSeconds") < 0.030, "" + numbers);
    assertEquals(2 * 65, sollus, "a name and a value for each sollu");
  }

  @Test
  void jsonHasTheSentencesAndTheDrill() throws IOException {
    Map<String, String> texts = texts(take);
    List<String> lines = CommandLineRun.of("take", score, take).out().lines().toList();
    assertEquals(lines.get(0), texts.get("good"));
    assertEquals(lines.get(1), texts.get("wrong"));
    assertEquals(lines.get(3).strip(), texts.get("drill"));
    assertTrue(texts.containsKey("recorded") && texts.get("recorded") == null, texts.toString());
  }

  @Test
  void aRecordingThatBeginsLateSaysWhere() throws IOException {
    byte[] whole = Files.readAllBytes(Path.of(take));
    byte[] sound = Arrays.copyOf(whole, whole.length);
    int cut = 44 + 2 * (int) (44_100 * (12.0 * 60 / 80));
    System.arraycopy(whole, cut, sound, 44, whole.length - cut);
    String late =
        Files.write(folder.resolve("late.wav"), Arrays.copyOf(sound, whole.length - cut + 44))
            .toString();
    CommandLineRun run = CommandLineRun.of("take", score, late);
    String first = run.out().lines().findFirst().orElse("");
    assertTrue(first.startsWith("The recording begins at round 1, "), run.out());
    String recorded = texts(late).get("recorded");
    assertTrue(recorded.startsWith(first) && recorded.endsWith("do not count."), recorded);
  }

  private Map<String, String> texts(String recording) throws IOException {
    CommandLineRun run = CommandLineRun.of("take", score, recording, "--json");
    Map<String, String> texts = new HashMap<>();
    try (JsonParser json = new JsonFactory().createParser(run.out())) {
      while (json.nextToken() != null) {
        boolean isText = json.currentToken() == JsonToken.VALUE_STRING;
        if (isText || json.currentToken() == JsonToken.VALUE_NULL) {
          texts.putIfAbsent(json.currentName(), isText ? json.getText() : null);
        }
      }
    }
    return texts;
  }

  @Test
  void twoTakesStandSideBySide() {
    String other = render("slow.wav", "--tempo", "70");
    CommandLineRun run = CommandLineRun.of("take", "--compare", score, take, other);
    assertEquals("", run.err());
    assertEquals(ExitCode.DONE, run.code());
    String tempo =
        run.out().lines().filter(line -> line.startsWith("tempo,")).findFirst().orElse("");
    assertTrue(run.out().matches("(?s)(The (first|second) take is cleaner: |Neither take ).*"));
    assertTrue(tempo.matches("tempo, beats a minute +80\\.0 +70\\.0"), tempo);
    run.out().lines().forEach(line -> assertTrue(line.length() <= 80, line));
    CommandLineRun json = CommandLineRun.of("take", "--compare", score, take, other, "--json");
    assertTrue(json.out().startsWith("["), json.out());
  }

  @Test
  void badInputIsTold() throws IOException {
    assertBad("take wants a score and a recording", "take", score);
    assertBad("take --compare wants a score and two recordings", "take", "--compare", score, take);
    assertBad("the score comes first: matraloom take " + score, "take", take, score);
    String missing = folder.resolve("tomorrow.wav").toString();
    assertBad("there is no recording " + missing, "take", score, missing);
    assertBad(folder + " is a folder", "take", score, folder.toString());
    Path empty = Files.createFile(folder.resolve("empty.wav"));
    assertBad(empty + " is empty", "take", score, empty.toString());
    byte[] whole = Files.readAllBytes(Path.of(take));
    Path spoilt = Files.write(folder.resolve("spoilt.wav"), Arrays.copyOf(whole, 30));
    assertBad(spoilt.toString(), "take", score, spoilt.toString());
  }

  private static void assertBad(String message, String... words) {
    CommandLineRun run = CommandLineRun.of(words);
    assertEquals(ExitCode.BAD_INPUT, run.code(), run.err());
    assertTrue(run.err().startsWith("matraloom: " + message), run.err());
    assertEquals("", run.out());
  }

  @Test
  void silenceCannotBeJudged() throws IOException {
    byte[] sound = Files.readAllBytes(Path.of(take));
    Arrays.fill(sound, sound.length / 200, sound.length, (byte) 0);
    Path silent = Files.write(folder.resolve("silent.wav"), sound);
    CommandLineRun run = CommandLineRun.of("take", score, silent.toString());
    assertEquals(ExitCode.CHECK_FAILED, run.code(), run.err());
    assertTrue(run.out().contains("I cannot tell how it went"), run.out());
  }
}
