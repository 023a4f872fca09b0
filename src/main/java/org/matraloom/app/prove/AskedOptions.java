package org.matraloom.app.prove;

import java.util.Arrays;
import java.util.List;
import org.matraloom.app.cli.UserError;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Options that were typed and would be passed over: they are refused and never ignored. */
final class AskedOptions {

  private AskedOptions() {}

  /**
   * Refuses options that have no meaning here.
   *
   * @param command what was called
   * @param why a sentence that says for what they are
   * @param names the options
   * @throws UserError if one of them was given
   */
  static void refuse(CommandSpec command, String why, String... names) {
    ParseResult asked = command.commandLine().getParseResult();
    if (asked == null) {
      return;
    }
    List<String> given = Arrays.stream(names).filter(asked::hasMatchedOption).toList();
    if (!given.isEmpty()) {
      throw new UserError(String.join(", ", given) + ": " + why);
    }
  }
}
