package org.matraloom.score;

/**
 * Says something about an element of each kind; a new kind is a new method for all.
 *
 * @param <R> what is said
 */
public interface ElementVisitor<R> {

  /**
   * A written word.
   *
   * @param element the element
   * @return what is said of it
   */
  R word(Element.Word element);

  /**
   * Karvai.
   *
   * @param element the element
   * @return what is said of it
   */
  R karvai(Element.Karvai element);

  /**
   * A silent matra.
   *
   * @param element the element
   * @return what is said of it
   */
  R silence(Element.Silence element);

  /**
   * A kanakku group.
   *
   * @param element the element
   * @return what is said of it
   */
  R group(Element.Group element);

  /**
   * A passage said faster.
   *
   * @param element the element
   * @return what is said of it
   */
  R faster(Element.Faster element);

  /**
   * A passage said several times.
   *
   * @param element the element
   * @return what is said of it
   */
  R repeat(Element.Repeat element);

  /**
   * A passage in a nadai of its own.
   *
   * @param element the element
   * @return what is said of it
   */
  R innerNadai(Element.InnerNadai element);

  /**
   * Another phrase.
   *
   * @param element the element
   * @return what is said of it
   */
  R reference(Element.Reference element);

  /**
   * A bar.
   *
   * @param element the element
   * @return what is said of it
   */
  R bar(Element.Bar element);

  /**
   * A wish about breath.
   *
   * @param element the element
   * @return what is said of it
   */
  R breathWish(Element.BreathWish element);
}
