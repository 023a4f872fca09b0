package org.matraloom.sound;

/** One stroke or sollu while it sounds. */
final class ActiveSound {

  private final float[] samples;
  private final long startFrame;
  private final float leftGain;
  private final float rightGain;

  ActiveSound(float[] samples, long startFrame, Mix.Gains gains) {
    this.samples = samples;
    this.startFrame = startFrame;
    this.leftGain = gains.left();
    this.rightGain = gains.right();
  }

  /** Adds what falls into a block; frames before the block are cut off. */
  void addTo(float[] left, float[] right, long blockFrame, int frames) {
    int from = (int) Math.max(0, startFrame - blockFrame);
    int to = (int) Math.min(frames, startFrame + samples.length - blockFrame);
    if (from >= to) {
      return;
    }
    float[] source = samples;
    int at = (int) (blockFrame + from - startFrame);
    if (leftGain == rightGain) {
      for (int i = from; i < to; i++) {
        float sample = leftGain * source[at++];
        left[i] += sample;
        right[i] += sample;
      }
    } else {
      for (int i = from; i < to; i++) {
        float sample = source[at++];
        left[i] += leftGain * sample;
        right[i] += rightGain * sample;
      }
    }
  }

  boolean endsBy(long frame) {
    return startFrame + samples.length <= frame;
  }
}
