package org.matraloom.drum;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.matraloom.schedule.Stress;
import org.matraloom.score.DrumStroke;
import org.matraloom.voice.SolluCue;
import org.matraloom.voice.SolluVoice;
import org.matraloom.voice.SolluWave;

/** Plays sollus on a drum instead of saying them; each stroke falls on its beat to the frame. */
public final class DrumVoice implements SolluVoice {

  /** The tonic of a drum where no other is asked for: d below middle c, in hertz. */
  public static final double USUAL_HERTZ = 146.83;

  private static final float PLAIN = 0.75f;
  private static final float PHRASE = 0.85f;

  private record Key(List<DrumStroke> strokes, Stress stress) {}

  private final int ratePerSecond;
  private final StrokeTable table;
  private final DrumSound sound;
  private final Map<Key, SolluWave> waves = new ConcurrentHashMap<>();

  /**
   * A drum.
   *
   * @param ratePerSecond frames a second
   * @param tonicHertz what its right head is tuned to
   * @param table the strokes of each sollu
   */
  public DrumVoice(int ratePerSecond, double tonicHertz, StrokeTable table) {
    this.ratePerSecond = ratePerSecond;
    this.table = table;
    this.sound = new DrumSound(tonicHertz, ratePerSecond);
  }

  @Override
  public int ratePerSecond() {
    return ratePerSecond;
  }

  @Override
  public int longestLeadFrames() {
    return 0;
  }

  @Override
  public SolluWave say(Optional<SolluCue> before, SolluCue cue, Optional<SolluCue> after) {
    Key key = new Key(table.of(cue.said().sollu()), cue.said().stress());
    return waves.computeIfAbsent(key, this::wave);
  }

  private SolluWave wave(Key key) {
    float gain =
        switch (key.stress()) {
          case ROUND, SAMAM -> 1;
          case PHRASE -> PHRASE;
          case NONE -> PLAIN;
        };
    float[] samples = sound.together(key.strokes());
    for (int frame = 0; frame < samples.length; frame++) {
      samples[frame] *= gain;
    }
    return new SolluWave(samples, 0);
  }
}
