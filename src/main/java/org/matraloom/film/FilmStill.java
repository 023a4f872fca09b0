package org.matraloom.film;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/** One picture of a film that stands by itself. */
public final class FilmStill {

  private final FilmReel reel;
  private final FilmSize size;
  private final List<Band> bands;
  private final String words;

  FilmStill(FilmReel reel, FilmSize size, List<Band> bands, String words) {
    this.reel = reel;
    this.size = size;
    this.bands = bands;
    this.words = words;
  }

  /**
   * Writes it as PNG.
   *
   * @param out where the file goes
   * @throws IOException if it cannot be written
   */
  public void writePng(OutputStream out) throws IOException {
    FilmCanvas canvas = reel.canvas();
    canvas.show(bands);
    out.write(FrameFolder.png(canvas));
  }

  /**
   * Writes it as SVG, every letter as an outline.
   *
   * @param out where the file goes
   * @throws IOException if it cannot be written
   */
  public void writeSvg(Appendable out) throws IOException {
    ScreenSvg svg = new ScreenSvg(size, words);
    FilmCanvas.draw(bands, size, reel.pen(svg));
    svg.write(out);
  }
}
