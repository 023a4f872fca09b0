package org.matraloom.breath;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which breaths are one place: a plan takes all of them or none.
 *
 * <p>A breath that would crowd a change of nadai stands for itself, so that it can be left out.
 */
final class BreathPlaces {

  private final int[] place;
  private final int[] members;
  private final boolean[] asked;
  private final boolean[] first;

  BreathPlaces(List<Candidate> candidates, Voice voice) {
    this.place = new int[candidates.size()];
    Map<Object, Integer> numbers = new HashMap<>();
    for (int at = 0; at < place.length; at++) {
      Candidate candidate = candidates.get(at);
      Object key = candidate.crowdsChange() ? candidate : candidate.stop().standing().place();
      place[at] = numbers.computeIfAbsent(key, none -> numbers.size());
    }
    this.members = new int[numbers.size()];
    this.asked = new boolean[numbers.size()];
    this.first = new boolean[candidates.size()];
    for (int at = 0; at < place.length; at++) {
      members[place[at]]++;
      asked[place[at]] |= candidates.get(at).stop().isAsked();
      Candidate candidate = candidates.get(at);
      first[at] = candidate.stop().standing().beforeLastMora() && !candidate.crowdsChange();
    }
    lastBeforeChanges(candidates, voice).forEach(at -> first[at] = true);
  }

  /** The last free joint before each change of nadai, if there is one since the change before. */
  private static Set<Integer> lastBeforeChanges(List<Candidate> candidates, Voice voice) {
    Map<Object, Integer> last = new HashMap<>();
    for (int at = 0; at < candidates.size(); at++) {
      VoiceStop stop = candidates.get(at).stop();
      Object change = voice.changeBeats().ceiling(stop.next().beat());
      if (candidates.get(at).free() && change != null) {
        last.put(change, at);
      }
    }
    return new HashSet<>(last.values());
  }

  int count() {
    return members.length;
  }

  int of(int candidate) {
    return place[candidate];
  }

  int members(int number) {
    return members[number];
  }

  boolean isAsked(int number) {
    return asked[number];
  }

  /** Whether a breath is wanted there before all other free air: it is to be in hand. */
  boolean isFirst(int candidate) {
    return first[candidate];
  }
}
