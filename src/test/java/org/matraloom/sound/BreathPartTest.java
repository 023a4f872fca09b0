package org.matraloom.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Performance;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

class BreathPartTest {

  private static final int RATE = 48_000;

  /** A timeline with a breath of half a beat on beat 4. */
  private record Breathing(Timeline score) implements Timeline {
    @Override
    public Performance performance() {
      return score.performance();
    }

    @Override
    public Ratio originBeat() {
      return score.originBeat();
    }

    @Override
    public Ratio endBeat() {
      return score.endBeat();
    }

    @Override
    public Iterator<Event> iterator() {
      return List.<Event>of(new Event.Inhale(Ratio.of(4), Ratio.of(1, 2), true, 1)).iterator();
    }
  }

  @Test
  void breathsOutOfTheWayOfTheNextSollu() {
    Timeline timeline = new Breathing(Pieces.adi80(Tempo.of(60), 0));
    float[] samples = Rendered.mono(timeline, RATE, Mix.lesson());
    int start = 4 * RATE;
    int next = start + RATE / 2;
    assertEquals(0, peak(samples, 0, start));
    assertTrue(peak(samples, start, next) > 0.05);
    assertEquals(0, peak(samples, next - RATE / 100, samples.length), "silent 10 ms before it");
    double clap = Math.pow(10, Mix.CLAP_PEAK_DBFS / 20);
    assertEquals(-15, 20 * Math.log10(peak(samples, start, next) / clap), 0.01);
  }

  @Test
  void swellsWithoutAClick() {
    Timeline timeline = new Breathing(Pieces.adi80(Tempo.of(60), 0));
    float[] samples = Rendered.mono(timeline, RATE, Mix.lesson());
    double firstMs = peak(samples, 4 * RATE, 4 * RATE + RATE / 200);
    double whole = peak(samples, 4 * RATE, 5 * RATE);
    assertTrue(firstMs < whole / 10, firstMs + " of " + whole);
  }

  @Test
  void canBeMuted() {
    Timeline timeline = new Breathing(Pieces.adi80(Tempo.of(60), 0));
    float[] samples = Rendered.mono(timeline, RATE, Mix.lesson().without(Set.of(MixPart.BREATH)));
    assertEquals(0, peak(samples, 0, samples.length));
  }

  private static double peak(float[] samples, int from, int to) {
    double peak = 0;
    for (float sample : Arrays.copyOfRange(samples, from, to)) {
      peak = Math.max(peak, Math.abs(sample));
    }
    return peak;
  }
}
