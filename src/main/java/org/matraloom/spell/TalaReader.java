package org.matraloom.spell;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.matraloom.score.Anga;
import org.matraloom.score.Jati;
import org.matraloom.score.Tala;

/**
 * Reads how a tala is written: a name in any usual spelling, an anga formula such as {@code I4 O
 * O}, a grouping such as {@code 3+2+2}, or kriyas written out, {@code clap clap wave}. After any of
 * them {@code = 8} claims the sum, and is checked.
 *
 * <p>A family alone means its usual jati: triputa is tisra triputa, rupaka is chatusra rupaka,
 * jhampa is misra jhampa, ata is khanda ata, the others are chatusra (common practice). "Adi" is
 * chatusra triputa, and "chapu" alone is misra chapu.
 */
public final class TalaReader {

  /**
   * A tala, or why there is none.
   *
   * @param tala the tala, if it was understood
   * @param fault what is wrong, if it was not
   */
  public record Result(Optional<Tala> tala, Optional<Fault> fault) {}

  /**
   * Why a tala was not understood.
   *
   * @param start the first index of the faulty part in the text given
   * @param end the index after the faulty part
   * @param message what was found and what is allowed
   * @param help what to write instead, where that is known
   */
  public record Fault(int start, int end, String message, Optional<String> help) {}

  /** How talas are written without names; made only for a text that has no other letters. */
  private static final class Forms {
    private static final Pattern CLAIM = Pattern.compile("=\\s*(\\S+)\\s*$");
    private static final Pattern FORMULA = Pattern.compile("(?i)\\s*+(?:[IOU]\\s*+\\d*+\\s*+)++");
    private static final Pattern SIGN = Pattern.compile("(?i)([IOU])\\s*(\\d*)");
    private static final Pattern GROUPING =
        Pattern.compile("\\s*+\\d++(?:\\s*+\\+\\s*+\\d++)*+\\s*+");
    private static final Pattern NUMBER = Pattern.compile("\\d+");
  }

  private static final String SIGNS = "IOUiou";
  private static final int LONGEST = 200;
  private static final int MOST_DIGITS = 3;

  private TalaReader() {}

  /**
   * Reads a tala.
   *
   * @param written a name, an anga formula or a grouping, perhaps with a sum
   * @return the tala or the fault
   */
  public static Result read(String written) {
    if (written.isBlank()) {
      return fault(0, written.length(), "no tala is given", "write a name such as adi");
    }
    if (written.length() > LONGEST) {
      return fault(
          0, written.length(), "a tala has at most " + LONGEST + " characters", "check the line");
    }
    if (written.indexOf('=') < 0) {
      return withoutClaim(written);
    }
    Matcher claim = Forms.CLAIM.matcher(written);
    boolean claimed = claim.find();
    Result result = withoutClaim(claimed ? written.substring(0, claim.start()) : written);
    return claimed && result.tala().isPresent()
        ? checked(result, result.tala().get().aksharas(), claim)
        : result;
  }

  /**
   * The names that can be listed.
   *
   * @return the 35 suladi talas, jati first, by family; then adi, the chapu talas and others in use
   */
  public static Map<String, Tala> names() {
    Map<String, Tala> names = new LinkedHashMap<>(TalaNames.ALL);
    names.putAll(UsedTalas.named());
    return Collections.unmodifiableMap(names);
  }

  private static Result withoutClaim(String text) {
    if (!hasOtherLetters(text)) {
      if (Forms.FORMULA.matcher(text).matches()) {
        return formula(text);
      } else if (Forms.GROUPING.matcher(text).matches()) {
        return grouping(text);
      }
    }
    if (UsedTalas.isOwn(text)) {
      return UsedTalas.own(text);
    }
    Optional<Tala> tala = UsedTalas.byName(text);
    if (tala.isEmpty()) {
      tala = UsedTalas.clapped(text);
    }
    if (tala.isEmpty()) {
      tala = TalaNames.tala(text);
    }
    if (tala.isPresent()) {
      return new Result(tala, Optional.empty());
    }
    String name = text.strip();
    int start = text.length() - text.stripLeading().length();
    return fault(
        start,
        start + name.length(),
        "unknown tala " + Quoted.quote(name),
        TalaNames.suggestion(name));
  }

  /** Whether a text has letters that are no signs of angas. */
  private static boolean hasOtherLetters(String text) {
    for (int index = 0; index < text.length(); index++) {
      char letter = text.charAt(index);
      if (letter >= 'A' && letter <= 'z' && SIGNS.indexOf(letter) < 0) {
        return true;
      }
    }
    return false;
  }

  private static Result checked(Result result, int sum, Matcher claim) {
    if (claim.group(1).equals(Integer.toString(sum))) {
      return result;
    }
    return fault(
        claim.start(1),
        claim.end(1),
        "the tala has " + sum + " aksharas, not " + Quoted.printable(claim.group(1)),
        "write = " + sum + " if the angas are right, or correct the angas");
  }

  private static Result formula(String text) {
    List<Anga> angas = new ArrayList<>();
    Matcher sign = Forms.SIGN.matcher(text);
    while (sign.find()) {
      char letter = Character.toUpperCase(sign.group(1).charAt(0));
      String count = sign.group(2);
      if (letter != 'I' && !count.isEmpty()) {
        return fault(
            sign.start(2),
            sign.end(2),
            "only a laghu takes a number, given " + count,
            "O is always 2 aksharas and U always 1");
      }
      Optional<Jati> jati = jati(count);
      if (letter == 'I' && jati.isEmpty()) {
        return fault(
            sign.start(),
            sign.end(),
            "a laghu has 3, 4, 5, 7 or 9 aksharas, given " + (count.isEmpty() ? "none" : count),
            "write I4 for a laghu of four");
      }
      angas.add(
          switch (letter) {
            case 'I' -> new Anga.Laghu(jati.orElseThrow());
            case 'O' -> new Anga.Drutam();
            default -> new Anga.Anudrutam();
          });
    }
    return named(angas, text);
  }

  private static Result grouping(String text) {
    List<Anga> angas = new ArrayList<>();
    Matcher number = Forms.NUMBER.matcher(text);
    while (number.find()) {
      String digits = number.group();
      int size = digits.length() > MOST_DIGITS ? Integer.MAX_VALUE : Integer.parseInt(digits);
      if (size < 1 || size > Tala.LONGEST_GROUP) {
        return fault(
            number.start(),
            number.end(),
            "a group has 1 to " + Tala.LONGEST_GROUP + " aksharas, given " + digits,
            "split it, as in 3+2+2");
      }
      angas.add(new Anga.Group(size));
    }
    return named(angas, text);
  }

  private static Result named(List<Anga> angas, String text) {
    if (angas.size() > Tala.MOST_ANGAS) {
      return fault(
          0,
          text.length(),
          "a tala has at most " + Tala.MOST_ANGAS + " angas, given " + angas.size(),
          "shorten the formula");
    }
    Tala free = new Tala("free", angas);
    Tala adi = TalaNames.adi();
    Tala named =
        angas.equals(adi.angas())
            ? adi
            : names().values().stream()
                .filter(tala -> tala.angas().equals(angas))
                .findFirst()
                .orElse(new Tala(free.formula(), angas));
    return new Result(Optional.of(named), Optional.empty());
  }

  private static Optional<Jati> jati(String count) {
    for (Jati jati : Jati.values()) {
      if (count.equals(Integer.toString(jati.aksharas()))) {
        return Optional.of(jati);
      }
    }
    return Optional.empty();
  }

  static Result fault(int start, int end, String message, String help) {
    return new Result(
        Optional.empty(), Optional.of(new Fault(start, end, message, Optional.of(help))));
  }
}
