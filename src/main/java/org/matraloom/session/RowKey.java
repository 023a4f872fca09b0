package org.matraloom.session;

import java.util.Optional;

/** What a key asks for while rows are recorded for a voice. */
public enum RowKey {
  /** The row once more. */
  AGAIN,
  /** On without this row. */
  SKIP,
  /** A pause. */
  PAUSE,
  /** The end; what was recorded is kept. */
  END;

  /** The keys in words. */
  static final String KEYS = "a again   s skip this row   p or space pause   q end, all is kept";

  private static final int CONTROL_C = 3;
  private static final int CONTROL_D = 4;

  /** What a character of a terminal or a stream asks for. */
  static Optional<RowKey> of(int character) {
    return switch (character) {
      case 'a', 'A', '\r' -> Optional.of(AGAIN);
      case 's', 'S' -> Optional.of(SKIP);
      case 'p', 'P', ' ' -> Optional.of(PAUSE);
      case 'q', 'Q', CONTROL_C, CONTROL_D, KeyDecoder.Source.END -> Optional.of(END);
      default -> Optional.empty();
    };
  }
}
