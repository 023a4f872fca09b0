package org.matraloom.score;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/**
 * A written composition, read and understood.
 *
 * @param title free text, possibly empty
 * @param avartana the cycle it is set in
 * @param tempo the tempo of the beat
 * @param startBeat where the first round begins, in beats after samam; negative before it
 * @param eduppuBeat where the last matra must end, in beats after samam; negative before it
 * @param phrases the phrases by name, in written order; references form no circle
 * @param plan what is performed, at least one step that says something
 * @param closing what follows the last matra
 * @param wording which words its groups are spoken with
 */
public record Composition(
    String title,
    Avartana avartana,
    Tempo tempo,
    Ratio startBeat,
    Ratio eduppuBeat,
    Map<String, Sequence> phrases,
    List<Step> plan,
    Closing closing,
    Wording wording) {

  /** The highest nadai taken, in matras a beat. */
  public static final int HIGHEST_NADAI = 9;

  /** The highest kalam taken. */
  public static final int HIGHEST_KALAM = 3;

  /** Copies the collections, keeping the order of the phrases. */
  public Composition {
    phrases = Collections.unmodifiableMap(new LinkedHashMap<>(phrases));
    plan = List.copyOf(plan);
  }

  /**
   * A composition after whose last matra nothing follows, in the usual words.
   *
   * @param title free text, possibly empty
   * @param avartana the cycle it is set in
   * @param tempo the tempo of the beat
   * @param startBeat where the first round begins, in beats after samam
   * @param eduppuBeat where the last matra must end, in beats after samam
   * @param phrases the phrases by name, in written order
   * @param plan what is performed
   */
  public Composition(
      String title,
      Avartana avartana,
      Tempo tempo,
      Ratio startBeat,
      Ratio eduppuBeat,
      Map<String, Sequence> phrases,
      List<Step> plan) {
    this(title, avartana, tempo, startBeat, eduppuBeat, phrases, plan, Closing.NONE, Wording.USUAL);
  }

  /**
   * Whether it goes on in another tala somewhere.
   *
   * @return true if a line of the plan changes the tala
   */
  public boolean changesTala() {
    return plan.stream().anyMatch(Step.ToTala.class::isInstance);
  }

  /**
   * How many times denser a kalam is than the first.
   *
   * <p>First, second and third speed are 1, 2 and 4 sollus where there was one (eviolinguru.com,
   * kala and tempo).
   *
   * @param kalam 1, 2 or 3
   * @return 1, 2 or 4
   */
  public static int density(int kalam) {
    return 1 << (kalam - 1);
  }

  /**
   * The same composition under another title.
   *
   * @param other the title to take, possibly empty
   * @return a copy
   */
  public Composition named(String other) {
    return new Composition(
        other, avartana, tempo, startBeat, eduppuBeat, phrases, plan, closing, wording);
  }

  /**
   * The same composition at another tempo.
   *
   * @param other the tempo to take
   * @return a copy
   */
  public Composition at(Tempo other) {
    return new Composition(
        title, avartana, other, startBeat, eduppuBeat, phrases, plan, closing, wording);
  }

  /**
   * The same composition in another cycle.
   *
   * @param other the cycle to take
   * @return a copy
   */
  public Composition in(Avartana other) {
    return new Composition(
        title, other, tempo, startBeat, eduppuBeat, phrases, plan, closing, wording);
  }

  /**
   * The same composition with another start.
   *
   * @param beat where the first round begins, in beats after samam
   * @return a copy
   */
  public Composition startingAt(Ratio beat) {
    return new Composition(
        title, avartana, tempo, beat, eduppuBeat, phrases, plan, closing, wording);
  }

  /**
   * The same composition with another landing.
   *
   * @param beat where the last matra must end, in beats after samam
   * @return a copy
   */
  public Composition landingAt(Ratio beat) {
    return new Composition(
        title, avartana, tempo, startBeat, beat, phrases, plan, closing, wording);
  }

  /**
   * The same composition with other phrases.
   *
   * @param others the phrases by name, in written order
   * @return a copy
   */
  public Composition saying(Map<String, Sequence> others) {
    return new Composition(
        title, avartana, tempo, startBeat, eduppuBeat, others, plan, closing, wording);
  }

  /**
   * The same composition performed by another plan.
   *
   * @param steps what is performed
   * @return a copy
   */
  public Composition performing(List<Step> steps) {
    return new Composition(
        title, avartana, tempo, startBeat, eduppuBeat, phrases, steps, closing, wording);
  }

  /**
   * The same composition with another close.
   *
   * @param other what follows the last matra
   * @return a copy
   */
  public Composition closing(Closing other) {
    return new Composition(
        title, avartana, tempo, startBeat, eduppuBeat, phrases, plan, other, wording);
  }
}
