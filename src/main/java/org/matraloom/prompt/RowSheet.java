package org.matraloom.prompt;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.matraloom.wav.WholeText;

/**
 * The cue sheet beside a recording of a row: a line with the time of each sollu for each saying
 * that was good, and in remarks what was not, and why.
 */
public final class RowSheet {

  private RowSheet() {}

  /**
   * The cue sheet of a recording of a row.
   *
   * @param recording the recording
   * @return its file, which may not be there
   */
  public static Path of(Path recording) {
    String name = recording.getFileName().toString();
    return recording.resolveSibling(name.replaceFirst("\\.wav$", ".txt"));
  }

  /**
   * Notes what was good in a recording, and what was not, and why.
   *
   * @param recording the recording
   * @param row what was asked for in it
   * @param says the verdicts
   * @throws IOException if the sheet cannot be written
   */
  public static void note(Path recording, AskedRow row, List<SayVerdict> says) throws IOException {
    StringBuilder text = new StringBuilder("# " + row.words() + "\n");
    for (SayVerdict say : says) {
      if (say.isGood()) {
        for (int i = 0; i < say.seconds().size(); i++) {
          text.append(
              String.format(
                  Locale.ROOT,
                  "%s%.4f %s",
                  i == 0 ? "" : " ",
                  say.seconds().get(i),
                  row.places().get(i).sound()));
        }
        text.append('\n');
      } else {
        text.append("# again: ").append(say.fault().orElseThrow()).append('\n');
      }
    }
    WholeText.put(of(recording), text.toString());
  }

  /**
   * How often a row was said well in a recording.
   *
   * @param recording the recording
   * @return 0 if it has no sheet
   * @throws IOException if the sheet cannot be read
   */
  public static int good(Path recording) throws IOException {
    Path sheet = of(recording);
    if (!Files.isRegularFile(sheet)) {
      return 0;
    }
    try (Stream<String> lines = Files.lines(sheet)) {
      return (int) lines.filter(line -> !line.isBlank() && !line.startsWith("#")).count();
    }
  }

  /**
   * Gives up a recording.
   *
   * @param recording one that was made for a row
   * @throws IOException if it cannot be removed
   */
  public static void drop(Path recording) throws IOException {
    Files.deleteIfExists(of(recording));
    Files.deleteIfExists(recording);
  }
}
