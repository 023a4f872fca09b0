package org.matraloom.app.handon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.CommandLineRun;
import org.matraloom.app.cli.ExitCode;

/**
 * A page that is handed on runs nothing and fetches nothing (Content Security Policy Level 3, W3C),
 * before anything in it is read.
 */
class PagePolicyTest {

  @TempDir private Path folder;

  private Path score() throws IOException {
    return Files.writeString(
        folder.resolve("evil.loom"),
        "title <script>alert(1)</script>\ntala adi\nA = takadimi\nperform\n  A x8\n");
  }

  private void held(Path page, String more) throws IOException {
    String text = Files.readString(page);
    int policy = text.indexOf("<meta http-equiv=\"Content-Security-Policy\" content=\"");
    assertTrue(policy > 0 && policy < text.indexOf("<title>"), "before the title");
    String rule = text.substring(policy, text.indexOf('>', policy));
    assertTrue(rule.contains("default-src 'none'; style-src 'unsafe-inline';" + more), rule);
    assertEquals(-1, text.indexOf("<script>"));
  }

  @Test
  void aSheetHasAPolicy() throws IOException {
    Path page = folder.resolve("s.html");
    CommandLineRun run = CommandLineRun.of("sheet", score().toString(), "-o", page.toString());
    assertEquals(ExitCode.DONE, run.code(), run.err());
    held(page, " font-src data:;");
  }

  @Test
  void theListOfASetHasAPolicyThatLetsItsTracksPlay() throws IOException {
    Path set = folder.resolve("set");
    CommandLineRun run =
        CommandLineRun.of("pack", score().toString(), "-o", set.toString(), "--tempi", "100");
    assertEquals(ExitCode.DONE, run.code(), run.err());
    held(set.resolve("index.html"), " media-src 'self' file:");
  }
}
