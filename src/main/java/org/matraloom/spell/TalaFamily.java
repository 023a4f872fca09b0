package org.matraloom.spell;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.matraloom.score.Anga;
import org.matraloom.score.Jati;
import org.matraloom.score.Tala;

/**
 * The seven families of suladi talas; with five jatis each they make the 35 talas.
 *
 * <p>Source: "The scheme of 35 talas", carnaticmusicexams.in, 2018. All laghus of a tala have one
 * jati (ezcarnatic.tripod.com, "law of homogeneity").
 */
public enum TalaFamily {
  /** Laghu, drutam, laghu, laghu. */
  DHRUVA("IOII"),
  /** Laghu, drutam, laghu. */
  MATYA("IOI"),
  /** Drutam, laghu: the only family that does not begin with a laghu. */
  RUPAKA("OI"),
  /** Laghu, anudrutam, drutam. */
  JHAMPA("IUO"),
  /** Laghu, drutam, drutam; with chatusra jati it is adi. */
  TRIPUTA("IOO"),
  /** Laghu, laghu, drutam, drutam. */
  ATA("IIOO"),
  /** A single laghu. */
  EKA("I");

  private final String pattern;

  TalaFamily(String pattern) {
    this.pattern = pattern;
  }

  /**
   * The family name in plain romanisation.
   *
   * @return for example "triputa"
   */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * One of the five talas of this family.
   *
   * @param jati the jati of its laghus
   * @return the tala, named jati first, as in "chatusra triputa"
   */
  public Tala tala(Jati jati) {
    List<Anga> angas = new ArrayList<>();
    for (int index = 0; index < pattern.length(); index++) {
      angas.add(anga(pattern.charAt(index), jati));
    }
    return new Tala(jati.word() + " " + word(), angas);
  }

  private static Anga anga(char sign, Jati jati) {
    return switch (sign) {
      case 'I' -> new Anga.Laghu(jati);
      case 'O' -> new Anga.Drutam();
      default -> new Anga.Anudrutam();
    };
  }
}
