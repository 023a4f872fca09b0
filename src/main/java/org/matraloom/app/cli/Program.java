package org.matraloom.app.cli;

import java.io.PrintWriter;
import picocli.CommandLine;

/** The program as a command sees it that runs others: the root of its command line. */
public interface Program {

  /**
   * Runs one more command line.
   *
   * @param out where results go
   * @param err where problems and progress go
   * @param arguments the command line
   * @return its exit code
   */
  int runAlso(PrintWriter out, PrintWriter err, String... arguments);

  /**
   * The command line with all commands, described in full.
   *
   * @return a new one
   */
  CommandLine whole();
}
