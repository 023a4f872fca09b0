package org.matraloom.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine.IVersionProvider;

/** The version that the build wrote into the program; read only when somebody asks for it. */
final class ProgramVersion implements IVersionProvider {

  private static final String FILE = "/org/matraloom/version.txt";

  /** Keeps picocli's factory happy; the class has no state. */
  ProgramVersion() {}

  @Override
  public String[] getVersion() {
    return new String[] {line()};
  }

  /** The program's name and its version. */
  static String line() {
    try (InputStream in = ProgramVersion.class.getResourceAsStream(FILE)) {
      return Main.NAME + " " + new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
