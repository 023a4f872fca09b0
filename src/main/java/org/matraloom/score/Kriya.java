package org.matraloom.score;

import java.util.Locale;

/** One gesture of the hand that shows the tala, given on one akshara. */
public sealed interface Kriya {

  /**
   * The gesture in words.
   *
   * @return "clap", "little finger", "wave" or "hold"
   */
  String words();

  /** The sounded clap that begins every anga. */
  record Clap() implements Kriya {
    @Override
    public String words() {
      return "clap";
    }
  }

  /**
   * A count on one finger, inside a laghu.
   *
   * @param finger the finger that counts
   */
  record Count(Finger finger) implements Kriya {
    @Override
    public String words() {
      String name = finger.name().toLowerCase(Locale.ROOT);
      return finger == Finger.THUMB ? name : name + " finger";
    }
  }

  /** The wave or turn of the hand that ends a drutam. */
  record Wave() implements Kriya {
    @Override
    public String words() {
      return "wave";
    }
  }

  /** No gesture: the hand stays where it is, inside a group of a chapu tala. */
  record Hold() implements Kriya {
    @Override
    public String words() {
      return "hold";
    }
  }
}
