package org.matraloom.app.practise;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.matraloom.app.cli.CommandLines;
import org.matraloom.app.cli.UserError;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** Reads the words of the drill command for a drill to be played. */
final class DrillToPlay {

  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  private DrillToPlay() {}

  /**
   * Makes a drill; its problems are told as by the drill command. Files that the words name are
   * written too.
   *
   * @param words such as "switch 4 5 --every halving"; a name with spaces stands in double quotes
   * @throws UserError if there is nothing to play
   * @throws IOException if a file cannot be read or written
   */
  static MadeDrill of(String words, PrintWriter out, PrintWriter err) throws IOException {
    DrillMaker maker = maker(words, out, err);
    MadeDrill drill = maker.drill();
    maker.output().writeNamed(drill);
    return drill;
  }

  private static DrillMaker maker(String words, PrintWriter out, PrintWriter err) {
    CommandLine line = CommandLines.prepared(new CommandLine(new DrillCommand()), out, err);
    try {
      ParseResult parsed = line.parseArgs(split(words).toArray(String[]::new));
      if (CommandLine.executeHelpRequest(parsed) != null) {
        throw UserError.alreadyTold();
      }
      if (!parsed.hasSubcommand()) {
        line.usage(out);
        throw UserError.alreadyTold();
      }
      return (DrillMaker) parsed.subcommand().commandSpec().userObject();
    } catch (ParameterException misused) {
      CommandLines.explainUsage(misused);
      throw UserError.alreadyTold();
    }
  }

  private static List<String> split(String words) {
    List<String> split = new ArrayList<>();
    Matcher matcher = WORD.matcher(words);
    while (matcher.find()) {
      split.add(matcher.group(1) == null ? matcher.group(2) : matcher.group(1));
    }
    return split;
  }
}
