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
import org.matraloom.sound.TakeNote;
import org.matraloom.sound.TakeWriter;
import org.matraloom.wav.PcmFormat;

/** The recorder's note is read back as it was written. */
class GuideStartTest {

  @TempDir private Path folder;

  private Path take(Optional<Long> roundTrip) throws IOException {
    Path file = folder.resolve("take" + roundTrip.orElse(0L) + ".wav");
    TakeNote note =
        new TakeNote(
            "puddle.loom",
            SaidAs.FOUR_AND_FIVE,
            ScoreTimeline.of(SaidAs.timeline(SaidAs.FOUR_AND_FIVE).performance(), 1),
            Optional.empty(),
            roundTrip);
    try (TakeWriter writer = new TakeWriter(file, new PcmFormat(48_000, 16, 1), note)) {
      writer.write(new byte[960], 960);
      writer.startsAt(12_000);
    }
    return file;
  }

  /** One avartana of adi is counted in, so the origin is beat -8; 12000 frames are 0.25 s. */
  @Test
  void theNoteOfATakeIsRead() throws IOException {
    assertEquals(Optional.of(new GuideStart(-8, 0.25, 80)), GuideStart.of(take(Optional.of(480L))));
  }

  @Test
  void withoutTheDelayOfTheDevicesTheGuideIsNotKnown() throws IOException {
    assertEquals(Optional.empty(), GuideStart.of(take(Optional.empty())));
    Path other = Files.writeString(folder.resolve("letter.txt"), "; tempo: 80; origin beat: 0");
    assertEquals(Optional.empty(), GuideStart.of(other));
  }
}
