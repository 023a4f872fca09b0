package org.matraloom.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Keys as terminals send them: the sequences are those of xterm ("XTerm Control Sequences",
 * PC-style function keys) and of the Linux console (console_codes(4)).
 */
class KeyDecoderTest {

  private static List<Press> presses(String characters) throws IOException {
    int[] at = {0};
    KeyDecoder decoder =
        new KeyDecoder(
            waitMs ->
                at[0] < characters.length()
                    ? characters.charAt(at[0]++)
                    : at[0]++ < characters.length() + 5
                        ? KeyDecoder.Source.NONE
                        : KeyDecoder.Source.END);
    List<Press> presses = new ArrayList<>();
    while (true) {
      Optional<Press> press = decoder.next(10);
      if (press.isPresent() && press.get().action() == Action.QUIT && at[0] > characters.length()) {
        return presses;
      }
      press.ifPresent(presses::add);
    }
  }

  private static List<Action> actions(String characters) throws IOException {
    return presses(characters).stream().map(Press::action).toList();
  }

  @ParameterizedTest
  @CsvSource({
    "[A, FASTER",
    "[B, SLOWER",
    "[C, NEXT",
    "[D, PREVIOUS",
    "OA, FASTER",
    "OD, PREVIOUS",
    "[5~, AGAIN",
    "[6~, START_STOP",
    "[H, FIRST",
    "[1~, FIRST",
    "OH, FIRST"
  })
  void arrowsAndPageKeys(String sequence, Action action) throws IOException {
    assertEquals(List.of(action), actions("\u001b" + sequence));
  }

  @Test
  void spaceAndEnterOfAPedal() throws IOException {
    assertEquals(List.of(Action.START_STOP, Action.AGAIN, Action.AGAIN), actions(" \r\n"));
  }

  @Test
  void figuresChooseARound() throws IOException {
    List<Press> presses = presses("190");
    assertEquals(List.of(1, 9, 0), presses.stream().map(Press::number).toList());
    assertEquals(
        List.of(Action.ROUND, Action.ROUND, Action.FIRST),
        presses.stream().map(Press::action).toList());
  }

  @Test
  void capitalsAreTheSameKeys() throws IOException {
    assertEquals(actions("dhtlrcfwkvbsq"), actions("DHTLRCFWKVBSQ"));
  }

  @Test
  void everyActionHasAKey() throws IOException {
    Set<Action> reached = EnumSet.noneOf(Action.class);
    for (char key = ' '; key < 127; key++) {
      reached.addAll(actions(Character.toString(key)));
    }
    reached.addAll(actions("\r\u001b[A\u001b[B\u001b[C\u001b[D"));
    assertEquals(EnumSet.allOf(Action.class), reached);
  }

  @Test
  void controlCAndTheEndQuit() throws IOException {
    assertEquals(List.of(Action.QUIT), actions("\u0003"));
    assertEquals(List.of(Action.QUIT), actions("\u0004"));
    KeyDecoder ended = new KeyDecoder(waitMs -> KeyDecoder.Source.END);
    assertEquals(Action.QUIT, ended.next(1).orElseThrow().action());
  }

  @Test
  void whatMeansNothingIsPassedOver() throws IOException {
    assertEquals(
        List.of(Action.VOICE), actions("x\u001b[15~\u001b[Z\u001b[200;5xy\u001bv\u001b[Mv"));
    assertEquals(List.of(), actions("\u001b"));
  }
}
