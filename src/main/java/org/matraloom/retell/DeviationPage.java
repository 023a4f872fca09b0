package org.matraloom.retell;

/** The measures of the sheet on which a take is drawn, in points. */
final class DeviationPage {

  /** How wide it is. */
  static final double WIDTH = 1180;

  /** What is left free on either side. */
  static final double MARGIN = 28;

  private DeviationPage() {}
}
