package org.matraloom.voice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Timeline;
import org.matraloom.time.FrameClock;

/**
 * The sollus of a timeline and nothing else, from the first sound to the last.
 *
 * @param samples one channel, full scale being 1
 * @param gridFrames where in them the felt beat of each sollu falls, in order
 */
public record SpokenPhrase(float[] samples, List<Integer> gridFrames) {

  /** Room for the peaks of a short phrase, as a factor. */
  private static final float GAIN = 0.5f;

  /** Copies the list. */
  public SpokenPhrase {
    gridFrames = List.copyOf(gridFrames);
  }

  /**
   * Says the sollus of a timeline.
   *
   * @param timeline what is said
   * @param voice says it
   * @return the sound
   * @throws IllegalArgumentException if nothing is said
   */
  public static SpokenPhrase of(Timeline timeline, SolluVoice voice) {
    FrameClock clock = timeline.clock(voice.ratePerSecond());
    List<SolluCue> cues = new ArrayList<>();
    timeline.forEach(
        event -> {
          if (event instanceof Event.SolluSaid said) {
            cues.add(SolluCue.of(said, clock));
          }
        });
    if (cues.isEmpty()) {
      throw new IllegalArgumentException("nothing is said");
    }
    List<SolluWave> sounds = new ArrayList<>();
    for (int i = 0; i < cues.size(); i++) {
      sounds.add(voice.say(cue(cues, i - 1), cues.get(i), cue(cues, i + 1)));
    }
    return joined(cues, sounds);
  }

  private static SpokenPhrase joined(List<SolluCue> cues, List<SolluWave> sounds) {
    long first = begin(cues.get(0), sounds.get(0));
    int last = cues.size() - 1;
    long end = begin(cues.get(last), sounds.get(last)) + sounds.get(last).samples().length;
    float[] samples = new float[(int) (end - first)];
    List<Integer> grid = new ArrayList<>();
    for (int i = 0; i < cues.size(); i++) {
      int at = (int) (begin(cues.get(i), sounds.get(i)) - first);
      for (float sample : sounds.get(i).samples()) {
        samples[at] += GAIN * sample;
        at++;
      }
      grid.add((int) (cues.get(i).startFrame() - first));
    }
    return new SpokenPhrase(samples, grid);
  }

  private static long begin(SolluCue cue, SolluWave sound) {
    return cue.startFrame() - sound.leadFrames();
  }

  private static Optional<SolluCue> cue(List<SolluCue> cues, int index) {
    return index < 0 || index >= cues.size() ? Optional.empty() : Optional.of(cues.get(index));
  }
}
