package org.matraloom.app.hear;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.matraloom.retell.SlowedTake;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * How slow a take is to be: {@code 60%} or {@code 0.6} of its own speed.
 *
 * @param speed its share of the speed, up to 1
 */
record SlowShare(double speed) {

  private static final Pattern FORM = Pattern.compile("(\\d{1,3}(?:\\.\\d{1,6})?)\\s*(%?)");

  static SlowShare parse(String text) {
    Matcher matcher = FORM.matcher(text.strip());
    if (!matcher.matches()) {
      throw new TypeConversionException(
          "'" + text + "' is not a share of the speed; write it such as 60% or 0.6");
    }
    double number = Double.parseDouble(matcher.group(1));
    boolean percent = !matcher.group(2).isEmpty() || number > 1;
    double speed = percent ? number / 100 : number;
    if (!(speed >= SlowedTake.SLOWEST && speed <= 1)) {
      throw new TypeConversionException(
          "'" + text + "' is outside " + Math.round(100 * SlowedTake.SLOWEST) + "% to 100%");
    }
    return new SlowShare(speed);
  }

  /** Lets picocli read the form. */
  static final class Converter implements ITypeConverter<SlowShare> {
    @Override
    public SlowShare convert(String text) {
      return parse(text);
    }
  }
}
