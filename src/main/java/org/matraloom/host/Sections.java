package org.matraloom.host;

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
final class Sections {

  private final List<Section> all;
  private final List<Section> rounds;

  private Sections(List<Section> all, List<Section> rounds) {
    this.all = List.copyOf(all);
    this.rounds = List.copyOf(rounds);
  }

  static Sections of(Timeline timeline) {
    Performance performance = timeline.performance();
    List<Section> open = new ArrayList<>();
    boolean roundHasJustBegun = false;
    for (Event event : timeline) {
      if (event instanceof Event.RoundStart start) {
        open.add(section(start.phrase(), start.number(), start.beat(), performance));
        roundHasJustBegun = true;
      } else if (event instanceof Event.SectionStart start) {
        Section last = open.get(open.size() - 1);
        boolean sameBeat = last.startBeat().equals(start.beat());
        Section next = section(start.phrase(), start.round(), start.beat(), performance);
        if (sameBeat && roundHasJustBegun) {
          open.set(open.size() - 1, next);
        } else if (!sameBeat && !isAgain(last, next)) {
          open.add(next);
        }
        roundHasJustBegun = false;
      }
    }
    return new Sections(closed(open, performance.endBeat()), rounds(performance));
  }

  private static Section section(String name, int round, Ratio beat, Performance performance) {
    return new Section(name, round, beat, performance.endBeat());
  }

  private static boolean isAgain(Section last, Section next) {
    return last.round() == next.round() && last.name().equals(next.name());
  }

  private static List<Section> closed(List<Section> open, Ratio endBeat) {
    List<Section> closed = new ArrayList<>();
    for (int i = 0; i < open.size(); i++) {
      Section section = open.get(i);
      Ratio end = i + 1 < open.size() ? open.get(i + 1).startBeat() : endBeat;
      closed.add(new Section(section.name(), section.round(), section.startBeat(), end));
    }
    return closed;
  }

  private static List<Section> rounds(Performance performance) {
    List<Section> rounds = new ArrayList<>();
    for (Span.Round round : performance.rounds()) {
      rounds.add(new Section(round.phrase(), round.number(), round.startBeat(), round.endBeat()));
    }
    return rounds;
  }

  List<Section> all() {
    return all;
  }

  List<Section> rounds() {
    return rounds;
  }

  Section first() {
    return all.get(0);
  }

  /** The section at a place; the first before them all, the last after them all. */
  Section at(Ratio beat) {
    return lastNotAfter(beat, all);
  }

  /** The round at a place, likewise. */
  Section roundAt(Ratio beat) {
    return lastNotAfter(beat, rounds);
  }

  private static Section lastNotAfter(Ratio beat, List<Section> sections) {
    Section found = sections.get(0);
    for (Section section : sections) {
      if (section.startBeat().compareTo(beat) > 0) {
        break;
      }
      found = section;
    }
    return found;
  }

  /** The section so many places further on, or back; the first and the last are the ends. */
  Section neighbour(Section section, int steps) {
    int at = all.indexOf(at(section.startBeat())) + steps;
    return all.get(Math.max(0, Math.min(all.size() - 1, at)));
  }
}
