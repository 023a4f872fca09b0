package org.matraloom.app.lesson;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.matraloom.device.DeviceException;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.madetake.Flaws;
import org.matraloom.madetake.KhandaFault;
import org.matraloom.madetake.MadeTake;
import org.matraloom.madetake.SolluSpeaker;
import org.matraloom.madetake.Speakers;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.score.Performance;
import org.matraloom.sound.TakeNote;
import org.matraloom.sound.TakeWriter;
import org.matraloom.staircase.StairStep;
import org.matraloom.wav.PcmFormat;

/**
 * Says each pass with a made voice, on no sound card: in time, but with the old speed kept in five
 * above some tempo; what else it does is told by the kind.
 */
final class MadeReciter implements PassPlayer {

  /** What else is heard of it. */
  enum Kind {
    /** The voice alone. */
    VOICE,
    /** Nothing at all. */
    SILENCE,
    /** The claps of the guide, and nothing else. */
    GUIDE,
    /** Noise. */
    NOISE,
    /** The microphone goes in the middle of the second pass. */
    UNPLUGGED
  }

  private static final int RATE = SolluSpeaker.RATE;

  /** What is recorded before the first clap of the count-in. */
  private static final double QUIET_SECONDS = 0.3;

  private final Kind kind;
  private final int cleanUpTo;
  private final List<LessonPass> passes = new ArrayList<>();
  private final List<StairStep> steps = new ArrayList<>();
  private long nanos;
  private int rests;

  MadeReciter(Kind kind, int cleanUpTo) {
    this.kind = kind;
    this.cleanUpTo = cleanUpTo;
  }

  List<LessonPass> passes() {
    return passes;
  }

  List<StairStep> steps() {
    return steps;
  }

  long nanos() {
    return nanos;
  }

  @Override
  public PlayedPass play(LessonPass pass, Path target) throws IOException {
    passes.add(pass);
    double beat = 60 / pass.composition().tempo().beatsPerMinute().toDouble();
    float[] sound = sound(pass, beat);
    nanos += (long) (1e9 * sound.length / RATE);
    TakeNote note =
        new TakeNote(pass.what(), "", pass.timeline(), Optional.empty(), Optional.empty());
    try (TakeWriter take = new TakeWriter(target, new PcmFormat(RATE, 16, 1), note)) {
      boolean isCut = kind == Kind.UNPLUGGED && passes.size() == 2;
      byte[] pcm = pcm(sound, isCut ? sound.length / 2 : sound.length);
      take.write(pcm, pcm.length);
      take.startsAt(Math.round(QUIET_SECONDS * RATE));
      if (isCut) {
        throw new DeviceException("the microphone gives no more sound");
      }
    }
    return PlayedPass.unheard(true);
  }

  private float[] sound(LessonPass pass, double beat) {
    Flaws flaws = new Flaws(passes.size());
    ExpectedSollu first = ExpectedSollu.of(pass.timeline()).get(0);
    flaws.startSeconds = QUIET_SECONDS + pass.timeline().secondsAt(first.beat()).toDouble();
    if (pass.tempo() > cleanUpTo) {
      flaws.khanda = Optional.of(KhandaFault.OLD_SPEED_THROUGHOUT);
    }
    float[] sound =
        MadeTake.of(
                ScoreTimeline.of(Performance.of(pass.composition()), 0),
                flaws,
                new Speakers(Path.of(".")).named(Speakers.LOW))
            .sound();
    if (kind == Kind.VOICE || kind == Kind.UNPLUGGED) {
      return sound;
    }
    float[] other = new float[sound.length];
    Random random = new Random(passes.size());
    for (int i = 0; i < other.length && kind != Kind.SILENCE; i++) {
      double inBeat = ((double) i / RATE - QUIET_SECONDS) % beat;
      double level = kind == Kind.NOISE ? 0.05 : 0.2 * Math.exp(-Math.max(0, inBeat) / 0.01);
      other[i] = (float) (level * random.nextGaussian() * (inBeat < 0 ? 0 : 1));
    }
    return other;
  }

  private static byte[] pcm(float[] sound, int frames) {
    byte[] pcm = new byte[2 * frames];
    for (int i = 0; i < frames; i++) {
      short sample = (short) Math.round(32_000 * Math.max(-1, Math.min(1, sound[i])));
      pcm[2 * i] = (byte) sample;
      pcm[2 * i + 1] = (byte) (sample >> 8);
    }
    return pcm;
  }

  @Override
  public boolean tell(StairStep step, String sentence, String decision) {
    steps.add(step);
    return true;
  }

  @Override
  public boolean rest(double seconds, String sentence) {
    rests++;
    nanos += (long) (1e9 * seconds);
    return true;
  }

  int rests() {
    return rests;
  }
}
