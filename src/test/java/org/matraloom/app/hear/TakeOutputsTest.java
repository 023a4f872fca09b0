package org.matraloom.app.hear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.CommandLineRun;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.log.PlaceNote;
import org.matraloom.log.PracticeLog;
import org.matraloom.log.ScorePlace;
import org.matraloom.recording.Recording;
import org.matraloom.recording.Recordings;

/** The pictures, slowed takes and records of the log that the take command makes. */
class TakeOutputsTest {

  private static final String SONG = "samples-synth/gutter-song.loom";

  @TempDir private static Path shared;
  @TempDir private Path folder;

  @BeforeAll
  static void record() {
    CommandLineRun run =
        CommandLineRun.of("render", SONG, "--only", "voice", "-o", recording().toString());
    assertEquals(ExitCode.DONE, run.code(), run.err());
  }

  @Test
  void aPictureAndASlowedTakeAreWritten() throws IOException {
    Path svg = folder.resolve("take.svg");
    Path png = folder.resolve("take.png");
    Path slow = folder.resolve("slow.wav");
    CommandLineRun run =
        take("--picture", svg.toString(), "--slowed", "60%", "-o", slow.toString(), "--no-log");
    assertEquals("", run.err());
    assertEquals(ExitCode.DONE, run.code());
    assertTrue(run.out().contains(svg + "\n" + slow + ": "), run.out());
    assertTrue(run.out().contains("clicks on 43 beats"), run.out());
    assertTrue(Files.readString(svg).contains("<title>round 3, nadai 5</title>"));
    assertEquals(frames(recording()) / 0.6, frames(slow), 1);
    assertEquals(ExitCode.DONE, take("--picture", png.toString(), "--no-log").code());
    assertTrue(Files.size(png) > 10_000);
  }

  @Test
  void aTakeIsNotedOnceWithItsRoundsAndTheTimeOfItsFile() throws IOException {
    Path log = folder.resolve("practice.jsonl");
    Path take = Files.copy(recording(), folder.resolve("monday.wav"));
    Files.setLastModifiedTime(take, FileTime.from(Instant.parse("2026-03-02T18:30:00Z")));
    String[] words = {"take", SONG, take.toString(), "--log-file", log.toString()};
    CommandLineRun first = CommandLineRun.of(words);
    assertEquals(ExitCode.DONE, first.code(), first.err());
    assertTrue(first.out().contains("Noted in " + log), first.out());
    assertTrue(CommandLineRun.of(words).out().contains("Noted before in " + log));
    String line = Files.readString(log);
    assertEquals(1, line.lines().count(), line);
    for (String part :
        List.of(
            "\"kind\":\"take\"",
            "\"piece\":\"Gutter Song\"",
            "\"tempo\":66.0",
            "\"clean\":true",
            "{\"round\":3,\"nadai\":5,\"tempo\":66.0,\"clean\":true}",
            "[\"into\",3,\"4>5\",",
            "[\"speed\",3,\"4>5\",0.0]",
            "[\"phrase\",2,\"Trickle\",",
            "\"recording\":\"sha256:")) {
      assertTrue(line.contains(part), part + " in " + line);
    }
    String shown = CommandLineRun.of("log", "--log-file", log.toString()).out();
    assertTrue(shown.contains("once more at 66 beats a minute"), shown);
    assertTrue(shown.contains("2026-03-0"), shown);
    String history = CommandLineRun.of("log", "history", log.toString()).out();
    assertTrue(history.contains("Into the five, round 3               1 "), history);
    assertTrue(history.contains("Phrase Trickle, round 2              1 "), history);
  }

  /**
   * The five begins 6 + 30 beats in, at 36 * 60 / 66 = 32.727 s, after a silence. There 40 ms of
   * silence are put in, and as much is taken out in the first beat after it, so that only what lies
   * between is late; the report of the single take finds nothing to say of it.
   */
  @Test
  void aLateFirstBeatOfTheFiveIsKept() throws Exception {
    Path take = folder.resolve("late.wav");
    try (AudioInputStream in = AudioSystem.getAudioInputStream(recording().toFile())) {
      AudioFormat format = in.getFormat();
      byte[] sound = in.readAllBytes();
      int late = bytes(0.040, format);
      int before = bytes(32.67, format);
      int until = bytes(37 * 60 / 66.0 - 0.05, format);
      ByteArrayOutputStream joined = new ByteArrayOutputStream();
      joined.write(sound, 0, before);
      joined.write(new byte[late]);
      joined.write(sound, before, until - late - before);
      joined.write(sound, until, sound.length - until);
      assertEquals(sound.length, joined.size());
      AudioInputStream out =
          new AudioInputStream(
              new ByteArrayInputStream(joined.toByteArray()),
              format,
              sound.length / format.getFrameSize());
      AudioSystem.write(out, AudioFileFormat.Type.WAVE, take.toFile());
    }
    Path log = folder.resolve("practice.jsonl");
    CommandLineRun run =
        CommandLineRun.of("take", SONG, take.toString(), "--log-file", log.toString());
    assertEquals(ExitCode.DONE, run.code(), run.err());
    List<PlaceNote> notes = new PracticeLog(log).read().entries().get(0).outcome().places();
    assertEquals(new ScorePlace(ScorePlace.Kind.INTO, 3, "4>5"), notes.get(0).place());
    assertEquals(40, notes.get(0).off(), 3);
    for (PlaceNote note : notes) {
      if (note.place().kind() == ScorePlace.Kind.PHRASE && note.place().round() < 3) {
        assertEquals(0, note.off(), 3, note.toString());
      }
    }
    assertTrue(notes.size() > 10, "phrases were kept: " + notes);
  }

  private static int bytes(double seconds, AudioFormat format) {
    return (int) Math.round(seconds * format.getFrameRate()) * format.getFrameSize();
  }

  @Test
  void nothingIsNotedIfNotWantedOrNotKnown() throws IOException {
    Path log = folder.resolve("practice.jsonl");
    take("--no-log", "--log-file", log.toString());
    assertFalse(Files.exists(log));
    CommandLineRun other =
        CommandLineRun.of(
            "take",
            "samples-synth/weir-steps.loom",
            recording().toString(),
            "--log-file",
            log.toString());
    assertEquals(ExitCode.CHECK_FAILED, other.code());
    assertTrue(other.out().contains("Not noted in the practice log"), other.out());
    assertFalse(Files.exists(log));
  }

  @Test
  void aLogThatCannotBeWrittenSpoilsNothing() throws IOException {
    Path blocked = Files.writeString(folder.resolve("file"), "");
    CommandLineRun run = take("--log-file", blocked + "/practice.jsonl");
    assertEquals(ExitCode.DONE, run.code());
    assertTrue(run.err().startsWith("matraloom: not noted in the practice log"), run.err());
    assertEquals(1, run.err().lines().count(), run.err());
  }

  @Test
  void jsonIsNothingButJson() {
    Path log = folder.resolve("practice.jsonl");
    CommandLineRun run = take("--json", "--log-file", log.toString());
    assertTrue(run.out().startsWith("{") && run.out().endsWith("}\n"), run.out());
    assertTrue(Files.exists(log));
  }

  @Test
  void whatMakesNoSenseIsRefusedBeforeAnythingIsMeasured() {
    String take = recording().toString();
    assertRefused("--slowed needs a file", "--slowed", "60%");
    assertRefused("add --slowed 60%", "-o", folder.resolve("x.wav").toString());
    assertRefused("--no-clicks belongs to --slowed", "--no-clicks");
    assertRefused("is what is measured", "--slowed", "60%", "-o", take);
    assertRefused("written as .wav", "--slowed", "60%", "-o", folder.resolve("x.mp3").toString());
    assertRefused(".svg or .png", "--picture", folder.resolve("x.pdf").toString());
    assertRefused("does not exist", "--picture", folder.resolve("no/x.svg").toString());
    assertRefused("of one take", "--compare", take, "--picture", folder.resolve("x.svg") + "");
  }

  private void assertRefused(String why, String... options) {
    CommandLineRun run = take(options);
    assertEquals(ExitCode.BAD_INPUT, run.code(), run.out());
    assertTrue(run.err().contains(why), run.err());
    assertEquals("", run.out());
  }

  private static Path recording() {
    return shared.resolve("take.wav");
  }

  private static long frames(Path file) throws IOException {
    try (Recording sound = Recordings.open(file)) {
      float[] block = new float[8192];
      long frames = 0;
      int count;
      while ((count = sound.read(block)) > 0) {
        frames += count;
      }
      return frames;
    }
  }

  private static CommandLineRun take(String... options) {
    List<String> words = new ArrayList<>(List.of("take", SONG, recording().toString()));
    words.addAll(List.of(options));
    return CommandLineRun.of(words.toArray(String[]::new));
  }
}
