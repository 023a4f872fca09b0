package org.matraloom.pasted;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Sollu;

/** Turns the words, numbers and marks of one line into the signs of a score. */
final class PastedWords {

  private static final Pattern PIECE =
      Pattern.compile(
          "[xX\u00d7*] ?(?<times>\\d{1,3})"
              + "|(?<word>[\\p{L}\\p{M}]+(?:-[\\p{L}\\p{M}]+)*)"
              + "|\\( ?(?<karvai>\\d{1,2}) ?\\)"
              + "|(?<number>\\d{1,2})"
              + "|(?<bar>\\|\\|?|//?|\u0964|\u0965)"
              + "|(?<mark>[,;.\\[\\]{}():\u2026_\u2010-\u2015\u2212-])");

  private static final Set<String> BARS = Set.of("|", "/", "\u0964");

  private final Lexicon lexicon;
  private final boolean capitalsAreLong;
  private final List<String> signs = new ArrayList<>();
  private final Set<String> guesses = new LinkedHashSet<>();
  private final Set<String> unknown = new LinkedHashSet<>();

  /**
   * Words of a text.
   *
   * @param capitalsAreLong whether the text has both, so that capitals mean twice the length
   */
  PastedWords(Lexicon lexicon, boolean capitalsAreLong) {
    this.lexicon = lexicon;
    this.capitalsAreLong = capitalsAreLong;
  }

  /** What the line says. */
  String read(String line) {
    Matcher pieces = PIECE.matcher(line);
    while (pieces.find()) {
      if (pieces.group("word") != null) {
        word(pieces.group("word"));
      } else if (pieces.group("times") != null) {
        times(pieces.group("times"));
      } else if (pieces.group("karvai") != null) {
        karvai(Integer.parseInt(pieces.group("karvai")));
      } else if (pieces.group("number") != null) {
        signs.add(pieces.group("number"));
      } else if (pieces.group("bar") != null) {
        signs.add(BARS.contains(pieces.group("bar")) ? "|" : "||");
      } else {
        mark(pieces.group("mark"));
      }
    }
    return brackets(String.join(" ", signs).replaceAll(" +", " "));
  }

  /** What was not certain in it. */
  Set<String> guesses() {
    return guesses;
  }

  /** The words in it that are no sollus. */
  Set<String> unknown() {
    return unknown;
  }

  /** Whether something in it is said. */
  boolean saysSomething() {
    return signs.stream().anyMatch(sign -> Character.isLetterOrDigit(sign.codePointAt(0)));
  }

  private void word(String written) {
    String small = Normalizer.normalize(written, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
    Optional<List<Sollu>> sollus = lexicon.split(small);
    if (sollus.isEmpty()) {
      unknown.add(written);
      return;
    }
    boolean capitals = written.length() > 1 && written.equals(written.toUpperCase(Locale.ROOT));
    if (capitals && capitalsAreLong && !small.equals(written)) {
      guesses.add("capitals are taken as twice as long");
      signs.add(
          sollus.get().stream().map(Sollu::spelling).collect(Collectors.joining(" , ", "", " ,")));
    } else {
      signs.add(small);
    }
  }

  /** A repeat belongs to the bracket before it, or to the word. */
  private void times(String count) {
    int last = signs.size() - 1;
    if (last < 0) {
      return;
    }
    String before = signs.get(last);
    boolean closes = before.equals(")") || before.equals("]") || before.equals("}");
    signs.set(last, (closes ? before : "(" + before + ")") + " x" + count);
  }

  /** A number in brackets after a group is its karvai in a score too; after a word it is commas. */
  private void karvai(int matras) {
    int last = signs.size() - 1;
    if (last >= 0 && signs.get(last).matches("\\d+(\\*\\d+)?")) {
      signs.set(last, signs.get(last) + "(" + matras + ")");
    } else if (last >= 0) {
      guesses.add("a number in brackets after a word is taken as matras of karvai");
      signs.add("; ".repeat(matras / 2) + ", ".repeat(matras % 2));
    }
  }

  private void mark(String mark) {
    switch (mark) {
      case ",", ";", "[", "]", "{", "}", "(", ")" -> signs.add(mark);
      case "." -> signs.add(".");
      case "\u2026" -> signs.add(". . .");
      case ":" -> {
        if (!signs.isEmpty() && signs.size() > 1 && signs.get(signs.size() - 2).equals("{")) {
          signs.add(":");
        }
      }
      default -> {
        guesses.add("a dash is taken as a matra of karvai");
        signs.add(",");
      }
    }
  }

  /** Round brackets that are not repeated say nothing in a score. */
  private String brackets(String text) {
    String joined =
        text.replace("[ ", "[").replace(" ]", "]").replace("{ ", "{").replace(" }", "}");
    joined = joined.replace("( ", "(").replace(" )", ")").replace(" :", ":");
    Matcher plain = Pattern.compile("\\(([^()]*[^()\\d][^()]*)\\)(?! x\\d)").matcher(joined);
    if (plain.find()) {
      guesses.add("round brackets without a repeat are left out; [ ] would be double speed");
      joined = plain.replaceAll("$1");
    }
    return joined.strip();
  }
}
