package org.matraloom.host;

import java.util.Optional;
import org.matraloom.schedule.Timeline;
import org.matraloom.sound.PcmFormat;
import org.matraloom.sound.SolluVoice;
import org.matraloom.sound.SrutiDrone;

/**
 * What is played live.
 *
 * @param timeline what happens
 * @param countInAvartanas avartanas counted before it, 0 to 16
 * @param voice says the sollus, at the rate of the format
 * @param drone sounds below it
 * @param format how samples are handed to the device
 */
public record LivePiece(
    Timeline timeline,
    int countInAvartanas,
    SolluVoice voice,
    Optional<SrutiDrone> drone,
    PcmFormat format) {

  int beatsPerAvartana() {
    return timeline.performance().composition().avartana().beats();
  }
}
