package org.matraloom.live;

import java.util.ArrayList;
import java.util.List;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.time.Ratio;

/**
 * The sections of a piece in order: every named phrase as it comes in every round; a phrase said
 * several times running is one section.
 */
public final class PieceSections {

  private final List<PieceSection> all;
  private final List<PieceSection> rounds;

  private PieceSections(List<PieceSection> all, List<PieceSection> rounds) {
    this.all = List.copyOf(all);
    this.rounds = List.copyOf(rounds);
  }

  /**
   * Finds the sections of a piece.
   *
   * @param passages its passages, in order
   * @return the sections
   */
  public static PieceSections of(List<Timeline> passages) {
    List<PieceSection> all = new ArrayList<>();
    List<PieceSection> rounds = new ArrayList<>();
    for (int passage = 0; passage < passages.size(); passage++) {
      all.addAll(sections(passages.get(passage), passage));
      rounds.addAll(rounds(passages.get(passage).performance(), passage));
    }
    return new PieceSections(all, rounds);
  }

  private static List<PieceSection> sections(Timeline timeline, int passage) {
    Ratio end = timeline.performance().endBeat();
    List<PieceSection> open = new ArrayList<>();
    boolean roundHasJustBegun = false;
    for (Event event : timeline) {
      if (event instanceof Event.RoundStart start) {
        open.add(new PieceSection(passage, start.phrase(), start.number(), start.beat(), end));
        roundHasJustBegun = true;
      } else if (event instanceof Event.SectionStart start) {
        PieceSection last = open.get(open.size() - 1);
        boolean sameBeat = last.startBeat().equals(start.beat());
        PieceSection next =
            new PieceSection(passage, start.phrase(), start.round(), start.beat(), end);
        if (sameBeat && roundHasJustBegun) {
          open.set(open.size() - 1, next);
        } else if (!sameBeat && !isAgain(last, next)) {
          open.add(next);
        }
        roundHasJustBegun = false;
      }
    }
    return closed(open, end);
  }

  private static boolean isAgain(PieceSection last, PieceSection next) {
    return last.round() == next.round() && last.name().equals(next.name());
  }

  private static List<PieceSection> closed(List<PieceSection> open, Ratio endBeat) {
    List<PieceSection> closed = new ArrayList<>();
    for (int i = 0; i < open.size(); i++) {
      PieceSection section = open.get(i);
      Ratio end = i + 1 < open.size() ? open.get(i + 1).startBeat() : endBeat;
      closed.add(
          new PieceSection(
              section.passage(), section.name(), section.round(), section.startBeat(), end));
    }
    return closed;
  }

  private static List<PieceSection> rounds(Performance performance, int passage) {
    List<PieceSection> rounds = new ArrayList<>();
    for (Span.Round round : performance.rounds()) {
      rounds.add(
          new PieceSection(
              passage, round.phrase(), round.number(), round.startBeat(), round.endBeat()));
    }
    return rounds;
  }

  /**
   * All sections.
   *
   * @return named phrases and rounds, in order
   */
  public List<PieceSection> all() {
    return all;
  }

  /**
   * The rounds of a passage.
   *
   * @param passage which passage, from 0
   * @return its rounds, in order
   */
  public List<PieceSection> rounds(int passage) {
    return rounds.stream().filter(round -> round.passage() == passage).toList();
  }

  /**
   * The first section of the piece.
   *
   * @return the section
   */
  public PieceSection first() {
    return all.get(0);
  }

  /**
   * The section at a place; the first before them all, the last after them all.
   *
   * @param passage which passage, from 0
   * @param beat the place, in beats of the passage's performance
   * @return the section that is going on
   */
  public PieceSection at(int passage, Ratio beat) {
    return lastNotAfter(passage, beat, all);
  }

  /**
   * The round that a section lies in.
   *
   * @param section a section of this piece
   * @return the whole round
   */
  public PieceSection roundOf(PieceSection section) {
    return lastNotAfter(section.passage(), section.startBeat(), rounds);
  }

  private static PieceSection lastNotAfter(int passage, Ratio beat, List<PieceSection> sections) {
    List<PieceSection> inPassage =
        sections.stream().filter(section -> section.passage() == passage).toList();
    PieceSection found = inPassage.get(0);
    for (PieceSection section : inPassage) {
      if (section.startBeat().compareTo(beat) > 0) {
        break;
      }
      found = section;
    }
    return found;
  }

  /**
   * The section so many places further on, or back; the first and the last are the ends.
   *
   * @param section a section of this piece
   * @param steps how many places further on; negative to go back
   * @return the section there
   */
  public PieceSection neighbour(PieceSection section, int steps) {
    int at = all.indexOf(at(section.passage(), section.startBeat())) + steps;
    return all.get(Math.max(0, Math.min(all.size() - 1, at)));
  }
}
