package org.matraloom.app.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.matraloom.sound.MixPart;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the name of a part of the mix, singular or plural. */
final class PartName implements ITypeConverter<MixPart> {

  @Override
  public MixPart convert(String text) {
    String name = text.strip().toLowerCase(Locale.ROOT);
    return Arrays.stream(MixPart.values())
        .filter(part -> name.equals(singular(part)) || name.equals(singular(part) + "s"))
        .findFirst()
        .orElseThrow(
            () -> new TypeConversionException("'" + text + "' is none of the parts " + all()));
  }

  static List<String> all() {
    return Arrays.stream(MixPart.values()).map(PartName::singular).toList();
  }

  private static String singular(MixPart part) {
    return part.name().toLowerCase(Locale.ROOT);
  }
}
