package org.matraloom.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.matraloom.score.Composition;
import org.matraloom.score.Edit;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Step;
import org.matraloom.time.Ratio;

/** Places counted in matras, as they are said: {@code beat 4, 3rd matra}. */
class MatraPlacesTest {

  private static Composition score(String text) {
    Reading reading = ScoreReader.read("tala adi\n" + text, "m.loom", Lexicon.standard());
    return reading
        .composition()
        .orElseThrow(() -> new AssertionError(reading.problems().toString()));
  }

  /** The third of five matras is two fifths into the beat, the third of eight two eighths. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "start beat 4, 3rd matra | perform/ A nadai 4/ A nadai 5 | 7/2",
        "start beat 4, 3rd matra | perform/ A nadai 5/ A nadai 4 | 17/5",
        "start beat 4 3rd matra | perform/ A kalam 2 | 13/4",
        "start beat 4, 1st matra | perform/ A | 3",
        "start beat 4, 3rd matra of 5 | perform/ A nadai 4 | 17/5",
        "start beat 4, 3rd matra | '' | 7/2"
      })
  void aStartIsInMatrasOfTheFirstRound(String start, String plan, String beat) {
    String text = start + "\nA = takadimi\n" + plan.replace('/', '\n') + "\n";
    assertEquals(beat, score(text).startBeat().toString());
  }

  @Test
  void otherPlacesAreInMatrasOfTheRoundsBesideThem() {
    Composition read =
        score(
            "eduppu beat 2, 2nd matra\nA = takadimi\nperform\n  A nadai 5\n  rest 1 beats\n"
                + "  until beat 3, 3rd matra\n  A nadai 5\n  at beat 4, 2nd matra\n  A nadai 5\n"
                + "  fill until samam nadai 5\n");
    assertEquals(Ratio.of(6, 5), read.eduppuBeat());
    List<Step> plan = read.plan();
    assertTrue(plan.contains(new Step.Until(Ratio.of(12, 5))), plan.toString());
    assertTrue(plan.contains(new Step.Stands(Ratio.of(16, 5), "")), plan.toString());
  }

  /** A repair may change the nadai; the place must not move with it. */
  @Test
  void aChangedCopySaysThePlaceInPartsOfABeat() {
    String text =
        "tala adi\nstart beat 4, 3rd matra  # late\r\nA = takadimi\nperform\n  A nadai 4\n";
    String changed =
        ScoreEditor.apply(
            text, List.of(new Edit.Plan(List.of(new Step.Say("A", 1, 5, 1)))), Lexicon.standard());
    assertTrue(changed.contains("start beat 4 1/2  # late\r\nA"), changed);
    assertEquals(
        Ratio.of(7, 2), score(changed.replaceFirst("tala adi\n", "")).startBeat(), changed);
  }
}
