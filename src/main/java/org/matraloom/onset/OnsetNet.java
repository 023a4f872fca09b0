package org.matraloom.onset;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/**
 * Judges from the levels and rises around a moment how likely it is that a syllable begins there.
 *
 * <p>A small network with one hidden layer, trained by {@code scripts/train-onsets} on speech and
 * strokes placed at known times (after Schlüter and Böck, "Improved musical onset detection with
 * convolutional neural networks", ICASSP 2014, with a plain layer in place of convolutions). It has
 * learnt that the vowel after a burst, the end of a syllable and the tail of a stroke begin
 * nothing.
 */
final class OnsetNet {

  /** Where the cells of time around the moment begin and end, in steps; finest in the middle. */
  private static final int[] EDGES = {
    -64, -48, -36, -28, -22, -17, -13, -10, -8, -6, -5, -4, -3, -2, -1, 0, 1, 2, 3, 4, 5, 6, 8, 10,
    13, 17, 22, 28
  };

  /** Rises are looked at one by one, this many steps before and after the moment. */
  private static final int RISE_REACH = 3;

  private static final int CELLS = EDGES.length - 1;
  private static final int BANDS = OnsetFeatures.WIDE_BANDS;

  /** How many numbers are looked at. */
  static final int INPUTS = BANDS * (CELLS + 2 * RISE_REACH + 1);

  private final int hidden;
  private final float[][] inputWeights;
  private final float[] inputBias;
  private final float[] outputWeights;
  private final float outputBias;
  private final float[] inputs = new float[INPUTS];
  private final float[] sums;

  private OnsetNet(DataInputStream numbers) throws IOException {
    int inputCount = numbers.readInt();
    hidden = numbers.readInt();
    if (inputCount != INPUTS) {
      throw new IOException("the onset net takes " + inputCount + " inputs, not " + INPUTS);
    }
    inputWeights = byInput(next(numbers, hidden * INPUTS));
    inputBias = next(numbers, hidden);
    outputWeights = next(numbers, hidden);
    outputBias = next(numbers, 1)[0];
    sums = new float[hidden];
  }

  private OnsetNet(OnsetNet other) {
    hidden = other.hidden;
    inputWeights = other.inputWeights;
    inputBias = other.inputBias;
    outputWeights = other.outputWeights;
    outputBias = other.outputBias;
    sums = new float[hidden];
  }

  /** The same weights for another thread, which has its own place to add up. */
  OnsetNet forAnother() {
    return new OnsetNet(this);
  }

  /**
   * Loads the trained weights: the counts of inputs and hidden cells as integers, then the numbers
   * as floats, four bytes each, the highest first.
   */
  static OnsetNet load() {
    try (InputStream in = OnsetNet.class.getResourceAsStream("onset-net.bin");
        DataInputStream numbers = new DataInputStream(new BufferedInputStream(in))) {
      return new OnsetNet(numbers);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static float[] next(DataInputStream numbers, int count) throws IOException {
    float[] values = new float[count];
    for (int i = 0; i < count; i++) {
      values[i] = numbers.readFloat();
    }
    return values;
  }

  private static float[][] byInput(float[] byCell) {
    int cells = byCell.length / INPUTS;
    float[][] weights = new float[INPUTS][cells];
    for (int h = 0; h < cells; h++) {
      for (int i = 0; i < INPUTS; i++) {
        weights[i][h] = byCell[h * INPUTS + i];
      }
    }
    return weights;
  }

  /** How likely an onset is within a step of this one, 0 to 1. */
  float judge(OnsetFeatures features, int step) {
    look(features, step);
    System.arraycopy(inputBias, 0, sums, 0, hidden);
    for (int i = 0; i < INPUTS; i++) {
      add(inputs[i], inputWeights[i]);
    }
    double out = outputBias;
    for (int h = 0; h < hidden; h++) {
      out += outputWeights[h] * StrictMath.tanh(sums[h]);
    }
    return (float) (1 / (1 + StrictMath.exp(-out)));
  }

  /** Cell by cell, as the virtual machine does several of these at a time. */
  private void add(float input, float[] weights) {
    for (int h = 0; h < sums.length; h++) {
      sums[h] += weights[h] * input;
    }
  }

  private void look(OnsetFeatures features, int step) {
    int at = 0;
    for (int cell = 0; cell < CELLS; cell++) {
      for (int band = 0; band < BANDS; band++) {
        float sum = 0;
        for (int s = EDGES[cell]; s < EDGES[cell + 1]; s++) {
          sum += features.level(step + s, band);
        }
        inputs[at++] = sum / (EDGES[cell + 1] - EDGES[cell]);
      }
    }
    for (int s = -RISE_REACH; s <= RISE_REACH; s++) {
      for (int band = 0; band < BANDS; band++) {
        inputs[at++] = features.rise(step + s, band);
      }
    }
  }
}
