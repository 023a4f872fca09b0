package org.matraloom.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.matraloom.breath.BreathPlanner;
import org.matraloom.breath.BreathSettings;
import org.matraloom.breath.BreathTimeline;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Performance;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/** The piece beat by beat, as it is read while it is played. */
final class BeatSheet {

  /** Longer pieces are shown without words, so that a piece costs no memory by its length. */
  private static final int MOST_BEATS = 20_000;

  /** Breaths of longer pieces are not planned while somebody waits. */
  private static final int MOST_PLANNED_BEATS = 1_000;

  private record Mark(Ratio beat, String text) {}

  private final Map<Long, BeatNote> notes = new HashMap<>();
  private final Map<Ratio, Integer> columns = new HashMap<>();
  private final TreeMap<Ratio, Integer> nadaiChanges = new TreeMap<>();

  private BeatSheet() {}

  /** Reads a piece with its breaths. */
  static BeatSheet of(Timeline timeline, Tempo tempo, BreathSettings settings) {
    BeatSheet sheet = new BeatSheet();
    Performance performance = timeline.performance();
    if (performance.beats().compareTo(Ratio.of(MOST_BEATS)) > 0) {
      return sheet;
    }
    Map<Long, List<Mark>> marks = new HashMap<>();
    TreeMap<Long, Integer> nadais = new TreeMap<>();
    for (Event event : breathing(timeline, tempo, settings)) {
      if (event instanceof Event.Tick tick) {
        nadais.putIfAbsent(tick.beat().floor(), tick.matrasPerBeat());
      } else if (event instanceof Event.NadaiChange change) {
        sheet.nadaiChanges.put(change.beat(), change.to());
      } else {
        marks(event).forEach(mark -> at(marks, mark).add(mark));
      }
    }
    marks.keySet().stream()
        .filter(beat -> nadais.floorEntry(beat) != null)
        .forEach(beat -> nadais.putIfAbsent(beat, nadais.floorEntry(beat).getValue()));
    nadais.forEach(
        (beat, nadai) ->
            sheet.notes.put(
                beat, new BeatNote(sheet.words(marks.getOrDefault(beat, List.of())), nadai)));
    return sheet;
  }

  /** Breaths that are heard are shown where they are heard; others depend on the tempo. */
  private static Timeline breathing(Timeline timeline, Tempo tempo, BreathSettings settings) {
    Performance performance = timeline.performance();
    if (timeline.cuesBreaths() || performance.beats().compareTo(Ratio.of(MOST_PLANNED_BEATS)) > 0) {
      return timeline;
    }
    return new BreathTimeline(timeline, BreathPlanner.plan(performance.at(tempo), settings));
  }

  private static List<Mark> at(Map<Long, List<Mark>> marks, Mark mark) {
    return marks.computeIfAbsent(mark.beat().floor(), beat -> new ArrayList<>());
  }

  private static List<Mark> marks(Event event) {
    List<Mark> marks = new ArrayList<>();
    if (event instanceof Event.SolluSaid said) {
      marks.add(new Mark(said.beat(), said.sollu().spelling()));
      said.spoken().rings().stream()
          .flatMap(ring -> ring.each().stream())
          .forEach(one -> marks.add(new Mark(one.beat(), ",")));
    } else if (event instanceof Event.Silence silence) {
      silence.matras().each().forEach(one -> marks.add(new Mark(one.beat(), ".")));
    } else if (event instanceof Event.Inhale inhale) {
      marks.add(new Mark(inhale.beat(), inhale.full() ? "V" : "v"));
    }
    return marks;
  }

  private String words(List<Mark> marks) {
    StringBuilder words = new StringBuilder();
    marks.stream()
        .sorted((a, b) -> a.beat().compareTo(b.beat()))
        .forEach(
            mark -> {
              words.append(words.isEmpty() ? "" : " ");
              columns.merge(mark.beat(), words.length(), Math::max);
              words.append(mark.text());
            });
    return words.toString();
  }

  /** Where in the words of its beat something stands that begins at a position, in characters. */
  Optional<Integer> columnOf(Ratio beat) {
    return Optional.ofNullable(columns.get(beat));
  }

  /** What there is to read about a beat. */
  BeatNote at(long beat) {
    return notes.getOrDefault(beat, BeatNote.EMPTY);
  }

  /**
   * A change of nadai.
   *
   * @param beat where
   * @param matrasPerBeat matras a beat from there on
   */
  record Coming(Ratio beat, int matrasPerBeat) {}

  /** The next change of nadai after the beginning of a beat, if it comes within so many beats. */
  Optional<Coming> changeAfter(long beat, int within) {
    return Optional.ofNullable(nadaiChanges.higherEntry(Ratio.of(beat)))
        .filter(change -> change.getKey().compareTo(Ratio.of(beat + within)) <= 0)
        .map(change -> new Coming(change.getKey(), change.getValue()));
  }
}
