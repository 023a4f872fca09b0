package org.matraloom.repair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.matraloom.kanakku.Cycles;
import org.matraloom.kanakku.Landing;
import org.matraloom.kanakku.Pieces;
import org.matraloom.score.Composition;
import org.matraloom.score.Edit;
import org.matraloom.score.Performance;
import org.matraloom.spell.ChapuTala;
import org.matraloom.time.Ratio;

/** Figures are derived. */
class ConversionTest {

  private static final Composition EIGHTY = Pieces.said(Cycles.ADI, Pieces.words(80), 4, 4, 5);

  @Test
  void theTisraVersionMissesAndIsRepaired() {
    Conversion tisra = version("the last round in tisra nadai (3)");
    assertEquals(Ratio.of(200, 3), tisra.landing().beats());
    assertFalse(tisra.landing().lands());
    List<Repair> repairs = tisra.repairs(EIGHTY, Pieces.LEXICON, Pieces.talas());
    assertTrue(repairs.size() >= 4, repairs::toString);
    for (Repair repair : repairs) {
      Composition changed = Edit.all(EIGHTY, repair.edits());
      assertTrue(Landing.of(Performance.of(changed)).lands(), repair::words);
    }
    assertTrue(repairs.stream().anyMatch(r -> r.words().startsWith("add 16 matras")), "96");
  }

  @Test
  void theKhandaVersionOfAllRounds() {
    Conversion khanda = Conversion.of(EIGHTY, wish(5, null, false));
    assertEquals(Ratio.of(48), khanda.landing().beats());
    assertTrue(khanda.landing().lands(), "three times 16 beats are six avartanas");
    assertEquals(List.of(), khanda.repairs(EIGHTY, Pieces.LEXICON, Pieces.talas()));
  }

  @Test
  void threeSpeeds() {
    Conversion speeds = version("three speeds, each twice as fast as the one before");
    assertEquals(Ratio.of(35), speeds.landing().beats());
    assertEquals(
        List.of(4, 8, 16),
        speeds.landing().performance().rounds().stream().map(r -> r.matrasPerBeat()).toList());
    Conversion densities =
        Conversion.versions(Pieces.said(Cycles.ADI, Pieces.words(96), 4)).stream()
            .filter(v -> v.words().equals("three rounds in 3, 4 and 6 a beat"))
            .findFirst()
            .orElseThrow();
    assertEquals(Ratio.of(72), densities.landing().beats());
    assertTrue(densities.landing().lands());
  }

  @Test
  void anotherTala() {
    Conversion seven = Conversion.of(EIGHTY, wish(null, ChapuTala.MISRA, false));
    assertTrue(seven.landing().lands(), "56 beats are eight cycles of seven");
    Composition offSamam = new Edit.Start(Ratio.of(6)).appliedTo(EIGHTY);
    Conversion five = Conversion.of(offSamam, wish(null, ChapuTala.KHANDA, false));
    assertEquals(Ratio.ZERO, five.landing().performance().startBeat());
    assertEquals(Ratio.ONE, five.landing().missBeats());
  }

  @Test
  void eduppuToEduppu() {
    Composition piece = new Edit.Eduppu(Ratio.of(1, 4)).appliedTo(EIGHTY);
    assertFalse(Landing.of(Performance.of(piece)).lands());
    assertTrue(Conversion.of(piece, wish(null, null, true)).landing().lands());
  }

  @Test
  void noVersionIsThePieceItself() {
    Map<String, Conversion> versions =
        Conversion.versions(EIGHTY).stream()
            .collect(Collectors.toMap(Conversion::words, version -> version));
    assertFalse(versions.containsKey("the last round in khanda nadai (5)"));
    assertTrue(versions.containsKey("the last round in chatusra nadai (4)"));
  }

  private static ConversionWish wish(Integer nadai, ChapuTala tala, boolean samePlace) {
    return new ConversionWish(
        Optional.ofNullable(nadai), Optional.ofNullable(tala).map(ChapuTala::tala), samePlace);
  }

  private static Conversion version(String words) {
    return Conversion.versions(EIGHTY).stream()
        .filter(version -> version.words().equals(words))
        .findFirst()
        .orElseThrow();
  }
}
