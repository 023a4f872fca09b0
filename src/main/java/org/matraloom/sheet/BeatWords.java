package org.matraloom.sheet;

import java.util.ArrayList;
import java.util.List;

/** The marks of a beat in words that can be read aloud. */
final class BeatWords {

  private final List<String> phrases = new ArrayList<>();
  private final List<String> sollus = new ArrayList<>();
  private int rings;
  private int silences;
  private int speed = 1;
  private boolean breathes;

  private BeatWords() {}

  /** The marks of a cell, or "nothing" for a cell without any. */
  static String of(List<Mark> marks) {
    BeatWords words = new BeatWords();
    marks.forEach(words::add);
    words.flush();
    return words.phrases.isEmpty() ? "nothing" : String.join("; ", words.phrases);
  }

  private void add(Mark mark) {
    if (mark.speed() != speed) {
      flush();
      speed = mark.speed();
    }
    if (mark instanceof Mark.Said said) {
      if (breathes) {
        flush();
      }
      flushPauses();
      sollus.add(said.text());
    } else if (mark instanceof Mark.Karvai) {
      flushSollus();
      flushSilences();
      rings++;
    } else {
      flushSollus();
      flushRings();
      silences++;
    }
    breathes |= mark.breath().isPresent();
  }

  /** A breath is told before the next sollu, after what rings or is silent around it. */
  private void flush() {
    flushSollus();
    flushPauses();
    if (breathes) {
      phrases.add("breathe");
      breathes = false;
    }
  }

  private void flushPauses() {
    flushRings();
    flushSilences();
  }

  private void flushSollus() {
    if (!sollus.isEmpty()) {
      phrases.add(faster() + String.join(" ", sollus));
      sollus.clear();
    }
  }

  private void flushRings() {
    if (rings > 0) {
      phrases.add("rings " + counted(rings));
      rings = 0;
    }
  }

  private void flushSilences() {
    if (silences > 0) {
      phrases.add("silent " + counted(silences));
      silences = 0;
    }
  }

  private String faster() {
    return speed == 1 ? "" : speed == 2 ? "twice as fast: " : speed + " times as fast: ";
  }

  private String counted(int marks) {
    String part = speed == 1 ? "" : speed == 2 ? "half " : "1/" + speed + " ";
    return marks + " " + part + (marks == 1 ? "matra" : "matras");
  }
}
