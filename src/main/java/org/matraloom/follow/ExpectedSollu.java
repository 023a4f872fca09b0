package org.matraloom.follow;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Stress;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Sollu;
import org.matraloom.time.Ratio;

/**
 * A sollu that the score asks for.
 *
 * @param beat where its felt beat falls, in beats of the performance
 * @param seconds the same in seconds from the first sollu, at the tempo of the score
 * @param sollu what is to be said
 * @param round the round it belongs to, from 1
 * @param phrase the innermost phrase it belongs to
 * @param matrasPerBeat matras a beat where it is said, kalam included
 * @param matra which matra of its beat it falls on, from 1; 0 if it falls between matras
 * @param entry whether a round or a phrase begins with it, so that one may begin again here
 */
public record ExpectedSollu(
    Ratio beat,
    double seconds,
    Sollu sollu,
    int round,
    String phrase,
    int matrasPerBeat,
    int matra,
    boolean entry) {

  /**
   * All sollus of the rounds of a timeline; words that lead in are nobody's to say.
   *
   * @param timeline the performance laid out
   * @return in order of time; empty if nothing is said
   */
  public static List<ExpectedSollu> of(Timeline timeline) {
    List<ExpectedSollu> sollus = new ArrayList<>();
    Section section = new Section();
    double first = 0;
    for (Event event : timeline) {
      section.pass(event);
      if (event instanceof Event.SolluSaid said && said.round() > 0) {
        double seconds = timeline.secondsAt(said.beat()).toDouble();
        first = sollus.isEmpty() ? seconds : first;
        boolean entry = said.stress() == Stress.ROUND || said.stress() == Stress.PHRASE;
        sollus.add(
            new ExpectedSollu(
                said.beat(),
                seconds - first,
                said.sollu(),
                said.round(),
                section.phrase,
                section.matrasPerBeat,
                section.matraOf(said.beat()),
                entry));
      }
    }
    return sollus;
  }

  /** Whether one may begin again at each sollu. */
  static boolean[] entries(List<ExpectedSollu> asked) {
    boolean[] entries = new boolean[asked.size()];
    for (int k = 0; k < entries.length; k++) {
      entries[k] = asked.get(k).entry();
    }
    return entries;
  }

  /** Which sollu each asks for, numbered from 0 as they first come. */
  static int[] kinds(List<ExpectedSollu> asked) {
    Map<String, Integer> kinds = new HashMap<>();
    int[] of = new int[asked.size()];
    for (int k = 0; k < of.length; k++) {
      of[k] = kinds.computeIfAbsent(asked.get(k).sollu().sound(), sound -> kinds.size());
    }
    return of;
  }

  /** Where in the score the reading has come. */
  private static final class Section {
    private String phrase = "";
    private int matrasPerBeat = 1;
    private Ratio gridMatras = Ratio.ZERO;

    void pass(Event event) {
      if (event instanceof Event.RoundStart start) {
        phrase = start.phrase();
        if (matrasPerBeat == 1) {
          matrasPerBeat = start.nadai() << (start.kalam() - 1);
          gridMatras = fractionOf(start.beat().times(matrasPerBeat));
        }
      } else if (event instanceof Event.SectionStart start) {
        phrase = start.phrase();
      } else if (event instanceof Event.NadaiChange change) {
        matrasPerBeat = change.to();
        gridMatras = fractionOf(change.beat().times(matrasPerBeat));
      }
    }

    /** A passage that begins between two matras of the beat has its own grid from there. */
    int matraOf(Ratio beat) {
      Ratio matras = beat.minus(Ratio.of(beat.floor())).times(matrasPerBeat);
      boolean onGrid = fractionOf(matras).equals(gridMatras);
      return onGrid ? (int) matras.floor() + 1 : 0;
    }

    private static Ratio fractionOf(Ratio value) {
      return value.minus(Ratio.of(value.floor()));
    }
  }
}
