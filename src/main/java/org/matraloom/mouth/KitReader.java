package org.matraloom.mouth;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** Reads the text beside the samples of a voice, which people may have changed. */
final class KitReader {

  /** Finds the pitch marks of a sample whose text has none. */
  @FunctionalInterface
  interface MarkFinder {
    List<Integer> marks(String file) throws KitException;
  }

  private static final Set<String> HEAD_KEYS = Set.of("name", "owner", "terms", "consent");
  private static final Set<String> SAMPLE_KEYS =
      Set.of(
          "file",
          "after",
          "before",
          "release",
          "vowel",
          "beat",
          "steady",
          "nasal",
          "end",
          "loudness",
          "peak",
          "doubt",
          "marks");
  private static final double LONGEST_SECONDS = 60;

  private final String source;
  private final MarkFinder finder;
  private final Map<String, String> head = new HashMap<>();
  private final List<KitSample> samples = new ArrayList<>();
  private Map<String, String> sample = new HashMap<>();
  private List<String> doubts = new ArrayList<>();
  private int sampleLine;

  private KitReader(String source, MarkFinder finder) {
    this.source = source;
    this.finder = finder;
  }

  /**
   * Reads a text.
   *
   * @param source what the text is called in messages
   * @param finder finds marks that were left out
   * @throws KitException if a line is wrong or something is missing
   */
  static Kit read(String text, String source, MarkFinder finder) throws KitException {
    KitReader reader = new KitReader(source, finder);
    int number = 0;
    for (String line : text.lines().toList()) {
      number++;
      String said = line.strip();
      if (!said.isEmpty() && !said.startsWith("#")) {
        reader.line(said, number);
      }
    }
    return reader.kit(number);
  }

  private void line(String said, int number) throws KitException {
    String[] parts = said.split("\\s+", 2);
    String value = parts.length == 1 ? "" : parts[1];
    if (parts[0].equals("sollu")) {
      endSample();
      sampleLine = number;
      sample.put("sollu", value);
    } else if (sampleLine == 0 && HEAD_KEYS.contains(parts[0])) {
      head.put(parts[0], value);
    } else if (sampleLine > 0 && parts[0].equals("doubt")) {
      doubts.add(value);
    } else if (sampleLine > 0 && SAMPLE_KEYS.contains(parts[0])) {
      if (sample.put(parts[0], value) != null) {
        throw at(number, "\"" + parts[0] + "\" is given twice for this sollu; keep one");
      }
    } else {
      throw at(
          number,
          "\"" + parts[0] + "\" is not known here; known are " + known() + "; is it misspelt?");
    }
  }

  private String known() {
    return sampleLine == 0
        ? "name, owner, terms, consent and sollu"
        : "file, after, before, release, vowel, beat, steady, nasal, end, loudness, peak, doubt,"
            + " marks and sollu";
  }

  private Kit kit(int lastLine) throws KitException {
    endSample();
    if (samples.isEmpty()) {
      throw at(lastLine, "no sollu is here; a voice has one or more");
    }
    try {
      String name = head.getOrDefault("name", "");
      return new Kit(
          new KitHead(
              name,
              head.getOrDefault("owner", ""),
              head.getOrDefault("terms", ""),
              head.getOrDefault("consent", "")),
          samples);
    } catch (IllegalArgumentException wrong) {
      throw at(1, wrong.getMessage());
    }
  }

  private void endSample() throws KitException {
    if (sampleLine == 0) {
      return;
    }
    if (sample.get("sollu").isEmpty()) {
      throw at(sampleLine, "\"sollu\" wants a name, such as: sollu ta");
    }
    String file = need("file");
    try {
      samples.add(
          new KitSample(
              sample.get("sollu"),
              file,
              neighbour("after"),
              neighbour("before"),
              places(file),
              decibels("loudness"),
              decibels("peak"),
              doubts));
    } catch (IllegalArgumentException wrong) {
      throw at(sampleLine, "the sollu " + sample.get("sollu") + ": " + wrong.getMessage());
    }
    sample = new HashMap<>();
    doubts = new ArrayList<>();
  }

  private SamplePlaces places(String file) throws KitException {
    List<Integer> steady = frames("steady");
    if (steady.size() != 2) {
      throw at(sampleLine, "\"steady\" wants two times, where it begins and where it ends");
    }
    int vowel = frame("vowel");
    return new SamplePlaces(
        frame("release"),
        vowel,
        sample.containsKey("beat") ? frame("beat") : vowel,
        steady.get(0),
        steady.get(1),
        sample.containsKey("nasal") ? OptionalInt.of(frame("nasal")) : OptionalInt.empty(),
        frame("end"),
        sample.containsKey("marks") ? frames("marks") : finder.marks(file));
  }

  private Optional<String> neighbour(String key) {
    return Optional.of(sample.getOrDefault(key, KitText.SILENCE))
        .filter(name -> !name.equals(KitText.SILENCE) && !name.isEmpty());
  }

  private String need(String key) throws KitException {
    String value = sample.get(key);
    if (value == null) {
      throw at(
          sampleLine,
          "the sollu " + sample.get("sollu") + " has no \"" + key + "\"; add that line");
    }
    return value;
  }

  private int frame(String key) throws KitException {
    List<Integer> frames = frames(key);
    if (frames.size() != 1) {
      throw at(sampleLine, "\"" + key + "\" wants one time in seconds, given " + frames.size());
    }
    return frames.get(0);
  }

  private List<Integer> frames(String key) throws KitException {
    List<Integer> frames = new ArrayList<>();
    for (String word : need(key).split("\\s+")) {
      double seconds = number(key, word);
      if (!(seconds >= 0 && seconds <= LONGEST_SECONDS)) {
        throw at(
            sampleLine, "\"" + key + "\" takes times from 0 to 60 seconds, given \"" + word + "\"");
      }
      frames.add((int) Math.round(seconds * Kit.RATE));
    }
    return frames;
  }

  private double decibels(String key) throws KitException {
    return number(key, need(key));
  }

  private double number(String key, String word) throws KitException {
    try {
      double value = Double.parseDouble(word);
      if (Double.isFinite(value)) {
        return value;
      }
    } catch (NumberFormatException none) {
      // Told below, with what is not a number.
    }
    throw at(
        sampleLine,
        "\"" + key + "\" takes a number with a point, such as 0.125, given \"" + word + "\"");
  }

  private KitException at(int line, String fault) {
    return new KitException(source + ", line " + line + ": " + fault);
  }
}
