package org.matraloom.follow;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.matraloom.onset.Onset;
import org.matraloom.onset.OnsetCurve;
import org.matraloom.onset.SoundLevels;
import org.matraloom.score.Lexicon;

/**
 * Leaves out of an alignment what only keeps time like the score: the hand and the ticks of a guide
 * that is heard in the take, counted in before the voice begins.
 *
 * <p>The take is cut where it goes back in the score. The sounds of the longest part tell how each
 * sollu sounds; a part whose sounds are no nearer to their sollus than to the mean of all is
 * something else.
 */
public final class GuideBleed {

  private static final int LEAST_SOUNDS = 4;
  private static final double UNLIKE = 0.85;

  /** Where the sollus of the longest part are not told apart, nothing is known of the others. */
  private static final double CLEARLY_ALIKE = 8;

  private GuideBleed() {}

  /**
   * The alignment of what is left when the sounds of such parts are taken out.
   *
   * @param alignment which sound is taken for which sollu
   * @param curve the recording
   * @param lexicon what the score was read with
   * @return the same alignment if there is no such part
   */
  public static Alignment leftOut(Alignment alignment, OnsetCurve curve, Lexicon lexicon) {
    SoundLevels levels = curve.levels();
    List<List<Alignment.Said>> parts = parts(alignment.said());
    if (parts.size() < 2) {
      return alignment;
    }
    List<Alignment.Said> main =
        parts.stream().max(Comparator.comparingInt(List::size)).orElseThrow();
    Alignment longest = new Alignment(alignment.expected(), alignment.onsets(), main);
    if (SolluLikeness.of(longest, levels) < CLEARLY_ALIKE) {
      return alignment;
    }
    Map<String, List<double[]>> colours = new HashMap<>();
    List<double[]> all = new ArrayList<>();
    for (Alignment.Said said : main) {
      double[] colour = levels.colour(alignment.secondsOf(said));
      all.add(colour);
      colours.computeIfAbsent(sound(alignment, said), name -> new ArrayList<>()).add(colour);
    }
    Map<String, double[]> means = new HashMap<>();
    colours.forEach((name, alike) -> means.put(name, mean(alike)));
    double[] middle = mean(all);
    Set<Integer> unlike = new HashSet<>();
    for (List<Alignment.Said> part : parts) {
      Set<Integer> suspects = new HashSet<>();
      double own = 0;
      double any = 0;
      int count = 0;
      for (Alignment.Said said : part) {
        double[] mean = means.get(sound(alignment, said));
        if (mean != null) {
          double[] colour = levels.colour(alignment.secondsOf(said));
          double near = apart(colour, mean);
          double far = apart(colour, middle);
          own += near;
          any += far;
          count++;
          if (near >= UNLIKE * far) {
            suspects.add(said.onset());
          }
        }
      }
      if (part != main && count >= LEAST_SOUNDS && own >= UNLIKE * any && !suspects.isEmpty()) {
        boolean leads = part.get(0).onset() < main.get(0).onset();
        int from = leads ? 0 : suspects.stream().min(Integer::compare).orElseThrow();
        int to =
            leads
                ? suspects.stream().max(Integer::compare).orElseThrow()
                : alignment.onsets().size() - 1;
        IntStream.rangeClosed(from, to).forEach(unlike::add);
      }
    }
    List<Onset> left =
        IntStream.range(0, alignment.onsets().size())
            .filter(j -> !unlike.contains(j))
            .mapToObj(alignment.onsets()::get)
            .toList();
    return unlike.isEmpty()
        ? alignment
        : leftOut(Aligner.of(alignment.expected(), curve, left, lexicon), curve, lexicon);
  }

  private static List<List<Alignment.Said>> parts(List<Alignment.Said> said) {
    List<List<Alignment.Said>> parts = new ArrayList<>();
    for (int i = 0; i < said.size(); i++) {
      if (i == 0 || said.get(i).sollu() <= said.get(i - 1).sollu()) {
        parts.add(new ArrayList<>());
      }
      parts.get(parts.size() - 1).add(said.get(i));
    }
    return parts;
  }

  private static String sound(Alignment alignment, Alignment.Said said) {
    return alignment.expected().get(said.sollu()).sollu().sound();
  }

  private static double[] mean(List<double[]> colours) {
    double[] mean = new double[colours.get(0).length];
    for (double[] colour : colours) {
      for (int d = 0; d < mean.length; d++) {
        mean[d] += colour[d] / colours.size();
      }
    }
    return mean;
  }

  private static double apart(double[] a, double[] b) {
    double sum = 0;
    for (int d = 0; d < a.length; d++) {
      sum += (a[d] - b[d]) * (a[d] - b[d]);
    }
    return sum;
  }
}
