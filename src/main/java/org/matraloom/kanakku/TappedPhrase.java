package org.matraloom.kanakku;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Sollu;
import org.matraloom.time.Ratio;

/**
 * The words that lie nearest to a tapped rhythm, as a score writes them.
 *
 * <p>A group ends with a long sound. A group of five is said as five; another that is longer than
 * two ends with tom. Quick sounds without an end are taken beat by beat.
 */
public final class TappedPhrase {

  private static final String LONG_END = "tom";
  private static final int FIVE = 5;
  private static final int LARGEST = 9;

  private final Lexicon lexicon;
  private final TappedRhythm rhythm;
  private final List<String> words = new ArrayList<>();

  private TappedPhrase(TappedRhythm rhythm, Lexicon lexicon) {
    this.rhythm = rhythm;
    this.lexicon = lexicon;
  }

  /**
   * Finds words.
   *
   * @param rhythm what was tapped
   * @param lexicon the sollus to know
   * @return the text of a phrase, as long as the rhythm
   */
  public static String of(TappedRhythm rhythm, Lexicon lexicon) {
    TappedPhrase phrase = new TappedPhrase(rhythm, lexicon);
    phrase.write();
    return String.join(" ", phrase.words);
  }

  private void write() {
    Ratio beat = rhythm.startBeat();
    int inGroup = 0;
    for (int tap = 0; tap < rhythm.lengths().size(); tap++) {
      int length = rhythm.lengths().get(tap);
      beat = beat.plus(Ratio.of(length, rhythm.matrasPerBeat()));
      inGroup++;
      if (length > 1) {
        drawnOut(inGroup, length - 1);
        inGroup = 0;
      } else if (inGroup == LARGEST || beat.isWhole() && !isDrawnOut(tap + 1)) {
        words.add(joined(inGroup));
        inGroup = 0;
      }
    }
    if (inGroup > 0) {
      words.add(joined(inGroup));
    }
  }

  private boolean isDrawnOut(int tap) {
    return tap < rhythm.lengths().size() && rhythm.lengths().get(tap) > 1;
  }

  /** A group whose last sound rings on. */
  private void drawnOut(int sollus, int karvai) {
    if (sollus == FIVE || sollus <= 2) {
      words.add(joined(sollus));
    } else {
      words.add(joined(sollus - 1));
      words.add(LONG_END);
    }
    words.addAll(Collections.nCopies(karvai / 2, ";"));
    words.addAll(Collections.nCopies(karvai % 2, ","));
  }

  private String joined(int sollus) {
    return lexicon.words(sollus).stream().map(Sollu::spelling).collect(Collectors.joining());
  }
}
