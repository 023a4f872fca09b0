package org.matraloom.voice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Stress;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Matras;
import org.matraloom.score.Sollu;
import org.matraloom.score.Spoken;
import org.matraloom.time.Ratio;

/** Sollus said one after another by the real voice, for looking at. */
public final class SpokenLine {

  public static final int RATE = 48_000;
  public static final int MS = RATE / 1000;
  public static final Lexicon LEXICON = Lexicon.standard();

  private final List<SolluCue> cues = new ArrayList<>();
  private long endFrame = RATE / 4;
  private Stress stress = Stress.NONE;

  /** Lets the sollus after this have another stress. */
  public SpokenLine stressed(Stress next) {
    stress = next;
    return this;
  }

  /** Adds a sollu, or silence for a dot. */
  public SpokenLine say(String spelling, int ms) {
    return say(spelling, ms, 0);
  }

  /** Adds a sollu of so many milliseconds, and as many more of karvai. */
  public SpokenLine say(String spelling, int ms, int karvaiMs) {
    long length = (long) (ms + karvaiMs) * MS;
    if (!spelling.equals(".")) {
      String sound = LEXICON.sound(spelling).orElseThrow().name();
      Ratio beat = Ratio.of(endFrame, RATE);
      Ratio own = Ratio.of(ms, 1000);
      Ratio karvai = Ratio.of(karvaiMs, 1000);
      List<Matras> rings =
          karvaiMs == 0 ? List.of() : List.of(new Matras(beat.plus(own), karvai, karvai, 1));
      Spoken spoken =
          new Spoken(beat, own, rings, new Sollu(spelling, sound), 1, Spoken.Opens.NOTHING, "", 1);
      cues.add(new SolluCue(new Event.SolluSaid(spoken, stress), endFrame, length));
    }
    endFrame += length;
    return this;
  }

  public List<SolluCue> cues() {
    return cues;
  }

  public long gridFrame(int sollu) {
    return cues.get(sollu).startFrame();
  }

  public long endFrame() {
    return endFrame;
  }

  public SolluWave sound(SolluVoice voice, int sollu) {
    return voice.say(cue(sollu - 1), cues.get(sollu), cue(sollu + 1));
  }

  /** The sum of all of them, with silence around it. */
  public float[] render(SolluVoice voice) {
    float[] wave = new float[(int) endFrame + RATE / 4];
    for (int i = 0; i < cues.size(); i++) {
      SolluWave sound = sound(voice, i);
      int start = (int) (gridFrame(i) - sound.leadFrames());
      for (int j = 0; j < sound.samples().length && start + j < wave.length; j++) {
        wave[start + j] += sound.samples()[j];
      }
    }
    return wave;
  }

  static FormantVoice usual() {
    return voice(VoiceSettings.USUAL);
  }

  static FormantVoice voice(VoiceSettings settings) {
    return new FormantVoice(RATE, LEXICON, settings);
  }

  private Optional<SolluCue> cue(int index) {
    return index < 0 || index >= cues.size() ? Optional.empty() : Optional.of(cues.get(index));
  }
}
