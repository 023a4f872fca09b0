package org.matraloom.film;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.matraloom.score.Span;
import org.matraloom.sheet.SheetWords;
import org.matraloom.sound.RenderProgress;

/** Makes films, their pictures one by one, and stills. */
public final class FilmMaker {

  private final FilmOrder order;
  private final FilmPlan plan;
  private final FilmReel reel;

  /**
   * Prepares to make a film.
   *
   * @param order what it is made of
   */
  public FilmMaker(FilmOrder order) {
    this.order = order;
    this.plan = new FilmPlan(order);
    this.reel = new FilmReel(order, plan);
  }

  /**
   * How long the film is.
   *
   * @return frames of sound
   */
  public long lengthFrames() {
    return plan.frames();
  }

  /**
   * How many pictures it has.
   *
   * @return pictures
   */
  public long pictures() {
    return plan.pictures();
  }

  /**
   * Makes the film; it appears under its name only when it is whole.
   *
   * @param target the film; an older one is replaced
   * @param coding how it is coded
   * @param program ffmpeg, by name or place
   * @param progress is told how many pictures are done
   * @throws FilmFault if ffmpeg is not there or could not, or another run makes the same film
   * @throws IOException if the disk fails
   */
  public void write(Path target, FilmCoding coding, String program, RenderProgress progress)
      throws IOException {
    try (FilmFolder folder = FilmFolder.beside(target)) {
      FilmCoder.require(program, folder.file("errors.txt"));
      new FilmSound(order, plan).write(folder.file("sound.wav"));
      FilmTexts texts = new FilmTexts(plan);
      Files.writeString(folder.file("chapters.txt"), texts.chapterFile());
      Files.writeString(folder.file("lines.vtt"), texts.subtitleFile());
      Files.write(folder.file("poster.png"), poster());
      try (FilmCoder coder = new FilmCoder(program, order, coding, folder, title())) {
        reel.run(coder, progress);
        coder.finish();
      }
      folder.finish(FilmCoder.made(folder, coding));
    }
  }

  /**
   * Writes the pictures as PNG, numbered from 1, and the sound as WAV.
   *
   * @param folder where they go; it is made if it is not there
   * @param progress is told how many pictures are done
   * @throws FilmFault if the folder holds anything
   * @throws IOException if the disk fails
   */
  public void writeFrames(Path folder, RenderProgress progress) throws IOException {
    Files.createDirectories(folder);
    try (Stream<Path> held = Files.list(folder)) {
      if (held.findAny().isPresent()) {
        throw new FilmFault(folder + " holds files; give a new folder for the pictures");
      }
    }
    new FilmSound(order, plan).write(folder.resolve("sound.wav"));
    reel.run(new FrameFolder(folder), progress);
  }

  /**
   * Writes the picture of the title card.
   *
   * @param out where a PNG file goes
   * @throws IOException if it cannot be written
   */
  public void writePoster(OutputStream out) throws IOException {
    out.write(poster());
  }

  private byte[] poster() throws IOException {
    FilmCanvas canvas = reel.canvas();
    canvas.show(reel.card(plan.parts().get(0)));
    return FrameFolder.png(canvas);
  }

  /**
   * One picture a round, at its first beat.
   *
   * @return the pictures of the first pass, in order
   */
  public List<FilmStill> stills() {
    FilmPass pass = order.passes().get(0);
    List<FilmStill> stills = new ArrayList<>();
    PassViews views = reel.views(pass);
    for (Span.Round round : pass.timeline().performance().rounds()) {
      ScreenView view = views.next();
      while (view.beat().compareTo(round.startBeat()) < 0 && views.hasNext()) {
        view = views.next();
      }
      String words = title() + ", " + view.head().section();
      stills.add(new FilmStill(reel, order.size(), reel.screen(view), words));
    }
    return stills;
  }

  private String title() {
    return new SheetWords(order.passes().get(0).sheet()).title();
  }
}
