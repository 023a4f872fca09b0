package org.matraloom.voice;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * Keeps the sounds that were asked for last, so that a sollu that comes again costs nothing.
 *
 * <p>What is kept stays below a number of samples, however long the piece.
 *
 * @param <K> what a sound depends on; equal ones sound alike
 */
public final class VoiceCache<K> {

  private final Function<K, SolluWave> speaker;
  private final long mostSamples;
  private final Map<K, SolluWave> kept = new LinkedHashMap<>(64, 0.75f, true);
  private long samples;

  /**
   * A cache that is empty.
   *
   * @param speaker makes a sound that is not kept
   * @param mostSamples how many samples are kept at most
   */
  public VoiceCache(Function<K, SolluWave> speaker, long mostSamples) {
    this.speaker = speaker;
    this.mostSamples = mostSamples;
  }

  /**
   * The sound of a request.
   *
   * @param request what is to be said
   * @return the sound kept for it, else a new one
   */
  public SolluWave get(K request) {
    SolluWave sound = kept.get(request);
    if (sound == null) {
      sound = speaker.apply(request);
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
