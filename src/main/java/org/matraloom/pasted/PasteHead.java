package org.matraloom.pasted;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.matraloom.spell.TalaReader;

/** The lines of a text that speak of the piece: tala, tempo, nadai, title. */
final class PasteHead {

  private static final String TALA_WORD = "(?:th?aala(?:m)?|th?ala(?:m)?|taal)";
  private static final Pattern TALA =
      Pattern.compile("(?i)" + TALA_WORD + "\\s*[:=-]?\\s*([^,;]+?)(?:[,;]\\s*(.*))?");
  private static final Pattern NAMED_TALA =
      Pattern.compile("(?i)(?:in )?([\\p{L} ]+?)\\s+" + TALA_WORD + "(?:[,; ]\\s*(.*))?");
  private static final Pattern TEMPO =
      Pattern.compile("(?i)(?:tempo|bpm)\\s*[:=-]?\\s*(\\d{1,3})(?: ?bpm)?|(\\d{1,3}) ?bpm");
  private static final Pattern NADAI =
      Pattern.compile(
          "(?i)(?:nadai|nade|gati|gathi)\\s*[:=-]?\\s*(\\w+)|(\\w+)\\s+(?:nadai|nade|gati|gathi)");
  private static final Pattern KALAI =
      Pattern.compile("(?i)kalai\\s*[:=-]?\\s*([124])|([124])[ -]?kalai");
  private static final Pattern IN_BRACKETS = Pattern.compile("([^()]*)\\(([^()]+)\\)[ .:]*");
  private static final Pattern TITLE = Pattern.compile("(?i)title\\s*[:=-]\\s*(.+)");
  private static final Pattern ROUNDS =
      Pattern.compile("(?i)(?:rounds? ?)?([1-9](?: ?- ?[1-9]){1,9})");
  private static final Pattern IN = Pattern.compile("(?i)[,;:]? in (?=\\S)");
  private static final int LONGEST_TITLE = 80;
  private static final Pattern ALIKE = Pattern.compile("(.)\\1*");
  private static final List<String> NADAIS =
      List.of("tisra", "tisram", "chatusra", "chatusram", "khanda", "khandam", "misra", "misram");

  private String title = "";
  private String prose = "";
  private String tala = "";
  private String tempo = "";
  private String nadai = "";
  private String rounds = "";
  private String kalai = "";

  /** Takes a line if it is one of these. */
  boolean took(String line) {
    Matcher titled = TITLE.matcher(line);
    Matcher beats = TEMPO.matcher(line);
    Matcher matras = NADAI.matcher(line);
    Matcher twofold = KALAI.matcher(line);
    Matcher each = ROUNDS.matcher(line);
    if (twofold.matches()) {
      kalai = first(twofold);
    } else if (each.matches()) {
      rounds = each.group(1).replace(" ", "");
    } else if (titled.matches()) {
      title = titled.group(1);
    } else if (beats.matches()) {
      tempo = beats.group(1) == null ? beats.group(2) : beats.group(1);
    } else if (matras.matches() && isNadai(first(matras))) {
      nadai = first(matras).toLowerCase(Locale.ROOT);
    } else {
      return tookTala(TALA.matcher(line)) || tookTala(NAMED_TALA.matcher(line)) || tookList(line);
    }
    return true;
  }

  /** Takes {@code Ferry Steps (adi, 2 kalai, tempo 60)}, if all in the brackets is of the head. */
  private boolean tookList(String line) {
    Matcher titled = IN_BRACKETS.matcher(line);
    String list = titled.matches() ? titled.group(2) : line;
    List<String> parts = List.of(list.strip().split("\\s*[,;]\\s*"));
    PasteHead trial = new PasteHead();
    boolean all = list.length() < line.length() || parts.size() > 1;
    if (!all || !parts.stream().allMatch(trial::tookPart)) {
      return false;
    }
    parts.forEach(this::tookPart);
    if (titled.matches() && !titled.group(1).isBlank()) {
      tookTitle(titled.group(1).strip());
    }
    return true;
  }

  /** One of several in a line, among which a tala needs no word before it. */
  private boolean tookPart(String part) {
    if (TalaReader.read(part).tala().isPresent() && part.matches("(?U)[\\p{Alpha} ]+")) {
      tala = part.toLowerCase(Locale.ROOT);
      return true;
    }
    return !part.contains(",") && !part.contains("(") && took(part);
  }

  private static String first(Matcher matcher) {
    return matcher.group(1) == null ? matcher.group(2) : matcher.group(1);
  }

  private static boolean isNadai(String word) {
    return word.matches("[1-9]") || NADAIS.contains(word.toLowerCase(Locale.ROOT));
  }

  private boolean tookTala(Matcher line) {
    if (!line.matches() || TalaReader.read(line.group(1)).tala().isEmpty()) {
      return false;
    }
    tala = line.group(1).toLowerCase(Locale.ROOT).strip();
    return line.group(2) == null || line.group(2).isBlank() || took(line.group(2).strip());
  }

  /** Takes a line without any sollu for the title, if there is none yet. */
  boolean tookTitle(String line) {
    if (!title.isEmpty()) {
      return false;
    }
    title = withoutSetting(line);
    return true;
  }

  /** Keeps a sentence that says no sollus: a title, if nothing else is one. */
  void prose(String line) {
    String rest = withoutSetting(line);
    if (prose.isEmpty() && rest.length() <= LONGEST_TITLE) {
      prose = rest;
    }
  }

  /** What stands before {@code in adi tala, khanda nadai} at the end of a sentence. */
  private String withoutSetting(String line) {
    Matcher setting = IN.matcher(line);
    for (int from = 0; setting.find(from); from = setting.start() + 1) {
      List<String> parts =
          List.of(line.substring(setting.end()).split("\\s*(?:[,;]|\\band\\b)\\s*"));
      PasteHead trial = new PasteHead();
      if (parts.stream().allMatch(trial::tookPart)) {
        parts.forEach(this::tookPart);
        return line.substring(0, setting.start()).strip();
      }
    }
    return line;
  }

  /** The head of the score; what it has to make up is said. */
  String write(List<String> guesses) {
    List<String> lines = new ArrayList<>();
    if (title.isEmpty() && !prose.isEmpty()) {
      title = prose;
      guesses.add("the title, from a sentence of the text");
    }
    if (!title.isEmpty()) {
      lines.add("title   " + title.replace("#", "").strip());
    }
    if (tala.isEmpty()) {
      guesses.add("tala adi, for the text names none");
    }
    if (tempo.isEmpty()) {
      guesses.add("60 beats a minute, for the text names no tempo");
    }
    lines.add("tala    " + (tala.isEmpty() ? "adi" : tala));
    if (!kalai.isEmpty()) {
      lines.add("kalai   " + kalai);
    }
    lines.add("tempo   " + (tempo.isEmpty() ? "60" : tempo));
    return String.join("\n", lines) + "\n";
  }

  /** The lines that say a phrase in the nadai, or in the nadais of the rounds, of the text. */
  String plan(String phrase) {
    if (rounds.isEmpty()) {
      return "  " + phrase + " nadai " + (nadai.isEmpty() ? "4" : nadai) + "\n";
    }
    StringBuilder plan = new StringBuilder();
    Matcher alike = ALIKE.matcher(rounds.replace("-", ""));
    while (alike.find()) {
      int times = alike.group().length();
      String repeat = times > 1 ? " x" + times : "";
      plan.append("  " + phrase + repeat + " nadai " + alike.group(1) + "\n");
    }
    return plan.toString();
  }
}
