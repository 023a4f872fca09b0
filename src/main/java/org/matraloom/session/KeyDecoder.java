package org.matraloom.session;

import java.io.IOException;
import java.util.Map;
import java.util.Optional;

/**
 * Turns the characters of a terminal into presses; foot pedals that send Page keys, arrows, space
 * or enter are keyboards like any other.
 *
 * <p>Terminals send a key when it goes down, as one character or as a sequence after escape
 * (ECMA-48, control sequences; the letters and numbers are those of the DEC VT220).
 */
final class KeyDecoder {

  private static final int ESCAPE = 27;
  private static final int CONTROL_C = 3;
  private static final int CONTROL_D = 4;
  private static final long SEQUENCE_MS = 50;
  private static final int LONGEST_SEQUENCE = 8;

  private static final Map<Character, KeyAction> KEYS =
      Map.ofEntries(
          Map.entry(' ', KeyAction.START_STOP),
          Map.entry('\r', KeyAction.AGAIN),
          Map.entry('\n', KeyAction.AGAIN),
          Map.entry('0', KeyAction.FIRST),
          Map.entry('+', KeyAction.MUCH_FASTER),
          Map.entry('=', KeyAction.MUCH_FASTER),
          Map.entry('-', KeyAction.MUCH_SLOWER),
          Map.entry('d', KeyAction.DOUBLE),
          Map.entry('h', KeyAction.HALF),
          Map.entry('t', KeyAction.TAP),
          Map.entry('l', KeyAction.LOOP),
          Map.entry('r', KeyAction.LOOP_ROUND),
          Map.entry('c', KeyAction.CLAPS),
          Map.entry('f', KeyAction.COUNTS),
          Map.entry('w', KeyAction.WAVES),
          Map.entry('k', KeyAction.TICKS),
          Map.entry('v', KeyAction.VOICE),
          Map.entry('b', KeyAction.BREATHS),
          Map.entry('s', KeyAction.DRONE),
          Map.entry('?', KeyAction.HELP),
          Map.entry('q', KeyAction.QUIT));

  private static final Map<String, KeyAction> SEQUENCES =
      Map.of(
          "A", KeyAction.FASTER,
          "B", KeyAction.SLOWER,
          "C", KeyAction.NEXT,
          "D", KeyAction.PREVIOUS,
          "H", KeyAction.FIRST,
          "1~", KeyAction.FIRST,
          "7~", KeyAction.FIRST,
          "5~", KeyAction.AGAIN,
          "6~", KeyAction.START_STOP);

  /** Gives characters one at a time. */
  interface Source {
    /** No character came in time. */
    int NONE = -2;

    /** No more characters will come. */
    int END = -1;

    /**
     * The next character.
     *
     * @param waitMs how long to wait for it, in milliseconds
     * @return the character, {@link #NONE} or {@link #END}
     * @throws IOException if the terminal has gone
     */
    int read(long waitMs) throws IOException;
  }

  private final Source source;

  KeyDecoder(Source source) {
    this.source = source;
  }

  /** The next press, or empty if none that means something comes in time. */
  Optional<KeyPress> next(long waitMs) throws IOException {
    int character = source.read(waitMs);
    long nanos = System.nanoTime();
    if (character == Source.END || character == CONTROL_C || character == CONTROL_D) {
      return Optional.of(new KeyPress(KeyAction.QUIT, 0, nanos));
    }
    if (character >= '1' && character <= '9') {
      return Optional.of(new KeyPress(KeyAction.ROUND, character - '0', nanos));
    }
    Optional<KeyAction> action =
        character == ESCAPE
            ? sequence()
            : Optional.ofNullable(KEYS.get((char) Character.toLowerCase(character)));
    return action.map(known -> new KeyPress(known, 0, nanos));
  }

  private Optional<KeyAction> sequence() throws IOException {
    int kind = source.read(SEQUENCE_MS);
    if (kind != '[' && kind != 'O') {
      return Optional.empty();
    }
    StringBuilder sequence = new StringBuilder();
    while (sequence.length() < LONGEST_SEQUENCE) {
      int character = source.read(SEQUENCE_MS);
      if (character < ' ') {
        return Optional.empty();
      }
      sequence.append((char) character);
      if (character >= '@' && character <= '~') {
        return Optional.ofNullable(SEQUENCES.get(sequence.toString()));
      }
    }
    return Optional.empty();
  }
}
