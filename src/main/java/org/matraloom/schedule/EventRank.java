package org.matraloom.schedule;

/** The order of events at one beat; a mark comes before what it marks. */
final class EventRank implements EventVisitor<Integer> {

  private static final int COUNT_IN = 0;
  private static final int MARK = 1;
  private static final int HAND = 2;
  private static final int TICK = 3;
  private static final int MOUTH = 4;
  private static final int LANDING = 5;

  @Override
  public Integer countIn(Event.CountIn event) {
    return COUNT_IN;
  }

  @Override
  public Integer roundStart(Event.RoundStart event) {
    return MARK;
  }

  @Override
  public Integer sectionStart(Event.SectionStart event) {
    return MARK;
  }

  @Override
  public Integer nadaiChange(Event.NadaiChange event) {
    return MARK;
  }

  @Override
  public Integer handBeat(Event.HandBeat event) {
    return HAND;
  }

  @Override
  public Integer tick(Event.Tick event) {
    return TICK;
  }

  @Override
  public Integer solluSaid(Event.SolluSaid event) {
    return MOUTH;
  }

  @Override
  public Integer silence(Event.Silence event) {
    return MOUTH;
  }

  @Override
  public Integer inhale(Event.Inhale event) {
    return MOUTH;
  }

  @Override
  public Integer landing(Event.LandingPoint event) {
    return LANDING;
  }

  @Override
  public Integer noticePut(Event.NoticePut event) {
    return MARK;
  }
}
