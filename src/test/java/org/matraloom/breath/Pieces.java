package org.matraloom.breath;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Element;
import org.matraloom.score.FingerCustom;
import org.matraloom.score.Jati;
import org.matraloom.score.Sequence;
import org.matraloom.score.Sollu;
import org.matraloom.score.Step;
import org.matraloom.spell.TalaFamily;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/** Small compositions in adi, made from words, for the tests of breath. */
final class Pieces {

  private final Map<String, Sequence> phrases = new LinkedHashMap<>();
  private final List<Step> plan = new ArrayList<>();

  /** Words joined by hyphens; commas, semicolons and dots; a capital refers to a phrase. */
  Pieces phrase(String name, String text) {
    phrases.put(name, sequence(text));
    return this;
  }

  Pieces phrase(String name, Element... elements) {
    phrases.put(name, Sequence.of(elements));
    return this;
  }

  Pieces say(String phrase, int times, int nadai) {
    plan.add(new Step.Say(phrase, times, nadai, 1));
    return this;
  }

  Pieces rest(int beats) {
    plan.add(new Step.RestBeats(Ratio.of(beats)));
    return this;
  }

  Composition at(int tempo) {
    Avartana adi = Avartana.of(TalaFamily.TRIPUTA.tala(Jati.CHATUSRA), 1, FingerCustom.RESTART);
    return new Composition(
        "Ferry Song", adi, Tempo.of(tempo), Ratio.ZERO, Ratio.ZERO, phrases, plan);
  }

  static Sequence sequence(String text) {
    List<Element> elements = new ArrayList<>();
    for (String token : text.trim().split(" +")) {
      elements.add(element(token));
    }
    return new Sequence(elements);
  }

  private static Element element(String token) {
    return switch (token.charAt(0)) {
      case ',' -> new Element.Karvai(1);
      case ';' -> new Element.Karvai(2);
      case '.' -> new Element.Silence();
      case '\'' -> new Element.BreathWish(token.equals("'"));
      default ->
          Character.isUpperCase(token.charAt(0))
              ? new Element.Reference(token)
              : word(token.split("-"));
    };
  }

  static Element.Word word(String... sollus) {
    return new Element.Word(
        String.join("", sollus),
        List.of(sollus).stream().map(sollu -> new Sollu(sollu, sollu)).toList());
  }

  /** A piece of up to four rounds with few places to breathe, at 40 to 110 beats a minute. */
  static Composition random(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Pieces pieces = new Pieces();
    pieces.phrase("Eddy", line(random, 2));
    pieces.phrase("Song", line(random, 2) + " Eddy " + line(random, 1));
    int rounds = random.nextInt(1, 4);
    for (int round = 0; round < rounds; round++) {
      pieces.say(random.nextInt(4) == 0 ? "Eddy" : "Song", 1, random.nextInt(3, 8));
      if (random.nextInt(4) == 0) {
        pieces.rest(random.nextInt(1, 3));
      }
    }
    return pieces.at(random.nextInt(40, 111));
  }

  /**
   * A korvai of one to three rounds at 40 to 120 beats a minute: lines with and without karvais, a
   * mora with or without gaps, at times a mora within it, and at times a wish about breath.
   */
  static Composition korvai(long number) {
    SplittableRandom random = new SplittableRandom(number);
    Pieces pieces = new Pieces();
    int lines = random.nextInt(1, 4);
    StringBuilder song = new StringBuilder();
    for (int line = 0; line < lines; line++) {
      String name = "Line" + (char) ('A' + line);
      pieces.phrase(name, words(random, 1 + line) + gap(random, ","));
      song.append(name).append(random.nextInt(3) == 0 ? " " + name : "").append(wish(random));
    }
    String gap = gap(random, random.nextBoolean() ? "," : ".");
    String inner = random.nextInt(4) == 0 ? " , di-gi na , ta-tom" : "";
    String statement = words(random, 1) + inner;
    if (random.nextBoolean()) {
      pieces.phrase("Fall", statement);
      statement = "Fall";
    }
    if (random.nextInt(4) == 0) {
      song.append(statement);
    } else {
      song.append(String.join(gap + " ", statement, statement, statement));
    }
    pieces.phrase("Song", song.toString());
    int rounds = random.nextInt(1, 4);
    int nadai = random.nextInt(3, 6);
    for (int round = 1; round <= rounds; round++) {
      pieces.say("Song", 1, round < 3 ? nadai : random.nextInt(3, 8));
      if (random.nextInt(5) == 0) {
        pieces.rest(random.nextInt(1, 3));
      }
    }
    return pieces.at(random.nextInt(40, 121));
  }

  private static String words(SplittableRandom random, int most) {
    return " ta-ka-di-mi".repeat(random.nextInt(1, 2 + most)) + " ta-di-gi-na tom";
  }

  private static String gap(SplittableRandom random, String sign) {
    return (" " + sign).repeat(random.nextInt(3) == 0 ? 0 : random.nextInt(1, 5));
  }

  private static String wish(SplittableRandom random) {
    return switch (random.nextInt(12)) {
      case 0 -> " ' ";
      case 1 -> " '! ";
      default -> " ";
    };
  }

  private static String line(SplittableRandom random, int breaks) {
    StringBuilder line = new StringBuilder();
    for (int part = 0; part < breaks; part++) {
      line.append(" ta-ka-di-mi".repeat(random.nextInt(1, 7)));
      line.append(" tom").append(" ,".repeat(random.nextInt(0, 5)));
      line.append(" .".repeat(random.nextInt(0, 4)));
    }
    return line.toString();
  }
}
