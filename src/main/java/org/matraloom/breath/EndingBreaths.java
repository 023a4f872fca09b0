package org.matraloom.breath;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.matraloom.form.Ending;
import org.matraloom.form.EndingChoice;
import org.matraloom.score.Anga;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Element;
import org.matraloom.score.FingerCustom;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.Sequence;
import org.matraloom.score.Step;
import org.matraloom.score.Tala;
import org.matraloom.score.Wording;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/** Tries endings: one that leaves too little time to breathe comes later. */
public final class EndingBreaths {

  private static final int MOST_TRIED = 60;
  private static final String PHRASE = "Ending";
  private static final Avartana ANY_CYCLE =
      Avartana.of(new Tala("4", List.of(new Anga.Group(4))), 1, FingerCustom.RESTART);

  private record Tried(EndingChoice choice, boolean possible) {}

  private final int nadai;
  private final Tempo tempo;
  private final BreathSettings settings;

  /**
   * Prepares to try endings.
   *
   * @param nadai matras a beat, 3 to 9
   * @param tempo how fast they are said
   * @param settings what the performer needs and can do
   */
  public EndingBreaths(int nadai, Tempo tempo, BreathSettings settings) {
    this.nadai = nadai;
    this.tempo = tempo;
    this.settings = settings;
  }

  /**
   * The same endings; the first ones are planned, and those without a breath plan moved back.
   *
   * @param choices endings, the best first
   * @return all of them in their new order
   */
  public List<EndingChoice> ranked(List<EndingChoice> choices) {
    int most = Math.min(MOST_TRIED, choices.size());
    List<EndingChoice> ranked = new ArrayList<>();
    choices.subList(0, most).stream()
        .map(this::tried)
        .sorted(
            Comparator.comparing(Tried::possible)
                .reversed()
                .thenComparingInt(tried -> tried.choice().cost()))
        .map(Tried::choice)
        .forEach(ranked::add);
    ranked.addAll(choices.subList(most, choices.size()));
    return ranked;
  }

  private Tried tried(EndingChoice choice) {
    if (choice.ending().longestStatement() > Lexicon.LARGEST_GROUP) {
      return new Tried(choice, false);
    }
    Composition piece =
        new Composition(
            "",
            ANY_CYCLE,
            tempo,
            Ratio.ZERO,
            Ratio.ZERO,
            Map.of(PHRASE, said(choice.ending())),
            List.of(new Step.Say(PHRASE, 1, nadai, 1)));
    return new Tried(choice, MissingBreaths.in(Performance.of(piece), settings) == 0);
  }

  private static Sequence said(Ending ending) {
    List<Element> groups = new ArrayList<>();
    for (int i = 0; i < ending.statements().size(); i++) {
      int size = ending.statements().get(i);
      int karvai = i < ending.karvais().size() ? ending.karvais().get(i) : 0;
      groups.add(Wording.USUAL.group(size, 1, karvai, Lexicon.standard()));
    }
    return new Sequence(groups);
  }
}
