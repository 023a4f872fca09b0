package org.matraloom.follow;

import java.util.ArrayList;
import java.util.List;
import org.matraloom.onset.Onset;

/**
 * Gives the last sounds of a take to the sollus one place earlier where those before them would
 * miss one and they come too early for theirs: the last sollu is missing then, not one on the way.
 */
final class ShortEnd {

  /** So many sounds at most stand after the one that seems to be missing. */
  private static final int MOST_SOUNDS = 3;

  /** By so much of a matra the earlier places must fit better. */
  private static final double BETTER_MATRAS = 0.15;

  /** The sounds may speak against the earlier places by so much each. */
  private static final double UNLIKER = 0.25;

  private ShortEnd() {}

  /**
   * The pairing with its last sounds at the earlier places, if these fit better.
   *
   * @param said the pairs, in order of time
   * @param expected when each sollu falls, in seconds at the tempo of the score
   * @param matraSeconds the length of each sollu's matra at that tempo
   * @param onsets what was heard
   * @param model what is known of the performer
   */
  static List<Alignment.Said> found(
      List<Alignment.Said> said,
      double[] expected,
      double[] matraSeconds,
      List<Onset> onsets,
      PairingModel model) {
    int count = said.size();
    for (int from = count - 1; from >= Math.max(1, count - MOST_SOUNDS); from--) {
      int sollu = said.get(from).sollu();
      int missing = sollu - said.get(from - 1).sollu() - 1;
      if (said.get(count - 1).sollu() != expected.length - 1 || missing > 1) {
        return said;
      }
      if (missing == 1) {
        double matra = matraSeconds[sollu] * model.stretch();
        double now = off(said, from, 0, expected, onsets, model);
        double earlier = off(said, from, -1, expected, onsets, model);
        double speaks = 0;
        for (Alignment.Said each : said.subList(from, count)) {
          speaks +=
              model.sollus().gain(each.sollu() - 1, each.onset())
                  - model.sollus().gain(each.sollu(), each.onset())
                  + UNLIKER;
        }
        return earlier + BETTER_MATRAS * matra < now && speaks >= 0 ? moved(said, from) : said;
      }
    }
    return said;
  }

  /** How far the first of the last sounds is off the place that many sollus later. */
  private static double off(
      List<Alignment.Said> said,
      int from,
      int later,
      double[] expected,
      List<Onset> onsets,
      PairingModel model) {
    Alignment.Said before = said.get(from - 1);
    Alignment.Said here = said.get(from);
    int sollu = here.sollu() + later;
    double took = onsets.get(here.onset()).seconds() - onsets.get(before.onset()).seconds();
    double lag = model.lagSeconds()[sollu] - model.lagSeconds()[before.sollu()];
    return Math.abs(took + lag - (expected[sollu] - expected[before.sollu()]) * model.stretch());
  }

  private static List<Alignment.Said> moved(List<Alignment.Said> said, int from) {
    List<Alignment.Said> moved = new ArrayList<>(said.subList(0, from));
    said.subList(from, said.size())
        .forEach(each -> moved.add(new Alignment.Said(each.sollu() - 1, each.onset())));
    return moved;
  }
}
