package org.matraloom.spell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.matraloom.score.Anga;
import org.matraloom.score.Avartana;
import org.matraloom.score.Finger;
import org.matraloom.score.FingerCustom;
import org.matraloom.score.Jati;
import org.matraloom.score.Kriya;
import org.matraloom.score.Tala;
import org.matraloom.time.Ratio;

/** The 35 talas, their gestures and their kalais, against published tables. */
class SuladiTalasTest {

  /**
   * Totals: the one-page tala chart, scribd.com document 501086532, cell by cell, and "The scheme
   * of 35 talas", carnaticmusicexams.in, 2018. Gestures follow from the same pages: laghu = clap
   * and counts, drutam = clap and turn, anudrutam = clap.
   */
  @ParameterizedTest
  @CsvSource({
    // family, jati, aksharas, claps, turns, finger counts
    "DHRUVA, TISRA, 11, 4, 1, 6",
    "DHRUVA, CHATUSRA, 14, 4, 1, 9",
    "DHRUVA, KHANDA, 17, 4, 1, 12",
    "DHRUVA, MISRA, 23, 4, 1, 18",
    "DHRUVA, SANKIRNA, 29, 4, 1, 24",
    "MATYA, TISRA, 8, 3, 1, 4",
    "MATYA, CHATUSRA, 10, 3, 1, 6",
    "MATYA, KHANDA, 12, 3, 1, 8",
    "MATYA, MISRA, 16, 3, 1, 12",
    "MATYA, SANKIRNA, 20, 3, 1, 16",
    "RUPAKA, TISRA, 5, 2, 1, 2",
    "RUPAKA, CHATUSRA, 6, 2, 1, 3",
    "RUPAKA, KHANDA, 7, 2, 1, 4",
    "RUPAKA, MISRA, 9, 2, 1, 6",
    "RUPAKA, SANKIRNA, 11, 2, 1, 8",
    "JHAMPA, TISRA, 6, 3, 1, 2",
    "JHAMPA, CHATUSRA, 7, 3, 1, 3",
    "JHAMPA, KHANDA, 8, 3, 1, 4",
    "JHAMPA, MISRA, 10, 3, 1, 6",
    "JHAMPA, SANKIRNA, 12, 3, 1, 8",
    "TRIPUTA, TISRA, 7, 3, 2, 2",
    "TRIPUTA, CHATUSRA, 8, 3, 2, 3",
    "TRIPUTA, KHANDA, 9, 3, 2, 4",
    "TRIPUTA, MISRA, 11, 3, 2, 6",
    "TRIPUTA, SANKIRNA, 13, 3, 2, 8",
    "ATA, TISRA, 10, 4, 2, 4",
    "ATA, CHATUSRA, 12, 4, 2, 6",
    "ATA, KHANDA, 14, 4, 2, 8",
    "ATA, MISRA, 18, 4, 2, 12",
    "ATA, SANKIRNA, 22, 4, 2, 16",
    "EKA, TISRA, 3, 1, 0, 2",
    "EKA, CHATUSRA, 4, 1, 0, 3",
    "EKA, KHANDA, 5, 1, 0, 4",
    "EKA, MISRA, 7, 1, 0, 6",
    "EKA, SANKIRNA, 9, 1, 0, 8"
  })
  void everyTalaHasItsPublishedLengthAndGestures(
      TalaFamily family, Jati jati, int aksharas, int claps, int turns, int counts) {
    Tala tala = family.tala(jati);
    assertEquals(aksharas, tala.aksharas());
    for (FingerCustom custom : FingerCustom.values()) {
      List<Kriya> kriyas = tala.kriyas(custom);
      assertEquals(aksharas, kriyas.size());
      assertEquals(claps, count(kriyas, Kriya.Clap.class));
      assertEquals(turns, count(kriyas, Kriya.Wave.class));
      assertEquals(counts, count(kriyas, Kriya.Count.class));
    }
  }

  /** Row sums and checksums added up from the same chart. */
  @ParameterizedTest
  @CsvSource({
    "DHRUVA, 94, IOII",
    "MATYA, 66, IOI",
    "RUPAKA, 38, OI",
    "JHAMPA, 43, IUO",
    "TRIPUTA, 48, IOO",
    "ATA, 76, IIOO",
    "EKA, 28, I"
  })
  void everyFamilyHasItsRowSumAndItsAngas(TalaFamily family, int rowSum, String signs) {
    int sum = 0;
    for (Jati jati : Jati.values()) {
      Tala tala = family.tala(jati);
      sum += tala.aksharas();
      String formula = tala.formula();
      assertEquals(signs, formula.replaceAll("[^IOU]", ""));
      assertEquals(
          List.of(Integer.toString(jati.aksharas())),
          List.of(formula.replaceAll("[^0-9 ]", "").trim().split(" +")).stream()
              .distinct()
              .toList(),
          "all laghus have one jati: " + formula);
    }
    assertEquals(rowSum, sum);
  }

  @Test
  void theTableAddsUp() {
    List<Integer> totals = totals();
    assertEquals(35, totals.size());
    assertEquals(393, totals.stream().mapToInt(Integer::intValue).sum());
    assertEquals(3, Collections.min(totals));
    assertEquals(29, Collections.max(totals));
    assertEquals(3, TalaFamily.EKA.tala(Jati.TISRA).aksharas());
    assertEquals(29, TalaFamily.DHRUVA.tala(Jati.SANKIRNA).aksharas());
  }

  /** 35 talas in 5 gatis make 175: the same chart. The sums follow: 393 x 28 = 11 004. */
  @Test
  void thereAreOneHundredAndSeventyFiveTalasInGatis() {
    List<Integer> matras = new ArrayList<>();
    for (int aksharas : totals()) {
      for (Jati gati : Jati.values()) {
        matras.add(aksharas * gati.aksharas());
      }
    }
    assertEquals(175, matras.size());
    assertEquals(11_004, matras.stream().mapToInt(Integer::intValue).sum());
    assertEquals(261, Collections.max(matras));
    assertEquals(9, Collections.min(matras));
  }

  /** The only family that begins with a drutam: public newsgroup article, and the chart. */
  @ParameterizedTest
  @EnumSource(TalaFamily.class)
  void onlyRupakaBeginsWithADrutam(TalaFamily family) {
    Anga first = family.tala(Jati.CHATUSRA).angas().get(0);
    assertEquals(family == TalaFamily.RUPAKA, first instanceof Anga.Drutam);
  }

  /** Talas of one length, from the chart, that differ in their angas and so in the hand. */
  @Test
  void talasOfOneLengthStillDifferByAnga() {
    List<Tala> eights =
        List.of(
            TalaFamily.MATYA.tala(Jati.TISRA),
            TalaFamily.TRIPUTA.tala(Jati.CHATUSRA),
            TalaFamily.JHAMPA.tala(Jati.KHANDA));
    List<Tala> sevens =
        List.of(
            TalaFamily.RUPAKA.tala(Jati.KHANDA),
            TalaFamily.JHAMPA.tala(Jati.CHATUSRA),
            TalaFamily.TRIPUTA.tala(Jati.TISRA),
            TalaFamily.EKA.tala(Jati.MISRA));
    assertAllDiffer(eights, 8);
    assertAllDiffer(sevens, 7);
  }

  private static void assertAllDiffer(List<Tala> talas, int aksharas) {
    assertTrue(talas.stream().allMatch(tala -> tala.aksharas() == aksharas));
    assertEquals(talas.size(), new HashSet<>(talas.stream().map(Tala::angas).toList()).size());
    assertEquals(
        talas.size(),
        new HashSet<>(talas.stream().map(tala -> tala.kriyas(FingerCustom.RESTART)).toList())
            .size());
  }

  @Test
  void talasAreNamedJatiFirst() {
    assertEquals("chatusra triputa", TalaFamily.TRIPUTA.tala(Jati.CHATUSRA).name());
    assertEquals("I4 O O", TalaFamily.TRIPUTA.tala(Jati.CHATUSRA).formula());
    assertEquals("I7 U O", TalaFamily.JHAMPA.tala(Jati.MISRA).formula());
  }

  /**
   * Kriya order of adi: planetmridangam.tripod.com, article 4; darbar.org, "Carnatic Rhythms 101".
   */
  @Test
  void adiIsClapThreeFingersClapTurnClapTurn() {
    List<String> words = adi(1).kriyas().stream().map(Kriya::words).toList();
    assertEquals(
        List.of(
            "clap",
            "little finger",
            "ring finger",
            "middle finger",
            "clap",
            "wave",
            "clap",
            "wave"),
        words);
  }

  /**
   * Counts start at the little finger: Nelson, Solkattu Manual, Wesleyan 2014, opening lesson.
   * Beyond the thumb two customs: te.wikipedia.org on talas restarts; saayujya.com, "taala", goes
   * "little finger towards the thumb and back".
   */
  @ParameterizedTest
  @CsvSource({
    "TISRA, RESTART, LR", "TISRA, RETURN, LR",
    "CHATUSRA, RESTART, LRM", "CHATUSRA, RETURN, LRM",
    "KHANDA, RESTART, LRMI", "KHANDA, RETURN, LRMI",
    "MISRA, RESTART, LRMITL", "MISRA, RETURN, LRMITI",
    "SANKIRNA, RESTART, LRMITLRM", "SANKIRNA, RETURN, LRMITIMR"
  })
  void fingersOfALaghu(Jati jati, FingerCustom custom, String fingers) {
    List<Kriya> kriyas = new Anga.Laghu(jati).kriyas(custom);
    assertTrue(kriyas.get(0) instanceof Kriya.Clap);
    StringBuilder initials = new StringBuilder();
    kriyas.stream()
        .skip(1)
        .map(kriya -> ((Kriya.Count) kriya).finger())
        .forEach(finger -> initials.append(finger.name().charAt(0)));
    assertEquals(fingers, initials.toString());
  }

  @Test
  void theReturningCountComesBackToTheLittleFinger() {
    assertEquals(Finger.LITTLE, FingerCustom.RETURN.finger(8));
    assertEquals(Finger.RING, FingerCustom.RETURN.finger(9));
    assertThrows(IllegalArgumentException.class, () -> FingerCustom.RESTART.finger(-1));
  }

  /** One kalai 8, two kalai 16 beats in adi: mridangams.com, "Kalai and Ghathi", 2007. */
  @Test
  void twoKalaiGivesEachKriyaTwice() {
    Avartana two = adi(2);
    assertEquals(8, adi(1).beats());
    assertEquals(16, two.beats());
    assertEquals(32, adi(4).beats());
    for (int beat = -32; beat < 48; beat++) {
      int akshara = Math.floorMod(Math.floorDiv(beat, 2), 8);
      assertEquals(two.kriyas().get(akshara), two.kriyaAt(beat));
      assertEquals(Math.floorMod(beat, 2) == 1, two.repeatsKriya(beat));
      assertEquals(Math.floorMod(beat, 16) == 0, two.isSamam(beat));
    }
    assertEquals(List.of(0, 8, 12), two.angaStarts());
    assertThrows(IllegalArgumentException.class, () -> adi(3));
  }

  /**
   * Matras of one avartana of adi: the tala chart and mridangams.com, chapter 3; two kalai doubles.
   */
  @ParameterizedTest
  @CsvSource({"3, 24, 48", "4, 32, 64", "5, 40, 80", "7, 56, 112", "9, 72, 144"})
  void matrasOfAdiInEachGati(int gati, int oneKalai, int twoKalai) {
    assertEquals(oneKalai, adi(1).beats() * gati);
    assertEquals(twoKalai, adi(2).beats() * gati);
  }

  /**
   * Groupings: lvnaga.wordpress.com, December 2014, and ajsriram.blogspot.com, January 2004; tisra
   * chapu from the forum thread "Angas for Chapu talas?".
   */
  @ParameterizedTest
  @CsvSource({
    "TISRA, 3, 1+2, 0 1",
    "KHANDA, 5, 2+3, 0 2",
    "MISRA, 7, 3+2+2, 0 3 5",
    "SANKIRNA, 9, 4+5, 0 4"
  })
  void chapuTalasClapAtTheirGroups(ChapuTala chapu, int counts, String grouping, String claps) {
    Tala tala = chapu.tala();
    assertEquals(counts, tala.aksharas());
    assertEquals(grouping, tala.formula());
    List<Kriya> kriyas = tala.kriyas(FingerCustom.RESTART);
    List<String> places =
        IntStream.range(0, counts)
            .filter(akshara -> kriyas.get(akshara) instanceof Kriya.Clap)
            .mapToObj(Integer::toString)
            .toList();
    assertEquals(claps, String.join(" ", places));
    assertEquals(counts - places.size(), count(kriyas, Kriya.Hold.class));
  }

  /** The chart prints adi as "4+2+4=8"; those angas make ten, and adi is 4+2+2. */
  @Test
  void theMisprintedSumOfAdiIsNotEight() {
    assertNotEquals(8, grouping(4, 2, 4).aksharas());
    assertEquals(10, grouping(4, 2, 4).aksharas());
    assertEquals(8, grouping(4, 2, 2).aksharas());
  }

  @Test
  void placesAreSaidTheWayTheyAreCounted() {
    Avartana adi = adi(1);
    assertEquals("samam", adi.say(Ratio.of(16)));
    assertEquals("beat 5", adi.say(Ratio.of(4)));
    assertEquals("beat 6 1/2", adi.say(new Ratio(-5, 2)));
    assertEquals("beat 8 3/4", adi.say(new Ratio(-1, 4)));
    assertEquals(new Ratio(31, 4), adi.placeOf(new Ratio(-1, 4)));
  }

  @Test
  void impossibleTalasAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Tala("none", List.of()));
    assertThrows(IllegalArgumentException.class, () -> new Anga.Group(0));
    assertThrows(IllegalArgumentException.class, () -> new Anga.Group(Tala.LONGEST_GROUP + 1));
    List<Anga> many = Collections.nCopies(Tala.MOST_ANGAS + 1, new Anga.Drutam());
    assertThrows(IllegalArgumentException.class, () -> new Tala("many", many));
  }

  private static Tala grouping(int... groups) {
    return new Tala("", IntStream.of(groups).<Anga>mapToObj(Anga.Group::new).toList());
  }

  private static Avartana adi(int kalai) {
    return Avartana.of(TalaFamily.TRIPUTA.tala(Jati.CHATUSRA), kalai, FingerCustom.RESTART);
  }

  private static List<Integer> totals() {
    List<Integer> totals = new ArrayList<>();
    for (TalaFamily family : TalaFamily.values()) {
      for (Jati jati : Jati.values()) {
        totals.add(family.tala(jati).aksharas());
      }
    }
    return totals;
  }

  private static long count(List<Kriya> kriyas, Class<? extends Kriya> kind) {
    return kriyas.stream().filter(kind::isInstance).count();
  }
}
