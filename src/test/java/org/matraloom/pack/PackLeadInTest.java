package org.matraloom.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.time.Ratio;
import org.matraloom.voice.FormantVoice;
import org.matraloom.voice.VoiceSettings;

/** The words that lead in are heard in the tracks of a set. */
class PackLeadInTest {

  private static final String SCORE =
      "title Culvert\ntala adi\ntempo 180\nstart beat 5\n"
          + "Song = takadimi takadimi takadimi takadimi\nperform\n  Song nadai 4\n";

  @TempDir private Path folder;

  private byte[] track(String name, boolean leadsIn) throws IOException {
    Composition piece =
        ScoreReader.read(SCORE, "c.loom", Lexicon.standard()).composition().orElseThrow();
    PackOrder order =
        new PackOrder(
            piece,
            List.of(Ratio.of(100)),
            List.of(PackMix.VOICE),
            false,
            1,
            Optional.empty(),
            PackFiles.WAV,
            Optional.empty());
    Path set = Files.createDirectory(folder.resolve(name));
    PackMaker maker =
        new PackMaker(
            order,
            set,
            () -> new FormantVoice(48_000, Lexicon.standard(), VoiceSettings.USUAL),
            leadsIn);
    assertEquals(1, maker.make(1, (done, total) -> {}));
    return Files.readAllBytes(set.resolve(maker.tracks().get(0).waveName()));
  }

  @Test
  void theWayFromSamamIsSpokenOnlyWhereItIsAskedFor() throws IOException {
    byte[] plain = track("plain", false);
    byte[] led = track("led", true);
    assertEquals(plain.length, led.length);
    assertFalse(Arrays.equals(plain, led), "words are heard");
  }
}
