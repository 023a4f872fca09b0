package org.matraloom.app.open;

import java.util.Arrays;
import java.util.Locale;
import org.matraloom.app.cli.UserError;
import org.matraloom.script.Script;

/** The scripts by the names that the option --script of the commands takes. */
final class Scripts {

  private Scripts() {}

  static Script of(String name) {
    return Arrays.stream(Script.values())
        .filter(script -> name(script).equals(name))
        .findFirst()
        .orElseThrow(() -> new UserError("there is no script " + name));
  }

  static String name(Script script) {
    return script.name().toLowerCase(Locale.ROOT);
  }
}
