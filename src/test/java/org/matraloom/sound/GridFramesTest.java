package org.matraloom.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Kriya;
import org.matraloom.time.FrameClock;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/** Sounds begin at the exact frame of their event, before and after a change of nadai. */
class GridFramesTest {

  @ParameterizedTest
  @CsvSource({
    "44100, 75/2", "44100, 60", "44100, 66", "44100, 71", "44100, 200",
    "48000, 75/2", "48000, 60", "48000, 66", "48000, 71", "48000, 200",
    "96000, 75/2", "96000, 60", "96000, 66", "96000, 71", "96000, 200"
  })
  void everyClapIsOnItsFrameThroughTheChange(int rate, String beatsPerMinute) {
    Timeline timeline = Pieces.adi80(tempo(beatsPerMinute), 1);
    FrameClock clock = timeline.clock(rate);
    List<Long> written =
        Pieces.events(timeline, Event.HandBeat.class).stream()
            .filter(hand -> hand.kriya() instanceof Kriya.Clap)
            .map(hand -> clock.frameAt(hand.beat()))
            .toList();

    float[] mono = Rendered.mono(timeline, rate, Mix.lesson().only(Set.of(MixPart.CLAP)));

    assertEquals(3 * 8 + 1, written.size(), "three claps in each of 8 avartanas, and samam");
    assertEquals(written, Rendered.onsets(mono, rate / 50));
  }

  @ParameterizedTest
  @CsvSource({"44100", "48000", "96000"})
  void solluSpacingIsExactlyFiveToFour(int rate) {
    Timeline timeline = Pieces.adi80(Tempo.of(60), 0);
    List<Long> onsets =
        Rendered.onsets(Rendered.mono(timeline, rate, Mix.lesson().only(Set.of(MixPart.VOICE))), 1);

    assertEquals(240, onsets.size());
    for (int i = 0; i < 240; i++) {
      long expected = i < 160 ? rate / 4L * i : 40L * rate + rate / 5L * (i - 160);
      assertEquals(expected, onsets.get(i), "sollu " + i);
    }
    long atFour = onsets.get(160) - onsets.get(80);
    long atFive = onsets.get(239) - onsets.get(160) + rate / 5;
    assertEquals(5 * atFive, 4 * atFour);
  }

  @Test
  void everyFingerWaveAndTickIsOnItsFrame() {
    Timeline timeline = Pieces.adi80(Tempo.of(71), 1);
    FrameClock clock = timeline.clock(48_000);
    for (MixPart part : List.of(MixPart.COUNT, MixPart.WAVE, MixPart.TICK)) {
      List<Long> written =
          part == MixPart.TICK
              ? Pieces.events(timeline, Event.Tick.class).stream()
                  .map(tick -> clock.frameAt(tick.beat()))
                  .toList()
              : Pieces.events(timeline, Event.HandBeat.class).stream()
                  .filter(hand -> partOf(hand.kriya()) == part)
                  .map(hand -> clock.frameAt(hand.beat()))
                  .toList();
      float[] mono = Rendered.mono(timeline, 48_000, Mix.lesson().only(Set.of(part)));

      assertTrue(written.size() >= 16, part + " is heard");
      assertEquals(written, Rendered.onsets(mono, 480), part.toString());
    }
  }

  @Test
  void theTrackEndsOneSecondAfterTheLastBeat() {
    Timeline timeline = Pieces.adi80(Tempo.of(60), 1);
    assertEquals((8 + 56 + 1) * 48_000L, Renderer.lengthFrames(timeline, timeline.clock(48_000)));
  }

  private static MixPart partOf(Kriya kriya) {
    return kriya instanceof Kriya.Clap
        ? MixPart.CLAP
        : kriya instanceof Kriya.Count ? MixPart.COUNT : MixPart.WAVE;
  }

  private static Tempo tempo(String beatsPerMinute) {
    String[] parts = beatsPerMinute.split("/");
    return new Tempo(
        Ratio.of(Long.parseLong(parts[0]), parts.length == 1 ? 1 : Long.parseLong(parts[1])));
  }
}
