package org.matraloom.app.hear;

import org.matraloom.verdict.Practice;

/** Says what a drill is for. */
final class PracticeWords implements Practice.Cases<String> {

  private PracticeWords() {}

  /** The purpose, such as "the change into round 4, slowly". */
  static String of(Practice practice) {
    return practice.told(new PracticeWords());
  }

  @Override
  public String join(Practice.Join join) {
    return "the change into round " + join.round() + ", slowly";
  }

  @Override
  public String switching(Practice.Switch words) {
    return "plain words in " + words.from() + " and " + words.to() + ", slowly";
  }

  @Override
  public String loop(Practice.Loop loop) {
    return "the phrase " + loop.phrase() + " alone, slowly";
  }

  @Override
  public String clicks(Practice.Clicks clicks) {
    return "the piece with a hand that falls silent and comes back";
  }

  @Override
  public String ladder(Practice.Ladder ladder) {
    return ladder.above() ? "the piece, a little quicker each time" : "the piece, slowly at first";
  }
}
