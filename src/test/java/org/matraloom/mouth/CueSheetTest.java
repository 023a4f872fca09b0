package org.matraloom.mouth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.matraloom.onset.Onset;
import org.matraloom.score.Lexicon;

/** What a sheet says, and which sounds are its sollus. */
class CueSheetTest {

  private static final Lexicon LEXICON = Lexicon.standard();

  private static List<CalledSollu> called(String text) throws KitException {
    return CueSheet.read(text, "list.txt", LEXICON).called();
  }

  @Test
  void wordsRowsAndTimes() throws KitException {
    List<CalledSollu> called = called("# a list\n1:02.5 takita ta\n\n90 tom # the last\n");
    assertEquals(
        List.of("ta", "ki", "ṭa", "ta", "tom"), called.stream().map(CalledSollu::sollu).toList());
    assertEquals(OptionalDouble.of(62.5), called.get(0).seconds());
    assertEquals(OptionalDouble.empty(), called.get(3).seconds());
    assertEquals(OptionalDouble.of(90), called.get(4).seconds());
    assertEquals(
        List.of(true, false, false, true, true),
        called.stream().map(CalledSollu::opensWord).toList());
    assertEquals(
        List.of(true, false, false, false, true),
        called.stream().map(CalledSollu::opensRow).toList());
  }

  @Test
  void faultsAreToldWithTheirLine() {
    KitException fault = assertThrows(KitException.class, () -> called("ta\ntakadmi\n"));
    assertTrue(fault.getMessage().startsWith("list.txt, line 2: \"takadmi\""), fault.getMessage());
    assertTrue(fault.getMessage().contains("did you mean"), fault.getMessage());
    fault = assertThrows(KitException.class, () -> called("5 ta\n4 ka\n"));
    assertTrue(fault.getMessage().contains("line 2: the time 4 lies before"), fault.getMessage());
    fault = assertThrows(KitException.class, () -> called("# nothing\n"));
    assertTrue(fault.getMessage().contains("names no sollu"), fault.getMessage());
  }

  private static List<OptionalInt> matched(String sheet, double... seconds) throws KitException {
    List<Onset> onsets = Arrays.stream(seconds).mapToObj(second -> new Onset(second, 0.9)).toList();
    return CueMatching.of(called(sheet), onsets, new double[seconds.length]);
  }

  private static List<OptionalInt> of(int... indices) {
    return Arrays.stream(indices)
        .mapToObj(index -> index < 0 ? OptionalInt.empty() : OptionalInt.of(index))
        .toList();
  }

  @Test
  void everySoundIsASolluWhereTheNumbersAgree() throws KitException {
    assertEquals(of(0, 1, 2, 3), matched("takita\nta", 1, 1.2, 1.4, 2.4));
  }

  @Test
  void aSoundBetweenTheRowsIsPassedOver() throws KitException {
    assertEquals(of(0, 1, 2, 4, 5, 6), matched("takita\ntakita", 1, 1.2, 1.4, 1.95, 2.4, 2.6, 2.8));
  }

  @Test
  void aSolluThatWasForgottenIsMissing() throws KitException {
    List<OptionalInt> found = matched("takita\nta\ntakita", 1, 1.2, 1.4, 3.4, 3.6, 3.8);
    assertEquals(1, found.stream().filter(OptionalInt::isEmpty).count());
    assertEquals(of(0, 1, 2), found.subList(0, 3));
    assertEquals(OptionalInt.of(5), found.get(6));
  }

  @Test
  void aTimeInTheSheetIsTakenWhereNothingWasHeard() throws KitException {
    List<CalledSollu> called = called("1.0 ta\n2.0 ka\n3.0 di\n");
    List<Onset> told =
        CueMatching.withTold(called, List.of(new Onset(1.01, 0.9), new Onset(3.0, 0.9)));
    assertEquals(3, told.size());
    assertEquals(of(0, 1, 2), CueMatching.of(called, told, new double[3]));
    assertEquals(2.0, told.get(1).seconds());
  }
}
