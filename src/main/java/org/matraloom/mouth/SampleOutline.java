package org.matraloom.mouth;

import java.io.IOException;
import java.nio.file.Path;

/** How a sample looks from afar. */
public final class SampleOutline {

  private SampleOutline() {}

  /**
   * The largest sample in each of many equal parts, the largest of all being 1.
   *
   * @param file a file of a voice
   * @param parts how many parts, 1 or more
   * @return so many numbers from 0 to 1
   * @throws IOException if the file cannot be read
   */
  public static float[] of(Path file, int parts) throws IOException {
    float[] sound = KitSounds.read(file, Kit.RATE, KitShelf.LONGEST_SAMPLE_SECONDS);
    float[] outline = new float[parts];
    float most = 1e-9f;
    for (int i = 0; i < sound.length; i++) {
      int part = (int) ((long) i * parts / sound.length);
      outline[part] = Math.max(outline[part], Math.abs(sound[i]));
      most = Math.max(most, outline[part]);
    }
    for (int part = 0; part < parts; part++) {
      outline[part] /= most;
    }
    return outline;
  }
}
