package org.matraloom.app.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.matraloom.time.Ratio;
import picocli.CommandLine.TypeConversionException;

class ExactNumberTest {

  @ParameterizedTest
  @CsvSource({
    "66, 66, 1",
    "37.5, 75, 2",
    "0.001, 1, 1000",
    "75/2, 75, 2",
    "66 2/3, 200, 3",
    "-1 1/2, -3, 2",
    "62 1/2%, 5, 8",
    "75%, 3, 4",
    "62.5%, 5, 8",
    "-3, -3, 1"
  })
  void keepsNumbersExact(String text, long num, long den) {
    assertEquals(Ratio.of(num, den), ExactNumber.parse(text).value());
  }

  @Test
  void remembersThePercentSign() {
    assertEquals(true, ExactNumber.parse("75%").isPercent());
    assertEquals(false, ExactNumber.parse("0.75").isPercent());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "fast", "1/0", "1e9", "--", "1/2/3", "1 2", "1 2/0", "1.5 1/2", "12345678901"})
  void refusesWhatIsNoNumber(String text) {
    assertThrows(TypeConversionException.class, () -> ExactNumber.parse(text));
  }
}
