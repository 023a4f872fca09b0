package org.matraloom.kanakku;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.score.Avartana;
import org.matraloom.score.Performance;
import org.matraloom.score.TalaSections;
import org.matraloom.score.TalaTurn;
import org.matraloom.time.Ratio;

/** Says lengths the way they are counted on the hand: in beats and in matras. */
public final class LengthWords {

  private LengthWords() {}

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
   * The length of a performance in avartanas, those of each tala by themselves if it changes.
   *
   * @param performance what is performed
   * @return "7 avartanas" or "4 avartanas of adi and 3 avartanas of chatusra rupaka"; nothing below
   *     one avartana
   */
  public static Optional<String> avartanas(Performance performance) {
    List<TalaTurn> talas = TalaSections.of(performance.avartana());
    List<String> words = new ArrayList<>();
    for (int index = 0; index < talas.size(); index++) {
      boolean last = index + 1 == talas.size();
      Ratio from = index == 0 ? performance.startBeat() : Ratio.of(talas.get(index).beat());
      Ratio to = last ? performance.endBeat() : Ratio.of(talas.get(index + 1).beat());
      Avartana tala = talas.get(index).avartana();
      String name = talas.size() == 1 ? "" : " of " + tala.tala().name();
      Optional<String> length = avartanas(to.minus(from), tala.beats());
      if (length.isPresent()) {
        words.add(length.get() + name);
      }
    }
    return words.isEmpty() ? Optional.empty() : Optional.of(String.join(" and ", words));
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
}
