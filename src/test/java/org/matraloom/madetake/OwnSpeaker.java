package org.matraloom.madetake;

import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import org.matraloom.score.Lexicon;
import org.matraloom.voice.FormantVoice;
import org.matraloom.voice.SolluCue;
import org.matraloom.voice.SolluWave;
import org.matraloom.voice.VoicePerson;
import org.matraloom.voice.VoiceSettings;

/** The program's own voice; where a sollu is first heard is measured on its sound alone. */
public final class OwnSpeaker implements SolluSpeaker {

  private final FormantVoice voice;
  private final Map<float[], Integer> onsets = new IdentityHashMap<>();

  public OwnSpeaker(VoicePerson person) {
    voice = new FormantVoice(RATE, Lexicon.standard(), VoiceSettings.USUAL.with(person));
  }

  @Override
  public Spoken say(Optional<SolluCue> before, SolluCue cue, Optional<SolluCue> after) {
    SolluWave sound = voice.say(before, cue, after);
    int onset =
        onsets.computeIfAbsent(
            sound.samples(), samples -> SyllableMarks.of(samples, RATE).releaseFrame());
    return new Spoken(sound.samples(), sound.leadFrames(), Math.min(onset, sound.leadFrames()));
  }
}
