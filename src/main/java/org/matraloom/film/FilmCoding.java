package org.matraloom.film;

import java.util.List;

/** How the pictures and the sound of a film are coded. */
public enum FilmCoding {
  /** H.264 and AAC in an MP4 file, for nearly everything. */
  MP4(
      "mp4",
      List.of("-c:v", "libx264", "-preset", "veryfast", "-crf", "20", "-x264-params", Names.STILL),
      List.of("-c:a", "aac", "-b:a", "160k"),
      List.of("-c:s", "mov_text", "-movflags", "+faststart")),
  /** VP9 and Opus in a WebM file, free of patents. */
  WEBM(
      "webm",
      List.of(
          "-c:v",
          "libvpx-vp9",
          "-deadline",
          "realtime",
          "-cpu-used",
          "8",
          "-row-mt",
          "1",
          "-crf",
          "30",
          "-b:v",
          "0"),
      List.of("-c:a", "libopus", "-b:a", "128k"),
      List.of("-c:s", "webvtt"));

  /** Most pictures are the one before again: nothing is looked for that they do not have. */
  private static final class Names {
    static final String STILL =
        "rc-lookahead=8:bframes=0:mbtree=0:aq-mode=0:weightp=0:me=dia:subme=1:ref=1:trellis=0";
  }

  private final String ending;
  private final List<String> picture;
  private final List<String> sound;
  private final List<String> file;

  FilmCoding(String ending, List<String> picture, List<String> sound, List<String> file) {
    this.ending = ending;
    this.picture = picture;
    this.sound = sound;
    this.file = file;
  }

  /**
   * How the names of such files end.
   *
   * @return letters without a point
   */
  public String ending() {
    return ending;
  }

  List<String> picture() {
    return picture;
  }

  List<String> sound() {
    return sound;
  }

  List<String> file() {
    return file;
  }
}
