package org.matraloom.app;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.matraloom.sound.Passage;
import org.matraloom.sound.PcmFormat;
import org.matraloom.sound.Sruti;
import picocli.CommandLine;

/** Makes a drill, asked for in the words of the drill command, to be played and not written. */
final class DrillToPlay implements DrillOutput.Listener {

  /** A drill that has been made. */
  record Made(
      List<Passage> passages, int countInAvartanas, Optional<Sruti> sruti, PcmFormat format) {}

  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  private Optional<Made> made = Optional.empty();

  private DrillToPlay() {}

  /**
   * Makes a drill; its problems are told as by the drill command.
   *
   * @param words such as "switch 4 5 --every halving"; a name with spaces stands in double quotes
   * @throws UserError if there is nothing to play
   */
  static Made of(String words, PrintWriter out, PrintWriter err) {
    DrillToPlay drill = new DrillToPlay();
    CommandLine line = new CommandLine(new DrillCommand(), drill.factory());
    Main.prepared(line, out, err).execute(split(words).toArray(String[]::new));
    return drill.made.orElseThrow(UserError::alreadyTold);
  }

  private CommandLine.IFactory factory() {
    CommandLine.IFactory usual = CommandLine.defaultFactory();
    return new CommandLine.IFactory() {
      @Override
      public <K> K create(Class<K> type) throws Exception {
        return type == DrillOutput.class
            ? type.cast(new DrillOutput(DrillToPlay.this))
            : usual.create(type);
      }
    };
  }

  private static List<String> split(String words) {
    List<String> split = new ArrayList<>();
    Matcher matcher = WORD.matcher(words);
    while (matcher.find()) {
      split.add(matcher.group(1) == null ? matcher.group(2) : matcher.group(1));
    }
    return split;
  }

  @Override
  public void hear(
      List<Passage> passages, int countInAvartanas, Optional<Sruti> sruti, PcmFormat format) {
    made = Optional.of(new Made(passages, countInAvartanas, sruti, format));
  }
}
