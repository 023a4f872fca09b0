package org.matraloom.onset;

import be.tarsos.dsp.util.fft.FFT;
import java.util.Arrays;
import java.util.List;

/** The energies of one window of sound after another; for one thread at a time. */
final class WindowAnalysis {

  private final float[] window;
  private final List<MelBand> bands;
  private final FFT fft;
  private final float[] spectrum;

  /**
   * Prepares the transform.
   *
   * @param window what the samples are weighed with
   * @param bands the bands whose energies are asked for
   * @param size the length of the transform, in samples
   */
  WindowAnalysis(float[] window, List<MelBand> bands, int size) {
    this.window = window;
    this.bands = bands;
    this.fft = new FFT(size);
    this.spectrum = new float[size];
  }

  /** Puts the energies of the window that begins at a sample where they belong. */
  void put(float[] samples, int from, float[] energies, int at) {
    Arrays.fill(spectrum, 0);
    for (int i = 0; i < window.length; i++) {
      spectrum[i] = samples[from + i] * window[i];
    }
    fft.forwardTransform(spectrum);
    for (int band = 0; band < bands.size(); band++) {
      energies[at + band] = bands.get(band).energy(spectrum);
    }
  }
}
