package org.matraloom.film;

import java.util.ArrayList;
import java.util.List;
import org.matraloom.sound.Renderer;
import org.matraloom.time.PictureClock;

/** Cards and passes in order, each with its place in frames of sound. */
final class FilmPlan {

  static final int TITLE_SECONDS = 4;
  static final int CARD_SECONDS = 2;

  /**
   * A card or a pass.
   *
   * @param startFrame where it begins
   * @param frames how long it is
   * @param pass which pass it is or comes before, from 0
   * @param isCard whether it is the card before that pass
   */
  record Part(long startFrame, long frames, int pass, boolean isCard) {
    long endFrame() {
      return startFrame + frames;
    }
  }

  private final FilmOrder order;
  private final PictureClock clock;
  private final List<Part> parts = new ArrayList<>();

  FilmPlan(FilmOrder order) {
    this.order = order;
    this.clock = new PictureClock(order.picturesPerSecond(), order.voice().ratePerSecond());
    long start = 0;
    for (int index = 0; index < order.passes().size(); index++) {
      FilmPass pass = order.passes().get(index);
      long card = clock.framesIn(index == 0 ? TITLE_SECONDS : CARD_SECONDS);
      parts.add(new Part(start, card, index, true));
      start += card;
      long frames =
          Renderer.lengthFrames(pass.timeline(), pass.timeline().clock(clock.ratePerSecond()));
      parts.add(new Part(start, frames, index, false));
      start += frames;
    }
  }

  List<Part> parts() {
    return List.copyOf(parts);
  }

  FilmPass pass(Part part) {
    return order.passes().get(part.pass());
  }

  PictureClock clock() {
    return clock;
  }

  long frames() {
    return parts.get(parts.size() - 1).endFrame();
  }

  long pictures() {
    return clock.picturesFor(frames());
  }
}
