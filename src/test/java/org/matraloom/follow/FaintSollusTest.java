package org.matraloom.follow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.matraloom.onset.Onset;

/** Nasals that no onset was heard of, in takes of which it is known what was said when. */
class FaintSollusTest {

  private static final String SCORE =
      """
      tala adi
      tempo 72
      Song = (takajunu takadimi) x6
      perform
        Song nadai 4
      """;

  /** So near the moment at which a nasal begins it is found, in seconds. */
  private static final double NEAR = 0.012;

  private static FaintSollus.Filled filled(VoicedTake take, Set<Integer> unheard)
      throws IOException {
    FaintSollus.Filled filled =
        new FaintSollus(take.expected, take.levels(), take.onsets(unheard), take.found(unheard))
            .filled();
    assertOthersStay(take, unheard, filled);
    return filled;
  }

  /** Whatever is found, what was heard before keeps its moment and its sollu. */
  private static void assertOthersStay(
      VoicedTake take, Set<Integer> unheard, FaintSollus.Filled filled) {
    assertTrue(filled.onsets().containsAll(take.onsets(unheard)));
    for (int i = 1; i < filled.onsets().size(); i++) {
      assertTrue(filled.onsets().get(i).seconds() > filled.onsets().get(i - 1).seconds());
    }
    for (int k = 0; k < take.expected.size(); k++) {
      if (!unheard.contains(k)) {
        assertEquals(Optional.of(new Onset(take.at[k], 0.9)), of(filled, k), "sollu " + k);
      }
    }
    assertEquals(filled.onsets().size(), filled.said().size());
  }

  private static Optional<Onset> of(FaintSollus.Filled filled, int place) {
    return filled.said().stream()
        .filter(said -> said.sollu() == place)
        .map(said -> filled.onsets().get(said.onset()))
        .findFirst();
  }

  private static VoicedTake take(long number) {
    VoicedTake take = new VoicedTake(SCORE, number);
    assertEquals(6, take.places("mi").length);
    assertEquals(take.expected.size() - 1, take.places("mi")[5]);
    return take;
  }

  @Test
  void aSoftRiseInThePlaceOfANasalIsFoundAtItsMoment() throws IOException {
    int tried = 0;
    for (long number = 0; number < 4; number++) {
      for (String nasal : List.of("mi", "nu")) {
        VoicedTake take = take(number);
        int[] places = take.places(nasal);
        Set<Integer> unheard = Set.of(places[1], places[3], places[5]);
        take.softer(places[3], 4);
        FaintSollus.Filled filled = filled(take, unheard);
        for (int place : unheard) {
          Optional<Onset> found = of(filled, place);
          assertTrue(found.isPresent(), nasal + " at " + place + " of take " + number);
          assertEquals(take.at[place], found.get().seconds(), NEAR);
          tried++;
        }
      }
    }
    assertEquals(24, tried);
  }

  @Test
  void twoInARowAreFoundAndThreeAreTooMany() throws IOException {
    VoicedTake take = take(5);
    int mi = take.places("mi")[2];
    FaintSollus.Filled two = filled(take, Set.of(mi - 1, mi));
    assertEquals(take.at[mi - 1], of(two, mi - 1).orElseThrow().seconds(), NEAR);
    assertEquals(take.at[mi], of(two, mi).orElseThrow().seconds(), NEAR);
    FaintSollus.Filled three = filled(take, Set.of(mi - 2, mi - 1, mi));
    assertEquals(take.expected.size() - 3, three.said().size());
  }

  @Test
  void aQuietPlaceIsNone() throws IOException {
    int tried = 0;
    for (double softer : new double[] {14, 25, 60}) {
      for (long number = 0; number < 2; number++) {
        VoicedTake take = take(number);
        int[] places = take.places("mi");
        Set<Integer> unheard = Set.of(places[0], places[2], places[5]);
        unheard.forEach(place -> take.softer(place, softer));
        FaintSollus.Filled filled = filled(take, unheard);
        for (int place : unheard) {
          assertEquals(Optional.empty(), of(filled, place), place + ", softer by " + softer);
          tried++;
        }
      }
    }
    assertEquals(18, tried);
  }

  @Test
  void whatSoundsLikeAnotherSolluOrLikeNoneIsNone() throws IOException {
    int tried = 0;
    for (long number = 0; number < 2; number++) {
      for (int other : new int[] {0, 1, 2, -1}) {
        VoicedTake take = take(number);
        int[] places = take.places("mi");
        Set<Integer> unheard = Set.of(places[0], places[3], places[5]);
        for (int place : unheard) {
          if (other < 0) {
            take.hisses(place);
          } else {
            take.sounds(place, other, 1);
          }
        }
        FaintSollus.Filled filled = filled(take, unheard);
        for (int place : unheard) {
          assertEquals(Optional.empty(), of(filled, place), place + " like " + other);
          tried++;
        }
      }
    }
    assertEquals(24, tried);
  }

  /** The same sounds, less and less like the sollu: the last is given up first. */
  @Test
  void theLastSolluWantsMoreLikeness() throws IOException {
    int inside = 0;
    int atEnd = 0;
    int steps = 24;
    for (int step = 0; step <= steps; step++) {
      VoicedTake take = new VoicedTake(SCORE, 9, 0.12);
      int[] places = take.places("mi");
      Set<Integer> unheard = Set.of(places[3], places[5]);
      for (int place : unheard) {
        take.sounds(place, 1, 0.025 * step);
      }
      FaintSollus.Filled filled = filled(take, unheard);
      boolean isInside = of(filled, places[3]).isPresent();
      boolean isAtEnd = of(filled, places[5]).isPresent();
      assertTrue(isInside || !isAtEnd, "with " + 0.025 * step + " of another sollu");
      inside += isInside ? 1 : 0;
      atEnd += isAtEnd ? 1 : 0;
    }
    assertTrue(atEnd > 0, "found at the end: " + atEnd);
    assertTrue(inside > atEnd, "found inside: " + inside + ", at the end: " + atEnd);
    assertTrue(inside < steps, "found inside: " + inside);
  }

  /** A sound that is like its sollu, but far more like another, is that other's. */
  @Test
  void whatIsFarMoreLikeAnotherSolluIsNotThis() throws IOException {
    int tried = 0;
    for (long number = 0; number < 3; number++) {
      VoicedTake take = new VoicedTake(SCORE, number, 0.12);
      int[] mi = take.places("mi");
      int[] nu = take.places("nu");
      take.sounds(mi[2], nu[0], 1);
      FaintSollus.Filled filled = filled(take, Set.of(mi[2], mi[4]));
      assertEquals(Optional.empty(), of(filled, mi[2]), "nu in place of mi, take " + number);
      assertTrue(of(filled, mi[4]).isPresent(), "mi in its place, take " + number);
      tried++;
    }
    assertEquals(3, tried);
  }

  @Test
  void withoutWhatIsLearntNothingIsLookedFor() throws IOException {
    VoicedTake take = take(1);
    Set<Integer> unheard = Set.of(take.places("mi")[2]);
    PairingSearch.Found found =
        new PairingSearch.Found(take.said(unheard), Optional.empty(), List.of());
    List<Onset> onsets = take.onsets(unheard);
    FaintSollus.Filled filled =
        new FaintSollus(take.expected, take.levels(), onsets, found).filled();
    assertEquals(onsets, filled.onsets());
    assertEquals(found.said(), filled.said());
  }

  /** Nothing is put where nothing is missing, nor where so few are heard that none is known. */
  @Test
  void nothingIsPutWhereNothingIsMissing() throws IOException {
    VoicedTake take = take(2);
    assertEquals(take.expected.size(), filled(take, Set.of()).said().size());
    Set<Integer> most =
        IntStream.range(0, take.expected.size())
            .filter(k -> k % 2 == 1)
            .boxed()
            .collect(Collectors.toSet());
    FaintSollus.Filled filled = filled(take, most);
    assertEquals(
        take.expected.size() / 2, filled.said().size(), "of half of them nothing is known");
  }
}
