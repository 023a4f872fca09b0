package org.matraloom.app.handon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.CommandLineRun;

/** Sollus of the user's own list are written in scripts like any others. */
class SheetLexiconTest {

  @TempDir private Path folder;

  @Test
  void aSolluOfOnesOwnHasLettersToo() throws IOException {
    Path lexicon = folder.resolve("own.txt");
    Path score = folder.resolve("own.loom");
    Files.writeString(lexicon, "plip : plip : p l i p\n");
    Files.writeString(score, "tala adi\ntempo 60\nDrop = plip taka .\n");
    CommandLineRun run =
        CommandLineRun.of(
            "sheet", score.toString(), "--lexicon", lexicon.toString(), "--script", "malayalam");
    assertEquals("", run.err());
    assertEquals(0, run.code());
    assertTrue(run.out().contains("പ്ലിപ് ത ക ."), run.out());
    assertTrue(run.out().contains("= plip ta ka ."), run.out());
  }
}
