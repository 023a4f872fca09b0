package org.matraloom.mouth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.score.Lexicon;

/** A voice made of a recording whose every vowel onset is known, for it was made. */
class KitMakerTest {

  @TempDir private Path folder;

  @Test
  void findsAndPlacesEverySolluOfTheSheet() throws IOException {
    MadeMouth mouth = new MadeMouth();
    CueSheet sheet = CueSheet.read(MadeMouth.SHEET, "list.txt", Lexicon.standard());
    KitMaker maker = new KitMaker(Lexicon.standard());
    maker.add(mouth.write(folder), sheet);
    KitDraft draft = maker.draft(new KitHead("river", "", "", ""));
    assertEquals(List.of(), draft.missing());
    assertEquals(sheet.size(), draft.kit().samples().size());
    for (int i = 0; i < sheet.size(); i++) {
      KitSample sample = draft.kit().samples().get(i);
      assertEquals(sheet.called().get(i).sollu(), sample.sollu());
      double begin = foundAt(mouth, draft.sounds().get(sample.file()), sample);
      double offMs = (begin + sample.places().vowel() - mouth.vowels().get(i)) / 48.0;
      assertEquals(0, offMs, 5, "vowel of " + sample.sollu() + ", number " + i);
    }
  }

  /** Where in the recording a sample was cut: where the two are most alike after the vowel. */
  private static double foundAt(MadeMouth mouth, float[] cut, KitSample sample) {
    float[] sound = mouth.sound();
    int vowel = sample.places().vowel();
    int frames = Math.min(2000, cut.length - vowel - 1500);
    double best = 0;
    int place = -1;
    for (long truth : mouth.vowels()) {
      for (int at = (int) truth - 800; at < truth + 800; at++) {
        double both = 0;
        double own = 0;
        for (int i = 0; i < frames; i += 3) {
          both += cut[vowel + i] * sound[at + i];
          own += sound[at + i] * sound[at + i];
        }
        double like = both / Math.sqrt(own + 1e-9);
        if (like > best) {
          best = like;
          place = at;
        }
      }
    }
    return place - vowel;
  }

  @Test
  void knowsWhatWasSaidBeforeAndAfter() throws IOException {
    Kit kit = MadeMouth.draft(folder).kit();
    List<KitSample> mi = kit.of("mi");
    assertEquals(2, mi.size());
    assertEquals(Optional.of("di"), mi.get(1).after());
    assertTrue(kit.of("ṇa").size() == 1, "na after gi is said ṇa");
  }

  @Test
  void findsTheNasalOfClosedSollusOnly() throws IOException {
    Kit kit = MadeMouth.draft(folder).kit();
    for (String closed : List.of("dhin", "tom", "nam")) {
      assertTrue(kit.of(closed).get(0).places().nasal().isPresent(), closed);
    }
    assertTrue(kit.of("ta").stream().allMatch(ta -> ta.places().nasal().isEmpty()));
  }

  @Test
  void hearsThePitchOfTheMouthAndNoOctave() throws IOException {
    Kit kit = MadeMouth.draft(folder).kit();
    assertTrue(kit.samples().size() > 20);
    for (KitSample sample : kit.samples()) {
      // The voice speaks at 208 Hz and falls to 0.86 of that.
      assertEquals(200, sample.pitchHz(), 35, sample.file());
    }
  }

  @Test
  void namesWhatIsNotInTheRecording() throws IOException {
    String more = MadeMouth.SHEET + "takajunu takajunu\n";
    KitMaker maker = new KitMaker(Lexicon.standard());
    maker.add(new MadeMouth().write(folder), CueSheet.read(more, "list.txt", Lexicon.standard()));
    KitDraft draft = maker.draft(new KitHead("river", "", "", ""));
    assertTrue(draft.missing().size() >= 6, draft.missing().toString());
    assertTrue(
        draft.missing().stream().allMatch(each -> each.contains("(line ")),
        draft.missing().toString());
  }

  @Test
  void refusesSilenceWithTheFilesName() throws IOException {
    Path silent = folder.resolve("silent.wav");
    KitSounds.write(silent, new float[48_000]);
    CueSheet sheet = CueSheet.read("ta", "s", Lexicon.standard());
    KitException refused =
        assertThrows(KitException.class, () -> new KitMaker(Lexicon.standard()).add(silent, sheet));
    assertTrue(refused.getMessage().contains("silent.wav is silent"), refused.getMessage());
  }

  @Test
  void doubtsWhatIsClipped() throws IOException {
    float[] loud = new MadeMouth().sound();
    for (int i = 0; i < loud.length; i++) {
      loud[i] = Math.max(-1, Math.min(1, 4 * loud[i]));
    }
    Path file = folder.resolve("loud.wav");
    KitSounds.write(file, loud);
    KitMaker maker = new KitMaker(Lexicon.standard());
    maker.add(file, CueSheet.read(MadeMouth.SHEET, "list.txt", Lexicon.standard()));
    Kit kit = maker.draft(new KitHead("river", "", "", "")).kit();
    long clipped =
        kit.samples().stream().filter(each -> each.doubts().contains("it is clipped")).count();
    assertTrue(clipped > 10, "clipped: " + clipped);
  }
}
