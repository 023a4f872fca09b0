package org.matraloom.sound;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.matraloom.loudness.TruePeak;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Kriya;
import org.matraloom.time.Tempo;

/** Blocks add up to one and the same rendering, whatever is asked for and however often. */
class RendererTest {

  private static final int RATE = 48_000;
  private static final Timeline PIECE = Pieces.adi80(Tempo.of(200), 1);

  @ParameterizedTest
  @ValueSource(ints = {1, 7, 255, 256, 257, 4_096, 10_000_000})
  void theSizeOfTheBlocksChangesNoBit(int blockFrames) {
    Mix loud = Mix.lesson().withOutput(12);
    float[] usual = Rendered.of(PIECE, RATE, loud, 2, 1_000);
    assertTrue(usual.length > 2 * 15 * RATE, "there is something to compare");
    assertArrayEquals(usual, Rendered.of(PIECE, RATE, loud, 2, blockFrames));
  }

  @Test
  void monoIsTheMeanOfLeftAndRight() {
    Mix mix = Mix.lesson().withPan(MixPart.VOICE, -1).withPan(MixPart.CLAP, 0.6).withOutput(9);
    float[] stereo = Rendered.of(PIECE, RATE, mix, 2, 512);
    float[] mono = Rendered.of(PIECE, RATE, mix, 1, 512);
    assertEquals(stereo.length, 2 * mono.length);
    boolean differs = false;
    for (int i = 0; i < mono.length; i++) {
      assertEquals((stereo[2 * i] + stereo[2 * i + 1]) * 0.5f, mono[i]);
      differs |= stereo[2 * i] != stereo[2 * i + 1];
    }
    assertTrue(differs, "the sides are panned");
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 12, 24})
  void nothingClipsAndNothingDrifts(double outputDb) {
    float[] mono = Rendered.mono(PIECE, RATE, Mix.lesson().withOutput(outputDb));
    double sum = 0;
    for (float sample : mono) {
      assertTrue(Math.abs(sample) <= 0.8414, "a sample of " + sample);
      sum += sample;
    }
    assertEquals(0, sum / mono.length, 3.16e-4, "DC lies under -70 dB");
  }

  /** Peaks between samples by ITU-R BS.1770-4, annex 2, even when driven hard into the limiter. */
  @ParameterizedTest
  @ValueSource(ints = {44_100, 48_000, 96_000})
  void truePeakStaysUnderMinusOne(int rate) {
    for (double outputDb : new double[] {0, 6, 18}) {
      float[] mono = Rendered.mono(PIECE, rate, Mix.lesson().withOutput(outputDb));
      TruePeak meter = new TruePeak(1);
      meter.add(new float[][] {mono}, 0, mono.length);
      assertTrue(meter.dbtp() <= -1, rate + " at +" + outputDb + " dB: " + meter.dbtp());
    }
  }

  @Test
  void strokesHaveTheirLevelsAgainstTheClap() {
    Timeline timeline = Pieces.adi(32, 2, Tempo.of(60), 1);
    float[] mono =
        Rendered.mono(timeline, RATE, Mix.lesson().without(Set.of(MixPart.VOICE, MixPart.TICK)));
    List<Event.HandBeat> hands = Pieces.events(timeline, Event.HandBeat.class);
    int seen = 0;
    for (Event.HandBeat hand : hands) {
      int frame = (int) timeline.clock(RATE).frameAt(hand.beat());
      if (frame >= RATE) {
        double expectedDb = -6 + levelDb(hand);
        assertEquals(expectedDb, peakDb(mono, frame, RATE / 4), 0.01, hand.toString());
        seen++;
      }
    }
    assertTrue(seen > 20, "strokes were measured: " + seen);
  }

  private static double levelDb(Event.HandBeat hand) {
    double part = hand.kriya() instanceof Kriya.Count ? -12 : 0;
    part = hand.kriya() instanceof Kriya.Wave ? -6 : part;
    return part + (hand.samam() ? 2 : 0) + (hand.again() ? -6 : 0);
  }

  private static double peakDb(float[] mono, int from, int frames) {
    float peak = 0;
    for (int i = from; i < from + frames; i++) {
      peak = Math.max(peak, Math.abs(mono[i]));
    }
    return 20 * Math.log10(peak);
  }

  @Test
  void theFirstSecondStartsSoftly() {
    Timeline timeline = Pieces.adi80(Tempo.of(60), 1);
    float[] mono = Rendered.mono(timeline, RATE, Mix.lesson().only(Set.of(MixPart.CLAP)));
    double first = peakDb(mono, 0, RATE / 4);
    double later = peakDb(mono, 8 * RATE, RATE / 4);
    assertEquals(-6, first - later, 0.2, "samam in the count-in against samam of the first round");
  }

  @Test
  void theCountInCanBeHeardWholeWhateverIsMuted() {
    Timeline timeline = Pieces.adi80(Tempo.of(60), 1);
    Mix voiceOnly = Mix.lesson().only(Set.of(MixPart.VOICE)).withPan(MixPart.CLAP, -1);
    float[] without = Rendered.of(timeline, RATE, voiceOnly, 2, 4_096);
    float[] with = Rendered.of(timeline, RATE, voiceOnly.withWholeCountIn(), 2, 4_096);

    int start = 2 * 8 * RATE;
    float[] silence = new float[start];
    assertArrayEquals(silence, Arrays.copyOf(without, start));
    List<Long> onsets =
        Rendered.onsets(Rendered.mono(timeline, RATE, voiceOnly.withWholeCountIn()), RATE / 2);
    assertEquals(List.of(0L, 48_000L, 96_000L, 144_000L, 192_000L), onsets.subList(0, 5));
    for (int i = 0; i < start; i += 2) {
      assertEquals(with[i], with[i + 1], "both sides");
    }
    assertArrayEquals(
        Arrays.copyOfRange(without, start, without.length),
        Arrays.copyOfRange(with, start, with.length));
  }

  @Test
  void nothingComesAfterTheEnd() {
    Renderer renderer =
        new Renderer(PIECE, PIECE.clock(RATE), Mix.lesson(), new GridVoice(RATE), 1);
    int length = (int) Renderer.lengthFrames(PIECE, PIECE.clock(RATE));
    float[] block = new float[length + 100];
    assertEquals(length, renderer.render(block, length + 100));
    assertEquals(0, block[length]);
    assertEquals(0, renderer.render(block, 10));
    assertThrows(IllegalArgumentException.class, () -> renderer.render(block, length + 101));
    assertThrows(IllegalArgumentException.class, () -> renderer.render(block, -1));
  }

  @Test
  void refusesAVoiceOfAnotherRate() {
    GridVoice voice = new GridVoice(44_100);
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class,
            () -> new Renderer(PIECE, PIECE.clock(RATE), Mix.lesson(), voice, 2));
    assertEquals(
        "the voice is made for 44100 frames a second, the rendering has 48000",
        refused.getMessage());
    assertThrows(
        IllegalArgumentException.class,
        () -> new Renderer(PIECE, PIECE.clock(RATE), Mix.lesson(), new GridVoice(RATE), 3));
  }
}
