package org.matraloom.app.handon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.matraloom.app.CommandLineRun;

/** The command film, where it needs no ffmpeg. */
class FilmCommandTest {

  private static final String SCORE = "samples-synth/gutter-song.loom";

  @TempDir private Path folder;

  @Test
  void aStillIsWrittenForEachRoundAndAPoster() throws IOException {
    CommandLineRun run =
        CommandLineRun.of(
            "film", SCORE, "--still", at("s.png"), "--poster", at("p.png"), "--size", "1280x720");
    assertEquals("", run.err());
    assertEquals(List.of("p.png", "s-1.png", "s-2.png", "s-3.png"), names());
    assertEquals(1280, ImageIO.read(folder.resolve("s-3.png").toFile()).getWidth());
    assertEquals(720, ImageIO.read(folder.resolve("p.png").toFile()).getHeight());
  }

  @Test
  void aStillAsSvgHasATitleAndTheSameBytesEachTime() throws IOException {
    CommandLineRun.of("film", SCORE, "--still", at("a.svg"), "--dark", "--script", "tamil");
    CommandLineRun.of("film", SCORE, "--still", at("b.svg"), "--dark", "--script", "tamil");
    String svg = Files.readString(folder.resolve("a-3.svg"));
    assertEquals(svg, Files.readString(folder.resolve("b-3.svg")));
    assertTrue(svg.contains("<title>Gutter Song, Round 3 of 3"), svg.substring(0, 200));
    assertTrue(svg.contains("#8a5a00"), "the lamp of the dark look");
  }

  @Test
  void picturesAndSoundAreWrittenWithoutFfmpeg() throws IOException {
    Path score = folder.resolve("short.loom");
    Files.writeString(
        score,
        "tala rupaka\ntempo 600\nSong = takadimi takadimi takadimi\nperform\n  Song nadai 4\n");
    CommandLineRun run =
        CommandLineRun.of(
            "film",
            score.toString(),
            "--frames",
            at("f"),
            "--pictures",
            "25",
            "--size",
            "1280x720");
    assertEquals("", run.err());
    try (Stream<Path> files = Files.list(folder.resolve("f"))) {
      assertTrue(run.out().contains(files.count() - 1 + " pictures"), run.out());
    }
    CommandLineRun again = CommandLineRun.of("film", score.toString(), "--frames", at("f"));
    assertEquals(3, again.code());
    assertTrue(again.err().contains("holds files"), again.err());
  }

  @ParameterizedTest
  @CsvSource({
    "-o, a.avi, --dark, a film is written as .mp4 or .webm",
    "--still, a.gif, --dark, a picture is written as .svg or .png",
    "-o, a.mp4, --size=640x480, '--size takes 1920x1080, 1080x1920 or 1280x720, given 640x480'",
    "-o, a.mp4, --pictures=24, '--pictures takes 25, 30 or 60 a second, given 24'",
    "-o, a.mp4, --tempi=5, '--tempi takes 10 to 400 percent, given 5'",
    "-o, a.mp4, --poster=p.jpg, a poster is written as .png"
  })
  void whatCannotBeMadeIsRefusedInASentence(
      String option, String name, String wrong, String sentence) throws IOException {
    CommandLineRun run = CommandLineRun.of("film", SCORE, option, at(name), wrong);
    assertEquals(2, run.code());
    assertTrue(run.err().contains(sentence), run.err());
    assertEquals(List.of(), names());
  }

  @Test
  void withoutFfmpegASentenceSaysHowToInstallIt() throws IOException {
    CommandLineRun run =
        CommandLineRun.of("film", SCORE, "-o", at("a.mp4"), "--ffmpeg", at("nothing-there"));
    assertEquals(3, run.code());
    assertTrue(run.err().contains("apt install ffmpeg"), run.err());
    assertEquals(List.of(), names());
  }

  private String at(String name) {
    return folder.resolve(name).toString();
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
