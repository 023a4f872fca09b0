package org.matraloom.app.cli;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.matraloom.fit.WholeRange;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads whole numbers to try: {@code 80}, {@code 70..90}, {@code 70-90}, or {@code ?} for any. */
final class WholeRangeOption implements ITypeConverter<WholeRange> {

  private static final Pattern FORM = Pattern.compile("(\\d{1,5})(?:(?:\\.\\.|-)(\\d{1,5}))?");

  private static final WholeRange ANY = new WholeRange(1, 200);

  @Override
  public WholeRange convert(String text) {
    if (text.strip().equals("?")) {
      return ANY;
    }
    Matcher matcher = FORM.matcher(text.strip());
    if (!matcher.matches()) {
      throw new TypeConversionException(
          "'" + text + "' is not a number such as 80, a range such as 70..90, or ?");
    }
    int low = Integer.parseInt(matcher.group(1));
    int high = matcher.group(2) == null ? low : Integer.parseInt(matcher.group(2));
    try {
      return new WholeRange(low, high);
    } catch (IllegalArgumentException outOfRange) {
      throw new TypeConversionException(outOfRange.getMessage());
    }
  }
}
