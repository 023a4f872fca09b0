package org.matraloom.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntFunction;
import org.matraloom.breath.Care;
import org.matraloom.schedule.Timeline;
import org.matraloom.sound.Mix;
import org.matraloom.sound.Passage;
import org.matraloom.sound.Sruti;
import org.matraloom.sound.SrutiDrone;
import org.matraloom.sound.Track;
import org.matraloom.sound.TrackWriter;
import org.matraloom.time.FrameClock;
import org.matraloom.voice.SolluVoice;
import org.matraloom.wav.PcmFormat;

/** Renders one track to a file and says so. */
public final class TrackOutput {

  private static final int SECONDS_PER_MINUTE = 60;

  private final PrintWriter out;
  private final PrintWriter err;
  private final IntFunction<? extends SolluVoice> voice;

  /**
   * Prepares to render.
   *
   * @param out where the finished file is told
   * @param err where the progress is shown
   * @param voice makes the voice for a rate in frames a second
   */
  public TrackOutput(PrintWriter out, PrintWriter err, IntFunction<? extends SolluVoice> voice) {
    this.out = out;
    this.err = err;
    this.voice = voice;
  }

  /**
   * Renders one timeline.
   *
   * @param timeline what is heard
   * @param mix how loud its parts are
   * @param sruti the tonic of a drone below it, if there is one
   * @param format how samples are written
   * @param target the file
   * @throws UserError if no track can be written there
   * @throws IOException if it cannot be written
   */
  public void write(
      Timeline timeline, Mix mix, Optional<Sruti> sruti, PcmFormat format, Path target)
      throws IOException {
    String tempo =
        timeline.performance().composition().tempo().beatsPerMinute().toMixed() + " beats a minute";
    write(List.of(new Passage(timeline, mix)), "at " + tempo, sruti, format, target);
  }

  /**
   * Renders passages one after another.
   *
   * @param passages what is heard, at least one
   * @param what what they are, for the line that tells of the file
   * @param sruti the tonic of a drone below them, if there is one
   * @param format how samples are written
   * @param target the file
   * @throws UserError if no track can be written there
   * @throws IOException if it cannot be written
   */
  public void write(
      List<Passage> passages, String what, Optional<Sruti> sruti, PcmFormat format, Path target)
      throws IOException {
    check(target);
    int rate = format.ratePerSecond();
    Optional<SrutiDrone> drone = sruti.map(tonic -> new SrutiDrone(tonic, rate));
    Track whole = new Track(passages, voice.apply(rate), drone);
    TrackWriter track = new TrackWriter(whole, format);
    try (ProgressLine progress = new ProgressLine(err)) {
      track.write(target, progress);
    }
    double seconds = FrameClock.seconds(track.lengthFrames(), format.ratePerSecond());
    int minutes = (int) (seconds / SECONDS_PER_MINUTE);
    out.printf(
        Locale.ROOT,
        "%s: %d min %.1f s %s%n",
        target,
        minutes,
        seconds - minutes * SECONDS_PER_MINUTE,
        what);
    if (minutes >= Care.REST_AFTER_MINUTES) {
      out.println("That is a long time for a voice: put silence and water in between.");
    }
  }

  private static void check(Path target) {
    Path folder = target.toAbsolutePath().getParent();
    if (Files.isDirectory(target)) {
      throw new UserError(target + " is a folder; give the name of a file, such as practice.wav");
    }
    if (folder == null || !Files.isDirectory(folder)) {
      throw new UserError("the folder " + folder + " does not exist; make it first");
    }
    if (!SheetOutput.endingOf(target).equals("wav")) {
      throw new UserError(target + ": a track is written as .wav");
    }
  }
}
