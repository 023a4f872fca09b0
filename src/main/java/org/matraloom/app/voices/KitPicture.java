package org.matraloom.app.voices;

import java.awt.geom.Path2D;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.matraloom.mouth.Kit;
import org.matraloom.mouth.KitSample;
import org.matraloom.mouth.SampleOutline;
import org.matraloom.mouth.SamplePlaces;
import org.matraloom.picture.Picture;

/** Draws the samples of a voice, each with its release, vowel onset, steady part and nasal. */
final class KitPicture {

  private static final int COLUMNS = 4;
  private static final double WIDTH = 180;
  private static final double HEIGHT = 70;
  private static final double GAP = 14;
  private static final double TITLE = 14;
  private static final double WAVE = 40;
  private static final Picture.Type NAME = new Picture.Type(9, true, Picture.Tone.INK);
  private static final Picture.Type WORDS = new Picture.Type(7, false, Picture.Tone.QUIET);

  private KitPicture() {}

  static Picture of(Kit kit, Path folder) throws IOException {
    List<KitSample> samples = kit.samples();
    int rows = (samples.size() + COLUMNS - 1) / COLUMNS;
    Picture picture =
        new Picture(
            COLUMNS * (WIDTH + GAP) + GAP,
            rows * (HEIGHT + GAP) + GAP,
            "the samples of " + kit.head().name());
    for (int i = 0; i < samples.size(); i++) {
      double x = GAP + i % COLUMNS * (WIDTH + GAP);
      double y = GAP + i / COLUMNS * (HEIGHT + GAP);
      draw(picture, x, y, samples.get(i), folder);
    }
    return picture;
  }

  private static void draw(Picture picture, double x, double y, KitSample sample, Path folder)
      throws IOException {
    SamplePlaces places = sample.places();
    double scale = WIDTH / places.end();
    picture.text(x, y + 8, Picture.Anchor.BEGIN, NAME, sample.sollu());
    String doubts = String.join(", ", sample.doubts());
    picture.text(x + 40, y + 8, Picture.Anchor.BEGIN, WORDS, doubts);
    double top = y + TITLE;
    double middle = top + WAVE / 2;
    shade(picture, x, top, scale, places);
    float[] outline = SampleOutline.of(folder.resolve(sample.file()), (int) (2 * WIDTH));
    Path2D wave = new Path2D.Double();
    for (int i = 0; i < outline.length; i++) {
      double half = Math.max(0.2, outline[i] * WAVE / 2);
      wave.moveTo(x + i / 2.0, middle - half);
      wave.lineTo(x + i / 2.0, middle + half);
    }
    picture.outline(wave, 0.5, false, Picture.Tone.QUIET);
    mark(picture, x + places.release() * scale, top, "release");
    mark(picture, x + places.vowel() * scale, top, "");
    mark(picture, x + places.beat() * scale, top, "");
    picture.text(
        x + places.beat() * scale, top + WAVE + 16, Picture.Anchor.BEGIN, WORDS, "vowel, beat");
    if (places.nasal().isPresent()) {
      mark(picture, x + places.nasal().getAsInt() * scale, top, "nasal");
    }
  }

  private static void shade(
      Picture picture, double x, double top, double scale, SamplePlaces places) {
    Path2D steady = new Path2D.Double();
    steady.moveTo(x + places.steadyBegin() * scale, top);
    steady.lineTo(x + places.steadyEnd() * scale, top);
    steady.lineTo(x + places.steadyEnd() * scale, top + WAVE);
    steady.lineTo(x + places.steadyBegin() * scale, top + WAVE);
    steady.closePath();
    picture.fill(steady, Picture.Tone.FAINT);
  }

  private static void mark(Picture picture, double x, double top, String what) {
    picture.line(x, top, x, top + WAVE, 0.8, Picture.Tone.INK);
    picture.text(x, top + WAVE + 8, Picture.Anchor.BEGIN, WORDS, what);
  }
}
