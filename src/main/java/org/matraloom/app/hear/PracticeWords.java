package org.matraloom.app.hear;

import org.matraloom.verdict.PracticeAdvice;

/** Says what a drill is for. */
final class PracticeWords implements PracticeAdvice.Cases<String> {

  private PracticeWords() {}

  /** The purpose, such as "the change into round 4, slowly". */
  static String of(PracticeAdvice practice) {
    return practice.told(new PracticeWords());
  }

  @Override
  public String join(PracticeAdvice.Join join) {
    return "the change into round " + join.round() + ", slowly";
  }

  @Override
  public String switching(PracticeAdvice.Switch words) {
    return "plain words in " + words.from() + " and " + words.to() + ", slowly";
  }

  @Override
  public String loop(PracticeAdvice.Loop loop) {
    return "the phrase " + loop.phrase() + " alone, slowly";
  }

  @Override
  public String clicks(PracticeAdvice.Clicks clicks) {
    return "the piece with a hand that falls silent and comes back";
  }

  @Override
  public String ladder(PracticeAdvice.Ladder ladder) {
    return ladder.above() ? "the piece, a little quicker each time" : "the piece, slowly at first";
  }
}
