package org.matraloom.voice;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Keeps the sounds that were asked for last, so that a sollu that comes again costs nothing.
 *
 * <p>What is kept stays below a number of samples, however long the piece.
 */
final class VoiceCache {

  private final VoiceSpeaker speaker;
  private final long mostSamples;
  private final Map<VoiceRequest, SolluWave> kept = new LinkedHashMap<>(64, 0.75f, true);
  private long samples;

  /** A cache that is empty. */
  VoiceCache(VoiceSpeaker speaker, long mostSamples) {
    this.speaker = speaker;
    this.mostSamples = mostSamples;
  }

  /** The sound of a request. */
  SolluWave get(VoiceRequest request) {
    SolluWave sound = kept.get(request);
    if (sound == null) {
      sound = speaker.say(request);
      kept.put(request, sound);
      samples += sound.samples().length;
      dropOldest();
    }
    return sound;
  }

  /** How many samples are kept. */
  long samples() {
    return samples;
  }

  private void dropOldest() {
    Iterator<SolluWave> oldest = kept.values().iterator();
    while (samples > mostSamples && oldest.hasNext()) {
      samples -= oldest.next().samples().length;
      oldest.remove();
    }
  }
}
