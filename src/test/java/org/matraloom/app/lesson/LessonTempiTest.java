package org.matraloom.app.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.staircase.StairSettings;

/** Between which tempi a session moves. */
class LessonTempiTest {

  private final Composition song =
      ScoreReader.read(Path.of("samples-synth/gutter-song.loom"), Lexicon.standard())
          .composition()
          .orElseThrow();

  private int limit(Optional<Double> given, Lexicon lexicon) {
    StairSettings settings =
        LessonTempi.settings(
            song, Optional.of(200), Optional.empty(), LessonTempi.mouth(given, lexicon));
    return settings.mouthLimit();
  }

  /** Five matras a beat: a rate of r a second is 60 r / 5 beats a minute. */
  @Test
  void theLimitOfTheMouthIsWhatIsGivenElseWhatTheListSaysElseTwelve() {
    Lexicon own = Lexicon.standard().plus("fastest = 9.5", "own");
    assertEquals(144, limit(Optional.empty(), Lexicon.standard()));
    assertEquals(114, limit(Optional.empty(), own));
    assertEquals(84, limit(Optional.of(7.0), own));
  }
}
