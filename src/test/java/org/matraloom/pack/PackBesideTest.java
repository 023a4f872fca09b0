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
import org.matraloom.drum.DrumVoice;
import org.matraloom.drum.StrokeTable;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.time.Ratio;
import org.matraloom.voice.FormantVoice;
import org.matraloom.voice.VoiceSettings;

/** The words that lead in, and a drum, are heard in the tracks of a set. */
class PackBesideTest {

  private static final String SCORE =
      "title Culvert\ntala adi\ntempo 180\nstart beat 5\n"
          + "Song = takadimi takadimi takadimi takadimi\nperform\n  Song nadai 4\n";

  @TempDir private Path folder;

  private byte[] track(String name, PackMix mix, PackBeside beside) throws IOException {
    Composition piece =
        ScoreReader.read(SCORE, "c.loom", Lexicon.standard()).composition().orElseThrow();
    PackOrder order =
        new PackOrder(
            piece,
            List.of(Ratio.of(100)),
            List.of(mix),
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
            beside);
    assertEquals(1, maker.make(1, (done, total) -> {}));
    return Files.readAllBytes(set.resolve(maker.tracks().get(0).waveName()));
  }

  @Test
  void theWayFromSamamIsSpokenOnlyWhereItIsAskedFor() throws IOException {
    byte[] plain = track("plain", PackMix.VOICE, PackBeside.NOTHING);
    byte[] led = track("led", PackMix.VOICE, new PackBeside(Optional.of(0), Optional.empty(), ""));
    assertEquals(plain.length, led.length);
    assertFalse(Arrays.equals(plain, led), "words are heard");
  }

  @Test
  void aDrumIsHeardWhereTheStudentDoesNotRecite() throws IOException {
    PackBeside drum =
        new PackBeside(
            Optional.empty(),
            Optional.of(
                rate ->
                    new DrumVoice(
                        rate, DrumVoice.USUAL_HERTZ, StrokeTable.usual(Lexicon.standard()))),
            "usual");
    for (PackMix mix : List.of(PackMix.FULL, PackMix.VOICE, PackMix.TALA)) {
      byte[] plain = track("plain" + mix, mix, PackBeside.NOTHING);
      byte[] drummed = track("drummed" + mix, mix, drum);
      assertEquals(mix != PackMix.FULL, Arrays.equals(plain, drummed), mix.slug());
    }
  }
}
