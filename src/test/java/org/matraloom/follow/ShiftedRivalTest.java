package org.matraloom.follow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Sollus missing at an end of words that repeat: at which, nobody can tell. */
class ShiftedRivalTest {

  private static final String REPEATED =
      "tala adi\ntempo 72\nSong = (takadimi) x10\nperform\n  Song nadai 4\n";
  private static final String OTHER =
      "tala adi\ntempo 72\nSong = (takadimi takajunu tadiginatom) x4\nperform\n  Song nadai 4\n";

  private static HeardTake take(String score, long number, int from, int unsaid) {
    HeardTake take = new HeardTake(score, number, 0.02);
    take.blur = 0.4;
    take.say(from, take.expected.size() - unsaid, 3);
    return take;
  }

  @Test
  void ofWordsThatRepeatEitherEndMayBeMissing() {
    int tried = 0;
    for (long number = 0; number < 3; number++) {
      for (int missing = 1; missing <= 5; missing++) {
        EndAmbiguity.End end =
            missing == 1 ? EndAmbiguity.End.EITHER : EndAmbiguity.End.EITHER_SOME;
        Optional<EndAmbiguity> asked = Optional.of(new EndAmbiguity(true, end));
        assertEquals(asked, take(REPEATED, number, missing, 0).found().unsure(), "" + missing);
        assertEquals(asked, take(REPEATED, number, 0, missing).found().unsure(), "" + missing);
        tried++;
      }
    }
    assertEquals(15, tried);
  }

  /** Six at an end are a part of the take, and are not looked for at the other. */
  @Test
  void sixAreNoMatterOfAnEnd() {
    for (long number = 0; number < 3; number++) {
      Optional<EndAmbiguity> unsure = take(REPEATED, number, 0, 6).found().unsure();
      assertTrue(unsure.isEmpty(), "" + unsure);
    }
  }

  @Test
  void ofOtherWordsTheSoundsTell() {
    for (long number = 0; number < 3; number++) {
      for (int missing = 2; missing <= 5; missing++) {
        HeardTake late = take(OTHER, number, missing, 0);
        assertTrue(isTold(late), missing + " missing at the beginning");
        assertEquals(1, late.share(late.paired()), 0.03, missing + " missing at the beginning");
        HeardTake early = take(OTHER, number, 0, missing);
        assertTrue(isTold(early), missing + " missing at the end");
        assertEquals(1, early.share(early.paired()), 0.03, missing + " missing at the end");
      }
    }
  }

  /** In words that repeat a mouth that speaks as the letters say tells which end is missing. */
  @Test
  void whereTheSoundsAreWhatTheLettersSayTheyTell() {
    int tried = 0;
    for (String score : new String[] {REPEATED, REPEATED.replace("takadimi", "takajunu")}) {
      for (long number = 0; number < 3; number++) {
        for (boolean first : new boolean[] {true, false}) {
          HeardTake take = new HeardTake(score, number, 0.02);
          take.asLettersSay = true;
          take.blur = 0.4;
          take.say(first ? 1 : 0, take.expected.size() - (first ? 0 : 1), 3);
          String what = score + ", the " + (first ? "first" : "last") + " missing";
          assertTrue(isTold(take), what + ": " + take.found().unsure());
          assertEquals(1, take.share(take.paired()), 0.03, what);
          tried++;
        }
      }
    }
    assertEquals(12, tried);
  }

  /** Whether it is clear at which end something is missing. */
  private static boolean isTold(HeardTake take) {
    return take.found()
        .unsure()
        .filter(unsure -> unsure.at().name().startsWith("EITHER"))
        .isEmpty();
  }

  /** Where several are missing and it cannot be told at which end, one broke off before it. */
  @Test
  void severalThatMayBeMissingAtEitherEndAreMissingAtTheEnd() {
    for (long number = 0; number < 3; number++) {
      for (int missing = 2; missing <= 5; missing++) {
        HeardTake take = take(REPEATED, number, 0, missing);
        assertEquals(1, take.share(take.paired()), 0.03, missing + " missing");
      }
    }
  }
}
