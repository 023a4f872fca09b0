package org.matraloom.pasted;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Length;
import org.matraloom.score.Lexicon;
import org.matraloom.time.Ratio;

/** Tells the lines of a text apart: sollus, names of what follows, the head, and the rest. */
final class PastedLines {

  private static final int MOST_KARVAI_AT_END = 4;
  private static final int LONGEST_LABEL = 30;
  private static final int MOST_WORDS_TOLD = 5;

  /** The date, the time and the sender that a message begins with when it is copied. */
  private static final Pattern STAMP =
      Pattern.compile("^\\[[\\d/.,: apmAPM-]{4,30}\\] [^:]{1,40}: ");

  private static final Pattern NUMBERED = Pattern.compile("^\\(?\\d{1,3}[.):]\\)? +(?=\\S)");
  private static final Pattern BULLET = Pattern.compile("^[-*\u2022\u00b7>\u2013] +");
  private static final Pattern LABEL =
      Pattern.compile("^([\\p{L}][\\p{L}\\p{M}\\d ]{0,29}?)\\s*[:=]\\s*(.*)$");
  private static final Pattern TIMES =
      Pattern.compile(
          "(?i)^(.*\\S)\\s+\\(?\\s*(?:[x\u00d7*] ?(\\d{1,3})|(\\d{1,3}) ?(?:x|times))\\s*\\)?$");
  private static final Pattern TOTAL =
      Pattern.compile(
          "(?i)^(.*?\\S)\\s*(?:\\( ?(\\d{1,4})(?: ?matras?)? ?\\)"
              + "|(?:= ?|\\[ ?)(\\d{1,4})(?: ?matras?)? ?\\]?)$");

  private static final Pattern GAP = Pattern.compile("^(.*\\S) ?\\( ?(\\d{1,2}) ?\\)$");

  private final PasteHead head;
  private final Lexicon lexicon;
  private final Set<String> guesses;
  private final boolean capitalsAreLong;
  private final List<PastedLine> lines = new ArrayList<>();
  private final List<String> unread = new ArrayList<>();
  private String label = "";

  PastedLines(String text, Lexicon lexicon, PasteHead head, Set<String> guesses) {
    this.lexicon = lexicon;
    this.head = head;
    this.guesses = guesses;
    this.capitalsAreLong = hasSmallSollus(text);
    List<String> all = text.lines().toList();
    for (int index = 0; index < all.size(); index++) {
      take(all.get(index), index + 1);
    }
  }

  List<PastedLine> lines() {
    return lines;
  }

  /** The lines in which nothing is known, or something is not. */
  List<String> unread() {
    return unread;
  }

  /** Whether some sollus are written all small: then capitals mean something. */
  private boolean hasSmallSollus(String text) {
    Matcher words = Pattern.compile("(?<![\\p{L}])[\\p{Ll}\\p{M}]{2,}(?![\\p{L}])").matcher(text);
    while (words.find()) {
      if (lexicon.split(words.group()).isPresent()) {
        return true;
      }
    }
    return false;
  }

  private void take(String written, int number) {
    String line = plain(written);
    if (line.isEmpty() || head.took(line)) {
      return;
    }
    line = without(NUMBERED, line, "numbers before lines are left out");
    line = without(BULLET, line, "marks before lines are left out");
    Matcher labelled = LABEL.matcher(line);
    if (labelled.matches() && lexicon.split(small(labelled.group(1))).isEmpty()) {
      label = labelled.group(1);
      line = labelled.group(2).strip();
    }
    if (!line.isEmpty()) {
      sollus(line, number);
    }
  }

  /** What every text may have and no score: quotation marks, signs that are no letters, tabs. */
  private static String plain(String written) {
    String line =
        written.replaceAll("[\"\u201c\u201d\u2018\u2019'`~!?]", "").replace('\u00a0', ' ');
    line =
        line.replaceAll("[\\p{So}\\p{Cn}\\p{Cf}\\x{fe0e}\\x{fe0f}]", "")
            .replaceAll("\\s+", " ")
            .strip();
    return STAMP.matcher(line).replaceFirst("");
  }

  private String without(Pattern pattern, String line, String guess) {
    String rest = pattern.matcher(line).replaceFirst("");
    if (!rest.equals(line)) {
      guesses.add(guess);
    }
    return rest;
  }

  private void sollus(String line, int number) {
    int times = 1;
    OptionalInt total = OptionalInt.empty();
    String rest = line;
    Matcher sum = TOTAL.matcher(rest);
    if (sum.matches() && isTotal(sum)) {
      total = OptionalInt.of(Integer.parseInt(sum.group(2) == null ? sum.group(3) : sum.group(2)));
      rest = sum.group(1);
      guesses.add("a number at the end of a line is taken as its total, not as a karvai");
    }
    Matcher again = TIMES.matcher(rest);
    if (again.matches()) {
      times = Integer.parseInt(again.group(2) == null ? again.group(3) : again.group(2));
      rest = again.group(1);
    }
    int gap = 0;
    Matcher karvai = GAP.matcher(rest);
    if (times > 1 && karvai.matches()) {
      gap = Integer.parseInt(karvai.group(2));
      rest = karvai.group(1);
      guesses.add("a karvai before a repeat is taken as one between the times, not after the last");
    }
    rest = rest.replaceAll("(?<=\\p{L})\\.$", "");
    PastedWords words = new PastedWords(lexicon, capitalsAreLong);
    String body = words.read(rest);
    PastedWords small = new PastedWords(lexicon, false);
    String plain = small.read(rest);
    if (total.isPresent() && matras(plain).equals(Optional.of(Ratio.of(total.getAsInt())))) {
      words = small;
      body = plain;
    }
    if (words.saysSomething() && words.unknown().isEmpty()) {
      guesses.addAll(words.guesses());
      lines.add(new PastedLine(number, name(label), body, Math.max(1, times), gap, total));
      label = "";
    } else if (!words.saysSomething() && line.length() <= LONGEST_LABEL && !lines.isEmpty()) {
      label = line;
    } else if (words.saysSomething() || !head.tookTitle(line)) {
      unread.add(line);
      head.prose(line.replaceAll("[.]$", ""));
      guesses.add(
          "line "
              + number
              + " is left out, for "
              + some(words.unknown())
              + (words.unknown().size() == 1
                  ? " is no sollu that is known"
                  : " are no sollus that are known"));
    }
  }

  private static String some(Set<String> words) {
    int more = words.size() - MOST_WORDS_TOLD;
    String told = words.stream().limit(MOST_WORDS_TOLD).collect(Collectors.joining(", "));
    return more > 0 ? told + " and " + more + " more" : told;
  }

  private Optional<Ratio> matras(String body) {
    return ScoreReader.read("tala adi\nLine = " + body + "\n", "text", lexicon)
        .composition()
        .map(piece -> Length.of(piece.phrases().get("Line"), piece.phrases()).matras());
  }

  /** A small number in brackets at the end of a line is a karvai. */
  private static boolean isTotal(Matcher sum) {
    return sum.group(3) != null || Integer.parseInt(sum.group(2)) > MOST_KARVAI_AT_END;
  }

  /** A name of a phrase begins with a capital; a script without capitals gives none. */
  private static String name(String label) {
    String letters = label.strip().replaceAll("[^\\p{L}\\p{M}\\d]+", "_").replaceAll("^_|_$", "");
    if (letters.isEmpty()) {
      return "";
    }
    String name = letters.substring(0, 1).toUpperCase(Locale.ROOT) + letters.substring(1);
    return Character.isUpperCase(name.codePointAt(0)) ? name : "";
  }

  private static String small(String text) {
    return text.toLowerCase(Locale.ROOT).strip();
  }
}
