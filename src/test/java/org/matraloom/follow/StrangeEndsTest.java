package org.matraloom.follow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A clap in the place of a last sollu, in takes of which it is known. */
class StrangeEndsTest {

  private static final String SCORE =
      "tala adi\ntempo 72\nSong = (takajunu takadimi) x4\nperform\n  Song nadai 4\n";

  private static Alignment heard(VoicedTake take) throws IOException {
    return new Alignment(take.expected, take.onsets(Set.of()), take.said(Set.of()));
  }

  private static VoicedTake hissing(long number, int place) {
    VoicedTake take = new VoicedTake(SCORE, number);
    take.hisses(place);
    return take;
  }

  @Test
  void aLastSoundLikeNoSolluThatComesWithAClapIsTheClap() throws IOException {
    for (long number = 0; number < 3; number++) {
      VoicedTake take = hissing(number, 31);
      Alignment all = heard(take);
      assertEquals(32, all.said().size());
      double at = all.secondsOf(all.said().get(31));
      Alignment left = StrangeEnds.leftOut(all, take.levels(), seconds -> seconds == at);
      assertEquals(all.said().subList(0, 31), left.said());
      assertEquals(List.of(31), left.missed());
    }
  }

  @Test
  void withoutAClapThereItStays() throws IOException {
    VoicedTake take = hissing(0, 31);
    Alignment all = heard(take);
    double at = all.secondsOf(all.said().get(31));
    assertSame(all, StrangeEnds.leftOut(all, take.levels(), seconds -> seconds < at));
  }

  /** A sollu often falls on a clap, the first and the last too; what is unlike elsewhere stays. */
  @Test
  void aSolluThatFallsOnAClapStays() throws IOException {
    for (long number = 0; number < 3; number++) {
      VoicedTake plain = new VoicedTake(SCORE, number);
      Alignment all = heard(plain);
      assertSame(all, StrangeEnds.leftOut(all, plain.levels(), seconds -> true));
      for (int place : new int[] {0, 15, 30}) {
        VoicedTake take = hissing(number, place);
        Alignment other = heard(take);
        assertSame(other, StrangeEnds.leftOut(other, take.levels(), seconds -> true), "" + place);
      }
    }
  }

  /** Of a few sollus it is not known how they sound. */
  @Test
  void aShortTakeTellsNothing() throws IOException {
    VoicedTake take =
        new VoicedTake("tala adi\nSong = (takadimi) x2\nperform\n  Song nadai 4\n", 1);
    take.hisses(7);
    Alignment all = heard(take);
    assertSame(all, StrangeEnds.leftOut(all, take.levels(), seconds -> true));
  }

  @Test
  void aLastSoundThatIsAnotherSolluIsToldFromItsOwnAndFromNoise() throws IOException {
    int found = 0;
    for (long number = 0; number < 3; number++) {
      VoicedTake own = new VoicedTake(SCORE, number);
      assertEquals(false, StrangeEnds.isOther(heard(own), own.levels()));
      for (int place = 0; place < 4; place++) {
        VoicedTake other = new VoicedTake(SCORE, number);
        other.sounds(31, place, 1);
        found += StrangeEnds.isOther(heard(other), other.levels()) ? 1 : 0;
      }
      VoicedTake noise = hissing(number, 31);
      assertEquals(false, StrangeEnds.isOther(heard(noise), noise.levels()));
    }
    assertTrue(found >= 6, found + " of 12 sounds of another sollu");
  }
}
