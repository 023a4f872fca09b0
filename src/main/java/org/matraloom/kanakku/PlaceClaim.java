package org.matraloom.kanakku;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.matraloom.score.Avartana;
import org.matraloom.score.Notice;
import org.matraloom.score.Performance;
import org.matraloom.score.Step;
import org.matraloom.time.Ratio;

/**
 * What a line {@code at samam} claims of a performance, with what is so: where a piece that was
 * written elsewhere enters and lands, or a place that the score names itself.
 *
 * @param whose the part that enters or lands; empty if that is not said
 * @param enters whether the part begins here
 * @param claimed where the tala should stand, in beats after samam
 * @param atBeat where the performance is, in beats
 * @param missBeats beats from the nearest place that is claimed: positive if late, negative if
 *     early, 0 if it is so
 */
public record PlaceClaim(
    String whose, boolean enters, Ratio claimed, Ratio atBeat, Ratio missBeats) {

  /**
   * Checks all such lines of a performance.
   *
   * @param performance what is performed
   * @return the claims in order
   */
  public static List<PlaceClaim> in(Performance performance) {
    List<PlaceClaim> claims = new ArrayList<>();
    Map<String, Integer> opened = new HashMap<>();
    for (Notice notice : performance.notices()) {
      if (notice.step() instanceof Step.Part part) {
        opened.put(part.name(), notice.span());
      } else if (notice.step() instanceof Step.Stands stands) {
        boolean enters = Integer.valueOf(notice.span()).equals(opened.get(stands.whose()));
        claims.add(of(stands, notice.beat(), enters, performance.avartana()));
      }
    }
    return List.copyOf(claims);
  }

  private static PlaceClaim of(Step.Stands stands, Ratio beat, boolean enters, Avartana avartana) {
    Ratio cycle = Ratio.of(avartana.goingOnAt(beat).beats());
    Ratio past = avartana.placeOf(beat).minus(stands.place()).modulo(cycle);
    boolean nearerToTheNext = past.times(2).compareTo(cycle) > 0;
    Ratio miss = nearerToTheNext ? past.minus(cycle) : past;
    return new PlaceClaim(stands.whose(), enters, stands.place(), beat, miss);
  }

  /**
   * Whether it is so.
   *
   * @return true if the tala stands where it is claimed
   */
  public boolean holds() {
    return missBeats.signum() == 0;
  }

  /**
   * What is claimed and what is so, in a sentence.
   *
   * @param avartana the tala
   * @return one sentence without a full stop
   */
  public String words(Avartana avartana) {
    String what = whose.isEmpty() ? "the tala stands" : whose + (enters ? " enters" : " lands");
    String place = avartana.goingOnAt(atBeat).say(claimed);
    if (holds()) {
      return what + " on " + place;
    }
    Ratio size = missBeats.signum() < 0 ? missBeats.negate() : missBeats;
    return what
        + " on "
        + avartana.say(atBeat)
        + ", "
        + LengthWords.beats(size)
        + " too "
        + (missBeats.signum() < 0 ? "early" : "late")
        + " for "
        + place;
  }
}
