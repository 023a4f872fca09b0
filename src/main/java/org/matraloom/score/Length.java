package org.matraloom.score;

import java.util.HashMap;
import java.util.Map;
import org.matraloom.time.Ratio;

/**
 * How long a sequence is, before its nadai is known.
 *
 * <p>Most matras follow the nadai of the round; those in an {@link Element.InnerNadai} do not. The
 * two parts are summed apart, without saying the sequence, so that a repeat of a repeat costs
 * nothing.
 *
 * @param matras matras that follow the nadai of the round
 * @param innerBeats beats of the passages with a nadai of their own, in the first kalam
 * @param sollus how many sollus are said
 * @param steps how many elements are passed when it is said, marks included
 */
public record Length(Ratio matras, Ratio innerBeats, long sollus, long steps) {

  private static final Length NONE = new Length(Ratio.ZERO, Ratio.ZERO, 0, 0);

  /**
   * Measures a sequence.
   *
   * @param sequence what is said
   * @param phrases the phrases that it may refer to; without a circle
   * @return its length
   * @throws ArithmeticException if it is too long to count
   */
  public static Length of(Sequence sequence, Map<String, Sequence> phrases) {
    return of(sequence, phrases, new HashMap<>());
  }

  /**
   * The length in beats once the nadai is known.
   *
   * @param nadai matras a beat in the first kalam
   * @param kalam 1, 2 or 3
   * @return beats
   */
  public Ratio beats(int nadai, int kalam) {
    return matras.dividedBy(nadai).plus(innerBeats).dividedBy(Composition.density(kalam));
  }

  /**
   * Whether it takes no time.
   *
   * @return true if nothing is said and nothing is silent
   */
  public boolean isNothing() {
    return matras.signum() == 0 && innerBeats.signum() == 0;
  }

  /**
   * Measures a sequence, remembering the phrases measured on the way; for many phrases of one
   * composition.
   *
   * @param sequence what is said
   * @param phrases the phrases that it may refer to; without a circle
   * @param known the lengths of phrases measured before; more are added
   * @return its length
   * @throws ArithmeticException if it is too long to count
   */
  public static Length of(
      Sequence sequence, Map<String, Sequence> phrases, Map<String, Length> known) {
    Length sum = NONE;
    Measure measure = new Measure(phrases, known);
    for (Element element : sequence.elements()) {
      sum = sum.plus(element.told(measure));
    }
    return sum;
  }

  private record Measure(Map<String, Sequence> phrases, Map<String, Length> known)
      implements ElementVisitor<Length> {

    private Length of(Sequence sequence) {
      return Length.of(sequence, phrases, known);
    }

    @Override
    public Length word(Element.Word word) {
      return flat(word.sollus().size(), word.sollus().size());
    }

    @Override
    public Length karvai(Element.Karvai karvai) {
      return flat(karvai.matras(), 0);
    }

    @Override
    public Length silence(Element.Silence silence) {
      return flat(1, 0);
    }

    @Override
    public Length group(Element.Group group) {
      return flat(
          Math.addExact(Math.multiplyExact((long) group.size(), group.hold()), group.karvai()),
          group.sollus().size());
    }

    @Override
    public Length faster(Element.Faster faster) {
      Length body = of(faster.body());
      return new Length(
          body.matras.dividedBy(faster.factor()),
          body.innerBeats.dividedBy(faster.factor()),
          body.sollus,
          Math.addExact(body.steps, 1));
    }

    @Override
    public Length repeat(Element.Repeat repeat) {
      return of(repeat.body()).times(repeat.times());
    }

    @Override
    public Length innerNadai(Element.InnerNadai inner) {
      Length body = of(inner.body());
      return new Length(
          Ratio.ZERO,
          body.matras.dividedBy(inner.nadai()).plus(body.innerBeats),
          body.sollus,
          Math.addExact(body.steps, 1));
    }

    @Override
    public Length reference(Element.Reference reference) {
      Length phrase = known.get(reference.name());
      if (phrase == null) {
        phrase = of(phrases.get(reference.name()));
        known.put(reference.name(), phrase);
      }
      return new Length(
          phrase.matras, phrase.innerBeats, phrase.sollus, Math.addExact(phrase.steps, 1));
    }

    @Override
    public Length bar(Element.Bar bar) {
      return new Length(Ratio.ZERO, Ratio.ZERO, 0, 1);
    }

    @Override
    public Length breathWish(Element.BreathWish wish) {
      return new Length(Ratio.ZERO, Ratio.ZERO, 0, 1);
    }
  }

  private static Length flat(long matras, long sollus) {
    return new Length(Ratio.of(matras), Ratio.ZERO, sollus, Math.max(1, sollus));
  }

  private Length plus(Length other) {
    return new Length(
        matras.plus(other.matras),
        innerBeats.plus(other.innerBeats),
        Math.addExact(sollus, other.sollus),
        Math.addExact(steps, other.steps));
  }

  private Length times(int times) {
    return new Length(
        matras.times(times),
        innerBeats.times(times),
        Math.multiplyExact(sollus, times),
        Math.multiplyExact(Math.addExact(steps, 1), times));
  }
}
