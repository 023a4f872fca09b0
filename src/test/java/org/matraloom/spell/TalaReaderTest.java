package org.matraloom.spell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.matraloom.score.Anga;
import org.matraloom.score.Jati;
import org.matraloom.score.Tala;

class TalaReaderTest {

  private static Tala read(String written) {
    TalaReader.Result result = TalaReader.read(written);
    assertTrue(result.tala().isPresent(), () -> written + ": " + result.fault());
    return result.tala().get();
  }

  /**
   * Totals cell by cell: "The scheme of 35 talas", carnaticmusicexams.in, 2018, and a one-page tala
   * chart (scribd document 501086532).
   */
  @ParameterizedTest
  @CsvSource({
    "dhruva, 11, 14, 17, 23, 29",
    "matya, 8, 10, 12, 16, 20",
    "rupaka, 5, 6, 7, 9, 11",
    "jhampa, 6, 7, 8, 10, 12",
    "triputa, 7, 8, 9, 11, 13",
    "ata, 10, 12, 14, 18, 22",
    "eka, 3, 4, 5, 7, 9"
  })
  void allThirtyFiveAreRead(
      String family, int tisra, int chatusra, int khanda, int misra, int sankirna) {
    List<Integer> totals = List.of(tisra, chatusra, khanda, misra, sankirna);
    int index = 0;
    for (Jati jati : Jati.values()) {
      Tala tala = read(jati.word() + " " + family);
      assertEquals(jati.word() + " " + family, tala.name());
      assertEquals(totals.get(index++), tala.aksharas());
      assertEquals(tala, read(family + " tala, " + jati.word() + " jati"));
      assertEquals(tala, read(jati.word() + family));
      assertEquals(tala.angas(), read(tala.formula()).angas());
    }
  }

  static Stream<List<String>> spellingsOfJatis() {
    return Stream.of(
        List.of("tisra", "tishra", "thisra", "tisram", "trisra", "trishra", "tiśra", "Tisra"),
        List.of(
            "chatusra",
            "chaturasra",
            "catusra",
            "caturasra",
            "chatursra",
            "chatusram",
            "sadusram",
            "caturaśra",
            "chathurasra",
            "chaturashra"),
        List.of("khanda", "kanda", "kandam", "khandam", "kanta", "khaṇḍa"),
        List.of("misra", "mishra", "misram", "miśra"),
        List.of("sankirna", "sankeerna", "sangeerna", "sankeernam", "saṅkīrṇa", "sankīrṇa"));
  }

  @ParameterizedTest
  @MethodSource("spellingsOfJatis")
  void jatisAreReadInManySpellings(List<String> spellings) {
    for (String spelling : spellings) {
      assertEquals(
          read(spellings.get(0) + " ata"), read(spelling + " ata"), spelling + " jati, ata tala");
    }
  }

  @ParameterizedTest
  @CsvSource({
    "adi, adi",
    "aadi, adi",
    "Ādi, adi",
    "adi talam, adi",
    "aadi taala, adi",
    "aditala, adi",
    "Adi Thalam, adi",
    "dhruvam, chatusra dhruva",
    "druva, chatusra dhruva",
    "mathya, chatusra matya",
    "matya tala, chatusra matya",
    "maṭhya, chatusra matya",
    "rupakam, chatusra rupaka",
    "roopaka, chatusra rupaka",
    "rūpaka tāḷa, chatusra rupaka",
    "jhampa, misra jhampa",
    "jampa, misra jhampa",
    "jhampai, misra jhampa",
    "triputa, tisra triputa",
    "tripuṭa, tisra triputa",
    "thriputa, tisra triputa",
    "ata, khanda ata",
    "aṭa, khanda ata",
    "Ata thaalam, khanda ata",
    "eka, chatusra eka",
    "ekam, chatusra eka",
    "chapu, misra chapu",
    "misra chapu, misra chapu",
    "mishra chaapu, misra chapu",
    "misrachapu, misra chapu",
    "khanda chapu, khanda chapu",
    "kanda chapu talam, khanda chapu",
    "tisra chapu, tisra chapu",
    "sankeerna chapu, sankirna chapu",
    "khanda-jati triputa tala, khanda triputa"
  })
  void usualNamesAreRead(String written, String name) {
    assertEquals(name, read(written).name());
  }

  @Test
  void adiIsChatusraTriputa() {
    assertEquals(TalaFamily.TRIPUTA.tala(Jati.CHATUSRA).angas(), read("adi").angas());
  }

  @ParameterizedTest
  @CsvSource({
    "I4 O O, adi, I4 O O",
    "I4OO, adi, I4 O O",
    "i4 o o, adi, I4 O O",
    "I 4 O O, adi, I4 O O",
    "I4 O O = 8, adi, I4 O O",
    "O I4, chatusra rupaka, O I4",
    "I7UO=10, misra jhampa, I7 U O",
    "I4 I3 O, I4 I3 O, I4 I3 O",
    "U, U, U",
    "3+2+2, misra chapu, 3+2+2",
    "3 + 2 + 2 = 7, misra chapu, 3+2+2",
    "4+3, 4+3, 4+3",
    "2+1+2, 2+1+2, 2+1+2",
    "4+2+2 = 8, 4+2+2, 4+2+2",
    "adi = 8, adi, I4 O O"
  })
  void formulasAndGroupingsAreRead(String written, String name, String formula) {
    Tala tala = read(written);
    assertEquals(name, tala.name());
    assertEquals(formula, tala.formula());
  }

  @Test
  void aGroupingIsNotTheTalaOfTheSameSums() {
    assertTrue(read("4+2+2").angas().get(0) instanceof Anga.Group);
    assertTrue(read("I4 O O").angas().get(0) instanceof Anga.Laghu);
  }

  /**
   * A one-page tala chart (scribd document 501086532) prints adi as "4+2+4=8", a misprint for
   * 4+2+2.
   */
  @Test
  void aMisprintedSumIsCaught() {
    TalaReader.Fault fault = TalaReader.read("4+2+4 = 8").fault().orElseThrow();
    assertEquals("the tala has 10 aksharas, not 8", fault.message());
    assertEquals(8, fault.start());
    assertEquals(9, fault.end());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "I6 O ! a laghu has 3, 4, 5, 7 or 9 aksharas, given 6 ! write I4 for a laghu of four",
        "I O O ! a laghu has 3, 4, 5, 7 or 9 aksharas, given none ! write I4 for a laghu of four",
        "I4 O2 ! only a laghu takes a number, given 2 ! O is always 2 aksharas and U always 1",
        "0+2 ! a group has 1 to 32 aksharas, given 0 ! split it, as in 3+2+2",
        "99999999999 ! a group has 1 to 32 aksharas, given 99999999999 ! split it, as in 3+2+2",
        "chatusra dhurva ! unknown tala \"chatusra dhurva\" ! the nearest is chatusra dhruva",
        "rupka ! unknown tala \"rupka\" ! the nearest is rupaka",
        "adi8 ! unknown tala \"adi8\" ! the nearest is adi",
        "khanda ! unknown tala \"khanda\" ! name the family too, as in khanda triputa",
        "chatusra chapu ! unknown tala \"chatusra chapu\" ! "
            + "chapu talas are tisra, khanda, misra and sankirna chapu",
        "waltz ! unknown tala \"waltz\" ! write a name such as adi or khanda ata, a formula such as "
            + "I4 O O, or 3+2+2"
      })
  void faultsSayWhatToWrite(String written, String message, String help) {
    TalaReader.Fault fault = TalaReader.read(written).fault().orElseThrow();
    assertEquals(message, fault.message());
    assertEquals(help, fault.help().orElseThrow());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "  ", "=", "= 8", "+", "3+", "tala", "adi adi adi", "|4 O O", "4+2=x"})
  void whatMeansNothingIsRefused(String written) {
    assertTrue(TalaReader.read(written).fault().isPresent());
  }

  @Test
  void tooManyAngasAreRefused() {
    assertTrue(TalaReader.read("O".repeat(32)).tala().isPresent());
    assertEquals(
        "a tala has at most 32 angas, given 33",
        TalaReader.read("O".repeat(33)).fault().orElseThrow().message());
    assertTrue(TalaReader.read("O ".repeat(200)).fault().isPresent());
  }

  @Test
  void namesListEveryTalaOnce() {
    Map<String, Tala> names = TalaReader.names();
    assertEquals(35 + 1 + 4 + 4, names.size());
    names.forEach((name, tala) -> assertEquals(tala, read(name), name));
    Set<String> formulas =
        names.values().stream().map(Tala::formula).collect(Collectors.toCollection(HashSet::new));
    assertEquals(41, formulas.size(), "only adi, desadi and madhyadi share their angas");
  }
}
