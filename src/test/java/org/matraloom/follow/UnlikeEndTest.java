package org.matraloom.follow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.matraloom.onset.Onset;
import org.matraloom.onset.SoundLevels;

/** What is heard in the place of the last sollu, in takes of which it is known. */
class UnlikeEndTest {

  private static final String SCORE =
      "tala adi\ntempo 72\nSong = (takajunu takadimi) x4\nperform\n  Song nadai 4\n";

  /** What cannot be told if the last onset is so sure. */
  private static Optional<EndAmbiguity> unsure(VoicedTake take, double confidence)
      throws IOException {
    int last = take.expected.size() - 1;
    List<Onset> onsets = new ArrayList<>(take.onsets(Set.of()));
    onsets.set(last, new Onset(onsets.get(last).seconds(), confidence));
    return UnlikeEnd.of(take.expected, take.levels(), onsets, take.said(Set.of()));
  }

  private static VoicedTake hissing(String score, long number) {
    VoicedTake take = new VoicedTake(score, number);
    take.hisses(take.expected.size() - 1);
    return take;
  }

  @Test
  void anUnsureSoundLikeNoSolluIsDoubted() throws IOException {
    for (long number = 0; number < 3; number++) {
      EndAmbiguity unsure = unsure(hissing(SCORE, number), 0.4).orElseThrow();
      assertEquals(new EndAmbiguity(true, EndAmbiguity.End.UNLIKE), unsure);
      assertEquals(
          "Where the last sollu should be, a sound is heard that is not like it:"
              + " I cannot tell whether it was said.",
          unsure.words());
    }
  }

  /** The vowel of an n right before the end is heard to begin as surely as a sollu. */
  @Test
  void aSureSoundLikeNoSolluIsDoubtedToo() throws IOException {
    for (long number = 0; number < 3; number++) {
      VoicedTake take = hissing(SCORE, number);
      assertTrue(unsure(take, 0.9).isPresent(), "number " + number);
      assertEquals(Optional.empty(), unsure(new VoicedTake(SCORE, number), 0.9));
      assertTrue(
          UnlikeEnd.isUnlike(
              take.expected, take.levels(), take.onsets(Set.of()), take.said(Set.of())),
          "it is unlike them all the same");
    }
  }

  /**
   * A sure sound that is far from the last sollu and hardly like another, such as one between two
   * others. It is not far from all, so that it is its own sollu that tells.
   */
  @Test
  void aSureSoundFarFromItsSolluAndHardlyLikeAnotherIsDoubted() throws IOException {
    int tried = 0;
    for (long number = 0; number < 4; number++) {
      for (int one = 0; one < 4; one++) {
        for (double share : new double[] {0.2, 0.25, 0.3, 0.35, 0.4, 0.45}) {
          VoicedTake take = new VoicedTake(SCORE, number);
          int last = take.expected.size() - 1;
          take.blends(last, one, (one + 1) % 4, share);
          SoundLevels levels = take.levels();
          List<Onset> onsets = take.onsets(Set.of());
          List<Alignment.Said> said = take.said(Set.of());
          SolluModels models =
              SolluModels.of(
                  SoundColours.of(levels, onsets),
                  ExpectedSollu.kinds(take.expected),
                  said.subList(0, last));
          double likest = models.likestOfAll(last);
          if (likest > -1.9 && likest < 0.4 && likest - models.fallsShort(last, last) < -7) {
            String what = "between " + one + " and the next by " + share;
            assertTrue(UnlikeEnd.of(take.expected, levels, onsets, said).isPresent(), what);
            tried++;
          }
        }
      }
    }
    assertTrue(tried > 2, tried + " sounds between two others");
  }

  /** The last sollu, or another of the take by mistake. */
  @Test
  void whatSoundsLikeAnySolluIsNotDoubted() throws IOException {
    for (long number = 0; number < 2; number++) {
      for (int other = 0; other < 4; other++) {
        VoicedTake take = new VoicedTake(SCORE, number);
        take.sounds(take.expected.size() - 1, other, 1);
        assertEquals(Optional.empty(), unsure(take, 0.3), "like sollu " + other);
      }
      assertEquals(Optional.empty(), unsure(new VoicedTake(SCORE, number), 0.3));
    }
  }

  /**
   * A sollu that is said once elsewhere makes nothing like it; of the last one it must be known.
   */
  @Test
  void aSolluThatIsSaidOnceTellsNothing() throws IOException {
    String once = SCORE.replace("Song = ", "Song = tom ");
    String onceAtTheEnd = SCORE.replace(" x4", " x4 tom");
    for (long number = 0; number < 3; number++) {
      assertTrue(unsure(hissing(once, number), 0.4).isPresent(), "number " + number);
      assertEquals(Optional.empty(), unsure(hissing(onceAtTheEnd, number), 0.4));
    }
  }

  @Test
  void aLastSolluThatIsMissingIsAnotherMatter() throws IOException {
    VoicedTake take = hissing(SCORE, 1);
    int last = take.expected.size() - 1;
    assertEquals(
        Optional.empty(),
        UnlikeEnd.of(
            take.expected,
            take.levels(),
            take.onsets(Set.of()),
            take.said(Set.of()).subList(0, last)));
    assertEquals(
        Optional.empty(),
        UnlikeEnd.of(take.expected, take.levels(), take.onsets(Set.of()), List.of()));
  }

  @Test
  void fewSollusTellNothing() throws IOException {
    VoicedTake take = hissing(SCORE.replace("takajunu ", "").replace("x4", "x6"), 1);
    List<Onset> onsets = take.onsets(Set.of());
    List<Alignment.Said> said = take.said(Set.of());
    SoundLevels levels = take.levels();
    assertEquals(24, said.size());
    assertTrue(UnlikeEnd.isUnlike(take.expected, levels, onsets, said));
    assertFalse(UnlikeEnd.isUnlike(take.expected, levels, onsets, said.subList(1, 24)));
  }

  /** Who says any sollu for any cannot be told by the sound. */
  @Test
  void whereSoundsDoNotTellSollusApartNothingIsDoubted() throws IOException {
    for (long number = 0; number < 12; number++) {
      VoicedTake take = new VoicedTake(SCORE, number);
      take.mumbled();
      take.hisses(take.expected.size() - 1);
      assertEquals(Optional.empty(), unsure(take, 0.3));
    }
  }
}
