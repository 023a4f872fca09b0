package org.matraloom.app.practise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.CommandLineRun;
import org.matraloom.app.cli.ExitCode;

/** A drum in place of the voice: on a track and on a sheet. */
class DrumTrackTest {

  @TempDir private Path folder;
  private String score;

  @BeforeEach
  void write() throws IOException {
    Path file = folder.resolve("song.loom");
    score = Files.writeString(file, "tala adi\ntempo 75\nA = (takadimi) x8\n").toString();
  }

  private byte[] track(String name, String... options) throws IOException {
    String target = folder.resolve(name).toString();
    String[] head = {"render", score, "-o", target, "--without", "clap,count,wave,ticks"};
    String[] all = Arrays.copyOf(head, head.length + options.length);
    System.arraycopy(options, 0, all, head.length, options.length);
    CommandLineRun run = CommandLineRun.of(all);
    assertEquals(ExitCode.DONE, run.code(), run.err());
    return Files.readAllBytes(Path.of(target));
  }

  @Test
  void aTrackIsDrummedWithTheListThatIsGiven() throws IOException {
    byte[] voice = track("voice.wav");
    byte[] drum = track("drum.wav", "--drum");
    Path mine = Files.writeString(folder.resolve("mine.txt"), "ta = thom\n");
    byte[] own = track("own.wav", "--strokes", mine.toString());
    assertFalse(Arrays.equals(voice, drum), "the drum is no voice");
    assertFalse(Arrays.equals(drum, own), "a list of one's own is heard");
    assertTrue(Arrays.equals(drum, track("again.wav", "--drum")), "the same each time");
  }

  @Test
  void theSheetHasTheStrokes() throws IOException {
    CommandLineRun text = CommandLineRun.of("sheet", score, "--drum");
    assertEquals(ExitCode.DONE, text.code(), text.err());
    assertTrue(text.out().contains("ta ki din ki"), text.out());
    assertTrue(text.out().contains("= ta ka di mi"), "the text is still a score: " + text.out());
    String page = folder.resolve("s.html").toString();
    assertEquals(ExitCode.DONE, CommandLineRun.of("sheet", score, "--drum", "-o", page).code());
    assertTrue(Files.readString(Path.of(page)).contains(">din</span>"), "in the cells");
  }

  /** A table in the score itself; a list that is given goes before it, the sheet hands it on. */
  @Test
  void aScoreNamesItsOwnStrokes() throws IOException {
    byte[] usual = track("usual.wav", "--drum");
    Files.writeString(
        Path.of(score),
        "tala adi\ntempo 75\ndrum ta = tha + chapu\ndrum: mi = thom # low\nA = (takadimi) x8\n");
    assertFalse(Arrays.equals(usual, track("own.wav", "--drum")), "it is heard");
    assertFalse(
        Arrays.equals(track("v.wav"), track("beside.wav", "--with-drum")), "also beside the voice");
    CommandLineRun text = CommandLineRun.of("sheet", score, "--drum");
    assertTrue(text.out().contains("tha+chapu ki din thom"), text.out());
    Path mine = Files.writeString(folder.resolve("mine.txt"), "ta = nam\n");
    CommandLineRun both = CommandLineRun.of("sheet", score, "--strokes", mine.toString());
    assertTrue(both.out().contains("nam ki din thom"), both.out());
    Path back =
        Files.writeString(folder.resolve("back.loom"), CommandLineRun.of("sheet", score).out());
    CommandLineRun again = CommandLineRun.of("sheet", back.toString(), "--drum");
    assertTrue(again.out().contains("tha+chapu ki din thom"), again.out());
  }

  @Test
  void aWrongListIsToldWithItsLine() throws IOException {
    Path mine = Files.writeString(folder.resolve("mine.txt"), "ta = thm\n");
    CommandLineRun run = CommandLineRun.of("sheet", score, "--strokes", mine.toString());
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertTrue(run.err().contains("mine.txt:1: no stroke is called \"thm\"; the nearest is thom"));
    CommandLineRun none = CommandLineRun.of("sheet", score, "--strokes", "none.txt");
    assertEquals(ExitCode.BAD_INPUT, none.code());
    assertTrue(none.err().contains("none.txt cannot be read"), none.err());
  }
}
