package org.matraloom.follow;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.matraloom.onset.Onset;

/** First and last sollus for which nothing speaks, in takes with sound of which all is known. */
class LoneEndsTest {

  private static final String SCORE =
      "tala adi\ntempo 72\nSong = (takajunu takadimi) x4\nperform\n  Song nadai 4\n";
  private static final double MATRA = 60.0 / 72 / 4;

  private static List<Alignment.Said> left(VoicedTake take, Set<Integer> unheard)
      throws IOException {
    return new LoneEnds(
            take.expected,
            take.levels(),
            take.onsets(unheard),
            take.expected.stream().map(each -> 0.0).toList())
        .leftOut(take.said(unheard));
  }

  private static VoicedTake hissing(long number, int place, double matras) {
    VoicedTake take = new VoicedTake(SCORE, number);
    take.hisses(place);
    take.at[place] += matras * MATRA;
    return take;
  }

  @Test
  void aFarSoundAfterMissingSollusThatIsUnlikeTheLastIsNotIt() throws IOException {
    int tried = 0;
    for (long number = 0; number < 3; number++) {
      for (double matras : new double[] {-0.5, 0.5, 1}) {
        VoicedTake take = hissing(number, 31, matras);
        List<Alignment.Said> said = take.said(Set.of(30));
        assertEquals(said.subList(0, 30), left(take, Set.of(30)), matras + " matras");
        tried++;
      }
    }
    assertEquals(9, tried);
  }

  /** Near its place, like its sollu, or right after the one before: it may be the last sollu. */
  @Test
  void oneOfTheseAloneIsNotEnough() throws IOException {
    for (long number = 0; number < 3; number++) {
      VoicedTake near = hissing(number, 31, 0);
      assertEquals(near.said(Set.of(30)), left(near, Set.of(30)), "near");
      VoicedTake like = new VoicedTake(SCORE, number);
      like.at[31] += 0.6 * MATRA;
      assertEquals(like.said(Set.of(30)), left(like, Set.of(30)), "like its sollu");
      VoicedTake after = hissing(number, 31, 0.6);
      assertEquals(after.said(Set.of()), left(after, Set.of()), "nothing is missing");
    }
  }

  @Test
  void aFirstSoundFarFromItsPlaceAndLikeNoSolluIsNone() throws IOException {
    for (long number = 0; number < 3; number++) {
      VoicedTake take = hissing(number, 0, 0.5);
      assertEquals(take.said(Set.of()).subList(1, 32), left(take, Set.of()));
      VoicedTake near = hissing(number, 0, 0);
      assertEquals(near.said(Set.of()), left(near, Set.of()), "near");
      VoicedTake like = new VoicedTake(SCORE, number);
      like.at[0] += 0.5 * MATRA;
      assertEquals(like.said(Set.of()), left(like, Set.of()), "like its sollu");
    }
  }

  @Test
  void ofAFewSollusNothingIsLeftOut() throws IOException {
    VoicedTake take = hissing(0, 31, 1);
    List<Alignment.Said> few = take.said(Set.of()).subList(23, 32);
    List<Onset> onsets = take.onsets(Set.of());
    LoneEnds ends =
        new LoneEnds(
            take.expected, take.levels(), onsets, take.expected.stream().map(each -> 0.0).toList());
    assertEquals(few, ends.leftOut(few));
    List<Alignment.Said> all = take.said(Set.of(30));
    assertEquals(
        all,
        new LoneEnds(take.expected, take.levels(), onsets, List.of()).leftOut(all),
        "without lags");
  }
}
