package org.matraloom.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Avartana;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.TalaSections;
import org.matraloom.score.TalaTurn;
import org.matraloom.sound.LooseSounds;
import org.matraloom.sound.Mix;
import org.matraloom.sound.Sruti;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;
import org.matraloom.voice.FormantVoice;
import org.matraloom.voice.SolluVoice;
import org.matraloom.voice.VoiceSettings;

/** Makes the sounds of a phone page: the hand once, the sollus for each tempo that is offered. */
public final class PageSoundMaker {

  /** Frames a second: enough for speech, and half the size of a track's. */
  public static final int RATE = 24_000;

  /** A page carries each sound once, and every accent would be another sound. */
  public static final VoiceSettings ONE_TAKE = VoiceSettings.USUAL.withTakes(1).withAccents(0);

  private record Key(int hash, int length, int leadFrames) {}

  private final Performance performance;
  private final Optional<Integer> leadIn;
  private final LooseSounds loose;
  private final SolluVoice voice;
  private final List<PageSound.Clip> clips = new ArrayList<>();
  private final Map<Key, List<Integer>> numbers = new HashMap<>();

  /**
   * Prepares to make sounds without a lead-in.
   *
   * @param performance what is heard, at the score's own tempo
   * @param lexicon how its sollus are said
   */
  public PageSoundMaker(Performance performance, Lexicon lexicon) {
    this(performance, lexicon, Optional.empty());
  }

  /**
   * Prepares to make sounds.
   *
   * @param performance what is heard, at the score's own tempo
   * @param lexicon how its sollus are said
   * @param leadIn whole avartanas of words before those from samam to a start; empty for no words
   */
  public PageSoundMaker(Performance performance, Lexicon lexicon, Optional<Integer> leadIn) {
    this(performance, leadIn, new FormantVoice(RATE, lexicon, ONE_TAKE));
  }

  /**
   * Prepares to make sounds in any voice.
   *
   * @param performance what is heard, at the score's own tempo
   * @param leadIn whole avartanas of words before those from samam to a start; empty for no words
   * @param voice says the sollus, at {@link #RATE} and as {@link #ONE_TAKE} asks for
   */
  public PageSoundMaker(Performance performance, Optional<Integer> leadIn, SolluVoice voice) {
    this.leadIn = leadIn;
    this.performance = performance;
    this.voice = voice;
    this.loose = new LooseSounds(RATE, Mix.lesson());
  }

  /**
   * The sounds for some percentages of the tempo, without a drone.
   *
   * @param percents percentages of the score's own tempo
   * @return the clips, and which of them sound where
   */
  public PageSound make(List<Integer> percents) {
    return make(percents, Optional.empty());
  }

  /**
   * The sounds for some percentages of the tempo; those outside the range of tempi are left out.
   *
   * @param percents percentages of the score's own tempo
   * @param drone the tonic of a drone; empty for none
   * @return the clips, and which of them sound where
   */
  public PageSound make(List<Integer> percents, Optional<Sruti> drone) {
    Map<Integer, List<Integer>> sollus = new HashMap<>();
    double voiceGain = 1;
    for (int percent : percents) {
      Ratio bpm = performance.composition().tempo().beatsPerMinute();
      Ratio slower = bpm.times(Ratio.of(percent, 100));
      if (Tempo.inRange(slower)) {
        List<LooseSounds.Loose> said = said(new Tempo(slower));
        voiceGain = said.isEmpty() ? 1 : said.get(0).gain();
        sollus.put(percent, said.stream().map(this::number).toList());
      }
    }
    PageSound.Beside beside = new PageSound.Beside(drone.map(Sruti::hertz), leadIn);
    return new PageSound(RATE, clips, hand(), stroke(loose.tick()), voiceGain, sollus, beside);
  }

  private List<LooseSounds.Loose> said(Tempo tempo) {
    Timeline timeline = PageScore.timeline(performance.at(tempo), leadIn);
    return loose.sollus(timeline, timeline.clock(RATE), voice);
  }

  private List<Optional<PageSound.Stroke>> hand() {
    List<Optional<PageSound.Stroke>> strokes = new ArrayList<>();
    for (TalaTurn part : TalaSections.of(performance.avartana())) {
      hand(part.avartana(), strokes);
    }
    return strokes;
  }

  private void hand(Avartana avartana, List<Optional<PageSound.Stroke>> strokes) {
    for (int beat = 0; beat < avartana.beats(); beat++) {
      Event.HandBeat given =
          new Event.HandBeat(
              Ratio.of(beat),
              avartana.kriyaAt(beat),
              avartana.isSamam(beat),
              avartana.repeatsKriya(beat),
              0);
      strokes.add(loose.stroke(given).map(this::stroke));
    }
  }

  private PageSound.Stroke stroke(LooseSounds.Loose sound) {
    return new PageSound.Stroke(number(sound), sound.gain());
  }

  /** The number of a clip; equal sounds have one number. */
  private int number(LooseSounds.Loose sound) {
    float[] samples = sound.samples();
    Key key = new Key(Arrays.hashCode(samples), samples.length, sound.leadFrames());
    List<Integer> alike = numbers.computeIfAbsent(key, unseen -> new ArrayList<>());
    for (int number : alike) {
      if (Arrays.equals(clips.get(number).samples(), samples)) {
        return number;
      }
    }
    clips.add(new PageSound.Clip(samples, sound.leadFrames()));
    alike.add(clips.size() - 1);
    return clips.size() - 1;
  }
}
