package org.matraloom.schedule;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import org.matraloom.score.Avartana;
import org.matraloom.time.Ratio;

/**
 * Plain words that fill the way from samam to a start off samam, one word a beat.
 *
 * @param matrasPerBeat in what the words are counted
 * @param wordMatras the length of each word; the last one is shorter where the start lies inside a
 *     beat
 */
public record LeadIn(int matrasPerBeat, List<Integer> wordMatras) {

  private static final int MOST_DOUBLINGS = 2;

  /** Copies the list. */
  public LeadIn {
    wordMatras = List.copyOf(wordMatras);
  }

  /**
   * The words that lead to a start.
   *
   * @param avartana the cycle
   * @param startBeat where the piece starts, in beats after samam
   * @param nadai matras a beat in which the words are said
   * @param wholeAvartanas cycles filled with words before the last part of the way, 0 or more
   * @return the words; nothing if the start lies on no matra of this nadai, nor on its halves or
   *     quarters
   */
  public static Optional<LeadIn> of(
      Avartana avartana, Ratio startBeat, int nadai, int wholeAvartanas) {
    Ratio way =
        avartana.placeOf(startBeat).plus(Ratio.of((long) wholeAvartanas * avartana.beats()));
    for (int doubling = 0; doubling <= MOST_DOUBLINGS; doubling++) {
      int density = nadai << doubling;
      Ratio matras = way.times(density);
      if (matras.isWhole()) {
        List<Integer> words = new ArrayList<>(Collections.nCopies((int) way.floor(), density));
        int rest = (int) (matras.num() - way.floor() * density);
        if (rest > 0) {
          words.add(rest);
        }
        return Optional.of(new LeadIn(density, words));
      }
    }
    return Optional.empty();
  }

  /**
   * The length of the way.
   *
   * @return beats
   */
  public Ratio beats() {
    return Ratio.of(wordMatras.stream().mapToInt(Integer::intValue).sum(), matrasPerBeat);
  }

  /**
   * The words to say, equal neighbours counted together.
   *
   * @param word gives the plain word for a number of matras
   * @return for example "2 x takita" or "7 x takadimi, takita"; empty for a start on samam
   */
  public String said(IntFunction<String> word) {
    List<String> parts = new ArrayList<>();
    int i = 0;
    while (i < wordMatras.size()) {
      int same = i;
      while (same < wordMatras.size() && wordMatras.get(same).equals(wordMatras.get(i))) {
        same++;
      }
      String text = word.apply(wordMatras.get(i));
      parts.add(same - i == 1 ? text : (same - i) + " x " + text);
      i = same;
    }
    return parts.stream().collect(Collectors.joining(", "));
  }
}
