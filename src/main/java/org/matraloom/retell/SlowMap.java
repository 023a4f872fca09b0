package org.matraloom.retell;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Which moment of a take is heard at which moment of the slowed take.
 *
 * <p>Every felt beat is heard at its own time divided by the speed, so a slowed take keeps its
 * rhythm exactly. The sound around it, from a little before the consonant until the vowel stands,
 * goes by at its own speed, so consonants stay as sharp as they were; what lies between is slowed
 * so much the more.
 */
final class SlowMap {

  /** A syllable or another sound whose beginning is kept. */
  record AnchorPoint(double onsetSeconds, double feltSeconds) {}

  private static final double BEFORE_SECONDS = 0.020;
  private static final double AFTER_SECONDS = 0.030;

  /** At least this share of the time between two anchors is left to be slowed. */
  private static final double BEFORE_SHARE = 0.3;

  private static final double AFTER_SHARE = 0.3;

  private final double speed;
  private final double[] inStart;
  private final double[] inEnd;
  private final double[] outStart;

  /**
   * Lays the map.
   *
   * @param speed above 0, at most 1
   * @param anchors sounds to be kept, in any order; one that begins before the felt beat of another
   *     is over is passed over
   */
  SlowMap(double speed, List<AnchorPoint> anchors) {
    this.speed = speed;
    List<AnchorPoint> kept = apart(anchors);
    inStart = new double[kept.size()];
    inEnd = new double[kept.size()];
    outStart = new double[kept.size()];
    for (int i = 0; i < kept.size(); i++) {
      AnchorPoint anchor = kept.get(i);
      double gap =
          i == 0 ? anchor.onsetSeconds() : anchor.onsetSeconds() - kept.get(i - 1).feltSeconds();
      double nextGap =
          i + 1 < kept.size()
              ? kept.get(i + 1).onsetSeconds() - anchor.feltSeconds()
              : AFTER_SECONDS / AFTER_SHARE;
      inStart[i] = anchor.onsetSeconds() - Math.min(BEFORE_SECONDS, BEFORE_SHARE * gap);
      inEnd[i] = anchor.feltSeconds() + Math.min(AFTER_SECONDS, AFTER_SHARE * nextGap);
      outStart[i] = slowed(anchor.feltSeconds()) - (anchor.feltSeconds() - inStart[i]);
    }
  }

  private static List<AnchorPoint> apart(List<AnchorPoint> anchors) {
    List<AnchorPoint> sorted = new ArrayList<>(anchors);
    sorted.sort((a, b) -> Double.compare(a.onsetSeconds(), b.onsetSeconds()));
    List<AnchorPoint> kept = new ArrayList<>();
    double free = 0;
    for (AnchorPoint anchor : sorted) {
      if (anchor.onsetSeconds() > free && anchor.feltSeconds() >= anchor.onsetSeconds()) {
        kept.add(anchor);
        free = anchor.feltSeconds();
      }
    }
    return kept;
  }

  /** When a felt beat, or a beat of the pulse, is heard. */
  double slowed(double seconds) {
    return seconds / speed;
  }

  /** The moment of the take that is heard at a moment of the slowed take. */
  double inputAt(double outSeconds) {
    int zone = lastZoneFrom(outSeconds);
    double in = zone < 0 ? 0 : inEnd[zone];
    double out = zone < 0 ? 0 : outEnd(zone);
    if (zone >= 0 && outSeconds < out) {
      return inStart[zone] + outSeconds - outStart[zone];
    }
    if (zone + 1 == inStart.length) {
      return in + (outSeconds - out) * speed;
    }
    double slope = (inStart[zone + 1] - in) / (outStart[zone + 1] - out);
    return in + (outSeconds - out) * slope;
  }

  /** Which kept sound is heard at a moment, from 0; -1 if the sound is being slowed there. */
  int keptAt(double outSeconds) {
    int zone = lastZoneFrom(outSeconds);
    return zone >= 0 && outSeconds < outEnd(zone) ? zone : -1;
  }

  private int lastZoneFrom(double outSeconds) {
    int found = Arrays.binarySearch(outStart, outSeconds);
    return found >= 0 ? found : -found - 2;
  }

  private double outEnd(int zone) {
    return outStart[zone] + inEnd[zone] - inStart[zone];
  }
}
