package org.matraloom.app;

/** The exit codes of every command. */
final class ExitCode {

  /** Done. */
  static final int DONE = 0;

  /** The score or the take fails its check. */
  static final int CHECK_FAILED = 1;

  /** Bad input or usage. */
  static final int BAD_INPUT = 2;

  /** The machine could not: a device, a disk. */
  static final int MACHINE = 3;

  private ExitCode() {}
}
