package org.matraloom.app.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.matraloom.app.CommandLineRun;
import picocli.CommandLine.TypeConversionException;

class NadaiNumberTest {

  @ParameterizedTest
  @CsvSource({"1, 1", "9, 9", "tisra, 3", "chatusra, 4", "Khanda, 5", "misra, 7", "sankirna, 9"})
  void isANumberOrAName(String text, int matras) {
    assertEquals(matras, NadaiNumber.parse(text).matrasPerBeat());
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "10", "-4", "five", "", "4.5"})
  void refusesWhatIsNone(String text) {
    assertThrows(TypeConversionException.class, () -> NadaiNumber.parse(text));
  }

  /** One meaning and one refusal wherever the option stands. */
  @Test
  void isTheSameInEveryCommand() {
    String score = "samples-synth/gutter-song.loom";
    String[][] commands = {
      {"convert", score}, {"rebar", score}, {"endings", "29"}, {"check", "samples-synth"}
    };
    for (String[] command : commands) {
      CommandLineRun named = run(command, "khanda");
      assertEquals(run(command, "5").out(), named.out());
      assertTrue(!named.out().isEmpty() && named.err().isEmpty(), named.err());
      CommandLineRun wrong = run(command, "12");
      assertEquals(ExitCode.BAD_INPUT, wrong.code());
      assertTrue(
          wrong
              .err()
              .replaceAll("\\s+", " ")
              .contains("a nadai is 1 to 9 or tisra, chatusra, khanda, misra, sankirna, given 12"),
          wrong.err());
    }
  }

  private static CommandLineRun run(String[] command, String nadai) {
    return CommandLineRun.of(command[0], command[1], "--nadai", nadai);
  }
}
