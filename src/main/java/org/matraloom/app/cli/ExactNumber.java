package org.matraloom.app.cli;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.matraloom.time.Ratio;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * A number from the command line, kept exact: {@code 66}, {@code 37.5}, {@code 75/2}, {@code 66
 * 2/3}, {@code 75%}.
 *
 * @param value the number; 3/4 for 75%
 * @param isPercent whether a percent sign was given
 */
public record ExactNumber(Ratio value, boolean isPercent) {

  private static final Pattern FORM =
      Pattern.compile(
          "(-?\\d{1,9})(?:\\.(\\d{1,6})|/(\\d{1,6})|\\s+(\\d{1,6})/(\\d{1,6}))?\\s*(%?)");

  static ExactNumber parse(String text) {
    Matcher matcher = FORM.matcher(text.strip());
    if (!matcher.matches() || isZero(matcher.group(3)) || isZero(matcher.group(5))) {
      throw new TypeConversionException(
          "'" + text + "' is not a number such as 66, 37.5, 75/2, \"66 2/3\" or 75%");
    }
    boolean percent = !matcher.group(6).isEmpty();
    Ratio value = percent ? number(matcher).dividedBy(100) : number(matcher);
    return new ExactNumber(value, percent);
  }

  private static boolean isZero(String digits) {
    return digits != null && Long.parseLong(digits) == 0;
  }

  private static Ratio number(Matcher matcher) {
    if (matcher.group(2) != null) {
      String digits = matcher.group(2);
      long scale = 1;
      for (int i = 0; i < digits.length(); i++) {
        scale *= 10;
      }
      return Ratio.of(Long.parseLong(matcher.group(1) + digits), scale);
    }
    if (matcher.group(5) != null) {
      Ratio part = Ratio.of(Long.parseLong(matcher.group(4)), Long.parseLong(matcher.group(5)));
      boolean negative = matcher.group(1).startsWith("-");
      return Ratio.of(Long.parseLong(matcher.group(1))).plus(negative ? part.negate() : part);
    }
    long den = matcher.group(3) == null ? 1 : Long.parseLong(matcher.group(3));
    return Ratio.of(Long.parseLong(matcher.group(1)), den);
  }

  /** Lets picocli read the form. */
  static final class Converter implements ITypeConverter<ExactNumber> {
    @Override
    public ExactNumber convert(String text) {
      return parse(text);
    }
  }
}
