package org.matraloom.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.follow.SaidAs;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.sound.TakeNote;
import org.matraloom.sound.TakeWriter;
import org.matraloom.wav.PcmFormat;

/** A take of some rounds is measured as these rounds. */
class RecordedRoundsTest {

  @TempDir private Path folder;

  private final Performance whole = SaidAs.timeline(SaidAs.FOUR_AND_FIVE).performance();

  @Test
  void theRoundsOfATakeAreRead() throws IOException {
    int last = whole.rounds().size();
    Path file = folder.resolve("last.wav");
    TakeNote note =
        new TakeNote(
            "puddle.loom",
            SaidAs.FOUR_AND_FIVE,
            ScoreTimeline.of(whole.onlyRounds(last, last), 1),
            Optional.empty(),
            Optional.empty());
    try (TakeWriter writer = new TakeWriter(file, new PcmFormat(48_000, 16, 1), note)) {
      writer.write(new byte[960], 960);
    }
    RecordedRounds rounds = RecordedRounds.of(file).orElseThrow();
    assertEquals(new RecordedRounds(last, last), rounds);
    Performance measured = rounds.in(whole);
    assertEquals(1, measured.rounds().size());
    Span.Round round = measured.rounds().get(0);
    assertEquals(last, round.number());
    assertEquals(whole.rounds().get(last - 1).startBeat(), round.startBeat());
  }

  @Test
  void roundsThatTheScoreNoLongerHasAreTheWhole() {
    assertEquals(whole, new RecordedRounds(2, 99).in(whole));
  }

  @Test
  void otherRecordingsHaveNoSuchNote() throws IOException {
    Path plain = folder.resolve("plain.wav");
    Files.write(plain, new byte[] {'R', 'I', 'F', 'F', 0, 0, 0, 0});
    assertEquals(Optional.empty(), RecordedRounds.of(plain));
    assertEquals(Optional.empty(), RecordedRounds.of(folder.resolve("none.wav")));
  }
}
