package org.matraloom.notation;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.matraloom.score.Length;
import org.matraloom.score.Sequence;

/** Phrases that a score says without writing them: fill-ins, and those of other scores. */
final class BorrowedPhrases {

  private final Set<String> own;
  private final Map<String, Sequence> phrases = new LinkedHashMap<>();
  private final Map<String, Length> lengths;

  /**
   * None as yet.
   *
   * @param own the names that are taken
   * @param lengths the lengths of phrases; those of borrowed ones are added
   */
  BorrowedPhrases(Set<String> own, Map<String, Length> lengths) {
    this.own = own;
    this.lengths = lengths;
  }

  Map<String, Sequence> phrases() {
    return phrases;
  }

  /** A name that no phrase bears: the wished one, or that with a number; a phrase may share it. */
  String nameFor(String wished, Sequence sequence) {
    String name = wished;
    for (int number = 2; isTaken(name, sequence); number++) {
      name = wished + "_" + number;
    }
    return name;
  }

  /** Takes a phrase under a name that {@link #nameFor} gave. */
  void add(String name, Sequence sequence, Length length) {
    phrases.put(name, sequence);
    lengths.put(name, length);
  }

  /** Whether another phrase bears a name. */
  boolean isTaken(String name, Sequence sequence) {
    return own.contains(name) || (phrases.containsKey(name) && !phrases.get(name).equals(sequence));
  }
}
