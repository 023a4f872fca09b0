package org.matraloom.app.open;

import java.io.PrintWriter;
import org.matraloom.app.cli.Program;
import picocli.CommandLine;

/** A program of which nothing is asked. */
final class NoProgram implements Program {
  @Override
  public int runAlso(PrintWriter out, PrintWriter err, String... arguments) {
    throw new AssertionError("no command is run here");
  }

  @Override
  public CommandLine whole() {
    throw new AssertionError("no command is described here");
  }
}
