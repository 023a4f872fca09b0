package org.matraloom.mouth;

import java.util.List;

/**
 * Lays periods of a sample over one another so that its parts become longer or shorter and its
 * pitch and colour stay: time-domain pitch-synchronous overlap-add, E. Moulines and F. Charpentier,
 * Speech Communication 9 (1990) 453-467.
 *
 * <p>Each period is faded in over the distance to the one before it and out over the distance to
 * the one after it, so that the weights add up to 1 and what is not stretched is the recording, to
 * the sample. A part that is drawn out keeps its own course of pitch and level, only slower.
 */
final class PitchOverlap {

  private static final double LIFT_SECONDS = 0.080;

  /** No voice has more periods than this in a second, lifted or not. */
  private static final int MOST_HZ = 1000;

  private static final int SOME_MORE = 16;

  private final DrawnSample sample;
  private final int ratePerSecond;
  private final double pitch;
  private final double lift;
  private int[] places = new int[0];
  private int[] sources = new int[0];
  private double[] gains = new double[0];
  private int count;

  /**
   * Prepares one saying.
   *
   * @param sample what is said
   * @param ratePerSecond its rate
   * @param pitch the pitch against that of the recording, as a factor
   * @param lift how much higher still it starts, as a factor that dies away
   */
  PitchOverlap(DrawnSample sample, int ratePerSecond, double pitch, double lift) {
    this.sample = sample;
    this.ratePerSecond = ratePerSecond;
    this.pitch = pitch;
    this.lift = lift;
  }

  /**
   * Writes the vowel and what follows it.
   *
   * @param out where it goes; what lies before the vowel is written by others
   * @param vowelAt where in it the vowel begins
   * @param parts the parts, in order, the first beginning at the vowel; what sounds past the end of
   *     the array is left out
   */
  void write(float[] out, int vowelAt, List<SoundedPart> parts) {
    int frames = out.length - vowelAt;
    int most = (int) ((long) frames * MOST_HZ / ratePerSecond) + SOME_MORE;
    places = new int[most];
    sources = new int[most];
    gains = new double[most];
    count = 0;
    walk(parts, frames);
    lay(out, vowelAt);
  }

  private void walk(List<SoundedPart> parts, int frames) {
    double at = sample.marks()[sample.first()] - sample.places().vowel();
    int mark = sample.first();
    double partBegin = 0;
    for (SoundedPart part : parts) {
      double partEnd = partBegin + part.frames();
      if (count > 0) {
        mark = sample.nearest(part.from() + at - partBegin);
      }
      while (at < partEnd && count < places.length - 1) {
        double sounded = at - partBegin;
        double gain = 1;
        double period;
        if (part.isPlain()) {
          period = mark + 1 < sample.marks().length ? gap(mark) : sample.period(mark);
        } else {
          mark = sample.nearest(part.heard(sounded));
          int slowed = sample.nearest(part.slowed(sounded));
          gain = sample.gain(mark, slowed);
          period = sample.period(slowed);
        }
        add(at, mark, gain);
        at += period / factor(at);
        if (part.isPlain() && ++mark >= sample.marks().length) {
          return;
        }
      }
      partBegin = partEnd;
    }
    // One period more, into which the last is faded; what is too short for one is the recording.
    int last = Math.min(mark, sample.marks().length - 1);
    if (count == 0 || at < frames + sample.period(last)) {
      add(at, last, count == 0 ? 1 : gains[count - 1]);
    }
  }

  private int gap(int mark) {
    return sample.marks()[mark + 1] - sample.marks()[mark];
  }

  private double factor(double at) {
    return pitch
        * (1 + (lift - 1) * StrictMath.exp(-Math.max(0, at) / (LIFT_SECONDS * ratePerSecond)));
  }

  private void add(double at, int mark, double gain) {
    places[count] = (int) Math.round(at);
    sources[count] = sample.marks()[mark];
    gains[count] = gain;
    count++;
  }

  private void lay(float[] out, int vowelAt) {
    for (int k = 0; k < count; k++) {
      int before = k == 0 ? places[0] : places[k] - places[k - 1];
      boolean last = k == count - 1;
      int after = last ? sample.sound().length - sources[k] : places[k + 1] - places[k];
      for (int i = -before; i < after; i++) {
        int at = vowelAt + places[k] + i;
        if (at < vowelAt || at >= out.length) {
          continue;
        }
        double weight = 1;
        if (i < 0 && k > 0) {
          weight = FadeShape.at(1 + (double) i / before);
        } else if (i >= 0 && !last) {
          weight = FadeShape.at(1 - (double) i / after);
        }
        out[at] += (float) (gains[k] * weight * sample.at(sources[k] + i));
      }
    }
  }
}
