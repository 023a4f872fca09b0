package org.matraloom.madetake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Timeline;
import org.matraloom.voice.SolluCue;

/**
 * A take that was made, with all that is known about it.
 *
 * @param sound the samples, full scale at 1
 * @param rate frames a second
 * @param plan what was said when, with the onsets as measured on the sounds alone
 */
public record MadeTake(float[] sound, int rate, TakePlan plan) {

  private static final double LEVEL = 0.5;
  private static final double TAIL_SECONDS = 1.2;
  private static final double FLOOR = 0.0003;
  private static final double BREATH_LEVEL = 0.012;

  /** Says a score. */
  public static MadeTake of(Timeline timeline, Flaws flaws, SolluSpeaker speaker) {
    return of(TakePlan.of(timeline, flaws), flaws.seed, speaker);
  }

  /** Says a plan; what is left to chance follows from the seed. */
  public static MadeTake of(TakePlan plan, long seed, SolluSpeaker speaker) {
    List<SolluTruth> truths = plan.sollus();
    SolluTruth last = truths.get(truths.size() - 1);
    double length = last.feltSeconds() + last.lengthSeconds() + TAIL_SECONDS;
    float[] sound = new float[frames(length)];
    Random random = new Random(~seed);
    for (int i = 0; i < sound.length; i++) {
      sound[i] = (float) (FLOOR * random.nextGaussian());
    }
    List<SolluCue> cues = truths.stream().map(MadeTake::cue).toList();
    List<SolluTruth> heard = new ArrayList<>();
    for (int k = 0; k < cues.size(); k++) {
      Optional<SolluCue> before = k == 0 ? Optional.empty() : Optional.of(cues.get(k - 1));
      Optional<SolluCue> after =
          k + 1 == cues.size() ? Optional.empty() : Optional.of(cues.get(k + 1));
      SolluSpeaker.Spoken spoken = speaker.say(before, cues.get(k), after);
      int from = (int) cues.get(k).startFrame() - spoken.feltFrame();
      double level = LEVEL * Math.pow(10, 1.5 * random.nextGaussian() / 20);
      for (int i = Math.max(0, -from); i < spoken.samples().length; i++) {
        if (from + i < sound.length) {
          sound[from + i] += (float) (level * spoken.samples()[i]);
        }
      }
      heard.add(truths.get(k).heardAt((double) (from + spoken.onsetFrame()) / SolluSpeaker.RATE));
    }
    plan.breaths().forEach(breath -> inhale(sound, breath, random));
    return new MadeTake(
        sound,
        SolluSpeaker.RATE,
        new TakePlan(plan.pulse(), heard, plan.landingSeconds(), plan.breaths()));
  }

  private static int frames(double seconds) {
    return (int) Math.round(seconds * SolluSpeaker.RATE);
  }

  private static SolluCue cue(SolluTruth truth) {
    Event.SolluSaid said = truth.said();
    int start = frames(truth.feltSeconds());
    int length = frames(truth.feltSeconds() + truth.lengthSeconds()) - start;
    return new SolluCue(said, start, length);
  }

  /** A quarter of a second of soft noise that swells and sinks. */
  private static void inhale(float[] sound, double middleSeconds, Random random) {
    int length = frames(0.25);
    int from = frames(middleSeconds) - length / 2;
    double low = 0;
    for (int i = 0; i < length; i++) {
      low += 0.3 * (random.nextGaussian() - low);
      sound[from + i] += (float) (BREATH_LEVEL * low * Math.sin(Math.PI * i / length));
    }
  }

  /** The same take heard another way. */
  MadeTake with(float[] other) {
    return new MadeTake(other, rate, plan);
  }
}
