package org.matraloom.app.practise;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.CommandLineRun;
import org.matraloom.app.cli.ExitCode;

class RenderCommandTest {

  @TempDir private Path folder;

  private Path score;

  @BeforeEach
  void writeScore() throws IOException {
    score = Files.writeString(folder.resolve("p.loom"), "tala rupaka\nSong = takadimi\n");
  }

  @Test
  void theSameCommandTwiceGivesTheSameBytes() throws IOException {
    Path first = folder.resolve("first.wav");
    Path second = folder.resolve("second.wav");
    assertEquals(ExitCode.DONE, render(first).code());
    assertEquals(ExitCode.DONE, render(second).code());
    byte[] bytes = Files.readAllBytes(first);
    assertTrue(bytes.length > 48_000, "there is sound: " + bytes.length);
    assertArrayEquals(bytes, Files.readAllBytes(second));
  }

  @Test
  void aMissingFolderIsNamedAndNothingIsLeft() throws IOException {
    CommandLineRun run = render(folder.resolve("none").resolve("x.wav"));
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertTrue(run.err().contains("does not exist; make it first"), run.err());
    try (var files = Files.list(folder)) {
      assertEquals(List.of(score), files.toList());
    }
  }

  @Test
  void aFolderAsTargetIsRefused() {
    CommandLineRun run = render(folder);
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertTrue(run.err().contains("is a folder"), run.err());
  }

  @Test
  void theScoreItselfIsNeverWrittenOver() throws IOException {
    String before = Files.readString(score);
    List<String> mistakes =
        List.of(
            "render %s -o %s",
            "sheet %s -o %s",
            "sheet %s --read-aloud -o %s",
            "drill loop %s --phrase Song --score %s",
            "drill loop %s --phrase Song -o %s");
    for (String mistake : mistakes) {
      String same = folder.resolve(".").resolve("p.loom").toString();
      CommandLineRun run = CommandLineRun.of(mistake.formatted(score, same).split(" "));
      assertEquals(ExitCode.BAD_INPUT, run.code(), mistake);
      assertTrue(run.err().contains("is the score itself"), run.err());
    }
    assertEquals(before, Files.readString(score));
  }

  @Test
  void aTrackIsOnlyWrittenUnderTheNameOfASoundFile() {
    Path target = folder.resolve("song.mp3");
    CommandLineRun run = render(target);
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertTrue(run.err().contains("a track is written as .wav"), run.err());
    assertFalse(Files.exists(target));
  }

  @Test
  void anUnknownPartIsRefusedWithTheList() {
    CommandLineRun run = render(folder.resolve("x.wav"), "--only", "claps,gong");
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertTrue(run.err().contains("'gong' is none of the parts [clap, count"), run.err());
    assertFalse(Files.exists(folder.resolve("x.wav")));
  }

  @Test
  void valuesOutOfRangeAreRefused() {
    Path wav = folder.resolve("x.wav");
    assertEquals(ExitCode.BAD_INPUT, render(wav, "--rate", "11025").code());
    assertEquals(ExitCode.BAD_INPUT, render(wav, "--bits", "8").code());
    assertEquals(ExitCode.BAD_INPUT, render(wav, "--level", "claps=99").code());
    assertEquals(ExitCode.BAD_INPUT, render(wav, "--tempo", "0").code());
    assertEquals(ExitCode.BAD_INPUT, render(wav, "--count-in", "99").code());
    assertFalse(Files.exists(wav));
  }

  private CommandLineRun render(Path target, String... options) {
    String[] arguments = new String[options.length + 4];
    arguments[0] = "render";
    arguments[1] = score.toString();
    arguments[2] = "-o";
    arguments[3] = target.toString();
    System.arraycopy(options, 0, arguments, 4, options.length);
    return CommandLineRun.of(arguments);
  }
}
