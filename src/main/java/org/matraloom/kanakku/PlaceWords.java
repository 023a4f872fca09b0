package org.matraloom.kanakku;

import java.util.Optional;
import org.matraloom.score.Avartana;
import org.matraloom.time.Ratio;

/** Says places and lengths the way they are counted on the hand: in beats and in matras. */
public final class PlaceWords {

  private static final int SHORT_WAY_BEATS = 2;

  private PlaceWords() {}

  /**
   * A place of the cycle.
   *
   * @param avartana the cycle
   * @param beat a position in beats; 0 is a samam
   * @param matrasPerBeat the matras of a beat there
   * @return "samam", "beat 5 (clap)", "1/2 beat after samam", "1 matra before samam" or "beat 5,
   *     2nd matra"
   */
  public static String place(Avartana avartana, Ratio beat, int matrasPerBeat) {
    Ratio place = avartana.placeOf(beat);
    if (place.isWhole()) {
      return avartana.say(place);
    }
    if (place.compareTo(Ratio.of(SHORT_WAY_BEATS)) < 0) {
      return length(place, matrasPerBeat) + " after samam";
    }
    Ratio before = Ratio.of(avartana.beats()).minus(place);
    if (before.compareTo(Ratio.ONE) < 0) {
      return length(before, matrasPerBeat) + " before samam";
    }
    Ratio matras = place.minus(Ratio.of(place.floor())).times(matrasPerBeat);
    if (matras.isWhole()) {
      return "beat " + (place.floor() + 1) + ", " + ordinal(matras.num() + 1) + " matra";
    }
    return "beat " + place.plus(Ratio.ONE).toMixed();
  }

  /**
   * A length in beats, with its matras where they are whole.
   *
   * @param beats the length, not negative
   * @param matrasPerBeat the matras of a beat there
   * @return "16 matras (3 1/5 beats)", "1/2 beat (2 matras)" or "3 beats"
   */
  public static String length(Ratio beats, int matrasPerBeat) {
    Ratio matras = beats.times(matrasPerBeat);
    String inBeats = beats(beats);
    if (beats.isWhole() || !matras.isWhole()) {
      return inBeats;
    }
    String inMatras = matras(matras);
    return beats.den() == 2 ? inBeats + " (" + inMatras + ")" : inMatras + " (" + inBeats + ")";
  }

  /**
   * A number of beats.
   *
   * @param beats the number, not negative
   * @return "0 beats", "1/2 beat", "1 beat" or "3 1/5 beats"
   */
  public static String beats(Ratio beats) {
    boolean one = beats.signum() > 0 && beats.compareTo(Ratio.ONE) <= 0;
    return beats.toMixed() + (one ? " beat" : " beats");
  }

  /**
   * A length in whole avartanas and the beats left over.
   *
   * @param beats the length, not negative
   * @param cycle the beats of an avartana
   * @return "7 avartanas" or "6 avartanas and 2 2/5 beats"; nothing below one avartana
   */
  public static Optional<String> avartanas(Ratio beats, int cycle) {
    Ratio rest = beats.modulo(Ratio.of(cycle));
    long whole = beats.minus(rest).dividedBy(cycle).floor();
    return whole == 0
        ? Optional.empty()
        : Optional.of(
            whole
                + (whole == 1 ? " avartana" : " avartanas")
                + (rest.signum() == 0 ? "" : " and " + beats(rest)));
  }

  /**
   * A number of matras.
   *
   * @param matras the number, not negative
   * @return "0 matras", "1/2 matra", "1 matra" or "16 matras"
   */
  public static String matras(Ratio matras) {
    boolean one = matras.signum() > 0 && matras.compareTo(Ratio.ONE) <= 0;
    return matras.toMixed() + (one ? " matra" : " matras");
  }

  private static String ordinal(long number) {
    return switch ((int) number) {
      case 1 -> "1st";
      case 2 -> "2nd";
      case 3 -> "3rd";
      default -> number + "th";
    };
  }
}
