package org.matraloom.app.open;

import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** The browser of the desktop. */
final class Browser {

  private Browser() {}

  /** Opens an address; where there is no desktop, the printed address has to do. */
  static void open(String address) {
    try {
      new ProcessBuilder(command(System.getProperty("os.name"), address))
          .redirectErrorStream(true)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .start();
    } catch (IOException noDesktop) {
      // the address has been printed
    }
  }

  static List<String> command(String system, String address) {
    String name = system.toLowerCase(Locale.ROOT);
    if (name.startsWith("mac")) {
      return List.of("open", address);
    }
    return name.startsWith("windows")
        ? List.of("rundll32", "url.dll,FileProtocolHandler", address)
        : List.of("xdg-open", address);
  }
}
