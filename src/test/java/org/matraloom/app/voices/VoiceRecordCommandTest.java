package org.matraloom.app.voices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.CommandLineRun;
import org.matraloom.app.cli.ExitCode;

/** The command without any device. */
class VoiceRecordCommandTest {

  @TempDir private Path folder;

  private CommandLineRun run(String... more) {
    String[] words = {
      "voice",
      "record",
      "river",
      "--plain",
      "--shelf",
      folder.toString(),
      "--device",
      "no such roof"
    };
    String[] all = Arrays.copyOf(words, words.length + more.length);
    System.arraycopy(more, 0, all, words.length, more.length);
    return CommandLineRun.of(all);
  }

  @Test
  void withoutTheDeviceThatIsAskedForItSaysSoAndKeepsWhatIsAsked() throws IOException {
    CommandLineRun run = run("--consent", "--owner", "Mira", "--for", "samples-synth");
    assertEquals(ExitCode.MACHINE, run.code(), run.err());
    assertTrue(run.out().contains("rows, each heard once and said 3 times"), run.out());
    assertEquals(1, run.err().lines().count(), run.err());
    String rows = Files.readString(folder.resolve("river.rows/rows.txt"));
    assertTrue(rows.contains("owner Mira\n") && rows.contains("row takadimi tam , , ."), rows);
    Path begun = folder.resolve("river.rows/row-01-1.wav");
    Files.write(begun, new byte[0]);
    assertTrue(run().out().contains("Going on with"), "consent is not asked for twice");
    assertTrue(run("--anew").err().contains("consent"), "it is asked for anew");
    assertTrue(Files.exists(begun), "and nothing is forgotten before it is given");
    run("--anew", "--consent");
    assertFalse(Files.exists(begun));
    assertEquals(0, CommandLineRun.of("voice", "remove", "river", "--shelf", folder + "").code());
    assertFalse(Files.exists(folder.resolve("river.rows")));
  }

  @Test
  void withoutConsentNothingIsKept() {
    CommandLineRun run = run();
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertTrue(run.err().contains("consent"), run.err());
    assertFalse(Files.exists(folder.resolve("river.rows")));
  }

  @Test
  void whatCannotBeAskedForIsToldInOneSentence() throws IOException {
    assertTrue(run("--for", folder + "/none.loom").err().contains("there is no score or folder"));
    Path empty = Files.createDirectory(folder.resolve("empty"));
    assertTrue(run("--for", empty.toString()).err().contains("nothing is said in"));
    Files.createDirectory(folder.resolve("river"));
    Files.writeString(folder.resolve("river/voice.txt"), "x");
    assertTrue(run("--consent").err().contains("there is a voice river already"));
  }
}
