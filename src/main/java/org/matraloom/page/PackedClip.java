package org.matraloom.page;

import java.util.List;

/**
 * A clip in four bits a sample: each is a step from the sample before, and the steps grow and
 * shrink with the sound.
 *
 * <p>Source: IMA, Recommended Practices for Enhancing Digital Audio Compatibility in Multimedia
 * Systems, revision 3.00, 1992, the reference algorithm for DVI ADPCM. A page can unpack it in a
 * few lines, and every browser gets the same samples.
 *
 * @param index where in the table of steps it begins
 * @param codes two samples a byte, the earlier one in the lower half
 * @param length how many samples it has
 */
record PackedClip(int index, byte[] codes, int length) {

  /** The sizes of a step: each about a tenth greater than the one before. */
  static final List<Integer> STEPS =
      List.of(
          7, 8, 9, 10, 11, 12, 13, 14, 16, 17, 19, 21, 23, 25, 28, 31, 34, 37, 41, 45, 50, 55, 60,
          66, 73, 80, 88, 97, 107, 118, 130, 143, 157, 173, 190, 209, 230, 253, 279, 307, 337, 371,
          408, 449, 494, 544, 598, 658, 724, 796, 876, 963, 1060, 1166, 1282, 1411, 1552, 1707,
          1878, 2066, 2272, 2499, 2749, 3024, 3327, 3660, 4026, 4428, 4871, 5358, 5894, 6484, 7132,
          7845, 8630, 9493, 10442, 11487, 12635, 13899, 15289, 16818, 18500, 20350, 22385, 24623,
          27086, 29794, 32767);

  private static final int[] SHIFTS = {-1, -1, -1, -1, 2, 4, 6, 8};
  private static final int FULL_SCALE = 32_767;
  private static final int START_STRIDE = 8;

  /** Packs samples, with the beginning that loses least. */
  static PackedClip of(float[] samples) {
    Coder best = new Coder(0, samples);
    for (int index = START_STRIDE; index < STEPS.size(); index += START_STRIDE) {
      Coder other = new Coder(index, samples);
      if (other.squaredError < best.squaredError) {
        best = other;
      }
    }
    return new PackedClip(best.firstIndex, best.codes, samples.length);
  }

  /** Unpacks it again. */
  float[] samples() {
    float[] samples = new float[length];
    State state = new State(index);
    for (int i = 0; i < length; i++) {
      int code = (i & 1) == 0 ? codes[i >> 1] & 15 : codes[i >> 1] >> 4 & 15;
      state.take(code);
      samples[i] = state.value / (float) (FULL_SCALE + 1);
    }
    return samples;
  }

  private static final class State {
    private int value;
    private int index;

    State(int index) {
      this.index = index;
    }

    void take(int code) {
      int step = STEPS.get(index);
      int change = step >> 3;
      change += (code & 4) == 0 ? 0 : step;
      change += (code & 2) == 0 ? 0 : step >> 1;
      change += (code & 1) == 0 ? 0 : step >> 2;
      value += (code & 8) == 0 ? change : -change;
      value = Math.max(-FULL_SCALE - 1, Math.min(FULL_SCALE, value));
      index = Math.max(0, Math.min(STEPS.size() - 1, index + SHIFTS[code & 7]));
    }

    int codeFor(int sample) {
      int step = STEPS.get(index);
      int distance = sample - value;
      int code = distance < 0 ? 8 : 0;
      int left = Math.abs(distance);
      for (int bit = 4; bit > 0; bit >>= 1) {
        if (left >= step) {
          code |= bit;
          left -= step;
        }
        step >>= 1;
      }
      return code;
    }
  }

  private static final class Coder {
    private final int firstIndex;
    private final byte[] codes;
    private double squaredError;

    Coder(int firstIndex, float[] samples) {
      this.firstIndex = firstIndex;
      this.codes = new byte[(samples.length + 1) / 2];
      State state = new State(firstIndex);
      for (int i = 0; i < samples.length; i++) {
        int sample = Math.round(Math.max(-1, Math.min(1, samples[i])) * FULL_SCALE);
        int code = state.codeFor(sample);
        state.take(code);
        codes[i >> 1] |= (byte) ((i & 1) == 0 ? code : code << 4);
        double error = sample - state.value;
        squaredError += error * error;
      }
    }
  }
}
