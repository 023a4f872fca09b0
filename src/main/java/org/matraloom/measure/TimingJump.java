package org.matraloom.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.matraloom.follow.Alignment;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.SaidSollu;
import org.matraloom.pulse.PulseLine;

/**
 * A place from which on all is later or earlier than the pulse before it: a matra or a whole
 * passage left out or put in, or a wait.
 *
 * @param place the first sollu after it, its place among {@link Alignment#expected()}
 * @param seconds how much later all is from there; negative if earlier
 * @param matras the same in matras
 * @param waited whether nothing was said meanwhile, or so little that claps may account for it
 */
public record TimingJump(int place, double seconds, double matras, boolean waited) {

  /** Less is a matter of evenness. */
  private static final double LEAST_MATRAS = 0.5;

  /** Of matras put in, so many have a sound; a clap now and then is none of them. */
  private static final double SAID = 0.6;

  /**
   * The slips of a take.
   *
   * @param alignment what was heard
   * @param sollus what was said, in order of time
   * @param line the pulse
   * @return in order of time
   */
  public static List<TimingJump> of(Alignment alignment, List<SaidSollu> sollus, PulseLine line) {
    List<TimingJump> slips = new ArrayList<>();
    for (int i = 1; i < sollus.size(); i++) {
      SaidSollu before = sollus.get(i - 1);
      SaidSollu after = sollus.get(i);
      if (after.run() > before.run() && !alignment.isRestart(before, after)) {
        ExpectedSollu asked = alignment.expected().get(after.place());
        double beat = asked.beat().toDouble();
        double seconds = line.secondsAt(beat, after.run()) - line.secondsAt(beat, before.run());
        double matra = line.beatSeconds(beat) / asked.matrasPerBeat();
        int added = alignment.addedBetween(before.onsetSeconds(), after.onsetSeconds());
        boolean waited = seconds > 0 && added * matra < SAID * seconds;
        if (Math.abs(seconds) >= LEAST_MATRAS * matra) {
          slips.add(new TimingJump(after.place(), seconds, seconds / matra, waited));
        }
      }
    }
    return slips;
  }

  /**
   * What was too much or too little.
   *
   * @return such as "one matra too few", or "a wait of 0.55 s"
   */
  public String words() {
    if (waited) {
      return String.format(Locale.ROOT, "a wait of %.2f s", seconds);
    }
    double size = Math.abs(matras);
    String amount =
        Math.abs(size - 1) < 0.2 ? "one matra" : String.format(Locale.ROOT, "%.1f matras", size);
    return amount + (matras > 0 ? " too many" : " too few");
  }
}
