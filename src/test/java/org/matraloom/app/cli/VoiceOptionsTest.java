package org.matraloom.app.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.CommandLineRun;

/** Every option of the voice is heard, and none of them changes the length of a track. */
class VoiceOptionsTest {

  @TempDir private Path folder;

  private Path score;

  @BeforeEach
  void writeScore() throws IOException {
    score = Files.writeString(folder.resolve("p.loom"), "tala rupaka\ntempo 90\nSong = najonumi\n");
  }

  @Test
  void everyOptionChangesTheSoundAndNotTheLength() throws IOException {
    List<byte[]> heard = new ArrayList<>();
    for (String option :
        List.of(
            "--accents=1",
            "--accents=0",
            "--voice=high",
            "--half-voice",
            "--felt-beat=consonant",
            "--felt-beat=marcus",
            "--spoken-ticks")) {
      byte[] track = render(option);
      for (byte[] other : heard) {
        assertEquals(other.length, track.length, option);
        assertFalse(Arrays.equals(other, track), option);
      }
      heard.add(track);
    }
    assertArrayEquals(heard.get(0), render("--voice=low"), "the usual voice");
    assertArrayEquals(heard.get(0), render("--felt-beat=VOWEL"), "the usual placement");
  }

  @Test
  void tellsWhatIsAllowed() {
    refused("--voice=bass", "low");
    refused("--felt-beat=late", "marcus");
    refused("--accents=4", "0 (none) to 3");
  }

  private void refused(String option, String allowed) {
    CommandLineRun run =
        CommandLineRun.of(
            "render", score.toString(), "-o", folder.resolve("x.wav").toString(), option);
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertTrue(run.err().toLowerCase(java.util.Locale.ROOT).contains(allowed), run.err());
  }

  private byte[] render(String option) throws IOException {
    Path track = folder.resolve("track.wav");
    CommandLineRun run =
        CommandLineRun.of("render", score.toString(), "-o", track.toString(), option);
    assertEquals(ExitCode.DONE, run.code(), run.err());
    return Files.readAllBytes(track);
  }
}
