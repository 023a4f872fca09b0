package org.matraloom.app.cli;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.matraloom.score.Composition;
import org.matraloom.score.Jati;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * A nadai from the command line, by number or by name as in a score: {@code 5}, {@code khanda}.
 *
 * @param matrasPerBeat matras a beat in the first kalam, 1 to 9
 */
public record NadaiNumber(int matrasPerBeat) {

  static NadaiNumber parse(String text) {
    String given = text.strip().toLowerCase(Locale.ROOT);
    if (given.matches("[1-" + Composition.HIGHEST_NADAI + "]")) {
      return new NadaiNumber(Integer.parseInt(given));
    }
    return Arrays.stream(Jati.values())
        .filter(jati -> jati.word().equals(given))
        .map(jati -> new NadaiNumber(jati.aksharas()))
        .findFirst()
        .orElseThrow(
            () ->
                new TypeConversionException(
                    "a nadai is 1 to "
                        + Composition.HIGHEST_NADAI
                        + " or "
                        + Arrays.stream(Jati.values())
                            .map(Jati::word)
                            .collect(Collectors.joining(", "))
                        + ", given "
                        + text));
  }

  /** Lets picocli read the form. */
  static final class Converter implements ITypeConverter<NadaiNumber> {
    @Override
    public NadaiNumber convert(String text) {
      return parse(text);
    }
  }
}
