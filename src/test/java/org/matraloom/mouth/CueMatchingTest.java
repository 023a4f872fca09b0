package org.matraloom.mouth;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.matraloom.onset.Onset;
import org.matraloom.score.Lexicon;

/** Lists of sollus against what an ear may hear of them. */
class CueMatchingTest {

  private static final String SHEET = "ta\nka\nmi\ndi\nna\nla\nku\nki\n";

  private static List<OptionalInt> match(List<Onset> onsets, double... levelsDb)
      throws IOException {
    List<CalledSollu> called = CueSheet.read(SHEET, "list.txt", Lexicon.standard()).called();
    assertEquals(8, called.size());
    return CueMatching.of(called, onsets, levelsDb);
  }

  private static List<OptionalInt> sounds(int... numbers) {
    return IntStream.of(numbers).mapToObj(OptionalInt::of).toList();
  }

  /**
   * A sollu that is heard twice inside itself is not two rows, however unsure another one is: the
   * others would all be put one place on.
   */
  @Test
  void aSolluHeardTwiceIsNotTwoRows() throws IOException {
    List<Onset> onsets =
        List.of(
            new Onset(1, 0.9),
            new Onset(2, 0.9),
            new Onset(3, 0.4),
            new Onset(4, 0.9),
            new Onset(5, 0.9),
            new Onset(6, 0.9),
            new Onset(6.218, 0.63),
            new Onset(7, 0.9),
            new Onset(8, 0.9));
    assertEquals(
        sounds(0, 1, 2, 3, 4, 5, 7, 8), match(onsets, -20, -20, -27, -20, -20, -20, -22, -20, -20));
  }

  /** A breath between two rows is passed over. */
  @Test
  void aBreathBetweenRowsIsNone() throws IOException {
    List<Onset> onsets =
        List.of(
            new Onset(1, 0.9),
            new Onset(2, 0.9),
            new Onset(2.6, 0.3),
            new Onset(3, 0.9),
            new Onset(4, 0.9),
            new Onset(5, 0.9),
            new Onset(6, 0.9),
            new Onset(7, 0.9),
            new Onset(8, 0.9));
    assertEquals(
        sounds(0, 1, 3, 4, 5, 6, 7, 8), match(onsets, -20, -20, -45, -20, -20, -20, -20, -20, -20));
  }
}
