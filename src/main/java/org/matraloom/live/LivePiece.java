package org.matraloom.live;

import java.util.List;
import java.util.Optional;
import org.matraloom.breath.BreathSettings;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Composition;
import org.matraloom.sound.SrutiDrone;
import org.matraloom.voice.SolluVoice;
import org.matraloom.wav.PcmFormat;

/**
 * What is played live.
 *
 * @param passages what happens, one after another, each at its own tempo; at least one
 * @param countInAvartanas avartanas counted before each start, 0 to 16
 * @param voice says the sollus, at the rate of the format
 * @param drone sounds below it
 * @param format how samples are handed to the device
 * @param breaths how breaths are planned that are shown and not heard
 */
public record LivePiece(
    List<Timeline> passages,
    int countInAvartanas,
    SolluVoice voice,
    Optional<SrutiDrone> drone,
    PcmFormat format,
    BreathSettings breaths) {

  /** Copies the list. */
  public LivePiece {
    passages = List.copyOf(passages);
  }

  /**
   * What happens where a section lies.
   *
   * @param section a section of this piece
   * @return the timeline of its passage
   */
  public Timeline timeline(PieceSection section) {
    return passages.get(section.passage());
  }

  /**
   * What is performed where a section lies.
   *
   * @param section a section of this piece
   * @return the composition of its passage
   */
  public Composition composition(PieceSection section) {
    return timeline(section).performance().composition();
  }
}
