package org.matraloom.schedule;

/**
 * Says something about an event of each kind; a new kind is a new method for all.
 *
 * @param <R> what is said
 */
public interface EventVisitor<R> {

  /**
   * The count-in begins.
   *
   * @param event the event
   * @return what is said of it
   */
  R countIn(Event.CountIn event);

  /**
   * A round begins.
   *
   * @param event the event
   * @return what is said of it
   */
  R roundStart(Event.RoundStart event);

  /**
   * A named phrase begins inside a round.
   *
   * @param event the event
   * @return what is said of it
   */
  R sectionStart(Event.SectionStart event);

  /**
   * The number of matras a beat changes.
   *
   * @param event the event
   * @return what is said of it
   */
  R nadaiChange(Event.NadaiChange event);

  /**
   * The hand gives a kriya.
   *
   * @param event the event
   * @return what is said of it
   */
  R handBeat(Event.HandBeat event);

  /**
   * A matra begins.
   *
   * @param event the event
   * @return what is said of it
   */
  R tick(Event.Tick event);

  /**
   * A sollu is said.
   *
   * @param event the event
   * @return what is said of it
   */
  R solluSaid(Event.SolluSaid event);

  /**
   * Nothing is said.
   *
   * @param event the event
   * @return what is said of it
   */
  R silence(Event.Silence event);

  /**
   * There is time to inhale.
   *
   * @param event the event
   * @return what is said of it
   */
  R inhale(Event.Inhale event);

  /**
   * The last matra has ended.
   *
   * @param event the event
   * @return what is said of it
   */
  R landing(Event.LandingPoint event);

  /**
   * A line of the plan that takes no time is passed.
   *
   * @param event the event
   * @return what is said of it
   */
  R noticePut(Event.NoticePut event);
}
