package org.matraloom.app;

import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.TypeConversionException;

/** Reads the numbers of options, and refuses others without a programmer's words. */
final class PlainNumbers {

  private PlainNumbers() {}

  static void register(CommandLine line) {
    line.registerConverter(Integer.class, PlainNumbers::whole);
    line.registerConverter(int.class, PlainNumbers::whole);
    line.registerConverter(Long.class, PlainNumbers::whole64);
    line.registerConverter(long.class, PlainNumbers::whole64);
    line.registerConverter(Double.class, PlainNumbers::decimal);
    line.registerConverter(double.class, PlainNumbers::decimal);
  }

  private static Integer whole(String text) {
    return read(text, Integer::valueOf, "a whole number");
  }

  private static Long whole64(String text) {
    return read(text, Long::valueOf, "a whole number");
  }

  private static Double decimal(String text) {
    return read(text, Double::valueOf, "a number such as -6 or 0.5");
  }

  private static <T> T read(String text, Function<String, T> reading, String what) {
    try {
      return reading.apply(text.strip());
    } catch (NumberFormatException notANumber) {
      throw new TypeConversionException("'" + text + "' is not " + what);
    }
  }
}
