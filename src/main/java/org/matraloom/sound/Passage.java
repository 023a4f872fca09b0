package org.matraloom.sound;

import java.util.List;
import org.matraloom.schedule.Timeline;

/**
 * A part of a track with a tempo of its own.
 *
 * @param timeline what happens; its composition gives the tempo
 * @param mix how loud each part is
 * @param companions what sounds beside the voice
 */
public record Passage(Timeline timeline, Mix mix, List<Companion> companions) {

  /** Copies the list. */
  public Passage {
    companions = List.copyOf(companions);
  }

  /**
   * A passage with one voice.
   *
   * @param timeline what happens; its composition gives the tempo
   * @param mix how loud each part is
   */
  public Passage(Timeline timeline, Mix mix) {
    this(timeline, mix, List.of());
  }

  /** The same in another mix. */
  Passage in(Mix other) {
    return new Passage(timeline, other, companions);
  }
}
