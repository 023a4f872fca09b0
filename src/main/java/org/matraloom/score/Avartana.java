package org.matraloom.score;

import java.util.ArrayList;
import java.util.List;
import org.matraloom.time.Ratio;

/**
 * One cycle of a tala as it is counted: how many beats it has and what the hand does on each.
 *
 * <p>In two kalai each kriya is given twice, so adi has 16 counted beats (mridangams.com, "Kalai
 * and Ghathi", 2007).
 *
 * @param tala the tala
 * @param kalai beats an akshara: 1, 2 or 4
 * @param custom which finger follows the thumb
 * @param kriyas one kriya an akshara, as given by the tala
 * @param turns where the tala gives way to another, ascending, each on a samam; mostly none
 */
public record Avartana(
    Tala tala, int kalai, FingerCustom custom, List<Kriya> kriyas, List<TalaTurn> turns) {

  /**
   * Copies the kriyas.
   *
   * @throws IllegalArgumentException if the kalai is not 1, 2 or 4
   */
  public Avartana {
    if (kalai != 1 && kalai != 2 && kalai != 4) {
      throw new IllegalArgumentException("kalai is 1, 2 or 4, given " + kalai);
    }
    kriyas = List.copyOf(kriyas);
    turns = List.copyOf(turns);
  }

  /**
   * A cycle that goes on to the end.
   *
   * @param tala the tala
   * @param kalai beats an akshara: 1, 2 or 4
   * @param custom which finger follows the thumb
   * @param kriyas one kriya an akshara, as given by the tala
   */
  public Avartana(Tala tala, int kalai, FingerCustom custom, List<Kriya> kriyas) {
    this(tala, kalai, custom, kriyas, List.of());
  }

  /**
   * The cycle of a tala in a kalai.
   *
   * @param tala the tala
   * @param kalai beats an akshara: 1, 2 or 4
   * @param custom which finger follows the thumb
   * @return the cycle
   * @throws IllegalArgumentException if the kalai is not 1, 2 or 4
   */
  public static Avartana of(Tala tala, int kalai, FingerCustom custom) {
    return new Avartana(tala, kalai, custom, tala.kriyas(custom));
  }

  /**
   * The cycle of another tala, counted with the same kalai and fingers.
   *
   * @param other the other tala
   * @return its cycle
   */
  public Avartana in(Tala other) {
    return of(other, kalai, custom);
  }

  /**
   * The same with other talas after it.
   *
   * @param later where the tala gives way to others, ascending
   * @return a copy
   */
  public Avartana turning(List<TalaTurn> later) {
    return new Avartana(tala, kalai, custom, kriyas, later);
  }

  /**
   * The cycle that goes on at a place.
   *
   * @param beat a position in beats; 0 is the first samam
   * @return the cycle there, which does not turn
   */
  public Avartana goingOnAt(Ratio beat) {
    TalaTurn turn = turnAt(beat);
    return turns.isEmpty() ? this : turn.avartana();
  }

  /**
   * The samam of the avartana in which a place lies.
   *
   * @param beat a position in beats
   * @return a whole beat, at the place or before it
   */
  public long samamBefore(Ratio beat) {
    return beat.minus(placeOf(beat)).floor();
  }

  /**
   * The same from a place on: what went before counts no more, and before the place goes on the
   * tala of the place.
   *
   * @param beat a position in beats
   * @return a copy
   */
  public Avartana from(Ratio beat) {
    if (turns.isEmpty()) {
      return this;
    }
    TalaTurn first = turnAt(beat);
    List<TalaTurn> left = new ArrayList<>(List.of(first));
    turns.stream().filter(turn -> turn.beat() > first.beat()).forEach(left::add);
    return first.avartana().turning(left);
  }

  /** The turn after which a place lies; before the first one it is the beginning itself. */
  TalaTurn turnAt(Ratio beat) {
    TalaTurn last = new TalaTurn(0, turns.isEmpty() ? this : turning(List.of()));
    boolean begins = !turns.isEmpty() && turns.get(0).avartana().equals(last.avartana());
    last = begins ? turns.get(0) : last;
    for (TalaTurn turn : turns) {
      last = beat.compareTo(Ratio.of(turn.beat())) >= 0 ? turn : last;
    }
    return last;
  }

  /**
   * The length of the first cycle.
   *
   * @return counted beats: aksharas times kalai
   */
  public int beats() {
    return kriyas.size() * kalai;
  }

  /**
   * The gesture on one beat. In two kalai a kriya is given twice; a group of a chapu tala has its
   * clap once and more hold (common practice).
   *
   * @param beat a whole beat; 0 is a samam, any sign
   * @return the kriya given or repeated there
   */
  public Kriya kriyaAt(long beat) {
    if (!turns.isEmpty()) {
      TalaTurn turn = turnAt(Ratio.of(beat));
      return turn.avartana().kriyaAt(beat - turn.beat());
    }
    boolean held = isBetweenKriyas(beat) && isInGroup(beat);
    return held ? new Kriya.Hold() : kriyas.get(akshara(beat));
  }

  private int akshara(long beat) {
    return (int) (Math.floorMod(beat, (long) beats()) / kalai);
  }

  private boolean isBetweenKriyas(long beat) {
    return Math.floorMod(beat, (long) kalai) != 0;
  }

  private boolean isInGroup(long beat) {
    int left = akshara(beat);
    for (Anga anga : tala.angas()) {
      if (left < anga.aksharas()) {
        return anga instanceof Anga.Group;
      }
      left -= anga.aksharas();
    }
    return false;
  }

  /**
   * Whether a beat gives its kriya again rather than for the first time.
   *
   * @param beat a whole beat; 0 is a samam, any sign
   * @return true on the second beat of an akshara in two kalai
   */
  public boolean repeatsKriya(long beat) {
    if (!turns.isEmpty()) {
      TalaTurn turn = turnAt(Ratio.of(beat));
      return turn.avartana().repeatsKriya(beat - turn.beat());
    }
    return isBetweenKriyas(beat) && !isInGroup(beat);
  }

  /**
   * Whether a beat is the first of the cycle.
   *
   * @param beat a whole beat; 0 is a samam, any sign
   * @return true on samam
   */
  public boolean isSamam(long beat) {
    return placeOf(Ratio.of(beat)).signum() == 0;
  }

  /**
   * The place of a position inside its cycle.
   *
   * @param beat a position in beats; 0 is a samam
   * @return beats after samam, from 0 (inclusive) to the length of the cycle there (exclusive)
   */
  public Ratio placeOf(Ratio beat) {
    if (!turns.isEmpty()) {
      TalaTurn turn = turnAt(beat);
      return turn.avartana().placeOf(beat.minus(Ratio.of(turn.beat())));
    }
    return beat.modulo(Ratio.of(beats()));
  }

  /**
   * Where the angas of the first cycle begin.
   *
   * @return beats after samam, ascending, the first 0
   */
  public List<Integer> angaStarts() {
    List<Integer> starts = new ArrayList<>();
    int aksharas = 0;
    for (Anga anga : tala.angas()) {
      starts.add(aksharas * kalai);
      aksharas += anga.aksharas();
    }
    return List.copyOf(starts);
  }

  /**
   * A position said the one way in which places are said everywhere, and read in a score.
   *
   * @param beat a position in beats; 0 is a samam
   * @return "samam", "beat 5" or "beat 5 1/2"
   */
  public String say(Ratio beat) {
    Ratio place = placeOf(beat);
    return place.signum() == 0 ? "samam" : "beat " + place.plus(Ratio.ONE).toMixed();
  }
}
