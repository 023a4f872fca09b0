package org.matraloom.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.time.Tempo;

/** The sounds of a phone page. */
class PageSoundMakerTest {

  private static final Composition FERRY =
      ScoreReader.read(Path.of("samples-synth/lantern-ferry.loom"), Lexicon.standard())
          .composition()
          .orElseThrow();

  @Test
  void everySolluHasAClipAtEveryTempoAndEqualOnesShareIt() {
    Performance performance = Performance.of(FERRY);
    PageSound sound = new PageSoundMaker(performance, Lexicon.standard()).make(List.of(50, 100));
    long sollus = performance.rounds().stream().mapToLong(Span.Round::sollus).sum();
    assertEquals(Set.of(50, 100), sound.sollus().keySet());
    for (List<Integer> clips : sound.sollus().values()) {
      assertEquals(sollus, clips.size());
      assertTrue(clips.stream().allMatch(clip -> clip < sound.clips().size()));
      assertTrue(clips.stream().distinct().count() < sollus / 2, "clips are shared");
    }
    assertTrue(sound.bytes() < 2_000_000, "bytes: " + sound.bytes());
  }

  /** Misra chapu claps on 1, 4 and 6 of 7 and holds between (lvnaga.wordpress.com, 2014). */
  @Test
  void theHandHoldsWhereTheTalaDoes() {
    PageSound sound =
        new PageSoundMaker(Performance.of(FERRY), Lexicon.standard()).make(List.of(100));
    assertEquals(
        List.of(true, false, false, true, false, true, false),
        sound.hand().stream().map(Optional::isPresent).toList());
    assertTrue(sound.hand().get(0).orElseThrow().gain() > sound.hand().get(3).orElseThrow().gain());
  }

  @Test
  void aTempoOutsideTheRangeIsLeftOut() {
    Performance fast = Performance.of(FERRY.at(Tempo.of(Tempo.FASTEST)));
    assertEquals(
        Set.of(100),
        new PageSoundMaker(fast, Lexicon.standard()).make(List.of(100, 110)).sollus().keySet());
  }
}
