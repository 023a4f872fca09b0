package org.matraloom.sound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.matraloom.schedule.Timeline;

/** A whole rendering in memory, for looking at. */
final class Rendered {

  private Rendered() {}

  static float[] of(Timeline timeline, int ratePerSecond, Mix mix, int channels, int blockFrames) {
    Renderer renderer =
        new Renderer(
            timeline, timeline.clock(ratePerSecond), mix, new GridVoice(ratePerSecond), channels);
    long length = Renderer.lengthFrames(timeline, timeline.clock(ratePerSecond));
    float[] all = new float[Math.toIntExact(length * channels)];
    float[] block = new float[blockFrames * channels];
    int at = 0;
    int frames;
    while ((frames = renderer.render(block, blockFrames)) > 0) {
      System.arraycopy(block, 0, all, at, frames * channels);
      at += frames * channels;
    }
    return at == all.length ? all : Arrays.copyOf(all, at);
  }

  static float[] mono(Timeline timeline, int ratePerSecond, Mix mix) {
    return of(timeline, ratePerSecond, mix, 1, 4096);
  }

  /** The frames at which sound begins after so many frames of digital silence. */
  static List<Long> onsets(float[] mono, int silenceFrames) {
    List<Long> onsets = new ArrayList<>();
    int quiet = silenceFrames;
    for (int frame = 0; frame < mono.length; frame++) {
      if (mono[frame] == 0) {
        quiet++;
        continue;
      }
      if (quiet >= silenceFrames) {
        onsets.add((long) frame);
      }
      quiet = 0;
    }
    return onsets;
  }
}
