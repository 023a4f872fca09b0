package org.matraloom.door;

/** Why something that was asked cannot be done, in words for the one who asked. */
public final class DoorFault extends Exception {

  private static final long serialVersionUID = 1L;

  private final int status;

  /**
   * Makes a fault.
   *
   * @param status a status of HTTP, 400 or more
   * @param message what was given, what is allowed, and how to put it right
   */
  public DoorFault(int status, String message) {
    super(message, null, false, false);
    this.status = status;
  }

  /**
   * The status it is told with.
   *
   * @return a status of HTTP
   */
  public int status() {
    return status;
  }
}
