package org.matraloom.app.cli;

/** The exit codes of every command. */
public final class ExitCode {

  /** Done. */
  public static final int DONE = 0;

  /** The score or the take fails its check. */
  public static final int CHECK_FAILED = 1;

  /** Bad input or usage. */
  public static final int BAD_INPUT = 2;

  /** The machine could not: a device, a disk. */
  public static final int MACHINE = 3;

  private ExitCode() {}
}
