package org.matraloom.mouth;

import java.util.ArrayList;
import java.util.List;

/** What is known against single samples when all of them are there. */
final class SampleDoubts {

  /** Further below the usual level than the words of a row differ among themselves. */
  private static final double SOFT_LU = 9;

  private static final double LOUD_LU = 9;

  /** A third higher or lower than the voice is otherwise. */
  private static final double OFF_PITCH = 1.35;

  /**
   * Voices differ from period to period by a few percent; where marks are missing it is a third.
   */
  private static final double UNEVEN_PERIODS = 0.15;

  private final List<KitSample> samples;

  SampleDoubts(List<KitSample> samples) {
    this.samples = samples;
  }

  /** The samples with what is now held against them. */
  List<KitSample> judged() {
    double[] loud = samples.stream().mapToDouble(KitSample::loudnessLufs).sorted().toArray();
    double usual = loud[loud.length / 2];
    double[] pitches = samples.stream().mapToDouble(KitSample::pitchHz).sorted().toArray();
    double pitch = pitches[pitches.length / 2];
    return samples.stream().map(sample -> judged(sample, usual, pitch)).toList();
  }

  private static KitSample judged(KitSample sample, double usualLufs, double usualHz) {
    List<String> doubts = new ArrayList<>(sample.doubts());
    if (sample.loudnessLufs() < usualLufs - SOFT_LU) {
      doubts.add("it is much softer than the others");
    }
    if (sample.loudnessLufs() > usualLufs + LOUD_LU) {
      doubts.add("it is much louder than the others");
    }
    double ratio = sample.pitchHz() / usualHz;
    if (ratio > OFF_PITCH || ratio < 1 / OFF_PITCH) {
      doubts.add("its pitch is far from the others'");
    }
    if (unevenness(sample.places()) > UNEVEN_PERIODS) {
      doubts.add("the periods of its voice are uneven");
    }
    return new KitSample(
        sample.sollu(),
        sample.file(),
        sample.after(),
        sample.before(),
        sample.places(),
        sample.loudnessLufs(),
        sample.peakDb(),
        doubts);
  }

  /** The spread of the periods of the steady part, as a share of their mean. */
  private static double unevenness(SamplePlaces places) {
    int[] marks =
        places.pitchMarks().stream()
            .mapToInt(Integer::intValue)
            .filter(mark -> mark >= places.steadyBegin() && mark <= places.steadyEnd())
            .toArray();
    int periods = marks.length - 1;
    if (periods < 2) {
      return 0;
    }
    double mean = (double) (marks[periods] - marks[0]) / periods;
    double squares = 0;
    for (int i = 0; i < periods; i++) {
      double off = marks[i + 1] - marks[i] - mean;
      squares += off * off / periods;
    }
    return Math.sqrt(squares) / mean;
  }
}
