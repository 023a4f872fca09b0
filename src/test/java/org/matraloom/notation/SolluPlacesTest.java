package org.matraloom.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.Spoken;

/** Each sollu is found where it is written. */
class SolluPlacesTest {

  private static final String WRITTEN =
      """
      tala adi
      Rain = takita x , {5: takadimi}  # no ta here
         5*2 9(1)
      Song = (Rain Tip) x2 [ta-ka] Tip
      Tip = tom
      perform
        Song nadai 4
      """;

  private static Performance performance(String text) {
    return Performance.of(
        ScoreReader.read(text, "", Lexicon.standard()).composition().orElseThrow());
  }

  private static List<String> words(String text) {
    return SolluPlaces.of(text, performance(text)).stream()
        .map(range -> text.substring(range.from(), range.to()))
        .toList();
  }

  @Test
  void wordsGroupsBracketsAndNamesAreFound() {
    String text = WRITTEN.replace(" x ,", " ,");
    List<String> rain =
        Stream.of("ta ki ta ta ka di mi", "5*2 ".repeat(5), "9(1) ".repeat(9), "tom")
            .flatMap(part -> Stream.of(part.strip().split(" ")))
            .toList();
    List<String> wanted =
        Stream.of(rain, rain, List.of("ta-ka", "ta-ka", "tom")).flatMap(List::stream).toList();
    assertEquals(wanted, words(text));
  }

  @Test
  void everySolluOfEverySampleHasItsPlace() throws IOException {
    int scores = 0;
    try (Stream<Path> files = Files.list(Path.of("samples-synth"))) {
      for (Path file : files.sorted().toList()) {
        String text = Files.readString(file);
        Performance performance = performance(text);
        List<Spoken> spoken = performance.spoken().toList();
        List<SolluPlaces.Range> places = SolluPlaces.of(text, performance);
        int strokes = performance.closing().stroke().isPresent() ? 1 : 0;
        assertTrue(spoken.size() - places.size() <= strokes, file + ": " + places.size());
        for (int i = 0; i < places.size(); i++) {
          String written = text.substring(places.get(i).from(), places.get(i).to());
          boolean own = written.equals(spoken.get(i).sollu().spelling());
          assertTrue(own || written.matches(".*[\\d-].*"), file + " " + i + ": " + written);
        }
        scores++;
      }
    }
    assertTrue(scores > 10, "scores were read: " + scores);
  }

  @Test
  void lineEndsAndAMarkAtTheBeginningMoveNothing() {
    String text = "\ufefftala adi\r\nSong = takita\r\n  tom\r\nperform\r\n Song\r\n";
    assertEquals(List.of("ta", "ki", "ta", "tom"), words(text));
  }

  @Test
  void linesWithoutNamesHaveNoPlaces() {
    assertEquals(List.of(), words("takita tom\n"));
  }
}
