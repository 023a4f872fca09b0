package org.matraloom.clap;

import java.util.List;

/**
 * The part of a track in which claps are heard: hands may come in late, leave off, or begin again
 * elsewhere after a pause.
 *
 * @param claps the claps in it
 * @param from the first place for which the track holds
 * @param to the last place for which it holds: until so many claps are missing that it is doubted
 */
record ClapStretch(List<ClapTrack.Clap> claps, int from, int to) {

  /** An attack is found by chance within so much of a place, to each side. */
  private static final double CHANCE_SECONDS = 0.025;

  private static final double MOST_CHANCE = 0.3;

  /** Hands now and then leave out a clap, or it is not heard. */
  private static final double MOST_SHARE = 0.97;

  /** Places missed speak against claps that were heard all along; at 20 to 1 these are over. */
  private static final double DOUBT = 3;

  /** However little speaks against it, a track is not carried on over more places than these. */
  private static final int FARTHEST = 24;

  /**
   * The stretch of a track that speaks most for claps.
   *
   * @param track the track
   * @param perSecond how many attacks there are by chance in a second, at most
   */
  static ClapStretch of(ClapTrack track, double perSecond) {
    double chance = Math.min(MOST_CHANCE, 2 * CHANCE_SECONDS * perSecond);
    double share = Math.min(MOST_SHARE, Math.max(track.share(), 2 * chance));
    double hit = Math.log(share / chance);
    double miss = Math.log((1 - share) / (1 - chance));
    List<ClapTrack.Clap> claps = track.claps();
    int begin = 0;
    int bestBegin = 0;
    int bestEnd = 0;
    double sum = 0;
    double most = 0;
    for (int i = 0; i < claps.size(); i++) {
      double missed = i == 0 ? 0 : miss * missedBetween(track, i - 1, i);
      if (sum + missed < 0) {
        sum = 0;
        begin = i;
      } else {
        sum += missed;
      }
      sum += hit;
      if (sum > most) {
        most = sum;
        bestBegin = begin;
        bestEnd = i;
      }
    }
    int enough = enough(track, bestBegin, bestEnd, chance);
    return new ClapStretch(
        List.copyOf(claps.subList(bestBegin, bestEnd + 1)),
        before(track, claps.get(bestBegin).place(), enough),
        after(track, claps.get(bestEnd).place(), enough));
  }

  /** How many places must be missed in a row until it is doubted that hands still clap. */
  private static int enough(ClapTrack track, int begin, int end, double chance) {
    double heard = end - begin + 1;
    double share = Math.min(MOST_SHARE, heard / (heard + missedBetween(track, begin, end)));
    return (int) Math.ceil(DOUBT / Math.max(0.1, Math.log((1 - chance) / (1 - share))));
  }

  private static long missedBetween(ClapTrack track, int one, int other) {
    int from = track.claps().get(one).place();
    int to = track.claps().get(other).place();
    return track.missed().stream().filter(place -> place > from && place < to).count();
  }

  private static int after(ClapTrack track, int place, int enough) {
    List<Integer> missed = track.missed().stream().filter(at -> at > place).toList();
    return Math.min(
        place + FARTHEST, missed.size() < enough ? Integer.MAX_VALUE : missed.get(enough - 1) - 1);
  }

  private static int before(ClapTrack track, int place, int enough) {
    List<Integer> missed = track.missed().stream().filter(at -> at < place).toList();
    return Math.max(
        place - FARTHEST,
        missed.size() < enough ? Integer.MIN_VALUE : missed.get(missed.size() - enough) + 1);
  }
}
