package org.matraloom.live;

import java.util.List;
import java.util.Optional;
import org.matraloom.sound.Mix;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/**
 * A piece of one passage that is played by somebody who asks for the next frames when they are
 * wanted.
 *
 * <p>It is the stream that {@link LivePlayer} plays: a new tempo, mix or place begins on the next
 * beat that nobody has asked for yet. Safe for several threads.
 */
public final class PulledPlay {

  private final LivePiece piece;
  private final LiveStream stream;

  /**
   * Begins before its first frame.
   *
   * @param piece what is played, of one passage
   * @param fade whether voice and ticks go away
   * @param section where the mouth begins; the count-in lies before it
   * @param tempo the tempo
   * @param mix how loud each part is
   */
  public PulledPlay(
      LivePiece piece, Optional<Fade> fade, PieceSection section, Tempo tempo, Mix mix) {
    this.piece = piece;
    this.stream = new LiveStream(piece, section, tempo, mix, fade, 0);
  }

  /**
   * A stretch of the piece as it can be gone to and looped.
   *
   * @param piece what is played
   * @param from where it begins, in beats of the performance
   * @param to where it ends, later
   * @return the section
   * @throws IllegalArgumentException if it is not inside the piece
   */
  public static PieceSection section(LivePiece piece, Ratio from, Ratio to) {
    PieceSection first = PieceSections.of(piece.passages()).at(0, from);
    Ratio end = piece.timeline(first).performance().endBeat();
    if (from.compareTo(to) >= 0 || to.compareTo(end) > 0) {
      throw new IllegalArgumentException("a stretch lies inside the piece and has a length");
    }
    return new PieceSection(0, first.name(), first.round(), from, to);
  }

  /**
   * The next frames.
   *
   * @param block where they go, channels side by side
   * @param frames how many are wanted
   * @return how many there were; fewer at the end
   */
  public synchronized int pull(float[] block, int frames) {
    int done = 0;
    float[] part = new float[block.length];
    while (done < frames) {
      int got = stream.render(part, frames - done);
      if (got == 0) {
        return done;
      }
      int channels = piece.format().channels();
      System.arraycopy(part, 0, block, done * channels, got * channels);
      done += got;
    }
    return done;
  }

  /**
   * Takes another tempo.
   *
   * @param tempo the tempo
   */
  public synchronized void tempo(Tempo tempo) {
    stream.tempo(tempo);
  }

  /**
   * Takes another mix.
   *
   * @param mix how loud each part is
   */
  public synchronized void mix(Mix mix) {
    stream.mix(mix);
  }

  /**
   * Goes to a section in time.
   *
   * @param section where the mouth goes on
   */
  public synchronized void goTo(PieceSection section) {
    stream.goTo(section);
  }

  /**
   * Comes back to a section each time its end is reached, or no longer does.
   *
   * @param section what is looped
   */
  public synchronized void loop(Optional<PieceSection> section) {
    stream.loop(section);
  }

  /**
   * Where its frames lie in the piece.
   *
   * @return the latest segments, in order, at least one
   */
  public synchronized List<LiveSegment> segments() {
    return stream.liveClock().segments();
  }
}
