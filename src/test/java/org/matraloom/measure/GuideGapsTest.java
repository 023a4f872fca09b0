package org.matraloom.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.follow.SaidAs;
import org.matraloom.recording.ShortenedRecording.LeftOut;
import org.matraloom.sound.GuideGap;
import org.matraloom.sound.TakeNote;
import org.matraloom.sound.TakeWriter;
import org.matraloom.wav.PcmFormat;
import org.matraloom.wav.WavReader;

/** What the recorder notes of a guide that stood still is read back as it was written. */
class GuideGapsTest {

  @TempDir private Path folder;

  private Path take(Optional<Long> start, List<GuideGap> gaps) throws IOException {
    Path file = folder.resolve("take.wav");
    Files.deleteIfExists(file);
    TakeNote note =
        new TakeNote(
            "puddle.loom",
            SaidAs.FOUR_AND_FIVE,
            SaidAs.timeline(SaidAs.FOUR_AND_FIVE),
            start,
            Optional.empty());
    try (TakeWriter writer = new TakeWriter(file, new PcmFormat(48_000, 16, 1), note)) {
      writer.write(new byte[960], 960);
      writer.interruptedBy(gaps);
      writer.write(new byte[960], 960);
    }
    try (WavReader reader = new WavReader(file)) {
      assertEquals(960, reader.lengthFrames());
    }
    return file;
  }

  /** A silence in the guide displaces the next one in the take. */
  @Test
  void placesInTheGuideBecomePlacesInTheTake() throws IOException {
    GuideGaps gaps =
        GuideGaps.of(
            take(
                Optional.of(12_000L),
                List.of(new GuideGap(48_000, 8_000), new GuideGap(96_000, 400))));
    assertEquals(2, gaps.count());
    assertEquals(48_000, gaps.ratePerSecond());
    assertEquals(
        List.of(new LeftOut(60_000, 8_000), new LeftOut(12_000 + 96_000 + 8_000, 400)),
        gaps.stretches());
    assertEquals(8_400, gaps.frames());
  }

  @Test
  void aGuideThatWentOnHasNone() throws IOException {
    assertSame(GuideGaps.NONE, GuideGaps.of(take(Optional.of(12_000L), List.of())));
    Path other = Files.writeString(folder.resolve("letter.txt"), "; silences: 4");
    assertSame(GuideGaps.NONE, GuideGaps.of(other));
  }

  @Test
  void whereTheGuideIsNotKnownTheSilencesAreCountedOnly() throws IOException {
    GuideGaps gaps = GuideGaps.of(take(Optional.empty(), List.of(new GuideGap(5, 7))));
    assertEquals(1, gaps.count());
    assertEquals(List.of(), gaps.stretches());
  }

  @Test
  void ofVeryManyTheFirstAreKept() throws IOException {
    List<GuideGap> many =
        LongStream.rangeClosed(1, 500).mapToObj(i -> new GuideGap(48_000 * i, 960)).toList();
    GuideGaps gaps = GuideGaps.of(take(Optional.of(0L), many));
    assertEquals(500, gaps.count());
    assertEquals(new LeftOut(48_000, 960), gaps.stretches().get(0));
    assertEquals(true, gaps.stretches().size() > 50, "kept " + gaps.stretches().size());
  }
}
