package org.matraloom.wav;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a killed program left of a file goes when the file is written anew, and nothing else. */
class LeftOversTest {

  @TempDir private Path folder;

  private Path file(String name, int minutesOld) throws IOException {
    Path file = Files.writeString(folder.resolve(name), "half");
    FileTime then = FileTime.from(Instant.now().minusSeconds(60L * minutesOld));
    return Files.setLastModifiedTime(file, then);
  }

  @Test
  void onlyForsakenPartsOfTheFileGo() throws IOException {
    List<Path> gone = List.of(file(".a.wav.1f.part", 11), file(".a.wav.2a.raw.part", 600));
    List<Path> kept =
        List.of(
            file(".a.wav.3b.part", 0),
            file(".b.wav.1f.part", 600),
            file(".a.wav.xyz.part", 600),
            file("a.wav.1f.part", 600),
            file(".aXwav.1f.part", 600));
    LeftOvers.removeBeside(folder.resolve("a.wav"));
    gone.forEach(path -> assertFalse(Files.exists(path), path.toString()));
    kept.forEach(path -> assertTrue(Files.exists(path), path.toString()));
    LeftOvers.removeBeside(folder.resolve("no such folder").resolve("a.wav"));
  }

  @Test
  void aRenderRemovesWhatOneBeforeItLeft() throws IOException {
    Path left = file(".t.wav.1f.part", 11);
    try (PartFile part = new PartFile(folder.resolve("t.wav"))) {
      assertFalse(Files.exists(left));
      part.finish();
    }
    assertTrue(Files.exists(folder.resolve("t.wav")));
  }

  /** A name that can be guessed is a link that somebody else has put there. */
  @Test
  void aTextIsNotWrittenThroughALink() throws IOException {
    Path victim = Files.writeString(folder.resolve("victim"), "mine");
    Files.createSymbolicLink(folder.resolve(".index.html.part"), victim);
    Path page = folder.resolve("index.html");
    Files.createSymbolicLink(page, victim);
    WholeText.put(page, "<p>");
    assertEquals("mine", Files.readString(victim));
    assertEquals("<p>", Files.readString(page));
    assertFalse(Files.isSymbolicLink(page));
  }

  @Test
  void aTextThatCannotBeWrittenNamesItsFile() {
    Path page = folder.resolve("none").resolve("index.html");
    IOException told = assertThrows(IOException.class, () -> WholeText.put(page, "<p>"));
    assertTrue(told.getMessage().contains("index.html"), told.getMessage());
  }
}
