package org.matraloom.app.lesson;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.matraloom.live.PieceSection;
import org.matraloom.live.PieceSections;
import org.matraloom.practice.JoinDrill;
import org.matraloom.practice.LoopDrill;
import org.matraloom.practice.SwitchDrill;
import org.matraloom.schedule.ClickPattern;
import org.matraloom.schedule.ClickTimeline;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.schedule.SpokenLeadIn;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.staircase.Help;
import org.matraloom.staircase.Spot;
import org.matraloom.time.Tempo;

/** Makes the passes of a session from a score. */
final class LessonPieces {

  private static final int LEAD_BEATS = 2;
  private static final int BEATS_AFTER = 4;
  private static final int LOOPS = 4;
  private static final int LEAST_NADAI = 3;
  private static final int MOST_NADAI = 9;
  private static final int HEARD = 2;
  private static final int SILENT = 1;

  private final Composition score;
  private final Lexicon lexicon;
  private final Optional<Integer> leadIn;

  /**
   * Prepares.
   *
   * @param leadIn whole avartanas of words before those that lead in to the whole, as far as they
   *     are counted in; empty for no words
   */
  LessonPieces(Composition score, Lexicon lexicon, Optional<Integer> leadIn) {
    this.score = score;
    this.lexicon = lexicon;
    this.leadIn = leadIn;
  }

  /** The title that takes of the whole have in the log. */
  String title() {
    return score.title().isBlank() ? "untitled" : score.title();
  }

  /** The nadais that plain words are known for, in the order in which they come; two at most. */
  List<Integer> nadais() {
    return Performance.of(score).rounds().stream()
        .map(Span.Round::nadai)
        .filter(nadai -> nadai >= LEAST_NADAI && nadai <= MOST_NADAI)
        .distinct()
        .limit(2)
        .toList();
  }

  /** Plain words that alternate between the nadais of the piece; it has two of them. */
  LessonPass warmUp(int tempo) {
    Composition words =
        SwitchDrill.between(
            score.avartana(), Tempo.of(tempo), nadais(), SwitchDrill.Unit.AVARTANA, 2, lexicon);
    return pass("Warm-up in plain words", words, Help.ALL);
  }

  int joins() {
    return JoinDrill.joins(score);
  }

  /** The names of the phrases that are said, each once, in order. */
  List<String> sections() {
    Set<String> names = new LinkedHashSet<>();
    PieceSections.of(List.of(ScoreTimeline.of(Performance.of(score), 0))).all().stream()
        .map(PieceSection::name)
        .filter(score.phrases()::containsKey)
        .forEach(names::add);
    return List.copyOf(names);
  }

  LessonPass loop(Spot place, int tempo, Help help) {
    Composition at = score.at(Tempo.of(tempo));
    Composition loop =
        place.kind() == Spot.Kind.JOIN
            ? JoinDrill.of(
                at, Integer.parseInt(place.name()), LEAD_BEATS, BEATS_AFTER, LOOPS, lexicon)
            : LoopDrill.of(at, place.name(), LEAD_BEATS, LOOPS, lexicon);
    String words = place.words();
    return pass(Character.toUpperCase(words.charAt(0)) + words.substring(1), loop, help);
  }

  LessonPass whole(int tempo, Help help) {
    return pass("The whole", score.at(Tempo.of(tempo)), help, leadIn);
  }

  private static LessonPass pass(String what, Composition said, Help help) {
    return pass(what, said, help, Optional.empty());
  }

  private static LessonPass pass(
      String what, Composition said, Help help, Optional<Integer> leadIn) {
    Timeline counted = ScoreTimeline.of(Performance.of(said), LessonPass.COUNT_IN);
    Timeline laidOut = SpokenLeadIn.before(counted, leadIn);
    Timeline heard =
        help.isLeast()
            ? new ClickTimeline(
                laidOut, ClickPattern.fixed(HEARD, SILENT, ClickPattern.Heard.NOTHING))
            : laidOut;
    return new LessonPass(what, said, heard, help);
  }
}
