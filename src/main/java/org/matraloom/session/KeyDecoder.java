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

  private static final Map<Character, Action> KEYS =
      Map.ofEntries(
          Map.entry(' ', Action.START_STOP),
          Map.entry('\r', Action.AGAIN),
          Map.entry('\n', Action.AGAIN),
          Map.entry('0', Action.FIRST),
          Map.entry('+', Action.MUCH_FASTER),
          Map.entry('=', Action.MUCH_FASTER),
          Map.entry('-', Action.MUCH_SLOWER),
          Map.entry('d', Action.DOUBLE),
          Map.entry('h', Action.HALF),
          Map.entry('t', Action.TAP),
          Map.entry('l', Action.LOOP),
          Map.entry('r', Action.LOOP_ROUND),
          Map.entry('c', Action.CLAPS),
          Map.entry('f', Action.COUNTS),
          Map.entry('w', Action.WAVES),
          Map.entry('k', Action.TICKS),
          Map.entry('v', Action.VOICE),
          Map.entry('b', Action.BREATHS),
          Map.entry('s', Action.DRONE),
          Map.entry('?', Action.HELP),
          Map.entry('q', Action.QUIT));

  private static final Map<String, Action> SEQUENCES =
      Map.of(
          "A", Action.FASTER,
          "B", Action.SLOWER,
          "C", Action.NEXT,
          "D", Action.PREVIOUS,
          "H", Action.FIRST,
          "1~", Action.FIRST,
          "7~", Action.FIRST,
          "5~", Action.AGAIN,
          "6~", Action.START_STOP);

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
  Optional<Press> next(long waitMs) throws IOException {
    int character = source.read(waitMs);
    long nanos = System.nanoTime();
    if (character == Source.END || character == CONTROL_C || character == CONTROL_D) {
      return Optional.of(new Press(Action.QUIT, 0, nanos));
    }
    if (character >= '1' && character <= '9') {
      return Optional.of(new Press(Action.ROUND, character - '0', nanos));
    }
    Optional<Action> action =
        character == ESCAPE
            ? sequence()
            : Optional.ofNullable(KEYS.get((char) Character.toLowerCase(character)));
    return action.map(known -> new Press(known, 0, nanos));
  }

  private Optional<Action> sequence() throws IOException {
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
