package org.matraloom.practice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Element;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Nadai;
import org.matraloom.score.Sequence;
import org.matraloom.score.Step;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/**
 * Plain subdivision words that switch from one nadai to another while the beat stays.
 *
 * <p>Halving the time before each switch is a teaching device for cadences (forum thread,
 * rasikas.org t=32252); learning plain words in every nadai before any korvai is common advice
 * (rasikas.org t=27906).
 */
public final class SwitchDrill {

  /** The nadais of a walk through all of them, in the order in which they are taught. */
  public static final List<Integer> ALL = List.of(3, 4, 5, 7, 9);

  private static final int LEAST_NADAI = 3;

  /**
   * Plain words for 3 to 9: 3, 4, 5, 7 and 9 as in the table of nadais of the Tamil Wikipedia, 6
   * and 8 as in Nelson, Solkattu Manual (Wesleyan, 2014), opening lesson.
   */
  private static final List<String> PLAIN_WORDS =
      List.of(
          "takita",
          "takadimi",
          "takatakita",
          "takitatakita",
          "takitatakadimi",
          "takadimitakajonu",
          "takadimitakatakita");

  private static final int MOST_PASSES = 200;

  /** How long one nadai is kept. */
  public enum Unit {
    /** A whole avartana. */
    AVARTANA,
    /** Half an avartana; of an odd one the first half is a beat shorter. */
    HALF,
    /** Two beats. */
    TWO_BEATS,
    /** One beat. */
    BEAT,
    /** All of these in turn, from the longest to the shortest. */
    HALVING
  }

  private final Avartana avartana;
  private final Lexicon lexicon;
  private final Map<String, Sequence> phrases = new LinkedHashMap<>();
  private final List<Step> plan = new ArrayList<>();

  private SwitchDrill(Avartana avartana, Lexicon lexicon) {
    this.avartana = avartana;
    this.lexicon = lexicon;
  }

  /**
   * Switches between two nadais or walks through more of them, always in the given order.
   *
   * @param avartana the cycle
   * @param tempo the tempo of the beat
   * @param nadais two or more, each 3 to 9 matras a beat
   * @param unit how long each is kept
   * @param passes how often all of it is said, 1 to 200; with {@link Unit#HALVING} each unit so
   *     often
   * @param lexicon knows the words
   * @return the drill, which begins and ends on samam
   * @throws IllegalArgumentException if a number is out of range
   */
  public static Composition between(
      Avartana avartana,
      Tempo tempo,
      List<Integer> nadais,
      Unit unit,
      int passes,
      Lexicon lexicon) {
    requireNadais(nadais);
    Drill.requireRange("the number of passes", passes, 1, MOST_PASSES);
    SwitchDrill drill = new SwitchDrill(avartana, lexicon);
    List<Unit> units =
        unit == Unit.HALVING
            ? List.of(Unit.AVARTANA, Unit.HALF, Unit.TWO_BEATS, Unit.BEAT)
            : List.of(unit);
    for (Unit each : units) {
      drill.fill(nadais, drill.lengths(each), passes);
    }
    return drill.composition(tempo, title(nadais));
  }

  /**
   * Walks through all nadais, one avartana each, up to the densest and down again.
   *
   * @param avartana the cycle
   * @param tempo the tempo of the beat
   * @param passes how often, 1 to 200
   * @param lexicon knows the words
   * @return the drill, which begins and ends on samam
   * @throws IllegalArgumentException if a number is out of range
   */
  public static Composition upAndDown(Avartana avartana, Tempo tempo, int passes, Lexicon lexicon) {
    List<Integer> walk = new ArrayList<>(ALL);
    for (int at = ALL.size() - 2; at >= 0; at--) {
      walk.add(ALL.get(at));
    }
    return between(avartana, tempo, walk, Unit.AVARTANA, passes, lexicon);
  }

  /**
   * Switches at random places: each stay is a beat, two beats, half an avartana or a whole one, and
   * none runs over samam.
   *
   * @param avartana the cycle
   * @param tempo the tempo of the beat
   * @param nadais two or more, each 3 to 9 matras a beat, in turn
   * @param avartanas how many avartanas to fill, 1 to 200
   * @param seed the same seed gives the same drill
   * @param lexicon knows the words
   * @return the drill, which begins and ends on samam
   * @throws IllegalArgumentException if a number is out of range
   */
  public static Composition random(
      Avartana avartana,
      Tempo tempo,
      List<Integer> nadais,
      int avartanas,
      long seed,
      Lexicon lexicon) {
    requireNadais(nadais);
    Drill.requireRange("the number of avartanas", avartanas, 1, MOST_PASSES);
    SwitchDrill drill = new SwitchDrill(avartana, lexicon);
    SplittableRandom random = new SplittableRandom(seed);
    int turn = 0;
    for (int each = 0; each < avartanas; each++) {
      int left = avartana.beats();
      while (left > 0) {
        int[] stays = {1, 2, Math.max(1, avartana.beats() / 2), avartana.beats()};
        int beats = Math.min(left, stays[random.nextInt(stays.length)]);
        drill.say(nadais.get(turn++ % nadais.size()), beats);
        left -= beats;
      }
    }
    return drill.composition(tempo, title(nadais) + ", at random (" + seed + ")");
  }

  private static void requireNadais(List<Integer> nadais) {
    if (nadais.size() < 2) {
      throw new IllegalArgumentException("a switch needs two nadais or more, given " + nadais);
    }
    for (int nadai : nadais) {
      Drill.requireRange("a nadai", nadai, LEAST_NADAI, Composition.HIGHEST_NADAI);
    }
  }

  private List<Integer> lengths(Unit unit) {
    int beats = avartana.beats();
    return switch (unit) {
      case HALF -> beats == 1 ? List.of(1) : List.of(beats / 2, beats - beats / 2);
      case TWO_BEATS -> pieces(beats, 2);
      case BEAT -> pieces(beats, 1);
      default -> List.of(beats);
    };
  }

  private static List<Integer> pieces(int beats, int size) {
    List<Integer> pieces = new ArrayList<>();
    for (int at = 0; at < beats; at += size) {
      pieces.add(Math.min(size, beats - at));
    }
    return pieces;
  }

  /** Goes on in whole avartanas until every pass has said every nadai and ended on samam. */
  private void fill(List<Integer> nadais, List<Integer> lengths, int passes) {
    int turn = 0;
    for (int pass = 0; pass < passes; pass++) {
      int said = 0;
      do {
        for (int beats : lengths) {
          say(nadais.get(turn++ % nadais.size()), beats);
          said++;
        }
      } while (said < nadais.size());
    }
  }

  private void say(int nadai, int beats) {
    String written = PLAIN_WORDS.get(nadai - LEAST_NADAI);
    Element word = new Element.Word(written, lexicon.split(written).orElseThrow());
    String name = name(nadai) + beats;
    Sequence once = Sequence.of(word);
    phrases.putIfAbsent(name, beats == 1 ? once : Sequence.of(new Element.Repeat(once, beats)));
    plan.add(new Step.Say(name, 1, nadai, 1));
  }

  private Composition composition(Tempo tempo, String title) {
    return Drill.of(title, avartana, tempo, Ratio.ZERO, phrases, plan);
  }

  private static String name(int nadai) {
    String word = Nadai.word(nadai);
    return Character.isLetter(word.charAt(0))
        ? Character.toUpperCase(word.charAt(0)) + word.substring(1)
        : "By" + nadai + "_";
  }

  private static String title(List<Integer> nadais) {
    return nadais.stream().map(String::valueOf).collect(Collectors.joining(" ", "Switch ", ""));
  }
}
