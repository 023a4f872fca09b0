package org.matraloom;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.IntFunction;
import org.matraloom.time.Ratio;

/**
 * Writes scores at random, from a fixed seed, and counts their length while it writes, apart from
 * the program.
 */
final class WrittenScores {

  /** A phrase as written, and its beats for a nadai of the round around it. */
  record Phrase(String name, String text, IntFunction<Ratio> beats) {}

  /** A tala as written, and its aksharas. */
  private record Tala(String text, int aksharas) {}

  /**
   * A whole score.
   *
   * @param text the score
   * @param phrases its phrases in order
   * @param cycleBeats counted beats of the avartana
   * @param endBeat where the last matra ends, in beats after the first samam
   * @param eduppuBeat where it should end
   */
  record Score(
      String text, List<Phrase> phrases, int cycleBeats, Ratio endBeat, Ratio eduppuBeat) {}

  private static final List<Tala> TALAS =
      List.of(
          new Tala("adi", 8),
          new Tala("rupaka", 6),
          new Tala("misra chapu", 7),
          new Tala("khanda chapu", 5),
          new Tala("sankirna dhruva", 29),
          new Tala("I5 U O", 8),
          new Tala("3+2+2+4", 11));

  private static final List<String> WORDS =
      List.of("ta", "taka", "takita", "takadimi", "takatakita", "dhim", "tom", "tadiginatom");
  private static final List<Integer> WORD_MATRAS = List.of(1, 2, 3, 4, 5, 1, 1, 5);
  private static final int DEEPEST = 3;

  private final SplittableRandom random;
  private final List<Phrase> phrases = new ArrayList<>();

  private WrittenScores(long seed) {
    random = new SplittableRandom(seed);
  }

  static Score score(long seed) {
    return new WrittenScores(seed).score();
  }

  private Score score() {
    Tala tala = TALAS.get(random.nextInt(TALAS.size()));
    int kalai = 1 << random.nextInt(2);
    int cycle = tala.aksharas() * kalai;
    int startQuarters = random.nextInt(cycle * 4);
    int eduppuQuarters = random.nextInt(cycle * 4);
    StringBuilder text = new StringBuilder("title Number " + random.nextInt(1_000) + "\n");
    text.append("tala ").append(tala.text()).append('\n');
    text.append("kalai ").append(kalai).append('\n');
    text.append("tempo ").append(random.nextBoolean() ? "37.5" : "66").append('\n');
    text.append("start ").append(place(startQuarters)).append('\n');
    text.append("eduppu ").append(place(eduppuQuarters)).append("\n\n");
    int count = random.nextInt(1, 5);
    for (int index = 0; index < count; index++) {
      Phrase phrase = sequence("P" + index, 0);
      text.append(phrase.name()).append(" = ").append(phrase.text()).append('\n');
      phrases.add(phrase);
    }
    text.append("\nperform\n");
    Ratio now = Ratio.of(startQuarters, 4);
    int steps = random.nextInt(1, 4);
    for (int step = 0; step < steps; step++) {
      now = step(now, cycle, text);
    }
    Ratio eduppu = Ratio.of(eduppuQuarters, 4);
    return new Score(text.toString(), List.copyOf(phrases), cycle, now, eduppu);
  }

  private static String place(int quarters) {
    return "beat " + Ratio.of(quarters, 4).plus(Ratio.ONE).toMixed();
  }

  private Ratio step(Ratio now, int cycle, StringBuilder text) {
    Phrase phrase = phrases.get(random.nextInt(phrases.size()));
    int times = random.nextInt(1, 4);
    int nadai = random.nextInt(3, 10);
    int kalam = random.nextInt(1, 4);
    text.append("  ").append(phrase.name()).append(" x").append(times);
    text.append(" nadai ").append(nadai).append(" kalam ").append(kalam).append('\n');
    Ratio end = now.plus(phrase.beats().apply(nadai).times(times).dividedBy(1L << (kalam - 1)));
    return switch (random.nextInt(4)) {
      case 0 -> {
        text.append("  rest 3 beats\n");
        yield end.plus(Ratio.of(3));
      }
      case 1 -> {
        text.append("  rest 7 matras nadai 5\n");
        yield end.plus(Ratio.of(7, 5));
      }
      case 2 -> {
        text.append("  until beat 2\n");
        Ratio cycles = end.minus(Ratio.ONE).dividedBy(cycle);
        yield Ratio.of(cycles.ceil() * cycle + 1);
      }
      default -> end;
    };
  }

  private Phrase sequence(String name, int depth) {
    List<String> texts = new ArrayList<>(List.of("takita"));
    List<IntFunction<Ratio>> beats = new ArrayList<>(List.of(matras(3)));
    int size = random.nextInt(1, 6);
    for (int index = 0; index < size; index++) {
      Phrase element = element(depth);
      texts.add(element.text());
      beats.add(element.beats());
    }
    IntFunction<Ratio> sum =
        nadai -> beats.stream().map(beat -> beat.apply(nadai)).reduce(Ratio.ZERO, Ratio::plus);
    return new Phrase(name, String.join(" ", texts), sum);
  }

  private Phrase element(int depth) {
    return switch (random.nextInt(depth < DEEPEST ? 10 : 5)) {
      case 0, 1 -> {
        int word = random.nextInt(WORDS.size());
        yield new Phrase("", WORDS.get(word), matras(WORD_MATRAS.get(word)));
      }
      case 2 -> new Phrase("", ",", matras(1));
      case 3 -> new Phrase("", ";", matras(2));
      case 4 -> new Phrase("", ".", matras(1));
      case 5 -> group();
      case 6 -> faster(sequence("", DEEPEST));
      case 7 -> {
        Phrase body = sequence("", depth + 1);
        int times = random.nextInt(1, 5);
        yield new Phrase(
            "", "(" + body.text() + ") x" + times, nadai -> body.beats().apply(nadai).times(times));
      }
      case 8 -> {
        Phrase body = sequence("", depth + 1);
        int inner = random.nextInt(3, 10);
        Ratio fixed = body.beats().apply(inner);
        yield new Phrase("", "{" + inner + ": " + body.text() + "}", nadai -> fixed);
      }
      default ->
          phrases.isEmpty()
              ? new Phrase("", "tom", matras(1))
              : reference(phrases.get(random.nextInt(phrases.size())));
    };
  }

  private static Phrase reference(Phrase phrase) {
    return new Phrase("", phrase.name(), phrase.beats());
  }

  private Phrase group() {
    int size = random.nextInt(1, 12);
    int hold = random.nextInt(1, 5);
    int karvai = random.nextInt(0, 4);
    String text = size + (hold == 1 ? "" : "*" + hold) + (karvai == 0 ? "" : "(" + karvai + ")");
    return new Phrase("", text, matras(size * hold + karvai));
  }

  private Phrase faster(Phrase body) {
    int factor = random.nextBoolean() ? 2 : 4;
    String open = factor == 2 ? "[" : "[[";
    return new Phrase(
        "",
        open + body.text() + open.replace('[', ']'),
        nadai -> body.beats().apply(nadai).dividedBy(factor));
  }

  private static IntFunction<Ratio> matras(int matras) {
    return nadai -> Ratio.of(matras, nadai);
  }
}
