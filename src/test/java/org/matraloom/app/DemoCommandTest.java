package org.matraloom.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.cli.ExitCode;

class DemoCommandTest {

  @Test
  void everyStageOfTheJobIsShownAndDone(@TempDir Path folder) throws IOException {
    Path made = folder.resolve("a demo");
    CommandLineRun run = CommandLineRun.of("demo", "--folder", made.toString());
    assertEquals("", run.err());
    assertEquals(ExitCode.DONE, run.code());
    assertTrue(run.out().contains("It lands: the last matra ends on samam."), run.out());
    assertTrue(run.out().contains("9 breaths"), run.out());
    assertTrue(run.out().contains("landing "), run.out());
    for (String name :
        List.of(
            "river-steps.loom",
            "river-steps.pdf",
            "1-slow-with-everything.wav",
            "2-no-ticks.wav",
            "3-hands-only.wav",
            "4-join.wav",
            "guide.wav",
            "guide.png")) {
      assertTrue(Files.size(made.resolve(name)) > 300, name);
    }
    long shown = Pattern.compile("(?m)^\\$ matraloom ").matcher(run.out()).results().count();
    assertEquals(9, shown);
  }

  @Test
  void aPieceThatWasChangedIsKept(@TempDir Path folder) throws IOException {
    String changed = DemoScore.text().replace("tempo   66", "tempo   90");
    Path score = Files.writeString(folder.resolve(DemoScore.FILE), changed);
    CommandLineRun run = CommandLineRun.of("demo", "--folder", folder.toString());
    assertEquals(ExitCode.DONE, run.code(), run.err());
    assertEquals(changed, Files.readString(score));
    assertTrue(run.out().contains("at 90 beats a minute"), run.out());
  }
}
