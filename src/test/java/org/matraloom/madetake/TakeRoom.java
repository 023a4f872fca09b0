package org.matraloom.madetake;

import java.util.Random;

/** What a room, a microphone and a telephone do to a made take; times stay as they were. */
final class TakeRoom {

  private static final double VOICE_PEAK = 0.5;

  private TakeRoom() {}

  /** Noise of a room, falling by 3 dB an octave, so far below the mean power of the voice. */
  static MadeTake noise(MadeTake take, double belowDb, long seed) {
    Random random = new Random(seed);
    float[] noise = new float[take.sound().length];
    double[] slow = new double[3];
    for (int i = 0; i < noise.length; i++) {
      double white = random.nextGaussian();
      slow[0] = 0.99765 * slow[0] + white * 0.0990460;
      slow[1] = 0.96300 * slow[1] + white * 0.2965164;
      slow[2] = 0.57000 * slow[2] + white * 1.0526913;
      noise[i] = (float) (slow[0] + slow[1] + slow[2] + white * 0.1848);
    }
    double gain = Math.sqrt(power(take.sound()) / power(noise)) * Math.pow(10, -belowDb / 20);
    return take.with(sum(take.sound(), noise, gain));
  }

  /** A clap or a click on every beat, peaking so far below the peaks of the voice. */
  static MadeTake bleed(MadeTake take, double belowDb, boolean claps, long seed) {
    Random random = new Random(seed);
    float[] strokes = new float[take.sound().length];
    TakePulse pulse = take.plan().pulse();
    int length = take.rate() / 10;
    for (double beat = Math.ceil(pulse.firstBeat() - 8); ; beat++) {
      int from = (int) Math.round(pulse.secondsAt(beat) * take.rate());
      if (from + length >= strokes.length) {
        break;
      }
      float[] stroke = claps ? clap(take.rate(), random) : click(take.rate());
      for (int i = 0; i < length && from >= 0; i++) {
        strokes[from + i] += stroke[i];
      }
    }
    return take.with(sum(take.sound(), strokes, VOICE_PEAK * Math.pow(10, -belowDb / 20)));
  }

  private static float[] clap(int rate, Random random) {
    float[] stroke = new float[rate / 10];
    double low = 0;
    double peak = 0;
    for (int i = 0; i < stroke.length; i++) {
      double before = low;
      low += 0.25 * (random.nextGaussian() - low);
      stroke[i] = (float) ((low - before) * Math.exp(-i / (0.010 * rate)));
      peak = Math.max(peak, Math.abs(stroke[i]));
    }
    for (int i = 0; i < stroke.length; i++) {
      stroke[i] /= (float) peak;
    }
    return stroke;
  }

  private static float[] click(int rate) {
    float[] stroke = new float[rate / 10];
    for (int i = 0; i < stroke.length; i++) {
      double t = (double) i / rate;
      stroke[i] = (float) (Math.sin(2 * Math.PI * 1_800 * t) * Math.exp(-t / 0.004));
    }
    return stroke;
  }

  /** A room of half a second: a few walls, then a tail of many. */
  static MadeTake echo(MadeTake take, long seed) {
    Random random = new Random(seed);
    float[] sound = take.sound();
    float[] wet = sound.clone();
    for (int wall = 0; wall < 70; wall++) {
      double late = 0.006 + 0.5 * Math.pow(random.nextDouble(), 1.5);
      double gain = 0.22 * Math.pow(10, -3 * late / 0.5) * (random.nextBoolean() ? 1 : -1);
      int delay = (int) (late * take.rate());
      for (int i = delay; i < wet.length; i++) {
        wet[i] += (float) (gain * sound[i - delay]);
      }
    }
    return take.with(wet);
  }

  /** A telephone's level control: quick down, slow up. */
  static MadeTake pumping(MadeTake take) {
    float[] sound = take.sound().clone();
    double level = 0.01;
    double down = 1 - Math.exp(-1 / (0.008 * take.rate()));
    double up = 1 - Math.exp(-1 / (0.35 * take.rate()));
    for (int i = 0; i < sound.length; i++) {
      double here = Math.abs(sound[i]);
      level += (here > level ? down : up) * (here - level);
      sound[i] *= (float) (0.2 / Math.pow(Math.max(level, 0.002), 0.7) / 3);
    }
    return take.with(sound);
  }

  /** Another voice behind the first. */
  static MadeTake secondVoice(MadeTake take, MadeTake other, double belowDb) {
    return take.with(sum(take.sound(), other.sound(), Math.pow(10, -belowDb / 20)));
  }

  /** Recorded too loud: cut off at half its peak. */
  static MadeTake clipped(MadeTake take) {
    float[] sound = take.sound().clone();
    for (int i = 0; i < sound.length; i++) {
      sound[i] = Math.max(-0.9f, Math.min(0.9f, sound[i] * 4));
    }
    return take.with(sound);
  }

  /** A telephone line: 300 to 3400 Hz, 8000 frames a second, mu-law. */
  static MadeTake telephone(MadeTake take) {
    double[] wide = new double[take.sound().length];
    for (int i = 0; i < wide.length; i++) {
      wide[i] = take.sound()[i];
    }
    double[] kernel = lowPass(3_400.0 / take.rate(), 200);
    double slow = 1 - Math.exp(-2 * Math.PI * 300 / take.rate());
    for (int pass = 0; pass < 2; pass++) {
      double below = 0;
      for (int i = 0; i < wide.length; i++) {
        below += slow * (wide[i] - below);
        wide[i] -= below;
      }
    }
    int rate = 8_000;
    float[] narrow = new float[(int) ((long) wide.length * rate / take.rate())];
    for (int i = 0; i < narrow.length; i++) {
      int middle = (int) Math.round((double) i * take.rate() / rate);
      double sum = 0;
      for (int k = 0; k < kernel.length; k++) {
        int at = middle + k - kernel.length / 2;
        sum += at >= 0 && at < wide.length ? kernel[k] * wide[at] : 0;
      }
      narrow[i] = muLaw(sum);
    }
    return new MadeTake(narrow, rate, take.plan());
  }

  private static float muLaw(double sample) {
    double code = Math.signum(sample) * Math.log1p(255 * Math.min(1, Math.abs(sample)));
    double rounded = Math.round(code / Math.log(256) * 127) / 127.0;
    return (float) (Math.signum(rounded) * Math.expm1(Math.abs(rounded) * Math.log(256)) / 255);
  }

  private static double[] lowPass(double cut, int reach) {
    double[] kernel = new double[2 * reach + 1];
    for (int k = 0; k < kernel.length; k++) {
      int x = k - reach;
      double sinc = x == 0 ? 2 * cut : Math.sin(2 * Math.PI * cut * x) / (Math.PI * x);
      kernel[k] = sinc * (0.5 + 0.5 * Math.cos(Math.PI * x / reach));
    }
    return kernel;
  }

  /** What an encoder leaves: a delay before the sound, nothing above 11 kHz. */
  static MadeTake delayed(MadeTake take) {
    int delay = 1_105;
    float[] sound = new float[take.sound().length + delay];
    double[] kernel = lowPass(11_000.0 / take.rate(), 20);
    for (int i = 0; i < take.sound().length; i++) {
      double sum = 0;
      for (int k = 0; k < kernel.length; k++) {
        int at = i + k - kernel.length / 2;
        sum += at >= 0 && at < take.sound().length ? kernel[k] * take.sound()[at] : 0;
      }
      sound[i + delay] = Math.round(sum * 500) / 500f;
    }
    return new MadeTake(sound, take.rate(), take.plan().on(1, (double) delay / take.rate()));
  }

  /** The clock of the recorder runs slow, so that the recording is shorter by this factor. */
  static MadeTake clock(MadeTake take, double factor) {
    float[] sound = new float[(int) (take.sound().length * factor) - 2];
    for (int i = 0; i < sound.length; i++) {
      double at = i / factor;
      int whole = (int) at;
      double part = at - whole;
      sound[i] = (float) ((1 - part) * take.sound()[whole] + part * take.sound()[whole + 1]);
    }
    return new MadeTake(sound, take.rate(), take.plan().on(factor, 0));
  }

  private static double power(float[] sound) {
    double sum = 0;
    for (float sample : sound) {
      sum += sample * sample;
    }
    return sum / sound.length;
  }

  private static float[] sum(float[] first, float[] second, double gain) {
    float[] sum = first.clone();
    for (int i = 0; i < Math.min(sum.length, second.length); i++) {
      sum[i] += (float) (gain * second[i]);
    }
    return sum;
  }
}
