package org.matraloom.session;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Where a practice session is seen, on a terminal or in plain lines, and ended by a key. */
public final class PracticeDesk implements AutoCloseable {

  private static final String KEYS = "q or space ends the session; all that was recorded is kept";
  private static final int LARGE_FROM_ROW = 8;

  private final Optional<Screen> screen;
  private final PrintWriter lines;
  private final KeyDecoder keys;
  private String heading = "";

  private PracticeDesk(Optional<Screen> screen, PrintWriter lines, KeyDecoder.Source source) {
    this.screen = screen;
    this.lines = lines;
    this.keys = new KeyDecoder(source);
  }

  /**
   * Takes the terminal, if there is one.
   *
   * @param plain whether to tell all in lines also on a terminal
   * @param lines where lines go
   * @param keysIn where keys come from without a terminal; its end asks for nothing
   * @return the desk
   */
  public static PracticeDesk open(boolean plain, PrintWriter lines, InputStream keysIn) {
    Optional<Screen> screen = plain ? Optional.empty() : Screen.open();
    return screen.isPresent()
        ? new PracticeDesk(screen, lines, screen.get())
        : new PracticeDesk(screen, lines, new InputKeys(keysIn));
  }

  /**
   * Tells what is played next.
   *
   * @param words the pass, its tempo and its help
   */
  public void heading(String words) {
    heading = words;
    if (screen.isEmpty()) {
      lines.println(words);
      lines.flush();
    }
  }

  /**
   * Shows one sentence, and nothing else that is large.
   *
   * @param tempo the tempo of what comes next, in figures of five lines on a terminal
   * @param sentence what is said of the last pass
   * @param decision what was decided
   */
  public void say(int tempo, String sentence, String decision) {
    if (screen.isEmpty()) {
      lines.println("  " + sentence);
      lines.println("  " + decision);
      lines.flush();
    } else {
      screen.get().show(sentencePage(tempo, sentence, decision, screen.get().columns()));
    }
  }

  /** The sentence in capitals with air around it, under the tempo that comes. */
  static List<String> sentencePage(int tempo, String sentence, String decision, int columns) {
    List<String> page = new ArrayList<>(List.of(""));
    BigDigits.of(tempo).forEach(line -> page.add("    " + line));
    while (page.size() < LARGE_FROM_ROW) {
      page.add("");
    }
    broken(sentence.toUpperCase(Locale.ROOT), columns - 8)
        .forEach(line -> page.addAll(List.of("    " + line, "")));
    page.add("");
    broken(decision, columns - 8).forEach(line -> page.add("    " + line));
    page.addAll(List.of("", "    " + KEYS));
    return page;
  }

  /**
   * Tells that the voice rests now.
   *
   * @param sentence why, and for how long
   */
  public void rest(String sentence) {
    if (screen.isEmpty()) {
      lines.println(sentence);
      lines.flush();
    } else {
      List<String> page = new ArrayList<>(List.of("", ""));
      broken(sentence, screen.get().columns() - 8).forEach(line -> page.add("    " + line));
      page.addAll(List.of("", "    " + KEYS));
      screen.get().show(page);
    }
  }

  static List<String> broken(String text, int columns) {
    List<String> broken = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ")) {
      if (line.length() > 0 && line.length() + 1 + word.length() > columns) {
        broken.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() == 0 ? "" : " ").append(word);
    }
    broken.add(line.toString());
    return broken;
  }

  void show(PlayState state, InputLevel level, SaidMarks said) {
    screen.ifPresent(
        page ->
            page.show(
                LiveView.lines(
                    state.recording(heading, level.bar(), KEYS, Optional.of(said)),
                    page.columns(),
                    page.rows())));
  }

  /**
   * Tells something in the middle of a pass, in place of its heading.
   *
   * @param words a sentence
   */
  public void notice(String words) {
    heading = words;
    if (screen.isEmpty()) {
      lines.println("  " + words);
      lines.flush();
    }
  }

  /**
   * Tells a line of what was heard live, where there is no screen to show it on.
   *
   * @param words a sentence
   */
  public void tell(String words) {
    if (screen.isEmpty()) {
      notice(words);
    }
  }

  /**
   * Waits for a key a moment.
   *
   * @param waitMs how long, in milliseconds
   * @return whether the session is to end
   * @throws IOException if the terminal has gone
   */
  public boolean isEndAsked(long waitMs) throws IOException {
    Optional<KeyAction> action = keys.next(waitMs).map(KeyPress::action);
    return action.equals(Optional.of(KeyAction.QUIT))
        || action.equals(Optional.of(KeyAction.START_STOP));
  }

  @Override
  public void close() throws IOException {
    if (screen.isPresent()) {
      screen.get().close();
    }
  }
}
