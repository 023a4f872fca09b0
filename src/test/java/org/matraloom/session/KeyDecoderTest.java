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

  private static List<KeyPress> presses(String characters) throws IOException {
    int[] at = {0};
    KeyDecoder decoder =
        new KeyDecoder(
            waitMs ->
                at[0] < characters.length()
                    ? characters.charAt(at[0]++)
                    : at[0]++ < characters.length() + 5
                        ? KeyDecoder.Source.NONE
                        : KeyDecoder.Source.END);
    List<KeyPress> presses = new ArrayList<>();
    while (true) {
      Optional<KeyPress> press = decoder.next(10);
      if (press.isPresent()
          && press.get().action() == KeyAction.QUIT
          && at[0] > characters.length()) {
        return presses;
      }
      press.ifPresent(presses::add);
    }
  }

  private static List<KeyAction> actions(String characters) throws IOException {
    return presses(characters).stream().map(KeyPress::action).toList();
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
  void arrowsAndPageKeys(String sequence, KeyAction action) throws IOException {
    assertEquals(List.of(action), actions("\u001b" + sequence));
  }

  @Test
  void spaceAndEnterOfAPedal() throws IOException {
    assertEquals(List.of(KeyAction.START_STOP, KeyAction.AGAIN, KeyAction.AGAIN), actions(" \r\n"));
  }

  @Test
  void figuresChooseARound() throws IOException {
    List<KeyPress> presses = presses("190");
    assertEquals(List.of(1, 9, 0), presses.stream().map(KeyPress::number).toList());
    assertEquals(
        List.of(KeyAction.ROUND, KeyAction.ROUND, KeyAction.FIRST),
        presses.stream().map(KeyPress::action).toList());
  }

  @Test
  void capitalsAreTheSameKeys() throws IOException {
    assertEquals(actions("dhtlrcfwkvbsq"), actions("DHTLRCFWKVBSQ"));
  }

  @Test
  void everyActionHasAKey() throws IOException {
    Set<KeyAction> reached = EnumSet.noneOf(KeyAction.class);
    for (char key = ' '; key < 127; key++) {
      reached.addAll(actions(Character.toString(key)));
    }
    reached.addAll(actions("\r\u001b[A\u001b[B\u001b[C\u001b[D"));
    assertEquals(EnumSet.allOf(KeyAction.class), reached);
  }

  @Test
  void controlCAndTheEndQuit() throws IOException {
    assertEquals(List.of(KeyAction.QUIT), actions("\u0003"));
    assertEquals(List.of(KeyAction.QUIT), actions("\u0004"));
    KeyDecoder ended = new KeyDecoder(waitMs -> KeyDecoder.Source.END);
    assertEquals(KeyAction.QUIT, ended.next(1).orElseThrow().action());
  }

  @Test
  void whatMeansNothingIsPassedOver() throws IOException {
    assertEquals(
        List.of(KeyAction.VOICE), actions("x\u001b[15~\u001b[Z\u001b[200;5xy\u001bv\u001b[Mv"));
    assertEquals(List.of(), actions("\u001b"));
  }
}
