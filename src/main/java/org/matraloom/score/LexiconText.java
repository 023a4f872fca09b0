package org.matraloom.score;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.matraloom.sollus.SolluRow;
import org.matraloom.sollus.StandardSollus;

/** What the lists of sollus say, read line by line. */
final class LexiconText {

  /** The largest group of sollus. */
  static final int LARGEST_GROUP = 99;

  /** The largest group that has words of its own and not those of smaller ones. */
  static final int LARGEST_OWN_GROUP = 9;

  private static final int MOST_CHARACTERS = 1_000_000;
  private static final int LONGEST = 16;
  private static final int MOST_FAULTS = 100;

  private final Map<String, SolluSound> sounds = new LinkedHashMap<>();
  private final Map<String, String> names = new HashMap<>();
  private final Map<Integer, List<List<String>>> words = new HashMap<>();
  private final Map<Integer, List<List<String>>> mora = new HashMap<>();
  private final Map<Integer, List<String>> firstOwn = new HashMap<>();
  private final Map<String, String> company = new HashMap<>();
  private int longestSpelling;
  private OptionalDouble fastest = OptionalDouble.empty();

  LexiconText() {}

  /** What the built-in list says. */
  static LexiconText standard() {
    LexiconText text = new LexiconText();
    for (SolluRow row : StandardSollus.sounds()) {
      text.sounds.put(row.name(), new SolluSound(row.name(), row.spellings(), row.phones()));
      for (String spelling : row.spellings()) {
        text.names.put(spelling, row.name());
      }
    }
    text.company.putAll(StandardSollus.company());
    for (Map.Entry<Integer, List<List<String>>> group : StandardSollus.words().entrySet()) {
      text.take(group.getKey(), group.getValue(), true);
    }
    return text.measured();
  }

  private LexiconText measured() {
    for (String spelling : names.keySet()) {
      longestSpelling = Math.max(longestSpelling, spelling.length() * 2);
    }
    return this;
  }

  /** A copy with one more list; a fault in any line refuses the whole list. */
  LexiconText plus(String text, String sourceName) {
    LexiconText sum = new LexiconText();
    sum.sounds.putAll(sounds);
    sum.names.putAll(names);
    sum.words.putAll(words);
    sum.mora.putAll(mora);
    sum.firstOwn.putAll(firstOwn);
    sum.company.putAll(company);
    sum.fastest = fastest;
    List<LexiconException.Fault> faults = sum.read(text, sounds.isEmpty());
    if (!faults.isEmpty()) {
      throw new LexiconException(sourceName, faults);
    }
    return sum.measured();
  }

  OptionalDouble fastest() {
    return fastest;
  }

  List<SolluSound> sounds() {
    return List.copyOf(sounds.values());
  }

  Optional<SolluSound> byName(String name) {
    return Optional.ofNullable(sounds.get(name));
  }

  Optional<SolluSound> bySpelling(String normal) {
    String name = names.get(normal);
    return name == null ? Optional.empty() : Optional.of(sounds.get(name));
  }

  Set<String> spellings() {
    return names.keySet();
  }

  /** The most characters a spelling takes, each letter with a mark of its own. */
  int longestSpelling() {
    return longestSpelling;
  }

  List<List<String>> words(int size) {
    return words.getOrDefault(size, List.of());
  }

  /** The words of a mora, karvais among them. */
  List<List<String>> mora(int size) {
    return mora.getOrDefault(size, List.of());
  }

  /** The first words for a group in the user's own list, karvais among them. */
  Optional<List<String>> firstOwn(int size) {
    return Optional.ofNullable(firstOwn.get(size));
  }

  Optional<String> soundAfter(String before, String sound) {
    return Optional.ofNullable(company.get(before + " " + sound));
  }

  private List<LexiconException.Fault> read(String text, boolean builtIn) {
    List<LexiconException.Fault> faults = new ArrayList<>();
    if (text.length() > MOST_CHARACTERS) {
      String tooLong = "a list has at most " + MOST_CHARACTERS + " characters";
      return List.of(new LexiconException.Fault(1, tooLong));
    }
    String[] lines = LexiconLine.lines(text);
    Map<String, Integer> firstLine = new HashMap<>();
    Map<Integer, List<List<String>>> ownWords = new HashMap<>();
    for (boolean sollusKnown : new boolean[] {false, true}) {
      for (int index = 0; index < lines.length && faults.size() < MOST_FAULTS; index++) {
        String line = LexiconLine.withoutNote(lines[index]);
        if (line.isEmpty() || line.contains("=") != sollusKnown) {
          continue;
        }
        int number = index + 1;
        Optional<String> fault =
            !sollusKnown
                ? readSound(line, number, firstLine)
                : line.contains("+")
                    ? readCompany(line)
                    : LexiconLine.isFastest(line) ? readFastest(line) : readWords(line, ownWords);
        fault.ifPresent(
            message ->
                faults.add(new LexiconException.Fault(number, LexiconLine.printable(message))));
      }
    }
    ownWords.forEach((size, choices) -> take(size, choices, builtIn));
    faults.sort((a, b) -> Integer.compare(a.line(), b.line()));
    return faults;
  }

  /** Words without karvai are the plain ones, those with karvai the words of a mora. */
  private void take(int size, List<List<String>> choices, boolean builtIn) {
    if (!builtIn) {
      firstOwn.put(size, choices.get(0));
    }
    for (boolean rings : new boolean[] {false, true}) {
      List<List<String>> some = LexiconWords.ofKind(choices, rings);
      if (!some.isEmpty()) {
        Map<Integer, List<List<String>>> kind = rings ? mora : words;
        kind.put(size, LexiconWords.join(some, kind.getOrDefault(size, List.of())));
      }
    }
  }

  private Optional<String> readSound(String line, int number, Map<String, Integer> firstLine) {
    String[] parts = line.split(":", -1);
    if (parts.length != 3) {
      return Optional.of(LexiconLine.SOUND_EXPECTED);
    }
    String name = Spelling.normal(parts[0].strip());
    List<String> phones = LexiconLine.tokens(parts[2]);
    Set<String> spellings = new LinkedHashSet<>();
    spellings.add(name);
    for (String spelling : LexiconLine.tokens(parts[1])) {
      spellings.add(Spelling.normal(spelling));
    }
    for (String spelling : spellings) {
      if (!Spelling.isLetters(spelling) || spelling.length() > LONGEST) {
        return Optional.of(
            "a spelling has 1 to " + LONGEST + " letters, given \"" + spelling + "\"");
      }
      Integer first = firstLine.putIfAbsent(spelling, number);
      if (first != null) {
        return Optional.of("\"" + spelling + "\" is already given in line " + first);
      }
    }
    Optional<String> fault = SolluSound.faultOf(phones);
    if (fault.isPresent()) {
      return fault;
    }
    if (sounds.containsKey(name)) {
      spellings.addAll(sounds.get(name).spellings());
    }
    for (String spelling : spellings) {
      takeFrom(spelling, name);
      names.put(spelling, name);
    }
    sounds.put(name, new SolluSound(name, List.copyOf(spellings), phones));
    return Optional.empty();
  }

  /** Takes a spelling away from the sound that had it. */
  private void takeFrom(String spelling, String name) {
    String owner = names.get(spelling);
    if (owner == null || owner.equals(name)) {
      return;
    }
    SolluSound old = sounds.get(owner);
    List<String> left = old.spellings().stream().filter(own -> !own.equals(spelling)).toList();
    sounds.put(owner, new SolluSound(owner, left, old.phones()));
  }

  private Optional<String> readCompany(String line) {
    List<String> named = LexiconLine.company(line);
    if (named.isEmpty()) {
      return Optional.of("expected \"before + after = sound\", as in \"ki + ta = ṭa\"");
    }
    for (String name : named) {
      if (!sounds.containsKey(Spelling.normal(name))) {
        return Optional.of("\"" + name + "\" is not the name of a sound");
      }
    }
    String pair = Spelling.normal(named.get(0)) + " " + Spelling.normal(named.get(1));
    company.put(pair, Spelling.normal(named.get(2)));
    return Optional.empty();
  }

  private Optional<String> readWords(String line, Map<Integer, List<List<String>>> ownWords) {
    String[] sides = line.split("=", -1);
    if (sides.length != 2 || !LexiconLine.isSize(sides[0].strip())) {
      return Optional.of(LexiconLine.WORDS_EXPECTED);
    }
    int size = Integer.parseInt(sides[0].strip());
    List<String> sollus = LexiconLine.tokens(sides[1]);
    Optional<String> fault = LexiconWords.faultOf(size, sollus, names::containsKey);
    if (fault.isEmpty()) {
      ownWords.merge(size, List.of(sollus), LexiconWords::join);
    }
    return fault;
  }

  private Optional<String> readFastest(String line) {
    fastest = LexiconLine.fastest(line);
    return fastest.isPresent() ? Optional.empty() : Optional.of(LexiconLine.FASTEST_EXPECTED);
  }
}
