package org.matraloom.device;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/**
 * Where the program keeps what belongs to the user.
 *
 * <p>Source: freedesktop.org, "XDG Base Directory Specification", version 0.8, state and data
 * folders; on macOS and Windows the usual places for application data.
 */
public final class UserFolders {

  private static final String PROGRAM = "matraloom";

  private UserFolders() {}

  /** The folder for what was measured and may be measured again. */
  static Path state() {
    return state(System.getenv(), System.getProperty("os.name"), System.getProperty("user.home"));
  }

  static Path state(Map<String, String> environment, String system, String home) {
    return folder(environment, system, home, "XDG_STATE_HOME", "state");
  }

  /**
   * The folder for what the user made and wants to keep.
   *
   * @return {@code $XDG_DATA_HOME/matraloom}, usually {@code ~/.local/share/matraloom}; on macOS
   *     and Windows where application data is kept; it need not exist
   */
  public static Path data() {
    return data(System.getenv(), System.getProperty("os.name"), System.getProperty("user.home"));
  }

  /**
   * The folder for the voices that were recorded.
   *
   * @return a folder inside {@link #data()}; it need not exist
   */
  public static Path voices() {
    return data().resolve("voices");
  }

  static Path data(Map<String, String> environment, String system, String home) {
    return folder(environment, system, home, "XDG_DATA_HOME", "share");
  }

  private static Path folder(
      Map<String, String> environment, String system, String home, String variable, String usual) {
    String name = system.toLowerCase(Locale.ROOT);
    if (name.startsWith("mac")) {
      return Path.of(home, "Library", "Application Support", PROGRAM);
    }
    if (name.startsWith("windows")) {
      return Path.of(environment.getOrDefault("LOCALAPPDATA", home), PROGRAM);
    }
    Path base = Path.of(environment.getOrDefault(variable, ""));
    return base.isAbsolute() ? base.resolve(PROGRAM) : Path.of(home, ".local", usual, PROGRAM);
  }
}
