package org.matraloom.madetake;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import org.matraloom.onset.Onset;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Timeline;

/** Takes in which voice and hand each keep a time of their own, both of them known. */
public final class ClappedTake {

  private static final double VOICE_PEAK = 0.5;
  private static final double MOST_OFF_SECONDS = 0.040;

  private ClappedTake() {}

  /** A score said at given times, each sollu a little off for itself. */
  public static TakePlan said(
      Timeline timeline, DoubleUnaryOperator secondsAt, double jitterSeconds, long seed) {
    Random random = new Random(seed);
    List<SolluTruth> sollus = new ArrayList<>();
    for (Event event : timeline) {
      if (event instanceof Event.SolluSaid said) {
        double asked = secondsAt.applyAsDouble(said.beat().toDouble());
        double end = secondsAt.applyAsDouble(said.beat().plus(said.beats()).toDouble());
        double felt = asked + jitterSeconds * random.nextGaussian();
        sollus.add(new SolluTruth(sollus.size(), said, felt, end - asked, felt));
      }
    }
    double beats = timeline.performance().endBeat().toDouble();
    double start = secondsAt.applyAsDouble(0);
    double period = (secondsAt.applyAsDouble(beats) - start) / beats;
    return new TakePlan(new TakePulse(0, beats, start, period, 0), sollus, 0, List.of());
  }

  /** A plan broken off before one sollu and begun again with another, so much later. */
  public static TakePlan restarted(TakePlan plan, int brokenOff, int again, double laterSeconds) {
    List<SolluTruth> sollus = new ArrayList<>(plan.sollus().subList(0, brokenOff));
    plan.sollus().subList(again, plan.sollus().size()).stream()
        .map(truth -> truth.on(1, laterSeconds))
        .forEach(sollus::add);
    return new TakePlan(plan.pulse(), sollus, 0, List.of());
  }

  /** A take with a stroke at each of some times, peaking so far below the peaks of the voice. */
  public static MadeTake with(
      MadeTake take, double[] seconds, List<float[]> strokes, double belowDb) {
    float[] sound = take.sound().clone();
    double gain = VOICE_PEAK * Math.pow(10, -belowDb / 20);
    for (int k = 0; k < seconds.length; k++) {
      int from = (int) Math.round(seconds[k] * take.rate());
      float[] stroke = strokes.get(k % strokes.size());
      for (int i = 0; i < stroke.length; i++) {
        if (from + i >= 0 && from + i < sound.length) {
          sound[from + i] += (float) (gain * stroke[i]);
        }
      }
    }
    return take.with(sound);
  }

  /**
   * Claps of two flat hands: some bursts of noise within 10 ms that die away, none like another.
   */
  public static List<float[]> claps(int count, long seed) {
    Random random = new Random(seed);
    List<float[]> claps = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      float[] clap = new float[SolluSpeaker.RATE / 10];
      double level = Math.pow(10, 2 * random.nextGaussian() / 20);
      double pitch = 1_300 + 200 * random.nextGaussian();
      add(clap, 0, 0.6, 0.0025, 2_200, random);
      add(clap, 0.004 + 0.002 * random.nextDouble(), 1, 0.009, pitch, random);
      claps.add(scaled(clap, level));
    }
    return claps;
  }

  private static void add(
      float[] clap, double late, double gain, double decay, double hertz, Random random) {
    double radius = Math.exp(-Math.PI * 900 / SolluSpeaker.RATE);
    double turn = 2 * radius * Math.cos(2 * Math.PI * hertz / SolluSpeaker.RATE);
    double last = 0;
    double before = 0;
    for (int i = (int) (late * SolluSpeaker.RATE); i < clap.length; i++) {
      double t = (double) i / SolluSpeaker.RATE - late;
      double now =
          random.nextGaussian() * Math.exp(-t / decay) + turn * last - radius * radius * before;
      before = last;
      last = now;
      clap[i] += (float) (gain * now);
    }
  }

  /** Clicks of a machine: a short tone, each like the other. */
  public static List<float[]> clicks(double hertz, double decaySeconds) {
    float[] click = new float[SolluSpeaker.RATE / 10];
    for (int i = 0; i < click.length; i++) {
      double t = (double) i / SolluSpeaker.RATE;
      click[i] = (float) (Math.sin(2 * Math.PI * hertz * t) * Math.exp(-t / decaySeconds));
    }
    return List.of(scaled(click, 1));
  }

  private static float[] scaled(float[] stroke, double level) {
    float peak = 0;
    for (float sample : stroke) {
      peak = Math.max(peak, Math.abs(sample));
    }
    float[] scaled = new float[stroke.length];
    for (int i = 0; i < stroke.length; i++) {
      scaled[i] = (float) (level * stroke[i] / peak);
    }
    return scaled;
  }

  /** The onsets that are sollus: for each the nearest to what is from its attack to its vowel. */
  public static Set<Integer> paired(TakePlan plan, List<Onset> onsets) {
    Set<Integer> paired = new TreeSet<>();
    for (SolluTruth truth : plan.sollus()) {
      int best = -1;
      double nearest = MOST_OFF_SECONDS;
      for (int j = 0; j < onsets.size(); j++) {
        double at = onsets.get(j).seconds();
        double off = Math.max(truth.onsetSeconds() - at, at - truth.feltSeconds());
        if (off < nearest && !paired.contains(j)) {
          nearest = off;
          best = j;
        }
      }
      if (best >= 0) {
        paired.add(best);
      }
    }
    return paired;
  }
}
