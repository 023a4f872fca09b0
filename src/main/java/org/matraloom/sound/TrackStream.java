package org.matraloom.sound;

import java.util.Optional;

/** The samples of a track, one block after another. */
public final class TrackStream {

  private final Track track;
  private final int channels;
  private int nextPassage;
  private Optional<Renderer> current = Optional.empty();

  TrackStream(Track track, int channels) {
    this.track = track;
    this.channels = channels;
  }

  /**
   * Renders the next frames, as {@link Renderer#render} does.
   *
   * @param block where samples go, interleaved, at least {@code frames} times the channels long
   * @param frames how many frames are wanted, at least 1
   * @return how many were rendered; fewer than wanted where a passage ends, 0 after the last
   */
  public int render(float[] block, int frames) {
    while (true) {
      int rendered = current.map(renderer -> renderer.render(block, frames)).orElse(0);
      if (rendered > 0 || nextPassage == track.passages()) {
        return rendered;
      }
      current = Optional.of(track.renderer(nextPassage++, channels));
    }
  }
}
