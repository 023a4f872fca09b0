package org.matraloom.film;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.matraloom.sound.Passage;
import org.matraloom.sound.Renderer;
import org.matraloom.sound.TrackPlace;
import org.matraloom.wav.PcmFormat;
import org.matraloom.wav.WavWriter;

/** The sound of a film: silence under cards, the mix of a track under passes. */
final class FilmSound {

  private static final int BLOCK_FRAMES = 8192;
  private static final int CHANNELS = 2;
  private static final int BITS = 16;

  private final FilmOrder order;
  private final FilmPlan plan;

  FilmSound(FilmOrder order, FilmPlan plan) {
    this.order = order;
    this.plan = plan;
  }

  void write(Path target) throws IOException {
    PcmFormat format = new PcmFormat(plan.clock().ratePerSecond(), BITS, CHANNELS);
    float[] block = new float[BLOCK_FRAMES * CHANNELS];
    try (WavWriter file = new WavWriter(target, format, plan.frames(), List.of())) {
      for (FilmPlan.Part part : plan.parts()) {
        if (part.isCard()) {
          Arrays.fill(block, 0);
          for (long left = part.frames(); left > 0; left -= BLOCK_FRAMES) {
            file.write(block, (int) Math.min(left, BLOCK_FRAMES));
          }
        } else {
          pass(plan.pass(part), part.frames(), file, block);
        }
      }
      file.finish();
    }
  }

  private void pass(FilmPass pass, long passFrames, WavWriter file, float[] block)
      throws IOException {
    Renderer renderer =
        new Renderer(
            new Passage(pass.timeline(), pass.mix()),
            pass.timeline().clock(plan.clock().ratePerSecond()),
            order.voice(),
            CHANNELS,
            order.drone(),
            TrackPlace.whole(passFrames));
    int frames;
    while ((frames = renderer.render(block, BLOCK_FRAMES)) > 0) {
      file.write(block, frames);
    }
  }
}
