package org.matraloom.log;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;

/** A process that adds numbered records and says which are on the disk. */
final class LogWriterProcess {

  private LogWriterProcess() {}

  public static void main(String[] arguments) throws IOException {
    PracticeLog log = new PracticeLog(Path.of(arguments[0]));
    int from = Integer.parseInt(arguments[1]);
    int to = Integer.parseInt(arguments[2]);
    PrintStream out = System.out;
    for (int number = from; number < to; number++) {
      log.append(Entries.numbered(number));
      out.println(number);
    }
  }

  static Process start(Path log, int from, int to) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            System.getProperty("java.class.path"),
            LogWriterProcess.class.getName(),
            log.toString(),
            Integer.toString(from),
            Integer.toString(to))
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }
}
