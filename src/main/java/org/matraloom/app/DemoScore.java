package org.matraloom.app;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** The piece that comes with the program. */
public final class DemoScore {

  /** The name it is shown and saved under. */
  static final String FILE = "river-steps.loom";

  private DemoScore() {}

  /**
   * The score as text.
   *
   * @return the text of the piece, in UTF-8 with line feeds
   * @throws IOException if the program's own file cannot be read
   */
  public static String text() throws IOException {
    try (InputStream in = DemoScore.class.getResourceAsStream(FILE)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
