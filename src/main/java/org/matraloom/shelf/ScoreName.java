package org.matraloom.shelf;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;
import org.matraloom.app.cli.UserError;

/**
 * The name of a score in its folder, such as {@code gutter-song.loom}.
 *
 * <p>It is a name and never a way: no slash, no colon, no sign that a system takes for something
 * else, no point at its beginning, so that nothing outside the folder can be meant.
 *
 * @param file the name of the file
 */
public record ScoreName(String file) {

  /** How the names of scores end. */
  public static final String ENDING = ".loom";

  private static final int MOST_BYTES = 120;
  private static final Pattern ALLOWED =
      Pattern.compile("[\\p{L}\\p{M}\\p{N}_()'][\\p{L}\\p{M}\\p{N}_()', .+-]*");
  private static final Pattern OF_A_DEVICE = Pattern.compile("(?i)(con|prn|aux|nul|com\\d|lpt\\d)");

  /**
   * Checks the name.
   *
   * @throws UserError if no score can be called so
   */
  public ScoreName {
    file = Normalizer.normalize(file, Normalizer.Form.NFC);
    String stem = file.endsWith(ENDING) ? file.substring(0, file.length() - ENDING.length()) : "";
    boolean fits = file.getBytes(StandardCharsets.UTF_8).length <= MOST_BYTES;
    boolean plain = ALLOWED.matcher(stem).matches() && stem.strip().equals(stem);
    if (!fits || !plain || stem.endsWith(".") || OF_A_DEVICE.matcher(stem).matches()) {
      throw new UserError(
          "a score's name has letters, digits, spaces and hyphens, at most "
              + MOST_BYTES
              + " bytes, and ends in .loom; such as gutter-song.loom");
    }
  }

  /**
   * A name as a person gives it, with or without the ending.
   *
   * @param given the name
   * @return the name of its file
   * @throws UserError if no score can be called so
   */
  public static ScoreName of(String given) {
    String name = given.strip();
    return new ScoreName(name.endsWith(ENDING) ? name : name + ENDING);
  }

  /**
   * A name made of a title.
   *
   * @param title free text
   * @return small letters with hyphens between the words
   */
  public static ScoreName ofTitle(String title) {
    String words = title.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{M}\\p{N}]+", "-");
    String plain = words.replaceAll("^-+|-+$", "");
    int most = Math.min(plain.length(), 30);
    return of(plain.isEmpty() ? "new-piece" : plain.substring(0, most).replaceAll("-+$", ""));
  }

  /**
   * The name without its ending.
   *
   * @return its stem
   */
  public String stem() {
    return file.substring(0, file.length() - ENDING.length());
  }

  /** The same name with a number. */
  ScoreName numbered(int number) {
    return of(stem() + "-" + number);
  }
}
