package org.matraloom.breath;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.matraloom.kanakku.Landing;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.spell.ScorePrinter;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/** Finds what would make an impossible piece possible; every cure has been tried out. */
public final class Cures {

  private static final int SLOWEST = 20;
  private static final int FASTEST = 240;
  private static final int MOST_ADDED_MATRAS = 8;
  private static final int MOST_LEFT_OUT = 4;

  private final Composition composition;
  private final BreathSettings settings;
  private final Voice voice;

  private Cures(BreathPlan plan) {
    this.composition = plan.performance().composition();
    this.voice = VoiceReader.read(plan.performance()).orElseThrow();
    this.settings = plan.settings();
  }

  /**
   * Looks for cures of every kind.
   *
   * @param plan a plan
   * @return at most one slower and one faster tempo, the cutting of karvais, added silence, and
   *     left-out sollus; none if the plan is possible
   */
  public static List<Cure> of(BreathPlan plan) {
    if (plan.isPossible()) {
      return List.of();
    }
    Cures cures = new Cures(plan);
    List<Cure> found = new ArrayList<>();
    cures.faster().ifPresent(found::add);
    cures.slower().ifPresent(found::add);
    cures.cutKarvai().ifPresent(found::add);
    cures.addedSilence().ifPresent(found::add);
    cures.leftOut().ifPresent(found::add);
    return List.copyOf(found);
  }

  private Optional<Cure> faster() {
    long first = composition.tempo().beatsPerMinute().floor() + 1;
    return atTempo(LongStream.rangeClosed(first, FASTEST), "faster");
  }

  private Optional<Cure> slower() {
    long first = composition.tempo().beatsPerMinute().ceil() - 1;
    return atTempo(
        LongStream.rangeClosed(SLOWEST, first).map(at -> first + SLOWEST - at), "slower");
  }

  /** The voice is the same at every tempo, only its pace is not. */
  private Optional<Cure> atTempo(LongStream tempi, String word) {
    return tempi
        .mapToObj(Tempo::of)
        .filter(tempo -> MissingBreaths.in(voice, tempo, settings) == 0)
        .findFirst()
        .map(composition::at)
        .map(
            changed ->
                new Cure(
                    Cure.Kind.TEMPO,
                    "take it "
                        + word
                        + ", at "
                        + changed.tempo().beatsPerMinute()
                        + " beats a minute",
                    changed,
                    settings));
  }

  private Optional<Cure> cutKarvai() {
    BreathSettings cutting = settings.withCutKarvai(true);
    return settings.cutKarvai() || !isPossible(composition, cutting)
        ? Optional.empty()
        : Optional.of(
            new Cure(
                Cure.Kind.KARVAI,
                "say the sollus that ring short and breathe in their karvais",
                composition,
                cutting));
  }

  private Optional<Cure> addedSilence() {
    List<CureSearch.Change> changes =
        CureSearch.changes(composition, settings, SilenceAdded::new, MOST_ADDED_MATRAS);
    if (changes.isEmpty()) {
      return Optional.empty();
    }
    Composition changed = last(changes);
    Landing before = Landing.of(Performance.of(composition));
    Landing after = Landing.of(Performance.of(changed));
    Ratio growth = after.beats().minus(before.beats());
    String words = told(changes, "add", "silent matra", "") + "; " + effect(before, after);
    if (before.lands() && !after.lands() && after.startCanMend()) {
      Ratio start = after.startThatLands();
      changed = changed.startingAt(start);
      words +=
          ": to land as before, start at "
              + (start.signum() == 0 ? "samam" : "beat " + start.plus(Ratio.ONE).toMixed());
    }
    return isPossible(changed, settings)
        ? Optional.of(new Cure(Cure.Kind.ADDED_SILENCE, words, changed, settings))
        : Optional.empty();
  }

  private static String effect(Landing before, Landing after) {
    Ratio growth = after.beats().minus(before.beats());
    if (growth.signum() == 0) {
      return "neither its length nor its landing changes";
    }
    return "the piece grows by "
        + Counts.beats(growth)
        + (after.missBeats().equals(before.missBeats())
            ? " and its landing does not move"
            : " and ends that much later");
  }

  private Optional<Cure> leftOut() {
    List<CureSearch.Change> changes =
        CureSearch.changes(composition, settings, SollusLeftOut::new, MOST_LEFT_OUT);
    return changes.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Cure(
                Cure.Kind.LEFT_OUT,
                told(changes, "leave out the last", "sollu", " and use the time for air")
                    + "; the landing does not move",
                last(changes),
                settings));
  }

  private static Composition last(List<CureSearch.Change> changes) {
    return changes.get(changes.size() - 1).composition();
  }

  private static String told(
      List<CureSearch.Change> changes, String verb, String one, String purpose) {
    String deeds =
        changes.stream()
            .map(
                change ->
                    verb
                        + " "
                        + Counts.of(change.amount(), one, one + "s")
                        + " "
                        + change.place()
                        + " in "
                        + change.phrase())
            .collect(Collectors.joining(", then "));
    return deeds + purpose + ", so that it reads " + rewritten(changes);
  }

  private static String rewritten(List<CureSearch.Change> changes) {
    return changes.stream()
        .map(CureSearch.Change::phrase)
        .distinct()
        .map(name -> name + " = " + ScorePrinter.print(last(changes).phrases().get(name)))
        .collect(Collectors.joining(" and "));
  }

  private static boolean isPossible(Composition changed, BreathSettings settings) {
    return MissingBreaths.in(Performance.of(changed), settings) == 0;
  }
}
