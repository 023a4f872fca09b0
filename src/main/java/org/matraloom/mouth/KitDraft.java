package org.matraloom.mouth;

import java.util.List;
import java.util.Map;

/**
 * A voice that is made but not yet kept.
 *
 * @param kit the voice
 * @param sounds the samples by the names of their files, frames of {@link Kit#RATE}
 * @param missing what was asked for and not found, in words
 */
public record KitDraft(Kit kit, Map<String, float[]> sounds, List<String> missing) {

  /** Copies the lists. */
  public KitDraft {
    sounds = Map.copyOf(sounds);
    missing = List.copyOf(missing);
  }
}
