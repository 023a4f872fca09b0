package org.matraloom.breath;

import java.util.Arrays;
import java.util.List;
import org.matraloom.form.Joint;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/**
 * Every stretch that a plan may have, with its cost: from one breath, or the beginning, to another,
 * or the end.
 *
 * <p>Node 0 is the beginning, node n the candidate n - 1, and the last node is the end. A stretch
 * over the limits is there only if no breath could be taken in it.
 */
final class StretchGraph {

  private static final int CLOSE = 1;
  private static final int CATCH = 2;
  private static final int CUT = 4;
  private static final int KINDS = 8;

  private final Voice voice;
  private final Tempo tempo;
  private final List<Candidate> candidates;
  private final StretchLimits limits;
  private final Ratio apart;
  private final Ratio full;

  private final int[] firstArc;
  private int[] from = new int[64];
  private int[] effort = new int[64];
  private byte[] kind = new byte[64];
  private int arcs;
  private long over;

  private final long[] ofNode;
  private final long[] skipped;
  private final long[] ofKind = new long[KINDS * PackedCost.WIDTH];

  StretchGraph(Voice voice, Tempo tempo, BreathSettings settings, List<Candidate> candidates) {
    this.voice = voice;
    this.tempo = tempo;
    this.candidates = candidates;
    this.limits = new StretchLimits(settings, tempo);
    this.apart = tempo.beatsInMs(settings.inhaling().apartMs());
    this.full = tempo.beatsInMs(settings.fullMs());
    this.firstArc = new int[nodes() + 1];
    this.ofNode = new long[nodes() * PackedCost.WIDTH];
    this.skipped = new long[nodes() * PackedCost.WIDTH];
    for (int node = 1; node < nodes(); node++) {
      firstArc[node] = arcs;
      findArcs(node);
    }
    firstArc[nodes()] = arcs;
    for (int bits = 0; bits < KINDS; bits++) {
      int at = bits * PackedCost.WIDTH;
      PackedCost.add(ofKind, at, PlanTerm.CLOSE, bits & CLOSE);
      PackedCost.add(ofKind, at, PlanTerm.CATCH, (bits & CATCH) / CATCH);
      PackedCost.add(ofKind, at, PlanTerm.CUT, (bits & CUT) / CUT);
    }
  }

  /** Weighs the breaths themselves, and what it costs to pass one by. */
  void weigh(BreathPlaces places) {
    for (int node = 1; node < nodes(); node++) {
      int at = node * PackedCost.WIDTH;
      System.arraycopy(skipped, at - PackedCost.WIDTH, skipped, at, PackedCost.WIDTH);
      if (node == end()) {
        return;
      }
      Candidate candidate = candidates.get(node - 1);
      Joint joint = candidate.stop().joint();
      PackedCost.add(ofNode, at, PlanTerm.BREATHS, 1);
      if (candidate.crowdsChange()) {
        PackedCost.add(ofNode, at, PlanTerm.CHANGE, 1);
      }
      if (places.isFirst(node - 1)) {
        PackedCost.add(skipped, at, PlanTerm.UNUSED_FIRST, 1);
      } else if (candidate.free()) {
        PackedCost.add(skipped, at, PlanTerm.UNUSED, 1);
      }
      if (!candidate.free()) {
        PackedCost.add(ofNode, at, PlanTerm.at(joint), 1);
      }
    }
  }

  int nodes() {
    return candidates.size() + 2;
  }

  int end() {
    return candidates.size() + 1;
  }

  int firstArc(int node) {
    return firstArc[node];
  }

  int from(int arc) {
    return from[arc];
  }

  /** By how many thousandths of the limit stretches are too long in any plan. */
  long over() {
    return over;
  }

  /** Adds the cost of a stretch, and of the breath after it, to what came before. */
  void extend(int arc, int node, long[] before, int at, long[] sum) {
    int a = node * PackedCost.WIDTH;
    int skippedTo = a - PackedCost.WIDTH;
    int skippedFrom = from[arc] * PackedCost.WIDTH;
    int k = kind[arc] * PackedCost.WIDTH;
    for (int part = 0; part < PackedCost.WIDTH; part++) {
      sum[part] =
          before[at + part]
              + ofNode[a + part]
              + skipped[skippedTo + part]
              - skipped[skippedFrom + part]
              + ofKind[k + part];
    }
    sum[PackedCost.WIDTH - 1] += effort[arc];
  }

  private void findArcs(int node) {
    for (int before = node - 1; before >= 0; before--) {
      Ratio earliest = node == end() ? voice.endBeat() : candidate(node).earliestStart();
      if (limits.isTooLong(earliest.minus(begin(before)), sollus(before, node))) {
        if (before == node - 1) {
          over += limits.excess(earliest.minus(begin(before)), sollus(before, node));
          add(before, node);
        }
        return;
      }
      add(before, node);
    }
  }

  private void add(int before, int node) {
    if (arcs == from.length) {
      from = Arrays.copyOf(from, 2 * arcs);
      effort = Arrays.copyOf(effort, 2 * arcs);
      kind = Arrays.copyOf(kind, 2 * arcs);
    }
    Ratio stop = stop(before, node);
    long lack = before == 0 ? 0 : limits.lack(begin(before).minus(candidate(before).usualStart()));
    from[arcs] = before;
    effort[arcs] = (int) limits.effort(stop.minus(begin(before)), sollus(before, node), lack);
    kind[arcs] = (byte) (node == end() ? 0 : kind(before, node, stop));
    arcs++;
  }

  private int kind(int before, int node, Ratio start) {
    boolean close = before > 0 && start.minus(candidate(before).usualStart()).compareTo(apart) < 0;
    VoiceStop stop = candidate(node).stop();
    boolean isFull = stop.next().beat().minus(start).compareTo(full) >= 0;
    boolean cut = start.compareTo(stop.endBeat()) < 0;
    return (close ? CLOSE : 0) | (isFull ? 0 : CATCH) | (cut ? CUT : 0);
  }

  /** Where the voice stops at a node if it went on at another: earlier than usual if it must. */
  Ratio stop(int before, int node) {
    if (node == end()) {
      return voice.endBeat();
    }
    Candidate candidate = candidate(node);
    Ratio usual = candidate.usualStart();
    boolean tooLong = limits.isTooLong(usual.minus(begin(before)), sollus(before, node));
    return tooLong ? candidate.earliestStart() : usual;
  }

  private Candidate candidate(int node) {
    return candidates.get(node - 1);
  }

  private Ratio begin(int node) {
    return node == 0 ? voice.begin().beat() : candidate(node).stop().next().beat();
  }

  private long sollus(int before, int node) {
    long end = node == end() ? voice.sollus() : candidate(node).stop().solluCount();
    return end - (before == 0 ? 0 : candidate(before).stop().solluCount());
  }
}
