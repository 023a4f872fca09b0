package org.matraloom.verdict;

import java.util.List;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.score.Avartana;
import org.matraloom.score.Performance;

/** Names places of a take as a performer would. */
final class TakePlaces {

  private final Avartana avartana;
  private final List<ExpectedSollu> expected;

  TakePlaces(Performance performance, List<ExpectedSollu> expected) {
    this.avartana = performance.avartana();
    this.expected = expected;
  }

  /** Round, beat and sollu: {@code round 3, beat 5, "ki" of Fall}. */
  String of(int place) {
    ExpectedSollu asked = expected.get(place);
    return "round "
        + asked.round()
        + ", "
        + avartana.say(asked.beat())
        + ", \""
        + asked.sollu().spelling()
        + "\" of "
        + asked.phrase();
  }
}
