package org.matraloom.score;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/** Makes nested phrases at random, from a fixed seed; a phrase refers only to earlier ones. */
public final class RandomPhrases {

  private static final int[] NADAIS = {3, 4, 5, 6, 7, 8, 9};
  private static final int DEEPEST = 4;

  private final SplittableRandom random;
  private final List<String> names = new ArrayList<>();

  public RandomPhrases(long seed) {
    random = new SplittableRandom(seed);
  }

  /** A few phrases by name, each beginning with a word; later ones may refer to earlier ones. */
  public Map<String, Sequence> phrases() {
    names.clear();
    Map<String, Sequence> phrases = new LinkedHashMap<>();
    int count = random.nextInt(1, 5);
    for (int index = 0; index < count; index++) {
      String name = "Phrase" + index;
      List<Element> elements = new ArrayList<>();
      elements.add(new Element.Word("word", sollus(random.nextInt(1, 4))));
      elements.addAll(sequence(0).elements());
      phrases.put(name, new Sequence(elements));
      names.add(name);
    }
    return phrases;
  }

  private Sequence sequence(int depth) {
    List<Element> elements = new ArrayList<>();
    int size = random.nextInt(0, 8);
    for (int index = 0; index < size; index++) {
      elements.add(element(depth));
    }
    return new Sequence(elements);
  }

  private Element element(int depth) {
    int kind = random.nextInt(depth < DEEPEST ? 9 : 5);
    return switch (kind) {
      case 0 -> new Element.Word("word", sollus(random.nextInt(1, 6)));
      case 1 -> new Element.Karvai(random.nextInt(1, 3));
      case 2 -> new Element.Silence();
      case 3 -> group();
      case 4 -> new Element.Bar(random.nextBoolean(), new Place(1, 1 + random.nextInt(80)));
      case 5 -> new Element.Faster(random.nextBoolean() ? 2 : 4, sequence(depth + 1));
      case 6 -> new Element.Repeat(sequence(depth + 1), random.nextInt(1, 4));
      case 7 -> new Element.InnerNadai(NADAIS[random.nextInt(NADAIS.length)], sequence(depth + 1));
      default ->
          names.isEmpty()
              ? new Element.Silence()
              : new Element.Reference(names.get(random.nextInt(names.size())));
    };
  }

  private Element group() {
    int size = random.nextInt(1, 10);
    return new Element.Group(size, random.nextInt(1, 7), random.nextInt(0, 4), sollus(size));
  }

  private static List<Sollu> sollus(int count) {
    List<Sollu> sollus = new ArrayList<>();
    for (int index = 0; index < count; index++) {
      sollus.add(new Sollu("s" + index, "s"));
    }
    return sollus;
  }
}
