package org.matraloom.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.take.Practice;

/**
 * A drill as it is typed.
 *
 * @param score the score as it was given
 * @param lexicon the user's list of sollus as it was given
 * @param tala the tala of the score, for drills of plain words
 */
record TypedDrill(String score, Optional<String> lexicon, String tala) {

  /** The whole command, words quoted where a shell needs it. */
  String of(Practice practice) {
    List<String> words = new ArrayList<>(List.of("matraloom", "drill"));
    words.addAll(practice.drill());
    if (practice.needsScore()) {
      words.add(score);
      lexicon.ifPresent(list -> words.addAll(List.of("--lexicon", list)));
    } else {
      words.addAll(List.of("--tala", tala));
    }
    words.addAll(practice.options());
    return String.join(" ", words.stream().map(TypedDrill::quoted).toList());
  }

  /** A word as a shell takes it. */
  static String quoted(String word) {
    return word.matches("[A-Za-z0-9_./+:=%,@-]+") ? word : "'" + word.replace("'", "'\\''") + "'";
  }
}
