package org.matraloom.film;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Hands pictures to ffmpeg, which codes them with the sound into one file. */
final class FilmCoder implements PictureSink, AutoCloseable {

  private static final String COLOURS = "bt709";
  private static final int SECONDS_TO_KEY = 2;

  private final Process process;
  private final OutputStream pictures;
  private final Path errors;
  private final Thread atEnd;

  /**
   * Starts it.
   *
   * @param program ffmpeg, by name or place
   * @param order what the film is made of
   * @param coding how it is coded
   * @param folder holds the sound, the chapters, the lines and the poster
   * @param title what the film is called
   */
  FilmCoder(String program, FilmOrder order, FilmCoding coding, FilmFolder folder, String title)
      throws IOException {
    this.errors = folder.file("errors.txt");
    List<String> words = new ArrayList<>(List.of(program, "-v", "error", "-nostdin", "-y"));
    words.addAll(
        List.of(
            "-f",
            "rawvideo",
            "-pix_fmt",
            "yuv420p",
            "-color_range",
            "tv",
            "-s",
            order.size().words(),
            "-r",
            "" + order.picturesPerSecond(),
            "-i",
            "pipe:0"));
    words.addAll(List.of("-i", folder.file("sound.wav").toString()));
    words.addAll(List.of("-i", folder.file("chapters.txt").toString()));
    words.addAll(List.of("-i", folder.file("lines.vtt").toString()));
    boolean holdsPoster = coding == FilmCoding.MP4;
    if (holdsPoster) {
      words.addAll(List.of("-i", folder.file("poster.png").toString()));
    }
    words.addAll(List.of("-map", "0:v", "-map", "1:a", "-map", "3:s", "-map_metadata", "2"));
    words.addAll(List.of("-map_chapters", "2", "-metadata", "title=" + title));
    words.addAll(coding.picture());
    int toKey = SECONDS_TO_KEY * order.picturesPerSecond();
    words.addAll(List.of("-g", "" + toKey, "-threads", "2"));
    words.addAll(
        List.of(
            "-color_range",
            "tv",
            "-colorspace",
            COLOURS,
            "-color_primaries",
            COLOURS,
            "-color_trc",
            COLOURS));
    words.addAll(coding.sound());
    words.addAll(coding.file());
    if (holdsPoster) {
      words.addAll(List.of("-map", "4:v", "-c:v:1", "png", "-disposition:v:1", "attached_pic"));
    }
    words.addAll(List.of("-metadata:s:s:0", "language=eng", "-disposition:s:0", "0"));
    words.addAll(List.of("-fflags", "+bitexact", "-flags:v", "+bitexact", "-flags:a", "+bitexact"));
    words.addAll(List.of("-f", coding.ending(), made(folder, coding).toString()));
    this.process = start(words, errors);
    this.pictures = process.getOutputStream();
    this.atEnd = new Thread(process::destroyForcibly);
    Runtime.getRuntime().addShutdownHook(atEnd);
  }

  /** Where it writes. */
  static Path made(FilmFolder folder, FilmCoding coding) {
    return folder.file("film." + coding.ending());
  }

  private static Process start(List<String> words, Path errors) throws IOException {
    try {
      return new ProcessBuilder(words)
          .redirectError(errors.toFile())
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .start();
    } catch (IOException notThere) {
      throw new FilmFault(
          "a film is coded by "
              + words.get(0)
              + ", which is not on this machine: install ffmpeg (Debian, Ubuntu: apt install"
              + " ffmpeg), or write pictures and sound with --frames DIR");
    }
  }

  /** Refuses early where the program is not there. */
  static void require(String program, Path errors) throws IOException {
    Process asked = start(List.of(program, "-version"), errors);
    asked.getOutputStream().close();
    waitFor(asked);
    Files.deleteIfExists(errors);
  }

  @Override
  public void put(FilmCanvas canvas, boolean changed) throws IOException {
    try {
      pictures.write(canvas.planes());
    } catch (IOException broken) {
      throw fault();
    }
  }

  /** Waits until all is coded. */
  void finish() throws IOException {
    try {
      pictures.close();
    } catch (IOException broken) {
      throw fault();
    }
    if (waitFor(process) != 0) {
      throw fault();
    }
  }

  private FilmFault fault() throws IOException {
    waitFor(process);
    List<String> said = Files.readAllLines(errors);
    String last = said.isEmpty() ? "it said nothing" : said.get(said.size() - 1);
    return new FilmFault("ffmpeg could not make the film: " + last);
  }

  private static int waitFor(Process process) throws IOException {
    try {
      return process.waitFor();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      process.destroyForcibly();
      throw new FilmFault("the film was cancelled");
    }
  }

  @Override
  public void close() {
    process.destroyForcibly();
    try {
      Runtime.getRuntime().removeShutdownHook(atEnd);
    } catch (IllegalStateException ending) {
      // The program is ending, and the hook runs or has run.
      return;
    }
  }
}
