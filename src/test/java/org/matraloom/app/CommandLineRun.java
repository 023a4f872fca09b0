package org.matraloom.app;

import java.io.PrintWriter;
import java.io.StringWriter;

/**
 * One run of the program inside a test.
 *
 * @param code the exit code
 * @param out what it printed
 * @param err what it complained of
 */
public record CommandLineRun(int code, String out, String err) {

  public static CommandLineRun of(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = Main.run(new PrintWriter(out), new PrintWriter(err), arguments);
    return new CommandLineRun(code, out.toString(), err.toString());
  }
}
