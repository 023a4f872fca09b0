package org.matraloom.app.handon;

import java.util.Optional;
import org.matraloom.app.cli.VoiceOptions;
import org.matraloom.film.FilmCoding;
import picocli.CommandLine.Option;

/** What is made of each piece of a class beside its sheets. */
final class ClassOptions {

  @Option(names = "--no-phone", description = "Leave out the pages for a phone.")
  private boolean noPhone;

  @Option(
      names = "--tracks",
      description = "Make a set of tracks of each piece too, with sections and joins (MP3).")
  private boolean tracks;

  @Option(
      names = "--film",
      paramLabel = "KIND",
      description = "Make a film of each piece too, mp4 or webm, 1280x720; needs ffmpeg.")
  private FilmCoding film;

  @Option(
      names = "--ffmpeg",
      paramLabel = "PROGRAM",
      defaultValue = "ffmpeg",
      description = "The ffmpeg to be used, by name or place.")
  private String ffmpeg;

  @Option(
      names = "--voice",
      paramLabel = "WHO",
      defaultValue = VoiceOptions.USUAL,
      description = VoiceOptions.WHO)
  private String who;

  /** Who speaks on pages, tracks and films. */
  String who() {
    return who;
  }

  boolean phone() {
    return !noPhone;
  }

  boolean tracks() {
    return tracks;
  }

  Optional<FilmCoding> film() {
    return Optional.ofNullable(film);
  }

  String ffmpeg() {
    return ffmpeg;
  }
}
