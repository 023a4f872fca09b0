package org.matraloom.app.cli;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says in plain words what is wrong with a command line. */
final class UsageWords {

  private static final Pattern ONE_OF =
      Pattern.compile("expected one of \\[(.*)] \\(case-insensitive\\) but was ('.*')");

  private UsageWords() {}

  static String of(ParameterException error) {
    if (error instanceof UnmatchedArgumentException unmatched && !unmatched.isUnknownOption()) {
      return "not understood: " + String.join(" ", unmatched.getUnmatched());
    }
    Matcher choice = ONE_OF.matcher(error.getMessage());
    return choice.find()
        ? error.getMessage().substring(0, choice.start())
            + choice.group(2)
            + " is none of "
            + choice.group(1).toLowerCase(Locale.ROOT)
        : error.getMessage();
  }
}
