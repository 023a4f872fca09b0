package org.matraloom.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.spell.ScorePrinter;

/** Spoils scores at random: whatever comes of it, the reader answers and its answer holds. */
class ScoreFuzzTest {

  private static final int SCORES = 20_000;
  private static final int ORIGINALS = 200;
  private static final int LONGEST = 600;
  private static final String[] PIECES = {
    "(",
    ")",
    "[",
    "]",
    "[[",
    "]]",
    "{",
    "}",
    "{5:",
    ":",
    "x",
    "x3",
    " x999 ",
    "X3",
    "×",
    "-",
    "–",
    "*",
    "5*6",
    "9(1)9",
    "(1)",
    ",",
    ";",
    ".",
    "|",
    "||",
    "=",
    "+",
    "/",
    "1/2",
    "#",
    "\n",
    "\r",
    "\t",
    " ",
    "\n  ",
    "ta",
    "takadimi",
    "kiṭa",
    "Ta",
    "Song",
    "Song = ",
    "\nperform\n",
    "tala ",
    "tempo ",
    "start ",
    "nadai ",
    "kalam ",
    "rest ",
    "until ",
    "beat ",
    "beats",
    "matras",
    "sam",
    "0",
    "7",
    "99",
    "1000",
    "99999999999",
    "é",
    "t\u0323\u0304",
    "🇮🇳",
    "\ud800",
    "\udc00",
    "\u0000",
    "\u200b",
    "\ufeff",
    "\u2028",
    "…",
    "½",
    "_",
    "'",
    "த",
    "\u0301",
    "I4 O O",
    "3+2+2",
    "= 8"
  };

  private final RandomScores random = new RandomScores(74_205);
  private final Lexicon lexicon = Lexicon.standard();

  @Test
  void everySpoiltScoreIsAnswered() {
    List<String> originals = new ArrayList<>();
    while (originals.size() < ORIGINALS) {
      String text = random.text();
      if (text.length() <= LONGEST) {
        originals.add(text);
      }
    }
    int understood = 0;
    for (int number = 0; number < SCORES; number++) {
      String spoilt = spoil(originals.get(number % ORIGINALS));
      if (check(spoilt)) {
        understood++;
      }
    }
    assertTrue(understood > SCORES / 100, "some are still understood: " + understood);
    assertTrue(understood < SCORES / 2, "most are spoilt: " + understood);
  }

  private boolean check(String text) {
    Reading reading = ScoreReader.read(text, "f", lexicon);
    long errors =
        reading.problems().stream()
            .filter(problem -> problem.severity() == Problem.Severity.ERROR)
            .count();
    assertEquals(errors == 0, reading.composition().isPresent(), text);
    int lines = text.split("\r\n|\r|\n", -1).length;
    for (Problem problem : reading.problems()) {
      if (problem.place().equals(Problem.WHOLE_FILE)) {
        assertEquals(0, problem.width());
        continue;
      }
      assertTrue(problem.place().line() >= 1 && problem.place().line() <= lines, text);
      assertTrue(problem.place().column() >= 1, text);
      assertTrue(problem.place().column() <= problem.sourceLine().length() + 1, text);
      assertFalse(problem.format().isBlank(), text);
    }
    reading.composition().ifPresent(composition -> checkPrinted(composition, text));
    return errors == 0;
  }

  private void checkPrinted(Composition composition, String text) {
    Reading again = ScoreReader.read(ScorePrinter.print(composition), "again", lexicon);
    assertEquals(
        RandomScores.withoutPlaces(composition),
        again.composition().map(RandomScores::withoutPlaces).orElse(null),
        text);
    assertTrue(Performance.of(composition).beats().signum() > 0, text);
  }

  private String spoil(String text) {
    StringBuilder spoilt = new StringBuilder(text);
    int edits = 1 + random.number(6);
    for (int edit = 0; edit < edits && spoilt.length() > 0; edit++) {
      int at = random.number(spoilt.length());
      int to = Math.min(spoilt.length(), at + 1 + random.number(4));
      switch (random.number(6)) {
        case 0 -> spoilt.delete(at, to);
        case 1 -> spoilt.insert(at, PIECES[random.number(PIECES.length)]);
        case 2 -> spoilt.replace(at, to, PIECES[random.number(PIECES.length)]);
        case 3 -> spoilt.insert(at, spoilt.substring(random.number(at + 1), at));
        case 4 -> swapLines(spoilt);
        default -> spoilt.setLength(Math.max(1, spoilt.length() - random.number(20)));
      }
    }
    return spoilt.toString();
  }

  private void swapLines(StringBuilder text) {
    List<String> lines = new ArrayList<>(Arrays.asList(text.toString().split("(?<=\n)")));
    String line = lines.remove(random.number(lines.size()));
    lines.add(random.number(lines.size() + 1), line);
    text.setLength(0);
    lines.forEach(text::append);
  }
}
