package org.matraloom.app.hear;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.matraloom.app.cli.Paragraph;
import org.matraloom.measure.HabitFound;
import org.matraloom.measure.Pulse;
import org.matraloom.measure.RoundFindings;
import org.matraloom.measure.SaidNadaiChange;
import org.matraloom.measure.TakeFindings;
import org.matraloom.score.Performance;
import org.matraloom.verdict.CleanerTake;
import org.matraloom.verdict.Judgement;

/** Two takes of a score side by side. */
final class TakeComparison {

  private static final int MOST_ROUNDS = 24;
  private static final String ROW = "%-34s %20s %20s";

  private final List<TakeFindings> takes;
  private final PrintWriter out;

  private TakeComparison(List<TakeFindings> takes, PrintWriter out) {
    this.takes = takes;
    this.out = out;
  }

  static void print(
      List<TakeFindings> takes, List<String> names, Performance performance, PrintWriter out) {
    CleanerTake contest = new CleanerTake(takes.get(0), takes.get(1), performance);
    out.println(Paragraph.of(contest.verdict()));
    for (int i = 0; i < takes.size(); i++) {
      Judgement judgement = Judgement.of(takes.get(i), performance);
      out.println(
          Paragraph.of(
              names.get(i)
                  + ": "
                  + judgement.recorded().map(w -> w + " ").orElse("")
                  + judgement.good()
                  + " "
                  + judgement.wrong()));
    }
    out.println();
    new TakeComparison(takes, out).table();
  }

  private void table() {
    row("", "first take", "second take");
    ofPulse("tempo, beats a minute", pulse -> number("%.1f", pulse.beatsPerMinute()));
    ofPulse("drift, %", pulse -> SignedNumber.of(pulse.driftPercent(), 1));
    ofPulse("spread around the pulse, ms", pulse -> number("%.1f", 1_000 * pulse.spreadSeconds()));
    row(
        "landing, ms",
        take ->
            take.knownLanding()
                .map(landing -> SignedNumber.of(1_000 * landing.errorSeconds(), 1))
                .orElse(take.landing().isPresent() ? "not known" : "not heard"));
    row("sollus missed", take -> "" + take.alignment().missed().size());
    row("sounds added", take -> "" + take.alignment().added().size());
    row(
        "breaths at planned places",
        take -> take.breathing().kept() + " of " + take.breathing().planned());
    row("longest stretch, s", take -> number("%.1f", take.breathing().longestSeconds()));
    int rounds = Math.min(MOST_ROUNDS, takes.get(0).rounds().size());
    for (int r = 0; r < rounds; r++) {
      int at = r;
      String name = "round " + takes.get(0).rounds().get(r).round();
      row(name + ", tempo", take -> tempo(take.rounds().get(at)));
      row(
          name + ", spread ms",
          take -> number("%.1f", 1_000 * take.rounds().get(at).spreadSeconds()));
      row(name + ", habit", take -> habits(take, take.rounds().get(at).round()));
    }
    takes.get(0).changes().stream().limit(MOST_ROUNDS).forEach(this::change);
  }

  private void change(SaidNadaiChange change) {
    row(
        String.format(
            Locale.ROOT,
            "change %d to %d, round %d (asked %.2f)",
            change.from(),
            change.to(),
            change.round(),
            change.asked()),
        take ->
            take.changes().stream()
                .filter(other -> other.place() == change.place())
                .map(other -> number("%.3f", other.ratio()))
                .findFirst()
                .orElse("-"));
  }

  private static String tempo(RoundFindings round) {
    return round.beatsPerMinute() > 0 ? number("%.1f", round.beatsPerMinute()) : "-";
  }

  private static String habits(TakeFindings take, int round) {
    String found =
        take.habits().stream()
            .filter(habit -> habit.round() == round)
            .map(HabitFound::habit)
            .map(habit -> habit.name().toLowerCase(Locale.ROOT).replace('_', ' '))
            .collect(Collectors.joining(", "));
    return found.isEmpty() ? "none" : found;
  }

  private void ofPulse(String name, Function<Pulse, String> value) {
    row(name, take -> take.pulse().map(value).orElse("-"));
  }

  private void row(String name, Function<TakeFindings, String> value) {
    row(name, value.apply(takes.get(0)), value.apply(takes.get(1)));
  }

  private void row(String name, String first, String second) {
    out.println(String.format(Locale.ROOT, ROW, name, first, second).stripTrailing());
  }

  private static String number(String format, double value) {
    return String.format(Locale.ROOT, format, value);
  }
}
