package org.matraloom.app.cli;

import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * Reads the numbers of options, and refuses others without a programmer's words.
 *
 * <p>The converters are classes and not lambdas: Java 17 crashes while it archives a lambda for an
 * interface that, as picocli's, was compiled for a very old Java.
 */
final class PlainNumbers {

  private PlainNumbers() {}

  static void register(CommandLine line) {
    line.registerConverter(Integer.class, new Whole());
    line.registerConverter(int.class, new Whole());
    line.registerConverter(Long.class, new Long64());
    line.registerConverter(long.class, new Long64());
    line.registerConverter(Double.class, new Decimal());
    line.registerConverter(double.class, new Decimal());
  }

  private static <T> T read(String text, Function<String, T> reading, String what) {
    try {
      return reading.apply(text.strip());
    } catch (NumberFormatException notANumber) {
      throw new TypeConversionException("'" + text + "' is not " + what);
    }
  }

  private static final class Whole implements ITypeConverter<Integer> {
    @Override
    public Integer convert(String text) {
      return read(text, Integer::valueOf, "a whole number");
    }
  }

  private static final class Long64 implements ITypeConverter<Long> {
    @Override
    public Long convert(String text) {
      return read(text, Long::valueOf, "a whole number");
    }
  }

  private static final class Decimal implements ITypeConverter<Double> {
    @Override
    public Double convert(String text) {
      return read(text, Double::valueOf, "a number such as -6 or 0.5");
    }
  }
}
