package org.matraloom.app.hear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.matraloom.app.CommandLineRun;
import org.matraloom.app.cli.ExitCode;
import picocli.CommandLine.TypeConversionException;

class SlowShareTest {

  @ParameterizedTest
  @CsvSource({"60%, 0.6", "0.6, 0.6", "60, 0.6", "62.5 %, 0.625", "25%, 0.25", "100%, 1", "1, 1"})
  void aShareIsWrittenAsPercentOrAsANumber(String text, double speed) {
    assertEquals(speed, SlowShare.parse(text).speed(), 1e-12);
  }

  @ParameterizedTest
  @ValueSource(strings = {"0.75x", "3/4", "slow", "", "-60%", "1e-1", "٦٠%"})
  void otherFormsAreToldTheRightOne(String text) {
    TypeConversionException told =
        assertThrows(TypeConversionException.class, () -> SlowShare.parse(text));
    assertTrue(told.getMessage().contains("60% or 0.6"), told.getMessage());
  }

  @ParameterizedTest
  @ValueSource(strings = {"24%", "0.2", "101%", "150", "0"})
  void theRangeIsTold(String text) {
    TypeConversionException told =
        assertThrows(TypeConversionException.class, () -> SlowShare.parse(text));
    assertTrue(told.getMessage().contains("25% to 100%"), told.getMessage());
  }

  @Test
  void theCommandLineSaysSoInOneLine() {
    CommandLineRun run = CommandLineRun.of("take", "--slowed", "0.75x", "a.loom", "b.wav");
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertTrue(run.err().contains("'0.75x' is not a share of the speed"), run.err());
  }
}
