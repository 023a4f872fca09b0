package org.matraloom.app.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.matraloom.app.Main;
import org.matraloom.device.DeviceAdvice;

/** What is said when a sound device cannot be used. */
class DeviceWordsTest {

  private static final Pattern OPTION = Pattern.compile("--[a-z]+");

  @Test
  void theRatesThatTheDeviceTakesAreNamedAsTheyAreTyped() {
    assertEquals(
        "; it takes 16 bits with --rate 48000 or --rate 44100",
        DeviceWords.advice(
            new DeviceAdvice(DeviceAdvice.Kind.OTHER_RATE, List.of(48_000, 44_100))));
  }

  @Test
  void outputAndInputAreChosenByTheirOwnOptions() {
    String end = ", and start again";
    assertEquals(
        "; plug it in or choose another device with --device" + end,
        DeviceWords.advice(new DeviceAdvice(DeviceAdvice.Kind.PLUG_IN_OUTPUT, List.of())));
    assertEquals(
        "; plug it in or choose another device with --input" + end,
        DeviceWords.advice(new DeviceAdvice(DeviceAdvice.Kind.PLUG_IN_INPUT, List.of())));
  }

  @ParameterizedTest
  @EnumSource(
      value = DeviceAdvice.Kind.class,
      names = {"NONE"},
      mode = EnumSource.Mode.EXCLUDE)
  void everyOptionThatIsNamedIsAnOptionOfRecord(DeviceAdvice.Kind kind) {
    StringWriter help = new StringWriter();
    Main.run(new PrintWriter(help), new PrintWriter(help), "record", "--help");
    String advice = DeviceWords.advice(new DeviceAdvice(kind, List.of(48_000)));
    List<String> named = new ArrayList<>();
    Matcher matcher = OPTION.matcher(advice);
    while (matcher.find()) {
      named.add(matcher.group());
    }
    assertEquals(1, named.size(), advice);
    assertTrue(help.toString().contains(named.get(0)), named.get(0));
  }
}
