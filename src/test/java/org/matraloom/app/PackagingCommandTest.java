package org.matraloom.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.matraloom.app.cli.ExitCode;

class PackagingCommandTest {

  private static final List<String> SHOWN =
      Commands.byName().keySet().stream()
          .filter(name -> !name.equals("warm-up") && !name.equals("packaging"))
          .toList();

  @Test
  void theManualHasEveryCommandThatIsShown() {
    CommandLineRun run = CommandLineRun.of("packaging", "man");
    assertEquals(ExitCode.DONE, run.code(), run.err());
    assertTrue(SHOWN.size() > 20, "commands were found");
    for (String name : SHOWN) {
      assertTrue(run.out().contains("\n.SH " + name.toUpperCase() + "\n"), name);
    }
    assertFalse(run.out().contains("WARM"), "what is hidden stays hidden");
    for (String line : run.out().lines().toList()) {
      assertFalse(line.startsWith(".") && !line.matches("\\.(TH|SH|nf|fi).*"), line);
    }
  }

  @Test
  void theShellCompletesEveryCommandThatIsShown() {
    CommandLineRun run = CommandLineRun.of("packaging", "bash");
    assertEquals(ExitCode.DONE, run.code(), run.err());
    for (String name : SHOWN) {
      assertTrue(run.out().contains("_picocli_matraloom_" + name.replace("-", "")), name);
    }
    assertTrue(run.out().contains("--count-in"), "options too");
  }
}
