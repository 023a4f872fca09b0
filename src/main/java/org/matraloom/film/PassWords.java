package org.matraloom.film;

import java.util.List;
import java.util.Optional;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Avartana;
import org.matraloom.score.Notice;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.score.Step;
import org.matraloom.score.TalaSections;
import org.matraloom.sheet.Row;
import org.matraloom.sheet.SheetWords;
import org.matraloom.time.Ratio;

/** What is said in words while a pass goes on: the section, the place, what comes. */
final class PassWords {

  /** How many beats a change is shown after it has come. */
  private static final Ratio SHOWN_AFTER = Ratio.of(2);

  private final FilmPass pass;
  private final Performance performance;
  private final Timeline timeline;
  private final Avartana avartana;
  private final SheetWords words;
  private final List<Span.Round> rounds;
  private final List<Row.NadaiTurn> turns;
  private final long firstAvartana;
  private final int avartanas;

  PassWords(FilmPass pass) {
    this.pass = pass;
    this.timeline = pass.timeline();
    this.performance = timeline.performance();
    this.avartana = performance.avartana();
    this.words = new SheetWords(pass.sheet());
    this.rounds = performance.rounds();
    this.turns = pass.sheet().rows().stream().flatMap(row -> row.turns().stream()).toList();
    this.firstAvartana = TalaSections.numberAt(avartana, performance.startBeat());
    this.avartanas = pass.sheet().rows().size();
  }

  /** Tala, tempo, and how the pass is taken. */
  String setting() {
    String tempo = performance.composition().tempo().beatsPerMinute().toMixed();
    String name = pass.name().isEmpty() ? "" : pass.name() + ", ";
    return avartana.tala().name() + ", " + name + tempo + " beats a minute";
  }

  /** What is being said. */
  String section(Ratio beat) {
    if (beat.compareTo(performance.startBeat()) < 0) {
      return countIn(beat);
    }
    if (beat.compareTo(performance.endBeat()) >= 0) {
      return performance.closing().stroke().isPresent() ? "The last stroke" : "It has ended";
    }
    String part = part(beat);
    return roundAt(beat).map(round -> part + heading(round)).orElse(part + "Rest");
  }

  private String countIn(Ratio beat) {
    long samam = avartana.samamBefore(performance.startBeat());
    boolean runsOn = beat.compareTo(Ratio.of(samam)) >= 0;
    String from = "from " + avartana.say(performance.startBeat());
    return runsOn ? "It begins " + from : "Count-in";
  }

  /** The part of the piece, as the plan names it. */
  private String part(Ratio beat) {
    String part = "";
    for (Notice notice : performance.notices()) {
      if (notice.beat().compareTo(beat) <= 0 && notice.step() instanceof Step.Part named) {
        part = named.name() + " · ";
      }
    }
    return part;
  }

  private String heading(Span.Round round) {
    String phrase = round.phrase().isEmpty() ? "" : " · " + round.phrase();
    return "Round " + round.number() + " of " + lastRound() + phrase + " · " + nadai(round);
  }

  private int lastRound() {
    return rounds.get(rounds.size() - 1).number();
  }

  String nadai(Span.Round round) {
    String kalam = round.kalam() == 1 ? "" : ", kalam\u00a0" + round.kalam();
    return words.nadai(round.nadai()) + kalam;
  }

  private Optional<Span.Round> roundAt(Ratio beat) {
    return rounds.stream()
        .filter(round -> round.startBeat().compareTo(beat) <= 0)
        .filter(round -> round.endBeat().compareTo(beat) > 0)
        .findFirst();
  }

  /** Which avartana of how many. */
  String place(Ratio beat) {
    long number = TalaSections.numberAt(avartana, beat) - firstAvartana + 1;
    return number < 1 || number > avartanas ? "" : "avartana " + number + " of " + avartanas;
  }

  /** What comes, told an avartana before; words to students; at the end whether it has landed. */
  Optional<ScreenView.News> news(Ratio beat) {
    Optional<ScreenView.News> change =
        turns.stream()
            .filter(turn -> isTold(turn, beat))
            .findFirst()
            .map(turn -> change(turn, beat));
    if (change.isPresent()) {
      return change;
    }
    if (beat.compareTo(performance.endBeat()) >= 0) {
      return Optional.of(new ScreenView.News.Told(words.landing()));
    }
    return told(beat).or(() -> comes(beat));
  }

  private boolean isTold(Row.NadaiTurn turn, Ratio beat) {
    Ratio cycle = Ratio.of(avartana.goingOnAt(beat).beats());
    Ratio left = turn.beat().minus(beat);
    return left.compareTo(cycle) <= 0 && left.plus(SHOWN_AFTER).signum() > 0;
  }

  private ScreenView.News change(Row.NadaiTurn turn, Ratio beat) {
    int before = 0;
    for (Row.NadaiTurn earlier : turns) {
      if (earlier.beat().compareTo(turn.beat()) < 0) {
        before = earlier.matrasPerBeat();
      }
    }
    String name =
        roundAt(turn.beat()).map(this::nadai).orElseGet(() -> words.nadai(turn.matrasPerBeat()));
    Ratio left = turn.beat().minus(beat);
    int beats = (int) Math.max(0, left.ceil());
    String place = "from " + avartana.say(turn.beat());
    return new ScreenView.News.Change(before, turn.matrasPerBeat(), name, place, beats);
  }

  /** Words to students that stand in the avartana that goes on. */
  private Optional<ScreenView.News> told(Ratio beat) {
    Ratio from = Ratio.of(avartana.samamBefore(beat));
    Ratio to = from.plus(Ratio.of(avartana.goingOnAt(beat).beats()));
    return performance.notices().stream()
        .filter(notice -> notice.step() instanceof Step.Tell)
        .filter(notice -> notice.beat().compareTo(from) >= 0 && notice.beat().compareTo(to) < 0)
        .flatMap(notice -> notice.words().stream())
        .<ScreenView.News>map(ScreenView.News.Told::new)
        .findFirst();
  }

  /** The round that begins within an avartana. */
  private Optional<ScreenView.News> comes(Ratio beat) {
    Ratio cycle = Ratio.of(avartana.goingOnAt(beat).beats());
    return rounds.stream()
        .filter(round -> round.startBeat().compareTo(beat) > 0)
        .filter(round -> round.startBeat().minus(beat).compareTo(cycle) <= 0)
        .findFirst()
        .map(
            round ->
                new ScreenView.News.Told(
                    "then: " + heading(round) + ", from " + avartana.say(round.startBeat())));
  }
}
