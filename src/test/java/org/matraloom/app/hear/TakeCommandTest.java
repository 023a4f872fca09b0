package org.matraloom.app.hear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.CommandLineRun;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.follow.SaidAs;
import org.matraloom.recording.Recording;
import org.matraloom.recording.Recordings;
import org.matraloom.schedule.Timeline;
import org.matraloom.sound.GuideGap;
import org.matraloom.sound.TakeNote;
import org.matraloom.sound.TakeWriter;
import org.matraloom.wav.PcmFormat;

class TakeCommandTest {

  @TempDir private Path folder;

  /** The file's tones begin at 0.2, 0.4 and 0.6 s; see the README beside it. */
  @Test
  void listsWhereSoundsBegin() throws IOException {
    CommandLineRun run = CommandLineRun.of("take", "--onsets", recording().toString());
    assertEquals("", run.err());
    assertEquals(ExitCode.DONE, run.code());
    List<String> lines = run.out().lines().toList();
    assertEquals(3, lines.size(), run.out());
    for (int i = 0; i < 3; i++) {
      assertEquals(0.2 * (i + 1), Double.parseDouble(lines.get(i)), 0.01);
    }
  }

  @Test
  void aFileThatIsNoRecordingIsExplained() throws IOException {
    Path letter = Files.writeString(folder.resolve("letter.wav"), "Dear pupil");
    CommandLineRun run = CommandLineRun.of("take", "--onsets", letter.toString());
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertTrue(run.err().startsWith("matraloom: " + letter + " is not a sound file"), run.err());
    assertEquals("", run.out());
  }

  @Test
  void confidenceHasARange() throws IOException {
    CommandLineRun run =
        CommandLineRun.of("take", "--onsets", recording().toString(), "--confidence", "2");
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertEquals("matraloom: --confidence is 2.0; it must be from 0.01 to 1\n", run.err());
  }

  private Path recording() throws IOException {
    Path file = folder.resolve("bursts.mp3");
    if (!Files.exists(file)) {
      try (InputStream in = getClass().getResourceAsStream("/org/matraloom/recording/bursts.mp3")) {
        Files.copy(in, file);
      }
    }
    return file;
  }

  /**
   * The device put 0.4 s of silence into the guide and the reciter waited with it: the same is said
   * of the take as if it had not. Where the take does not tell, the reciter is held to have waited.
   */
  @Test
  void aReciterWhoWaitsWithTheGuideIsNotBlamed() throws IOException {
    Path score = Files.writeString(folder.resolve("puddle.loom"), SaidAs.FOUR_AND_FIVE);
    Path said = folder.resolve("said.wav");
    CommandLineRun render =
        CommandLineRun.of("render", score.toString(), "-o", said.toString(), "--only", "voice");
    assertEquals(ExitCode.DONE, render.code(), render.err());
    int rate;
    short[] samples;
    try (Recording reader = Recordings.open(said)) {
      rate = reader.ratePerSecond();
      float[] block = new float[120 * rate];
      samples = new short[reader.read(block)];
      for (int i = 0; i < samples.length; i++) {
        samples[i] = (short) Math.round(block[i] * 32_767);
      }
    }
    int at = samples.length / 2;
    int gap = rate * 2 / 5;
    Path whole = take("whole.wav", rate, samples, at, 0, List.of());
    Path silent = take("silent.wav", rate, samples, at, gap, List.of());
    Path told = take("told.wav", rate, samples, at, gap, List.of(new GuideGap(at, gap)));
    String clean = verdict(score, whole, ExitCode.DONE);
    assertTrue(clean.contains("Nothing is out of its place"), clean);
    String blamed = verdict(score, silent, ExitCode.CHECK_FAILED);
    assertTrue(blamed.contains("You waited 0.4"), blamed);
    String fair = verdict(score, told, ExitCode.DONE);
    String begun = "While this was recorded the sound device had nothing to play once, and put in";
    assertTrue(fair.replaceAll("\\s+", " ").startsWith(begun + " 0.40 s"), fair);
    assertEquals(clean, fair.substring(fair.length() - clean.length()));
  }

  private static String verdict(Path score, Path take, int code) {
    CommandLineRun run = CommandLineRun.of("take", score.toString(), take.toString(), "--no-log");
    assertEquals(code, run.code(), run.out() + run.err());
    return run.out();
  }

  private Path take(String name, int rate, short[] samples, int at, int gap, List<GuideGap> gaps)
      throws IOException {
    Path file = folder.resolve(name);
    ByteBuffer pcm = ByteBuffer.allocate(2 * (samples.length + gap)).order(ByteOrder.LITTLE_ENDIAN);
    for (int i = 0; i < samples.length + gap; i++) {
      pcm.putShort(i < at ? samples[i] : i < at + gap ? 0 : samples[i - gap]);
    }
    Timeline timeline = SaidAs.timeline(SaidAs.FOUR_AND_FIVE);
    TakeNote note = new TakeNote("x.loom", "", timeline, Optional.of(0L), Optional.empty());
    try (TakeWriter writer = new TakeWriter(file, new PcmFormat(rate, 16, 1), note)) {
      writer.interruptedBy(gaps);
      writer.write(pcm.array(), pcm.capacity());
    }
    return file;
  }

  @Test
  void aRecordingThatIsNotThereIsTheUsersMistake() {
    String score = Path.of("samples-synth", "culvert.loom").toString();
    CommandLineRun none = CommandLineRun.of("take", score, folder.resolve("none.wav").toString());
    assertEquals(ExitCode.BAD_INPUT, none.code());
    assertEquals(
        "matraloom: there is no recording " + folder.resolve("none.wav") + "\n", none.err());
    CommandLineRun place = CommandLineRun.of("take", score, folder.toString());
    assertEquals(ExitCode.BAD_INPUT, place.code());
    assertTrue(place.err().contains(folder + " is a folder"), place.err());
  }
}
