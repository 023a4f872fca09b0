package org.matraloom.notation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.matraloom.score.Avartana;
import org.matraloom.score.Closing;
import org.matraloom.score.Composition;
import org.matraloom.score.DrumStroke;
import org.matraloom.score.Element;
import org.matraloom.score.FingerCustom;
import org.matraloom.score.GroupWords;
import org.matraloom.score.Length;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Place;
import org.matraloom.score.Sequence;
import org.matraloom.score.Sollu;
import org.matraloom.score.SolluSound;
import org.matraloom.score.Step;
import org.matraloom.score.Tala;
import org.matraloom.score.Wording;
import org.matraloom.spell.ScorePrinter;
import org.matraloom.spell.TalaReader;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/**
 * Makes up compositions of every kind that the notation can write; the same seed, the same ones.
 */
public final class RandomScores {

  private static final int[] FRACTIONS = {1, 1, 1, 2, 3, 4, 5, 7, 8, 9, 12, 20, 28, 36};
  private static final int MOST_STEPS = 3_000;
  private static final Place NOWHERE = new Place(1, 1);

  private final SplittableRandom random;
  private final SplittableRandom wishes;
  private final SplittableRandom lines;
  private final Lexicon lexicon = Lexicon.standard();
  private final List<Tala> talas = List.copyOf(TalaReader.names().values());
  private final List<SolluSound> sounds = lexicon.sounds();
  private final List<String> flat = new ArrayList<>();
  private Wording wording = Wording.USUAL;

  /**
   * Begins a series.
   *
   * @param seed which series
   */
  public RandomScores(long seed) {
    this.random = new SplittableRandom(seed);
    this.wishes = new SplittableRandom(seed);
    this.lines = new SplittableRandom(seed);
  }

  /**
   * The next composition of the series.
   *
   * @return a composition that {@link ScoreReader} could have read, of at most a few thousand
   *     sollus; its bars stand anywhere and have no true place
   */
  public Composition composition() {
    while (true) {
      wording = wording();
      Map<String, Sequence> phrases = phrases();
      Avartana avartana = avartana();
      List<Step> plan = plan(List.copyOf(phrases.keySet()), avartana.beats());
      long steps = 0;
      for (Step step : plan) {
        if (step instanceof Step.Say say) {
          steps += say.times() * Length.of(phrases.get(say.phrase()), phrases).steps();
        }
      }
      if (steps <= MOST_STEPS) {
        return new Composition(
            title(),
            avartana,
            tempo(),
            place(avartana),
            place(avartana),
            phrases,
            plan,
            closing(),
            wording);
      }
    }
  }

  /**
   * A score of the series, written in an irregular hand: odd spaces, notes, broken lines.
   *
   * @return a score without errors
   */
  public String text() {
    return untidy(ScorePrinter.print(composition()));
  }

  /**
   * A number of the series, for choices of the test itself.
   *
   * @param bound above the largest number
   * @return from 0 to {@code bound} (exclusive)
   */
  public int number(int bound) {
    return random.nextInt(bound);
  }

  /**
   * A composition without the places of its bars, for comparison.
   *
   * @param composition a composition
   * @return the same with every bar at one place
   */
  public static Composition withoutPlaces(Composition composition) {
    Map<String, Sequence> phrases = new LinkedHashMap<>();
    composition.phrases().forEach((name, body) -> phrases.put(name, withoutPlaces(body)));
    return new Composition(
        composition.title(),
        composition.avartana(),
        composition.tempo(),
        composition.startBeat(),
        composition.eduppuBeat(),
        phrases,
        composition.plan(),
        composition.closing(),
        composition.wording());
  }

  private static Sequence withoutPlaces(Sequence sequence) {
    return new Sequence(
        sequence.elements().stream()
            .map(RandomScores::withoutPlaces)
            .collect(Collectors.toUnmodifiableList()));
  }

  private static Element withoutPlaces(Element element) {
    if (element instanceof Element.Bar bar) {
      return new Element.Bar(bar.endsAvartana(), NOWHERE);
    } else if (element instanceof Element.Faster faster) {
      return new Element.Faster(faster.factor(), withoutPlaces(faster.body()));
    } else if (element instanceof Element.Repeat repeat) {
      return new Element.Repeat(withoutPlaces(repeat.body()), repeat.times());
    } else if (element instanceof Element.InnerNadai inner) {
      return new Element.InnerNadai(inner.nadai(), withoutPlaces(inner.body()));
    }
    return element;
  }

  private String title() {
    return pick(
        List.of("", "Gutter Song", "Silt, rain: 5 + 5", "= Mist =", ": ford", "Ōḍai · nīr", "7"));
  }

  private Avartana avartana() {
    int kalai = pick(List.of(1, 1, 1, 2, 2, 4));
    return Avartana.of(tala(), kalai, pick(List.of(FingerCustom.RESTART, FingerCustom.RETURN)));
  }

  private Wording wording() {
    Map<Integer, GroupWords> own = new LinkedHashMap<>();
    if (random.nextInt(4) == 0) {
      own.put(7, lexicon.moraChoices(7).get(1));
      own.put(5, GroupWords.plain(lexicon.wordChoices(5).get(2)));
    }
    Wording.Kind[] kinds = Wording.Kind.values();
    Map<Sollu, List<DrumStroke>> strokes = new LinkedHashMap<>();
    if (random.nextInt(4) == 0) {
      strokes.put(lexicon.split("dhim").orElseThrow().get(0), List.of(DrumStroke.THOM));
      strokes.put(
          lexicon.split("ta").orElseThrow().get(0), List.of(DrumStroke.THA, DrumStroke.NAM));
    }
    return new Wording(kinds[Math.max(0, random.nextInt(6) - 3)], own, strokes);
  }

  private Closing closing() {
    Optional<Closing.Stroke> stroke =
        random.nextInt(3) > 0
            ? Optional.empty()
            : Optional.of(new Closing.Stroke(new Sollu("tom", "tom"), random.nextInt(6)));
    return new Closing(stroke, random.nextInt(3));
  }

  private Tala tala() {
    if (random.nextInt(4) > 0) {
      return pick(talas);
    }
    List<String> signs = new ArrayList<>();
    boolean grouping = random.nextBoolean();
    int angas = 1 + random.nextInt(5);
    for (int anga = 0; anga < angas; anga++) {
      signs.add(
          grouping
              ? Integer.toString(1 + random.nextInt(7))
              : pick(List.of("O", "U", "I3", "I4", "I5", "I7", "I9")));
    }
    String formula = String.join(grouping ? "+" : " ", signs);
    return TalaReader.read(formula).tala().orElseThrow();
  }

  private Tempo tempo() {
    return switch (random.nextInt(4)) {
      case 0 -> new Tempo(Ratio.of(2 * (20 + random.nextInt(100)) + 1, 2));
      case 1 -> new Tempo(Ratio.of(300 + random.nextInt(900), 7));
      case 2 -> new Tempo(Ratio.of(30_000 + random.nextInt(100_000), 1_000));
      default -> Tempo.of(30 + random.nextInt(150));
    };
  }

  private Ratio place(Avartana avartana) {
    if (random.nextInt(3) == 0) {
      return Ratio.ZERO;
    }
    Ratio aksharas = fraction(avartana.tala().aksharas());
    Ratio beats = aksharas.times(avartana.kalai());
    return random.nextBoolean() ? beats : beats.negate();
  }

  /** A fraction that some nadai has, from 0 to a bound (exclusive). */
  private Ratio fraction(int bound) {
    int parts = FRACTIONS[random.nextInt(FRACTIONS.length)];
    return Ratio.of(random.nextInt(bound * parts), parts);
  }

  private Map<String, Sequence> phrases() {
    Map<String, Sequence> phrases = new LinkedHashMap<>();
    flat.clear();
    int count = 1 + random.nextInt(5);
    for (int number = 0; number < count; number++) {
      String name = pick(List.of("Drip", "Rain", "Fall", "Ōḍai", "Rest", "Perform", "Tala", "X"));
      String free = phrases.containsKey(name) ? name + "_" + number : name;
      Sequence body = sequence(List.copyOf(phrases.keySet()), 0);
      boolean isFlat = body.elements().stream().noneMatch(Element.Faster.class::isInstance);
      phrases.put(free, body);
      if (isFlat && number == 0) {
        flat.add(free);
      }
    }
    return phrases;
  }

  private Sequence sequence(List<String> names, int depth) {
    List<Element> elements = new ArrayList<>();
    int count = 1 + random.nextInt(depth == 0 ? 9 : 4);
    for (int index = 0; index < count; index++) {
      elements.add(element(names, depth, elements));
    }
    if (elements.stream().allMatch(Element.Bar.class::isInstance)) {
      elements.add(new Element.Silence());
    }
    return new Sequence(withWishes(elements));
  }

  private List<Element> withWishes(List<Element> elements) {
    List<Element> all = new ArrayList<>();
    boolean said = false;
    for (Element element : elements) {
      all.add(element);
      said |= !(element instanceof Element.Timeless);
      if (said && wishes.nextInt(20) == 0) {
        all.add(new Element.BreathWish(wishes.nextInt(3) > 0));
      }
    }
    return all;
  }

  private Element element(List<String> names, int depth, List<Element> before) {
    int kind = random.nextInt(depth > 2 ? 13 : 20);
    if (kind < 6) {
      return word(before);
    } else if (kind < 8) {
      return new Element.Karvai(1 + random.nextInt(2));
    } else if (kind == 8) {
      return new Element.Silence();
    } else if (kind < 11) {
      return group();
    } else if (kind == 11) {
      return new Element.Bar(random.nextBoolean(), NOWHERE);
    } else if (kind == 12) {
      List<String> usable = depth == 0 ? names : flat;
      return usable.isEmpty() ? new Element.Silence() : new Element.Reference(pick(usable));
    } else if (kind < 15) {
      int factor = depth == 0 ? 2 + 2 * random.nextInt(2) : 2;
      return new Element.Faster(factor, sequence(names, depth + 1));
    } else if (kind < 18) {
      return new Element.Repeat(sequence(names, depth + 1), 1 + random.nextInt(4));
    }
    return new Element.InnerNadai(1 + random.nextInt(9), sequence(names, depth + 1));
  }

  private Element group() {
    int size = 1 + random.nextInt(random.nextInt(6) == 0 ? Lexicon.LARGEST_GROUP : 9);
    int hold = random.nextInt(4) == 0 ? 1 + random.nextInt(9) : 1;
    int karvai = random.nextBoolean() ? random.nextInt(5) : 0;
    return wording.group(size, hold, karvai, lexicon);
  }

  private Element word(List<Element> before) {
    String written = "";
    while (lexicon.split(written).isEmpty()) {
      List<String> spellings = new ArrayList<>();
      int count = 1 + random.nextInt(5);
      for (int sollu = 0; sollu < count; sollu++) {
        spellings.add(pick(pick(sounds).spellings()));
      }
      written = String.join(random.nextInt(5) == 0 ? "-" : "", spellings);
    }
    List<Sollu> sollus = new ArrayList<>(lexicon.split(written).get());
    for (int index = before.size() - 1; index >= 0; index--) {
      if (before.get(index) instanceof Element.Word word) {
        Sollu last = word.sollus().get(word.sollus().size() - 1);
        sollus.set(0, lexicon.inCompany(last, sollus.get(0)));
      }
      if (!(before.get(index) instanceof Element.Bar)) {
        break;
      }
    }
    return new Element.Word(written, sollus);
  }

  private List<Step> plan(List<String> names, int beats) {
    List<Step> plan = new ArrayList<>();
    int count = 1 + random.nextInt(4);
    for (int index = 0; index < count; index++) {
      plan.add(
          new Step.Say(
              pick(names),
              1 + random.nextInt(3),
              1 + random.nextInt(Composition.HIGHEST_NADAI),
              1 + random.nextInt(Composition.HIGHEST_KALAM)));
      switch (random.nextInt(6)) {
        case 0 -> plan.add(new Step.RestBeats(fraction(8).plus(Ratio.ONE)));
        case 1 -> plan.add(new Step.RestMatras(1 + random.nextInt(40), 1 + random.nextInt(9)));
        case 2 -> plan.add(new Step.Until(fraction(beats)));
        default -> {}
      }
      withoutTime(beats, plan);
    }
    return plan;
  }

  /** A line of the plan that takes no time, now and then, before or after what is there. */
  private void withoutTime(int beats, List<Step> plan) {
    int at = lines.nextInt(plan.size() + 1);
    switch (lines.nextInt(9)) {
      case 0 -> plan.add(at, new Step.Part("Purvanga " + lines.nextInt(3)));
      case 1 -> plan.add(at, new Step.Tell("Clap = softly; (x2), 5 , kula \u0b95\u0bc1\u0bb3"));
      case 2 -> plan.add(at, new Step.Stands(Ratio.of(lines.nextInt(beats)), ""));
      case 3 -> plan.add(at, new Step.Stands(Ratio.of(lines.nextInt(beats * 4), 4), "Weir"));
      default -> {}
    }
  }

  private String untidy(String tidy) {
    StringBuilder text = new StringBuilder(random.nextInt(8) == 0 ? "\ufeff" : "");
    String lineEnd = pick(List.of("\n", "\n", "\r\n", "\r"));
    boolean body = false;
    for (String line : tidy.split("\n")) {
      boolean words = line.matches("(title|tala).*| *(part|tell|at) .*");
      boolean free = !words;
      boolean breakable = line.matches("\\D\\S* = .*") || (body && line.startsWith("  "));
      body = breakable;
      for (String part : line.split("(?<= )")) {
        boolean broken = breakable && !part.startsWith("=") && text.indexOf("= ") >= 0;
        if (broken && random.nextInt(12) == 0 && !line.startsWith(part)) {
          text.append(pick(List.of("", "# wet"))).append(lineEnd).append("\t");
        }
        text.append(part);
        if (free && part.endsWith(" ")) {
          text.append(" ".repeat(random.nextInt(2)));
        }
      }
      text.append(free && random.nextInt(6) == 0 ? "  # " + title().replace("\n", "") : "");
      text.append(lineEnd);
    }
    return text.toString();
  }

  private <T> T pick(List<T> choices) {
    return choices.get(random.nextInt(choices.size()));
  }
}
