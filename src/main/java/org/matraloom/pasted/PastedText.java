package org.matraloom.pasted;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.matraloom.kanakku.FalseClaim;
import org.matraloom.notation.Reading;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Composition;
import org.matraloom.score.Length;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.time.Ratio;

/**
 * Makes a clean score of a text as people send it. Common practice of messages and typed lists: a
 * number and a point before a line, a total in brackets after it, bars or slashes between angas,
 * dashes for karvai, capitals for long sounds.
 */
public final class PastedText {

  private static final String SONG = "Song";

  private final Lexicon lexicon;
  private final PasteHead head = new PasteHead();
  private final Set<String> guesses = new LinkedHashSet<>();
  private final List<PastedLine> lines;
  private final List<String> unread;

  private static final int WIDEST = 80;

  private PastedText(String text, Lexicon lexicon) {
    this.lexicon = lexicon;
    PastedLines reader = new PastedLines(text, lexicon, head, guesses);
    this.lines = readable(reader.lines());
    this.unread = reader.unread();
  }

  /**
   * Makes a score.
   *
   * @param text the text, of any kind
   * @param lexicon the sollus to know
   * @return a score that can be read, and what was guessed
   * @throws IllegalArgumentException if no line of the text says a sollu that is known
   */
  public static TidyScore tidy(String text, Lexicon lexicon) {
    return new PastedText(text, lexicon).tidy();
  }

  private TidyScore tidy() {
    if (lines.isEmpty()) {
      throw new IllegalArgumentException(
          "no line of the text says a sollu that is known; matraloom sollus lists them");
    }
    List<String> made = new ArrayList<>();
    String top = head.write(made);
    String body = written(lines);
    Composition piece = together(top + body);
    if (!FalseClaim.in(Performance.of(piece)).isEmpty()) {
      guesses.add("bars are left out, for they do not stand where an anga ends");
      body = written(lines.stream().map(PastedText::withoutBars).toList());
      piece = together(top + body);
    }
    made.addAll(guesses);
    totals(piece, made);
    StringBuilder score = new StringBuilder();
    score.append("# Made of a text. What was not certain, and how it was taken:\n");
    made.forEach(guess -> note(guess, score));
    unread.forEach(line -> score.append("# not read: ").append(line).append('\n'));
    score.append('\n').append(top).append('\n').append(body);
    return new TidyScore(score.toString(), made, unread.size());
  }

  /** A note within the width of a terminal. */
  private static void note(String words, StringBuilder score) {
    StringBuilder line = new StringBuilder("#  ");
    for (String word : words.split(" ")) {
      if (line.length() + 1 + word.length() > WIDEST) {
        score.append(line).append('\n');
        line = new StringBuilder("#    ");
      }
      line.append(' ').append(word);
    }
    score.append(line).append('\n');
  }

  /** The lines that can be read alone; a guess is said of each of the others. */
  private List<PastedLine> readable(List<PastedLine> all) {
    List<PastedLine> good = new ArrayList<>();
    for (PastedLine line : all) {
      Reading reading = reading("tala adi\nLine = " + line.body() + "\n");
      if (reading.composition().isPresent()) {
        good.add(line);
      } else {
        guesses.add(
            "line "
                + line.number()
                + " is left out: "
                + reading.problems().get(0).message()
                + ", in "
                + line.body());
      }
    }
    return good;
  }

  private static PastedLine withoutBars(PastedLine line) {
    return line.withBody(line.body().replace("|", "").replaceAll(" +", " ").strip());
  }

  /** The phrases, the whole, and what is performed; equal lines are one phrase. */
  private String written(List<PastedLine> said) {
    Map<String, String> names = new LinkedHashMap<>();
    List<String> song = new ArrayList<>();
    StringBuilder text = new StringBuilder();
    for (PastedLine line : said) {
      String known = names.get(line.body());
      if (known == null) {
        known = free(line.label().isEmpty() ? "Line" + (names.size() + 1) : line.label(), names);
        names.put(line.body(), known);
        text.append(known).append(" = ").append(line.body()).append('\n');
      }
      song.add(line.said(known));
    }
    text.append('\n').append(SONG).append(" = ").append(String.join(" ", song));
    return text.append("\n\nperform\n").append(head.plan(SONG)).toString();
  }

  private static String free(String wanted, Map<String, String> names) {
    String name = wanted.equals(SONG) ? "Song1" : wanted;
    int number = 2;
    while (names.containsValue(name)) {
      name = wanted + "_" + number++;
    }
    return name;
  }

  private void totals(Composition piece, List<String> made) {
    List<Length> lengths = new ArrayList<>();
    piece.phrases().forEach((name, body) -> lengths.add(Length.of(body, piece.phrases())));
    Map<String, Integer> indices = new LinkedHashMap<>();
    for (PastedLine line : lines) {
      indices.putIfAbsent(line.body(), indices.size());
      Ratio matras = lengths.get(indices.get(line.body())).beats(1, 1);
      if (line.total().isPresent()
          && !Ratio.of(line.total().getAsInt()).equals(matras)
          && !Ratio.of(line.total().getAsInt()).equals(matras.times(line.times()))) {
        made.add(
            "line "
                + line.number()
                + " says "
                + line.total().getAsInt()
                + " matras, and has "
                + matras.toMixed());
      }
    }
  }

  /** Each line can be read; together they may be too long, or go beyond what a score may hold. */
  private Composition together(String score) {
    Reading reading = reading(score);
    if (reading.composition().isEmpty()) {
      throw new IllegalArgumentException(
          "the lines can be read one by one, but make no score together: "
              + reading.problems().get(0).message());
    }
    return reading.composition().get();
  }

  private Reading reading(String score) {
    return ScoreReader.read(score, "text", lexicon);
  }
}
