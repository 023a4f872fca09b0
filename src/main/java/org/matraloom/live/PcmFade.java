package org.matraloom.live;

import org.matraloom.wav.PcmFormat;

/** Fades encoded samples where they are, without allocating. */
final class PcmFade {

  private final int bytesPerSample;
  private final int channels;

  PcmFade(PcmFormat format) {
    this.bytesPerSample = format.bits() / 8;
    this.channels = format.channels();
  }

  /** Fades a block from full strength to silence. */
  void out(byte[] pcm, int length) {
    int samples = length / bytesPerSample;
    int frames = samples / channels;
    for (int sample = 0; sample < samples; sample++) {
      long left = frames - 1L - sample / channels;
      scale(pcm, sample * bytesPerSample, left, frames);
    }
  }

  private void scale(byte[] pcm, int at, long part, int whole) {
    int last = at + bytesPerSample - 1;
    long value = pcm[last];
    for (int i = last - 1; i >= at; i--) {
      value = value << 8 | pcm[i] & 0xFF;
    }
    value = value * part / whole;
    for (int i = at; i <= last; i++) {
      pcm[i] = (byte) value;
      value >>= 8;
    }
  }
}
