package org.matraloom.spell;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.matraloom.score.Anga;
import org.matraloom.score.Finger;
import org.matraloom.score.Kriya;
import org.matraloom.score.Tala;
import org.matraloom.time.Ratio;

/**
 * Talas as they are shown today beside the books, and talas of one's own with their kriyas.
 *
 * <p>Rupaka as clap, clap, wave: lvnaga.wordpress.com, August 2014; ajsriram.blogspot.com, January
 * 2004. Khanda chapu clapped on 1, 3 and 4, desadi on adi with the song 1 1/2 aksharas after samam:
 * ajsriram. The turned hand of misra chapu, and madhyadi half an akshara after samam: common
 * practice, from memory.
 */
public final class UsedTalas {

  /** How such talas are written; made only for a text that may be one. */
  private static final class Forms {
    private static final Pattern CHAPU =
        Pattern.compile(
            "(?i)\\s*(?:([\\p{L}\\p{M}]+)\\s+)?(?:chaapu|chapu|caapu|capu)\\s+(\\d(?:[\\s,]+\\d)*)\\s*");
    private static final Pattern OWN =
        Pattern.compile("\\s*(?:([\\p{L}\\p{M}\\d ]{1,60}?)\\s*:)?(.*)");
  }

  private static final String SPACES = " \t\n\u000b\f\r";
  private static final Map<String, Kriya> KRIYAS = kriyas();

  private UsedTalas() {}

  /** Those that have a name of their own. */
  static Map<String, Tala> named() {
    Map<String, Tala> talas = new LinkedHashMap<>();
    List<Anga> three = List.of(new Anga.Anudrutam(), new Anga.Drutam());
    Kriya turn = new Kriya.Wave();
    Kriya clap = new Kriya.Clap();
    Kriya hold = new Kriya.Hold();
    List<Anga> turned =
        List.of(
            new Anga.Own(List.of(turn, turn, hold)),
            new Anga.Own(List.of(clap, hold)),
            new Anga.Own(List.of(clap, hold)));
    for (Tala tala :
        List.of(
            new Tala("rupaka in three", three),
            new Tala("misra chapu turned", turned),
            new Tala("desadi", TalaNames.adi().angas()),
            new Tala("madhyadi", TalaNames.adi().angas()))) {
      talas.put(tala.name(), tala);
    }
    return talas;
  }

  /** A tala under one of these names, in any case; rupaka in three as a number too. */
  static Optional<Tala> byName(String written) {
    String name = singleSpaced(written.strip().toLowerCase(Locale.ROOT));
    String known =
        switch (name) {
          case "rupaka 3", "rupakam 3", "rupakam in three" -> "rupaka in three";
          case "desadi tala", "deshadi" -> "desadi";
          case "madhyadi tala", "madyadi" -> "madhyadi";
          default -> name;
        };
    return Optional.ofNullable(named().get(known));
  }

  private static String singleSpaced(String text) {
    StringBuilder spaced = new StringBuilder();
    boolean space = false;
    for (int index = 0; index < text.length(); index++) {
      boolean before = space;
      space = SPACES.indexOf(text.charAt(index)) >= 0;
      if (!space) {
        spaced.append(text.charAt(index));
      } else if (!before) {
        spaced.append(' ');
      }
    }
    return spaced.toString();
  }

  /**
   * Where a song in the tala usually begins.
   *
   * @param tala any tala
   * @return aksharas after samam
   */
  public static Ratio usualEduppu(Tala tala) {
    return switch (tala.name()) {
      case "desadi" -> Ratio.of(3, 2);
      case "madhyadi" -> Ratio.of(1, 2);
      default -> Ratio.ZERO;
    };
  }

  /** A chapu tala with the counts that are clapped, as in khanda chapu 1 3 4. */
  static Optional<Tala> clapped(String written) {
    if (!endsInDigit(written)) {
      return Optional.empty();
    }
    Matcher form = Forms.CHAPU.matcher(written);
    if (!form.matches()) {
      return Optional.empty();
    }
    String name = (form.group(1) == null ? "" : form.group(1) + " ") + "chapu";
    Optional<Tala> chapu = TalaNames.tala(name);
    List<Integer> claps = new ArrayList<>();
    for (String count : form.group(2).split("[\\s,]+")) {
      claps.add(Integer.parseInt(count));
    }
    return chapu.flatMap(tala -> clapped(tala, claps));
  }

  private static Optional<Tala> clapped(Tala chapu, List<Integer> claps) {
    List<Anga> groups = new ArrayList<>();
    for (int index = 0; index < claps.size(); index++) {
      int next = index + 1 < claps.size() ? claps.get(index + 1) : chapu.aksharas() + 1;
      if (next <= claps.get(index) || (index == 0 && claps.get(0) != 1)) {
        return Optional.empty();
      }
      groups.add(new Anga.Group(next - claps.get(index)));
    }
    if (groups.equals(chapu.angas())) {
      return Optional.of(chapu);
    }
    StringBuilder name = new StringBuilder(chapu.name());
    claps.forEach(clap -> name.append(' ').append(clap));
    return Optional.of(new Tala(name.toString(), groups));
  }

  private static boolean endsInDigit(String written) {
    String text = written.stripTrailing();
    return !text.isEmpty() && "0123456789".indexOf(text.charAt(text.length() - 1)) >= 0;
  }

  /** Whether a text is kriyas written out, rightly or not: it begins with one. */
  static boolean isOwn(String written) {
    if (written.indexOf(':') < 0 && !KRIYAS.containsKey(firstWord(written))) {
      return false;
    }
    Matcher form = Forms.OWN.matcher(written);
    return form.matches() && KRIYAS.containsKey(firstWord(form.group(2)));
  }

  private static String firstWord(String text) {
    String words = text.strip().toLowerCase(Locale.ROOT);
    int end = 0;
    while (end < words.length()
        && words.charAt(end) != '|'
        && SPACES.indexOf(words.charAt(end)) < 0) {
      end++;
    }
    return words.substring(0, end);
  }

  /** A tala with its kriyas written out, bars between angas, perhaps a name before a colon. */
  static TalaReader.Result own(String written) {
    Matcher form = Forms.OWN.matcher(written);
    form.matches();
    List<Anga> angas = new ArrayList<>();
    Matcher part =
        Pattern.compile("[^|]+").matcher(written).region(form.start(2), written.length());
    while (part.find()) {
      List<Kriya> kriyas = new ArrayList<>();
      Matcher word = Pattern.compile("\\S+").matcher(written).region(part.start(), part.end());
      while (word.find()) {
        Kriya kriya = KRIYAS.get(word.group().toLowerCase(Locale.ROOT));
        if (kriya == null) {
          return TalaReader.fault(
              word.start(),
              word.end(),
              "no kriya is called " + Quoted.quote(word.group()),
              "kriyas are " + String.join(", ", KRIYAS.keySet()));
        }
        kriyas.add(kriya);
      }
      if (kriyas.isEmpty() || kriyas.size() > Tala.LONGEST_GROUP) {
        return TalaReader.fault(
            part.start(),
            part.end(),
            "an anga has 1 to " + Tala.LONGEST_GROUP + " kriyas, given " + kriyas.size(),
            "bars stand between angas only");
      }
      angas.add(new Anga.Own(kriyas));
    }
    if (angas.size() > Tala.MOST_ANGAS) {
      return TalaReader.fault(
          form.start(2),
          written.length(),
          "a tala has at most " + Tala.MOST_ANGAS + " angas, given " + angas.size(),
          "put several kriyas between two bars");
    }
    String formula = new Tala("own", angas).formula();
    String name = form.group(1) == null ? formula : form.group(1).strip();
    return new TalaReader.Result(Optional.of(new Tala(name, angas)), Optional.empty());
  }

  private static Map<String, Kriya> kriyas() {
    Map<String, Kriya> kriyas = new LinkedHashMap<>();
    kriyas.put("clap", new Kriya.Clap());
    kriyas.put("wave", new Kriya.Wave());
    for (Finger finger : Finger.values()) {
      kriyas.put(finger.name().toLowerCase(Locale.ROOT), new Kriya.Count(finger));
    }
    kriyas.put("hold", new Kriya.Hold());
    return kriyas;
  }
}
