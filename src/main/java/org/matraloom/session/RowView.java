package org.matraloom.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What is seen while a row is recorded, as lines of text: what to do now is largest, and nothing
 * depends on colour.
 *
 * @param heading which row it is, of how many
 * @param words what is said
 * @param now what to do at this moment
 * @param beat the clap that is heard, from 1; empty before the first
 * @param meter the level of the input
 * @param told what was said of the row before
 */
record RowView(
    String heading, String words, Now now, Optional<Integer> beat, String meter, String told) {

  private static final int USUAL_WIDTH = 80;
  private static final String MARGIN = "    ";

  /** What a reciter is to do. */
  enum Now {
    WAIT("the claps begin"),
    LISTEN("LISTEN"),
    SAY("SAY IT NOW");

    private final String words;

    Now(String words) {
      this.words = words;
    }
  }

  /** What is heard at a beat of the row, which begins at beat 0. */
  static Now at(long beat, int beatsInRow) {
    if (beat < 0) {
      return Now.WAIT;
    }
    return beat < beatsInRow ? Now.LISTEN : Now.SAY;
  }

  /** The lines of a screen, each cut to its width, no more than its height. */
  List<String> lines(int width, int height) {
    List<String> lines = new ArrayList<>(List.of(heading, "", MARGIN + now.words, ""));
    lines.add(MARGIN + spaced(words));
    lines.add("");
    List<String> figure = beat.map(BigDigits::of).orElse(List.of("", "", "", "", ""));
    figure.forEach(line -> lines.add(MARGIN + line));
    lines.add("");
    lines.add("  level   " + meter);
    lines.add("");
    lines.addAll(PracticeDesk.broken("  " + told, USUAL_WIDTH - 2));
    lines.add("");
    lines.add(RowKey.KEYS);
    return lines.stream()
        .limit(Math.max(1, height))
        .map(line -> line.length() > width ? line.substring(0, Math.max(0, width)) : line)
        .toList();
  }

  /** Capitals with air between them, to be read from where one stands; as they are if too long. */
  private static String spaced(String words) {
    String large = words.toUpperCase(Locale.ROOT).replace(" ", "  ");
    String apart = large.replaceAll("(?<=\\S)(?=\\S)", " ");
    return apart.length() > USUAL_WIDTH - 2 * MARGIN.length() ? words : apart;
  }
}
