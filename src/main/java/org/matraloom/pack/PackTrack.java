package org.matraloom.pack;

import org.matraloom.score.Composition;
import org.matraloom.time.Ratio;

/**
 * One track of a set.
 *
 * @param name its file name without an ending
 * @param number its place in the set, from 1
 * @param section "whole", a phrase, or "join 1"
 * @param percent its tempo in percent of the full one
 * @param mix its mix
 * @param composition what is performed, at its tempo
 */
public record PackTrack(
    String name, int number, String section, Ratio percent, PackMix mix, Composition composition) {

  /**
   * The sound file.
   *
   * @return the name ending in .wav
   */
  public String waveName() {
    return name + ".wav";
  }

  /**
   * The compressed sound file.
   *
   * @return the name ending in .mp3
   */
  public String mp3Name() {
    return name + ".mp3";
  }

  /**
   * The track in words.
   *
   * @return for example "whole, 75 %, tala only, you recite"
   */
  public String title() {
    return section + ", " + percent.toMixed() + " %, " + mix.words();
  }
}
