package org.matraloom.host;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/**
 * Where the program keeps what belongs to the user.
 *
 * <p>Source: freedesktop.org, "XDG Base Directory Specification", version 0.8, state folder; on
 * macOS and Windows the usual places for application data.
 */
final class UserFolders {

  private static final String PROGRAM = "matraloom";

  private UserFolders() {}

  /** The folder for what was measured and may be measured again. */
  static Path state() {
    return state(System.getenv(), System.getProperty("os.name"), System.getProperty("user.home"));
  }

  static Path state(Map<String, String> environment, String system, String home) {
    String name = system.toLowerCase(Locale.ROOT);
    if (name.startsWith("mac")) {
      return Path.of(home, "Library", "Application Support", PROGRAM);
    }
    if (name.startsWith("windows")) {
      return Path.of(environment.getOrDefault("LOCALAPPDATA", home), PROGRAM);
    }
    String state = environment.getOrDefault("XDG_STATE_HOME", "");
    Path base = Path.of(state);
    return base.isAbsolute() ? base.resolve(PROGRAM) : Path.of(home, ".local", "state", PROGRAM);
  }
}
