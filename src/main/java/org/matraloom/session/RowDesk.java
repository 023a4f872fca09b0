package org.matraloom.session;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where the recording of a voice is seen, on a terminal or in plain lines, and what its keys ask
 * for.
 */
public final class RowDesk implements AutoCloseable {

  private final Optional<Screen> screen;
  private final PrintWriter lines;
  private final KeyDecoder.Source keys;
  private String heading = "";
  private String words = "";
  private String told = "";

  private RowDesk(Optional<Screen> screen, PrintWriter lines, KeyDecoder.Source keys) {
    this.screen = screen;
    this.lines = lines;
    this.keys = keys;
  }

  /**
   * Takes the terminal, if there is one.
   *
   * @param plain whether to tell all in lines also on a terminal
   * @param lines where lines go
   * @param keysIn where keys come from without a terminal; its end asks for nothing
   * @return the desk
   */
  public static RowDesk open(boolean plain, PrintWriter lines, InputStream keysIn) {
    Optional<Screen> screen = plain ? Optional.empty() : Screen.open();
    return screen.isPresent()
        ? new RowDesk(screen, lines, screen.get())
        : new RowDesk(screen, lines, new InputKeys(keysIn));
  }

  /**
   * Tells which row comes.
   *
   * @param which its number, of how many
   * @param row what is said
   * @param says how often it is to be said
   */
  public void row(String which, String row, int says) {
    heading = which;
    words = row;
    line(
        which
            + ": listen to \""
            + row
            + "\", then say it "
            + says
            + (says == 1 ? " time" : " times"));
  }

  /**
   * Tells what was heard of a row, or why the voice rests.
   *
   * @param sentence a sentence
   */
  public void tell(String sentence) {
    told = sentence;
    line("  " + sentence);
  }

  private void line(String text) {
    if (screen.isEmpty()) {
      lines.println(text);
      lines.flush();
    }
  }

  void show(RowView.Now now, Optional<Integer> beat, InputLevel level) {
    screen.ifPresent(
        page ->
            page.show(
                new RowView(heading, words, now, beat, level.bar(), told)
                    .lines(page.columns(), page.rows())));
  }

  /**
   * Waits for a key.
   *
   * @param waitMs how long, in milliseconds
   * @return what it asks for; empty if none that means something comes in time
   * @throws IOException if the terminal has gone
   */
  public Optional<RowKey> key(long waitMs) throws IOException {
    return RowKey.of(keys.read(waitMs));
  }

  /**
   * Shows a sentence alone and waits.
   *
   * @param sentence why there is nothing to do
   * @param longestMs how long, in milliseconds; any key ends it
   * @return what the key asks for; empty if none came
   * @throws IOException if the terminal has gone
   */
  public Optional<RowKey> rest(String sentence, long longestMs) throws IOException {
    if (screen.isPresent()) {
      List<String> page = new ArrayList<>(List.of("", ""));
      PracticeDesk.broken(sentence, screen.get().columns() - 8)
          .forEach(each -> page.add("    " + each));
      page.addAll(List.of("", "    " + RowKey.KEYS));
      screen.get().show(page);
    } else {
      line(sentence);
    }
    return key(longestMs);
  }

  @Override
  public void close() throws IOException {
    if (screen.isPresent()) {
      screen.get().close();
    }
  }
}
