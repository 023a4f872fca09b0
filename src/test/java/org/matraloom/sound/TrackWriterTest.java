package org.matraloom.sound;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Kriya;
import org.matraloom.time.Tempo;
import org.matraloom.wav.PcmFormat;
import org.matraloom.wav.WavReader;

/** A whole track in a file: exact, named, the same every time. */
class TrackWriterTest {

  @TempDir Path folder;

  @Test
  void theSameTrackTwiceIsTheSameBytes() throws IOException {
    Timeline timeline = Pieces.adi80(Tempo.of(200), 1);
    byte[] first = write(timeline, Mix.lesson(), PcmFormat.USUAL, "first.wav");
    byte[] second = write(timeline, Mix.lesson(), PcmFormat.USUAL, "second.wav");
    assertTrue(first.length > 1_000_000);
    assertArrayEquals(first, second);
  }

  @ParameterizedTest
  @CsvSource({"44100, 16, 1", "48000, 16, 2", "48000, 24, 2", "96000, 24, 1"})
  void everyClapInTheFileBeginsOnItsFrame(int rate, int bits, int channels) throws IOException {
    Timeline timeline = Pieces.adi80(Tempo.of(71), 1);
    PcmFormat format = new PcmFormat(rate, bits, channels);
    write(timeline, Mix.lesson().only(Set.of(MixPart.CLAP)), format, "claps.wav");
    List<Long> written =
        Pieces.events(timeline, Event.HandBeat.class).stream()
            .filter(hand -> hand.kriya() instanceof Kriya.Clap)
            .map(hand -> timeline.clock(rate).frameAt(hand.beat()))
            .toList();

    try (WavReader reader = new WavReader(folder.resolve("claps.wav"))) {
      float[] samples = new float[(int) reader.lengthFrames() * channels];
      assertEquals(reader.lengthFrames(), reader.read(samples, (int) reader.lengthFrames()));
      float[] left = new float[samples.length / channels];
      for (int i = 0; i < left.length; i++) {
        left[i] = samples[i * channels];
      }
      assertEquals(written, Rendered.onsets(left, rate / 50));
    }
  }

  @Test
  void avartanasRoundsAndChangesAreNamed() throws IOException {
    Timeline timeline = Pieces.adi80(Tempo.of(60), 1);
    write(timeline, Mix.lesson(), PcmFormat.USUAL, "out.wav");
    try (WavReader reader = new WavReader(folder.resolve("out.wav"))) {
      assertEquals(
          List.of(
              "0 count-in",
              "8 round 1: Song, nadai 4",
              "8 avartana 1",
              "16 avartana 2",
              "24 avartana 3",
              "28 round 2: Song, nadai 4",
              "32 avartana 4",
              "40 avartana 5",
              "48 round 3: Song, nadai 5",
              "48 nadai change: 4 to 5 matras a beat",
              "48 avartana 6",
              "56 avartana 7",
              "64 avartana 8"),
          reader.cues().stream().map(cue -> cue.frame() / 48_000 + " " + cue.label()).toList());
      assertTrue(reader.cues().stream().allMatch(cue -> cue.frame() % 48_000 == 0));
    }
  }

  @Test
  void progressRunsToTheEnd() throws IOException {
    Timeline timeline = Pieces.adi80(Tempo.of(200), 0);
    TrackWriter track =
        new TrackWriter(timeline, Mix.lesson(), PcmFormat.USUAL, new GridVoice(48_000));
    List<Long> done = new ArrayList<>();
    track.write(
        folder.resolve("out.wav"),
        (doneFrames, totalFrames) -> {
          assertEquals(track.lengthFrames(), totalFrames);
          done.add(doneFrames);
        });
    assertTrue(done.size() > 50);
    assertEquals(done.stream().sorted().toList(), done);
    assertEquals(track.lengthFrames(), done.get(done.size() - 1));
  }

  @Test
  void aBrokenOffRenderingLeavesNothing() throws IOException {
    TrackWriter track =
        new TrackWriter(
            Pieces.adi80(Tempo.of(60), 1), Mix.lesson(), PcmFormat.USUAL, new GridVoice(48_000));
    assertThrows(
        IllegalStateException.class,
        () ->
            track.write(
                folder.resolve("out.wav"),
                (doneFrames, totalFrames) -> {
                  throw new IllegalStateException("stopped");
                }));
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(List.of(), files.toList());
    }
  }

  private byte[] write(Timeline timeline, Mix mix, PcmFormat format, String name)
      throws IOException {
    Path target = folder.resolve(name);
    new TrackWriter(timeline, mix, format, new GridVoice(format.ratePerSecond()))
        .write(target, RenderProgress.SILENT);
    return Files.readAllBytes(target);
  }
}
