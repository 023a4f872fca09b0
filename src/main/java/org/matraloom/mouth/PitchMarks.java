package org.matraloom.mouth;

import be.tarsos.dsp.pitch.FastYin;
import be.tarsos.dsp.pitch.PitchDetectionResult;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/**
 * One moment in each period of the folds.
 *
 * <p>How long a period is about: A. de Cheveigné and H. Kawahara, YIN, J. Acoust. Soc. Am. 111
 * (2002) 1917-1930 (TarsosDSP's). The marks: from the strongest peak of the loudest voiced part to
 * both sides, each at the distance, within a fifth of the period, at which the sound around it is
 * most like the sound around the mark before (cross-correlation, as in P. Boersma and D. Weenink,
 * Praat, "PointProcess: To PointProcess (cc)").
 */
final class PitchMarks {

  private static final int WINDOW = 2048;
  private static final int HOP = 240;
  private static final double LOWEST_HZ = 60;
  private static final double HIGHEST_HZ = 600;

  /** How far a period may differ from the one that is about there. */
  private static final double REACH = 0.2;

  /** Praat goes on while the correlation is above this. */
  private static final double LEAST_LIKENESS = 0.3;

  private static final double SILENT_DB = -40;

  /**
   * Below the usual 0.2, as a first formant on the second harmonic looks like the pitch (the i and
   * u of high voices).
   */
  private static final double THRESHOLD = 0.1;

  /** Between a tone and its octave, which is what estimates err by. */
  private static final double HALF_OCTAVE = Math.sqrt(2);

  /** How often the pitch of a whole recording is asked for. */
  private static final int SPARSE_HOP = 2400;

  private final float[] sound;
  private final int from;
  private final int to;
  private final double[] periods;

  private PitchMarks(float[] sound, int from, int to, double usualPeriod) {
    this.sound = sound;
    this.from = from;
    this.to = to;
    this.periods = periods(sound, from, to, HOP);
    double usual = usualPeriod > 0 ? usualPeriod : median(periods);
    for (int i = 0; i < periods.length; i++) {
      periods[i] = inOctave(periods[i], usual);
    }
  }

  /**
   * The marks in a part of a sound.
   *
   * @param usualPeriod about how long a period of this voice is, in frames; 0 if it is not known
   * @return in order; none where no voice is
   */
  static List<Integer> of(float[] sound, int from, int to, double usualPeriod) {
    return new PitchMarks(sound, from, to, usualPeriod).marks();
  }

  /** The median period of a voice in a whole recording, in frames; 0 where no voice is. */
  static double usualPeriod(float[] sound) {
    return median(periods(sound, 0, sound.length, SPARSE_HOP));
  }

  private static double median(double[] periods) {
    double[] sorted = Arrays.stream(periods).filter(period -> period > 0).sorted().toArray();
    return sorted.length == 0 ? 0 : sorted[sorted.length / 2];
  }

  /** Mends an octave error against what is usual; 0 for what is further off. */
  private static double inOctave(double period, double usual) {
    double mended = period;
    if (period * HALF_OCTAVE < usual) {
      mended = 2 * period;
    } else if (period > usual * HALF_OCTAVE) {
      mended = period / 2;
    }
    return mended * HALF_OCTAVE < usual || mended > usual * HALF_OCTAVE ? 0 : mended;
  }

  /** The period in frames around each hop; 0 where there is no voice. */
  private static double[] periods(float[] sound, int from, int to, int hop) {
    FastYin yin = new FastYin(Kit.RATE, WINDOW, THRESHOLD);
    float[] window = new float[WINDOW];
    double[] found = new double[Math.max(1, (to - from) / hop)];
    for (int i = 0; i < found.length; i++) {
      int first = from + i * hop - WINDOW / 2;
      for (int j = 0; j < WINDOW; j++) {
        int frame = first + j;
        window[j] = frame < from || frame >= to ? 0 : sound[frame];
      }
      PitchDetectionResult result = yin.getPitch(window);
      double hz = result.getPitch();
      if (result.isPitched() && hz >= LOWEST_HZ && hz <= HIGHEST_HZ) {
        found[i] = Kit.RATE / hz;
      }
    }
    return found;
  }

  private List<Integer> marks() {
    int loudest = -1;
    double most = 0;
    for (int i = 0; i < periods.length; i++) {
      double power = periods[i] > 0 ? power(from + i * HOP, WINDOW / 4) : 0;
      if (power > most) {
        most = power;
        loudest = i;
      }
    }
    if (loudest < 0) {
      return List.of();
    }
    double least = most * Math.pow(10, SILENT_DB / 10);
    int anchor = peak(from + loudest * HOP, (int) (periods[loudest] / 2));
    Deque<Integer> marks = new ArrayDeque<>(List.of(anchor));
    double period = periods[loudest];
    for (int mark = next(anchor, period, 1, least); mark >= 0; ) {
      period = mark - marks.getLast();
      marks.addLast(mark);
      mark = next(mark, period, 1, least);
    }
    period = periods[loudest];
    for (int mark = next(anchor, period, -1, least); mark >= 0; ) {
      period = marks.getFirst() - mark;
      marks.addFirst(mark);
      mark = next(mark, period, -1, least);
    }
    return new ArrayList<>(marks);
  }

  /** The mark after, or before, a mark; -1 where the voice is over. */
  private int next(int mark, double periodBefore, int way, double leastPower) {
    double about = periodAt(mark + way * (int) periodBefore, periodBefore);
    int half = (int) Math.round(about / 2);
    int shortest = (int) Math.ceil((1 - REACH) * about);
    int longest = (int) ((1 + REACH) * about);
    int best = -1;
    double likeness = LEAST_LIKENESS;
    for (int distance = shortest; distance <= longest; distance++) {
      int other = mark + way * distance;
      if (other - half < from || other + half >= to) {
        continue;
      }
      double like = likeness(mark, other, half);
      if (like > likeness) {
        likeness = like;
        best = other;
      }
    }
    return best >= 0 && power(best, half) >= leastPower ? best : -1;
  }

  private double periodAt(int frame, double otherwise) {
    int index = Math.max(0, Math.min(periods.length - 1, (frame - from + HOP / 2) / HOP));
    return periods[index] > 0 ? periods[index] : otherwise;
  }

  private double likeness(int a, int b, int half) {
    double both = 0;
    double first = 0;
    double second = 0;
    for (int i = -half; i <= half; i++) {
      int at = a + i;
      if (at < from || at >= to) {
        continue;
      }
      both += sound[at] * sound[b + i];
      first += sound[at] * sound[at];
      second += sound[b + i] * sound[b + i];
    }
    return first == 0 || second == 0 ? 0 : both / Math.sqrt(first * second);
  }

  private double power(int centre, int half) {
    double sum = 0;
    int count = 0;
    for (int i = Math.max(from, centre - half); i < Math.min(to, centre + half); i++) {
      sum += sound[i] * sound[i];
      count++;
    }
    return count == 0 ? 0 : sum / count;
  }

  /** The strongest peak, above or below, near a frame. */
  private int peak(int centre, int reach) {
    int best = centre;
    for (int i = Math.max(from, centre - reach); i < Math.min(to, centre + reach); i++) {
      best = Math.abs(sound[i]) > Math.abs(sound[best]) ? i : best;
    }
    return best;
  }
}
