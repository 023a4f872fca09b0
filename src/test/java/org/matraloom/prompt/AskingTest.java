package org.matraloom.prompt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is asked for next, without a sound. */
class AskingTest {

  private static Asking rows(int count) {
    return new Asking(new int[count]);
  }

  private static Asking.Ask next(Asking asking) {
    return asking.next().orElseThrow();
  }

  @Test
  void eachRowIsAskedForInOrderUntilNoneIsLeft() {
    Asking asking = rows(3);
    List<Integer> asked = new ArrayList<>();
    while (asking.next().isPresent()) {
      assertEquals(3, next(asking).says());
      assertFalse(next(asking).isAgain());
      asked.add(next(asking).row());
      asking.heard(3);
    }
    assertEquals(List.of(0, 1, 2), asked);
    assertEquals(9, asking.kept());
    assertEquals(List.of(), asking.missing());
  }

  @Test
  void whatWasBadIsAskedForAgainAtOnceAndOnlySoOften() {
    Asking asking = rows(2);
    asking.heard(1);
    assertEquals(new Asking.Ask(0, 2, true, false), next(asking));
    assertEquals(5, asking.wanted());
    asking.heard(2);
    assertEquals(1, next(asking).row());
  }

  @Test
  void nobodyIsHeldAtARowThatDoesNotSucceed() {
    Asking asking = rows(2);
    for (int again = 0; again < Asking.MOST_TRIES; again++) {
      assertEquals(0, next(asking).row());
      asking.heard(0);
    }
    assertEquals(1, next(asking).row());
    assertEquals(List.of(0, 1), asking.missing());
  }

  @Test
  void whatWasRecordedBeforeIsNotAskedForAgain() {
    Asking asking = new Asking(new int[] {3, 1, 0});
    assertEquals(new Asking.Ask(1, 2, false, false), next(asking));
    assertEquals(2, asking.left());
    assertEquals(List.of(2), asking.missing());
  }

  @Test
  void aRowIsSkippedOrSaidOnceMore() {
    Asking asking = rows(3);
    asking.skip(0);
    assertEquals(1, next(asking).row());
    asking.heard(3);
    asking.skip(1);
    assertEquals(2, next(asking).row(), "a row that was left is not skipped twice");
    asking.again(1, 3);
    assertEquals(new Asking.Ask(1, 3, false, false), next(asking));
    asking.heard(2);
    asking.again(1, 2);
    assertEquals(new Asking.Ask(1, 3, false, false), next(asking));
  }

  @Test
  void aPauseIsNoTry() {
    Asking asking = rows(1);
    for (int pause = 0; pause < 5; pause++) {
      asking.heard(0);
      asking.pause(0);
    }
    assertEquals(new Asking.Ask(0, 3, false, false), next(asking));
    asking.heard(3);
    asking.pause(0);
    assertTrue(asking.next().isEmpty(), "what is complete is not asked for after a pause");
  }

  @Test
  void theVoiceRestsAfterSomeRows() {
    Asking asking = rows(20);
    List<Integer> rests = new ArrayList<>();
    while (asking.next().isPresent()) {
      if (next(asking).isAfterRest()) {
        rests.add(next(asking).row());
        asking.rested();
      }
      asking.heard(3);
    }
    assertEquals(List.of(8, 16), rests);
  }

  @Test
  void nothingIsHeardOfNoRow() {
    assertThrows(IllegalStateException.class, () -> rows(0).heard(1));
  }
}
