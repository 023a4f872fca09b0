package org.matraloom.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SrutiTest {

  /** Equal temperament with A4 at 440 Hz (ISO 16:1975). */
  @ParameterizedTest
  @CsvSource({
    "C,130.8128",
    "c,130.8128",
    "C#3,138.5913",
    "Db3,138.5913",
    "A4,440",
    "A3,220",
    "F,174.6141",
    "Bb2,116.5409",
    "B2,123.4708",
    "C4+100,277.1826",
    "A4-100c,415.3047",
    "A3+0.5,220.0635"
  })
  void readsNotes(String text, double hertz) {
    assertEquals(hertz, Sruti.parse(text).hertz(), 0.0001);
  }

  @Test
  void readsFrequencies() {
    assertEquals(138.6, Sruti.parse("138.6").hertz());
    assertEquals(138.6, Sruti.parse(" 138.6 Hz ").hertz());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "H", "C##", "C9", "C+101", "7", "79.9", "601", "-200", "do"})
  void refusesOthersAndSaysWhatIsMeant(String text) {
    assertThrows(IllegalArgumentException.class, () -> Sruti.parse(text));
  }
}
