package org.matraloom.sound;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Timeline;
import org.matraloom.schedule.TimelineExcerpt;
import org.matraloom.score.Kriya;
import org.matraloom.time.FrameClock;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;
import org.matraloom.voice.SolluCue;
import org.matraloom.voice.SolluVoice;
import org.matraloom.voice.SolluWave;

/** A rendering that is changed while it goes on keeps every beat in its place. */
class PlayChangeTest {

  private static final int RATE = 48_000;
  private static final int BLOCK = 480;
  private static final Mix CLAPS = Mix.lesson().only(Set.of(MixPart.CLAP));

  /** A rendering that the test leads from block to block. */
  private static final class Run {
    private final Renderer renderer;
    private final List<Float> samples = new ArrayList<>();
    private final float[] block = new float[BLOCK];

    Run(Timeline timeline, Mix mix, SolluVoice voice) {
      renderer = new Renderer(timeline, timeline.clock(RATE), mix, voice, 1);
    }

    void until(long frame) {
      while (samples.size() < frame && step()) {}
    }

    private boolean step() {
      int frames = renderer.render(block, BLOCK);
      for (int i = 0; i < frames; i++) {
        samples.add(block[i]);
      }
      return frames > 0;
    }

    float[] rest() {
      until(Long.MAX_VALUE);
      float[] all = new float[samples.size()];
      for (int i = 0; i < all.length; i++) {
        all[i] = samples.get(i);
      }
      return all;
    }
  }

  private static PlayChange from(
      Timeline timeline, long beat, Mix mix, FrameClock clock, long frame) {
    Ratio place = Ratio.of(beat);
    long at = frame + clock.frameAt(place);
    return new PlayChange(
        new Passage(TimelineExcerpt.of(timeline, place, place), mix), clock, frame, at, at);
  }

  @Test
  void aChangeThatChangesNothingIsNotHeard() {
    Timeline timeline = Pieces.ringing(Tempo.of(90));
    FrameClock clock = timeline.clock(RATE);
    float[] unchanged = Rendered.of(timeline, RATE, Mix.lesson(), 1, BLOCK);
    for (long beat = 1; beat < 4; beat++) {
      Run run = new Run(timeline, Mix.lesson(), new GridVoice(RATE));
      run.until(clock.frameAt(Ratio.of(beat)) - 2_000);
      run.renderer.change(from(timeline, beat, Mix.lesson(), clock, 0));
      assertArrayEquals(unchanged, run.rest(), 1e-6f, "changed at beat " + beat);
    }
  }

  @ParameterizedTest
  @CsvSource({"66, 67, 13", "66, 132, 12", "200, 100, 21", "71, 66, 32"})
  void atANewTempoEveryBeatFromTheChangeOnIsExactAndThoseBeforeStay(long old, long next, long at) {
    Timeline timeline = Pieces.adi80(Tempo.of(old), 1);
    FrameClock clock = timeline.clock(RATE);
    long turn = clock.frameAt(Ratio.of(at));
    FrameClock faster = new FrameClock(Tempo.of(next), RATE, Ratio.of(at));

    Run run = new Run(timeline, CLAPS, new GridVoice(RATE));
    run.until(turn - 5_000);
    run.renderer.change(from(timeline, at, CLAPS, faster, turn));
    List<Long> heard = Rendered.onsets(run.rest(), RATE / 50);

    List<Long> expected = new ArrayList<>();
    for (Event.HandBeat hand : Pieces.events(timeline, Event.HandBeat.class)) {
      if (hand.kriya() instanceof Kriya.Clap) {
        boolean after = hand.beat().compareTo(Ratio.of(at)) >= 0;
        expected.add(after ? turn + faster.frameAt(hand.beat()) : clock.frameAt(hand.beat()));
      }
    }
    assertEquals(25, expected.size());
    assertEquals(expected, heard);
    assertEquals(
        turn + faster.frameAt(timeline.endBeat()) + RATE, run.samples.size(), "length with tail");
  }

  @Test
  void aLaterChangeAtTheSameBeatTakesThePlaceOfTheFirst() {
    Timeline timeline = Pieces.adi80(Tempo.of(60), 0);
    FrameClock clock = timeline.clock(RATE);
    Run run = new Run(timeline, CLAPS, new GridVoice(RATE));
    run.until(3L * RATE);
    FrameClock never = new FrameClock(Tempo.of(300), RATE, Ratio.of(4));
    run.renderer.change(from(timeline, 4, CLAPS, never, 4L * RATE));
    run.renderer.change(from(timeline, 4, CLAPS, clock, 0));
    List<Long> heard = Rendered.onsets(run.rest(), RATE / 50);
    assertEquals(Rendered.onsets(Rendered.mono(timeline, RATE, CLAPS), RATE / 50), heard);
  }

  @Test
  void theConsonantOfTheFirstSolluAfterTheChangeIsNotCutOff() {
    int lead = 700;
    SolluVoice voice =
        new SolluVoice() {
          @Override
          public int ratePerSecond() {
            return RATE;
          }

          @Override
          public int longestLeadFrames() {
            return lead;
          }

          @Override
          public SolluWave say(Optional<SolluCue> before, SolluCue cue, Optional<SolluCue> after) {
            float[] samples = new float[2 * lead];
            Arrays.fill(samples, 0.1f);
            return new SolluWave(samples, lead);
          }
        };
    Timeline timeline = Pieces.adi80(Tempo.of(60), 0);
    FrameClock clock = timeline.clock(RATE);
    Mix mix = Mix.lesson().only(Set.of(MixPart.VOICE));
    Run run = new Run(timeline, mix, voice);
    run.until(3L * RATE);
    run.renderer.change(from(timeline, 4, mix, clock, 0));
    List<Long> heard = Rendered.onsets(run.rest(), RATE / 50);
    assertTrue(heard.contains(4L * RATE - lead), "said from its consonant on");
    assertEquals(240, heard.size(), "each sollu once");
  }

  @Test
  void whatIsSettledCannotBeChanged() {
    Timeline timeline = Pieces.adi80(Tempo.of(60), 0);
    FrameClock clock = timeline.clock(RATE);
    Run run = new Run(timeline, CLAPS, new GridVoice(RATE));
    run.until(4L * RATE);
    assertTrue(run.renderer.openFrame() >= 4L * RATE);
    assertTrue(run.renderer.openFrame() <= 4L * RATE + 1_000, "not far ahead");
    PlayChange late = from(timeline, 4, CLAPS, clock, 0);
    assertThrows(IllegalArgumentException.class, () -> run.renderer.change(late));
  }

  @Test
  void theDroneGlidesToItsNewLevelWithoutAClick() {
    Timeline timeline = Pieces.adi80(Tempo.of(60), 0);
    FrameClock clock = timeline.clock(RATE);
    Mix mix = Mix.lesson().only(Set.of(MixPart.DRONE));
    SrutiDrone drone = new SrutiDrone(Sruti.parse("C3"), RATE);
    Renderer renderer =
        new Renderer(
            timeline,
            clock,
            mix,
            new GridVoice(RATE),
            1,
            Optional.of(drone),
            TrackPlace.whole(Renderer.lengthFrames(timeline, clock)));
    float[] before = new float[4 * RATE];
    float[] after = new float[4 * RATE];
    renderer.render(before, before.length);
    renderer.change(from(timeline, 5, mix.without(Set.of(MixPart.DRONE)), clock, 0));
    renderer.render(after, after.length);
    assertTrue(energy(before, RATE, 4 * RATE) > 0, "the drone was heard");
    assertEquals(0, energy(after, RATE, 4 * RATE), "and is heard no more");
    double usualStep = largestStep(before);
    assertTrue(Math.abs(after[0] - before[before.length - 1]) <= usualStep);
    assertTrue(largestStep(after) <= usualStep, "no step is larger than those of the drone itself");
  }

  private static double energy(float[] samples, int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += (double) samples[i] * samples[i];
    }
    return sum;
  }

  private static double largestStep(float[] samples) {
    double largest = 0;
    for (int i = 1; i < samples.length; i++) {
      largest = Math.max(largest, Math.abs(samples[i] - samples[i - 1]));
    }
    return largest;
  }
}
