package org.matraloom.kanakku;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.score.Avartana;
import org.matraloom.score.Kriya;
import org.matraloom.score.Performance;
import org.matraloom.score.Sollu;
import org.matraloom.score.Span;
import org.matraloom.score.Spoken;
import org.matraloom.time.Ratio;

/**
 * One beat of a round cut by the tala: what the hand does, and what the mouth says meanwhile.
 *
 * @param beat which beat; 0 is the samam of the avartana in which the performance starts
 * @param kriya what the hand gives
 * @param samam whether it is the first beat of an avartana
 * @param onTheBeat the sollu that sounds when the kriya falls, if one does
 * @param begins whether that sollu begins on the beat, rather than ringing on from before
 * @param sollus the sollus that begin in this beat, in order
 * @param marks the beat in writing, a mark a matra: a sollu, several of them in square brackets, a
 *     comma where a sound rings on, a dot where it is silent, a hyphen outside the round
 */
public record BeatRow(
    long beat,
    Kriya kriya,
    boolean samam,
    Optional<Sollu> onTheBeat,
    boolean begins,
    List<Sollu> sollus,
    List<String> marks) {

  /** The most beats that are listed. */
  public static final int MOST = 10_000;

  /** Copies the lists. */
  public BeatRow {
    sollus = List.copyOf(sollus);
    marks = List.copyOf(marks);
  }

  /**
   * A round cut by the tala. What rings into it from the round before is heard.
   *
   * @param round the round
   * @param performance what it belongs to
   * @return a row for every beat in which the round is said, at most {@value #MOST}
   */
  public static List<BeatRow> of(Span.Round round, Performance performance) {
    long first = round.startBeat().floor();
    long last = Math.min(round.endBeat().ceil(), first + MOST);
    Ratio end = Ratio.of(last).min(round.endBeat());
    List<Spoken> said =
        performance
            .spoken()
            .takeWhile(spoken -> spoken.beat().compareTo(end) < 0)
            .filter(spoken -> spoken.endBeat().compareTo(round.startBeat()) > 0)
            .toList();
    List<BeatRow> rows = new ArrayList<>();
    int ended = 0;
    for (long beat = first; beat < last; beat++) {
      while (ended < said.size() && said.get(ended).endBeat().compareTo(Ratio.of(beat)) <= 0) {
        ended++;
      }
      List<Spoken> sounding = said.subList(ended, said.size());
      rows.add(row(beat, performance.avartana(), round, sounding));
    }
    return List.copyOf(rows);
  }

  private static BeatRow row(long beat, Avartana avartana, Span.Round round, List<Spoken> said) {
    Ratio from = Ratio.of(beat);
    Ratio to = Ratio.of(beat + 1);
    List<Sollu> inside = new ArrayList<>();
    Optional<Spoken> on = Optional.empty();
    for (Spoken one : said) {
      if (one.beat().compareTo(to) >= 0) {
        break;
      }
      boolean ofTheRound = one.round() == round.number();
      if (ofTheRound && one.beat().compareTo(from) >= 0) {
        inside.add(one.sollu());
      }
      boolean heard = ofTheRound || from.compareTo(round.startBeat()) >= 0;
      if (heard && one.beat().compareTo(from) <= 0) {
        on = Optional.of(one);
      }
    }
    return new BeatRow(
        beat,
        avartana.kriyaAt(beat),
        avartana.isSamam(beat),
        on.map(Spoken::sollu),
        on.isPresent() && on.get().beat().equals(from),
        inside,
        BeatMarks.of(beat, round, said));
  }
}
