package org.matraloom.film;

import java.util.List;
import java.util.Optional;
import org.matraloom.sound.SrutiDrone;
import org.matraloom.voice.SolluVoice;

/**
 * What a film is made of.
 *
 * @param passes the piece, as often as it is shown, at least once
 * @param size how large the pictures are
 * @param look their colours
 * @param picturesPerSecond how many there are
 * @param voice says the sollus; its rate is that of the sound
 * @param drone sounds below every pass, if there is one
 */
public record FilmOrder(
    List<FilmPass> passes,
    FilmSize size,
    FilmLook look,
    int picturesPerSecond,
    SolluVoice voice,
    Optional<SrutiDrone> drone) {

  /**
   * Copies the list.
   *
   * @throws IllegalArgumentException if there is no pass
   */
  public FilmOrder {
    passes = List.copyOf(passes);
    if (passes.isEmpty()) {
      throw new IllegalArgumentException("a film shows the piece at least once");
    }
  }
}
