package org.matraloom.app.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.notation.ScoreReader;
import org.matraloom.onset.BandEnergies;
import org.matraloom.onset.LiveOnsets;
import org.matraloom.recording.Recording;
import org.matraloom.recording.Recordings;
import org.matraloom.score.Lexicon;
import org.matraloom.staircase.StairSettings;

/** The verdict on a take that was listened to while it was said, against that on its file. */
class PassEarTest {

  @TempDir private Path folder;

  private final PassEar ear = new PassEar(Lexicon.standard());

  private Path take(MadeReciter reciter, LessonPass pass, String name) throws IOException {
    Path take = folder.resolve(name);
    reciter.play(pass, take);
    return take;
  }

  private static BandEnergies heard(Path take) throws IOException {
    try (Recording sound = Recordings.open(take)) {
      return LiveOnsets.listen(sound, onset -> {});
    }
  }

  private static LessonPass pass(int tempo) throws IOException {
    LessonPieces pieces =
        new LessonPieces(
            ScoreReader.read(Path.of("samples-synth/gutter-song.loom"), Lexicon.standard())
                .composition()
                .orElseThrow(),
            Lexicon.standard(),
            Optional.empty());
    return new Course(pieces, StairSettings.usual(tempo, 34, 120, 144), true).pass();
  }

  private void assertSame(PassEar.Verdict wanted, PassEar.Verdict told) {
    assertEquals(wanted.heard(), told.heard());
    assertEquals(wanted.sentence(), told.sentence());
    assertEquals(wanted.voicedSeconds(), told.voicedSeconds());
    assertEquals(wanted.entry().outcome(), told.entry().outcome());
    assertEquals(wanted.entry().tempo(), told.entry().tempo());
  }

  @Test
  void theVerdictIsTheSameFromTheFileAndFromWhatWasHeardMeanwhile() throws IOException {
    for (int tempo : new int[] {60, 80}) {
      LessonPass pass = pass(tempo);
      Path take = take(new MadeReciter(MadeReciter.Kind.VOICE, 60), pass, "pass-" + tempo + ".wav");
      PassEar.Verdict wanted = ear.listen(pass, take, Optional.empty());
      assertEquals(tempo == 60, wanted.heard().orElseThrow().clean(), wanted.sentence());
      assertSame(wanted, ear.listen(pass, take, Optional.of(heard(take))));
    }
  }

  @Test
  void whatWasHeardOfAnotherLengthDoesNotStandForTheFile() throws IOException {
    LessonPass pass = pass(60);
    Path take = take(new MadeReciter(MadeReciter.Kind.VOICE, 60), pass, "said.wav");
    LessonPass faster = pass(80);
    Path other = take(new MadeReciter(MadeReciter.Kind.SILENCE, 60), faster, "silent.wav");
    BandEnergies wrong = heard(other);
    PassEar.Verdict wanted = ear.listen(pass, take, Optional.empty());
    assertNotEquals(heard(take).lengthFrames(), wrong.lengthFrames());
    assertTrue(wanted.heard().isPresent());
    assertSame(wanted, ear.listen(pass, take, Optional.of(wrong)));
  }
}
