package org.matraloom.measure;

/**
 * One round of a take.
 *
 * @param round which, from 1
 * @param phrase what is said in it
 * @param matrasPerBeat its nadai, kalam included
 * @param counts how many sollus were asked for and heard
 * @param beatsPerMinute the tempo of the beat: from the median over neighbouring sollus of the time
 *     taken for the beats asked; 0 if fewer than three sollus were heard
 * @param spreadSeconds how far its sollus usually are from the pulse of the take, as in {@link
 *     Pulse#spreadSeconds()}
 */
public record RoundFindings(
    int round,
    String phrase,
    int matrasPerBeat,
    SolluCounts counts,
    double beatsPerMinute,
    double spreadSeconds) {

  /**
   * How many sollus were asked for and heard.
   *
   * @param sollus how many sollus the score asks for
   * @param unrecorded how many of them lie before the beginning of the recording or after its end
   * @param missed how many of the others were not heard
   * @param added how many sounds were heard that are no sollu of it
   */
  public record SolluCounts(int sollus, int unrecorded, int missed, int added) {}

  /**
   * How many sollus the score asks for.
   *
   * @return 0 or more
   */
  public int sollus() {
    return counts.sollus();
  }

  /**
   * How many of them lie before the beginning of the recording or after its end.
   *
   * @return 0 or more
   */
  public int unrecorded() {
    return counts.unrecorded();
  }

  /**
   * How many of the others were not heard.
   *
   * @return 0 or more
   */
  public int missed() {
    return counts.missed();
  }

  /**
   * How many sounds were heard that are no sollu of it.
   *
   * @return 0 or more
   */
  public int added() {
    return counts.added();
  }
}
