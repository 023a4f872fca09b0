package org.matraloom.sound;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The tonic of a drone.
 *
 * @param hertz the pitch of the middle sa, {@value #LOWEST_HERTZ} to {@value #HIGHEST_HERTZ}
 */
public record Sruti(double hertz) {

  /** The lowest tonic taken, in Hz. */
  public static final double LOWEST_HERTZ = 80;

  /** The highest tonic taken, in Hz. */
  public static final double HIGHEST_HERTZ = 600;

  /** The octave of a note named without one: most voices have their sa in it. */
  private static final int USUAL_OCTAVE = 3;

  private static final double A4_HERTZ = 440;
  private static final int A4_SEMITONE = 4 * 12 + 9;
  private static final int SEMITONES = 12;
  private static final int CENTS_PER_OCTAVE = 1200;
  private static final int MOST_CENTS = 100;
  private static final List<Integer> SEMITONE_OF_LETTER = List.of(9, 11, 0, 2, 4, 5, 7);
  private static final Pattern NOTE =
      Pattern.compile("([A-G])([#b]?)([2-5])?(?:([+-]\\d{1,3}(?:\\.\\d{1,2})?)(?:c|ct|cents?)?)?");
  private static final Pattern HERTZ = Pattern.compile("(\\d{2,3}(?:\\.\\d{1,4})?)\\s*(?:hz)?");

  /**
   * Checks the range.
   *
   * @throws IllegalArgumentException if the pitch is outside it
   */
  public Sruti {
    if (!(hertz >= LOWEST_HERTZ && hertz <= HIGHEST_HERTZ)) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "a sruti of %.2f Hz is outside %.0f to %.0f Hz",
              hertz,
              LOWEST_HERTZ,
              HIGHEST_HERTZ));
    }
  }

  /**
   * Reads a tonic: a frequency such as "138.6" or "138.6 Hz", or a note in equal temperament with
   * A4 at 440 Hz, such as "C#", "C#3" or "Bb2-14.5". A note without an octave lies in octave 3,
   * from C3 (130.8 Hz) up.
   *
   * @param text as typed
   * @return the tonic
   * @throws IllegalArgumentException if it is neither, or out of range
   */
  public static Sruti parse(String text) {
    String trimmed = text.strip();
    Matcher hertz = HERTZ.matcher(trimmed.toLowerCase(Locale.ROOT));
    if (hertz.matches()) {
      return new Sruti(Double.parseDouble(hertz.group(1)));
    }
    Matcher note =
        trimmed.isEmpty()
            ? NOTE.matcher("")
            : NOTE.matcher(trimmed.substring(0, 1).toUpperCase(Locale.ROOT) + trimmed.substring(1));
    if (!note.matches()) {
      throw new IllegalArgumentException(
          "a sruti is a frequency such as 138.6 or a note such as C#, C#3 or G3-10 (cents); given '"
              + text
              + "'");
    }
    int octave = note.group(3) == null ? USUAL_OCTAVE : Integer.parseInt(note.group(3));
    double cents = note.group(4) == null ? 0 : Double.parseDouble(note.group(4));
    if (Math.abs(cents) > MOST_CENTS) {
      throw new IllegalArgumentException(
          "a note is raised or lowered by up to " + MOST_CENTS + " cents, given " + note.group(4));
    }
    int semitone =
        SEMITONE_OF_LETTER.get(note.group(1).charAt(0) - 'A')
            + (note.group(2).equals("#") ? 1 : note.group(2).equals("b") ? -1 : 0)
            + octave * SEMITONES;
    double octaves = (double) (semitone - A4_SEMITONE) / SEMITONES + cents / CENTS_PER_OCTAVE;
    return new Sruti(A4_HERTZ * StrictMath.pow(2, octaves));
  }
}
