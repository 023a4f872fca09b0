package org.matraloom.mouth;

import java.io.IOException;

/** A voice that cannot be read or made; the message says where, what was found and what helps. */
public final class KitException extends IOException {

  private static final long serialVersionUID = 1;

  /**
   * A fault.
   *
   * @param message one sentence, beginning with the place of the fault
   */
  public KitException(String message) {
    super(message);
  }
}
