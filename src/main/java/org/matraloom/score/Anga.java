package org.matraloom.score;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A limb of a tala.
 *
 * <p>Source of lengths and kriyas: "The scheme of 35 talas", carnaticmusicexams.in, 2018.
 */
public sealed interface Anga {

  /**
   * The length.
   *
   * @return aksharas, at least 1
   */
  int aksharas();

  /**
   * The sign in an anga formula.
   *
   * @return "I4", "O", "U", or the bare number of a group
   */
  String sign();

  /**
   * The gestures, one an akshara.
   *
   * @param custom which finger follows the thumb
   * @return as many kriyas as there are aksharas, the first a clap
   */
  List<Kriya> kriyas(FingerCustom custom);

  /**
   * A clap and finger counts.
   *
   * @param jati how many aksharas it has
   */
  record Laghu(Jati jati) implements Anga {
    @Override
    public int aksharas() {
      return jati.aksharas();
    }

    @Override
    public String sign() {
      return "I" + aksharas();
    }

    @Override
    public List<Kriya> kriyas(FingerCustom custom) {
      List<Kriya> kriyas = new ArrayList<>();
      kriyas.add(new Kriya.Clap());
      for (int count = 0; count < aksharas() - 1; count++) {
        kriyas.add(new Kriya.Count(custom.finger(count)));
      }
      return List.copyOf(kriyas);
    }
  }

  /** A clap and a wave. */
  record Drutam() implements Anga {
    @Override
    public int aksharas() {
      return 2;
    }

    @Override
    public String sign() {
      return "O";
    }

    @Override
    public List<Kriya> kriyas(FingerCustom custom) {
      return List.of(new Kriya.Clap(), new Kriya.Wave());
    }
  }

  /** A single clap. */
  record Anudrutam() implements Anga {
    @Override
    public int aksharas() {
      return 1;
    }

    @Override
    public String sign() {
      return "U";
    }

    @Override
    public List<Kriya> kriyas(FingerCustom custom) {
      return List.of(new Kriya.Clap());
    }
  }

  /**
   * A group of a chapu tala or of a free grouping: a clap, then the hand holds.
   *
   * @param aksharas the length, from 1 to {@value Tala#LONGEST_GROUP}
   */
  record Group(int aksharas) implements Anga {
    /**
     * Checks the length.
     *
     * @throws IllegalArgumentException if it is outside 1 to {@value Tala#LONGEST_GROUP}
     */
    public Group {
      if (aksharas < 1 || aksharas > Tala.LONGEST_GROUP) {
        throw new IllegalArgumentException(
            "a group has 1 to " + Tala.LONGEST_GROUP + " aksharas, given " + aksharas);
      }
    }

    @Override
    public String sign() {
      return Integer.toString(aksharas);
    }

    @Override
    public List<Kriya> kriyas(FingerCustom custom) {
      List<Kriya> kriyas = new ArrayList<>();
      kriyas.add(new Kriya.Clap());
      for (int held = 1; held < aksharas; held++) {
        kriyas.add(new Kriya.Hold());
      }
      return List.copyOf(kriyas);
    }
  }

  /**
   * A limb whose kriyas are written out one by one.
   *
   * @param given one kriya an akshara, 1 to {@value Tala#LONGEST_GROUP} of them
   */
  record Own(List<Kriya> given) implements Anga {
    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if there are none or too many
     */
    public Own {
      given = List.copyOf(given);
      if (given.isEmpty() || given.size() > Tala.LONGEST_GROUP) {
        throw new IllegalArgumentException(
            "an anga has 1 to " + Tala.LONGEST_GROUP + " kriyas, given " + given.size());
      }
    }

    @Override
    public int aksharas() {
      return given.size();
    }

    @Override
    public String sign() {
      return given.stream()
          .map(kriya -> kriya.words().replace(" finger", ""))
          .collect(Collectors.joining(" "));
    }

    @Override
    public List<Kriya> kriyas(FingerCustom custom) {
      return given;
    }
  }
}
