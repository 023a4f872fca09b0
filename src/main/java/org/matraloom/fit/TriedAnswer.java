package org.matraloom.fit;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Element;
import org.matraloom.score.Performance;
import org.matraloom.score.Sequence;
import org.matraloom.score.Sollu;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/**
 * Tries an answer out: writes a score with a phrase of that many sollus, lays it out round by round
 * and looks where it ends. It shares no arithmetic with the search.
 */
final class TriedAnswer {

  private static final String PHRASE = "Phrase";
  private static final Sollu SOLLU = new Sollu("ta", "ta");
  private static final int ANY_TEMPO = 60;

  private TriedAnswer() {}

  static Performance of(
      Avartana avartana, RoundPlan plan, int matras, int waitMatras, Ratio start, Ratio eduppu) {
    Element word = new Element.Word("", Collections.nCopies(matras, SOLLU));
    return Performance.of(
        new Composition(
            "",
            avartana,
            Tempo.of(ANY_TEMPO),
            start,
            eduppu,
            Map.of(PHRASE, new Sequence(List.of(word))),
            plan.steps(PHRASE, waitMatras)));
  }
}
