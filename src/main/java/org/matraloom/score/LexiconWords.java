package org.matraloom.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** The words for groups in a list of sollus. */
final class LexiconWords {

  private final LexiconText contents;

  LexiconWords(LexiconText contents) {
    this.contents = contents;
  }

  /** What is wrong with the words of a line; nothing if they fill their group. */
  static Optional<String> faultOf(int size, List<String> signs, Predicate<String> isKnown) {
    int matras = 0;
    for (String sign : signs) {
      int karvai = karvai(sign);
      matras += Math.max(1, karvai);
      if (karvai > 0 && matras == karvai) {
        return Optional.of("words begin with a sollu, not with a karvai");
      } else if (karvai == 0 && !isKnown.test(Spelling.normal(sign))) {
        return Optional.of("\"" + sign + "\" is not a spelling of any sollu");
      }
    }
    return matras == size
        ? Optional.empty()
        : Optional.of("words for " + size + " must be " + size + " matras, given " + matras);
  }

  /** How many matras a sign rings: 1 for a comma, 2 for a semicolon, 0 for a sollu. */
  static int karvai(String sign) {
    return sign.equals(",") ? 1 : sign.equals(";") ? 2 : 0;
  }

  /** Whether there is a karvai among the signs. */
  static boolean rings(List<String> signs) {
    for (String sign : signs) {
      if (karvai(sign) > 0) {
        return true;
      }
    }
    return false;
  }

  /** Those of some words that have karvai, or those that have none. */
  static List<List<String>> ofKind(List<List<String>> choices, boolean rings) {
    List<List<String>> some = new ArrayList<>();
    for (List<String> words : choices) {
      if (rings(words) == rings) {
        some.add(words);
      }
    }
    return some;
  }

  /** Words without karvai; of groups without any, they are put together. */
  List<List<Sollu>> choices(int size) {
    if (size < 1 || size > LexiconText.LARGEST_GROUP) {
      throw new IllegalArgumentException(
          "a group has 1 to " + LexiconText.LARGEST_GROUP + " sollus, given " + size);
    }
    List<List<Sollu>> choices = new ArrayList<>();
    contents.words(size).forEach(words -> choices.add(sollusOf(words)));
    if (size > LexiconText.LARGEST_OWN_GROUP) {
      int parts = (size + LexiconText.LARGEST_OWN_GROUP - 1) / LexiconText.LARGEST_OWN_GROUP;
      choices.add(composed(size, parts));
      choices.add(composed(size, parts + 1));
    }
    return List.copyOf(choices);
  }

  /** The first words of the user's list, else the plain ones. */
  GroupWords usual(int size) {
    return contents
        .firstOwn(size)
        .map(this::words)
        .orElseGet(() -> GroupWords.plain(choices(size).get(0)));
  }

  /** The first words of the user's list, and those of a mora. */
  List<GroupWords> inEndings(int size) {
    List<GroupWords> choices = new ArrayList<>();
    contents.firstOwn(size).map(this::words).ifPresent(choices::add);
    contents.mora(size).stream().map(this::words).forEach(choices::add);
    return List.copyOf(choices);
  }

  /** After a karvai a sollu is said as it is alone. */
  private GroupWords words(List<String> signs) {
    List<Sollu> sollus = new ArrayList<>();
    List<Integer> matras = new ArrayList<>();
    for (String sign : signs) {
      int last = matras.size() - 1;
      int karvai = karvai(sign);
      if (karvai > 0) {
        matras.set(last, matras.get(last) + karvai);
        continue;
      }
      boolean apart = last < 0 || matras.get(last) > 1;
      sollus.add(apart ? alone(sign) : inCompany(sollus.get(last), alone(sign)));
      matras.add(1);
    }
    return new GroupWords(sollus, matras);
  }

  /** Sollus one after another, each as it is said after the one before. */
  List<Sollu> joined(List<Sollu> sollus) {
    List<Sollu> joined = new ArrayList<>();
    for (Sollu sollu : sollus) {
      joined.add(joined.isEmpty() ? sollu : inCompany(joined.get(joined.size() - 1), sollu));
    }
    return List.copyOf(joined);
  }

  /** A sollu as it is said after another one. */
  Sollu inCompany(Sollu before, Sollu sollu) {
    Optional<String> sound = contents.soundAfter(before.sound(), sollu.sound());
    return sound.isPresent() ? new Sollu(sollu.spelling(), sound.get()) : sollu;
  }

  private Sollu alone(String spelling) {
    return new Sollu(spelling, contents.bySpelling(Spelling.normal(spelling)).orElseThrow().name());
  }

  private List<Sollu> composed(int size, int parts) {
    List<Sollu> sollus = new ArrayList<>();
    for (int part = 0; part < parts; part++) {
      int share = size / parts + (part < size % parts ? 1 : 0);
      sollus.addAll(sollusOf(contents.words(share).get(0)));
    }
    return joined(sollus);
  }

  private List<Sollu> sollusOf(List<String> spellings) {
    return joined(spellings.stream().map(this::alone).toList());
  }

  /** Both lists, the first first, each words once. */
  static List<List<String>> join(List<List<String>> first, List<List<String>> second) {
    List<List<String>> all = new ArrayList<>(first);
    for (List<String> words : second) {
      if (!all.contains(words)) {
        all.add(words);
      }
    }
    return List.copyOf(all);
  }
}
