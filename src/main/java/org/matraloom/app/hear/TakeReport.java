package org.matraloom.app.hear;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.matraloom.app.cli.Paragraph;
import org.matraloom.breath.Care;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.measure.BreathFindings;
import org.matraloom.measure.HabitFound;
import org.matraloom.measure.Pulse;
import org.matraloom.measure.SaidNadaiChange;
import org.matraloom.measure.TakeFindings;
import org.matraloom.measure.TimingJump;
import org.matraloom.score.Performance;
import org.matraloom.time.Ratio;
import org.matraloom.verdict.Judgement;

/** The findings of a take for reading: three sentences, then tables. */
final class TakeReport {

  private static final int MOST_ROUNDS = 24;

  private final TakeFindings findings;
  private final Performance performance;
  private final PrintWriter out;

  private TakeReport(TakeFindings findings, Performance performance, PrintWriter out) {
    this.findings = findings;
    this.performance = performance;
    this.out = out;
  }

  /**
   * Writes the report.
   *
   * @param findings what was measured
   * @param performance what was to be said
   * @param typed turns a drill into what is to be typed
   * @param out where it goes
   */
  static void print(
      TakeFindings findings, Performance performance, TypedDrill typed, PrintWriter out) {
    Judgement judgement = Judgement.of(findings, performance);
    judgement.recorded().ifPresent(words -> out.println(Paragraph.of(words)));
    out.println(Paragraph.of(judgement.good()));
    out.println(Paragraph.of(judgement.wrong()));
    judgement
        .practice()
        .ifPresent(
            next -> {
              String title = performance.composition().title();
              String words = PracticeWords.of(next);
              String why = title.isEmpty() ? words : words.replace("the piece", "all of " + title);
              out.println(Paragraph.of("Practise next " + why + ":"));
              out.println("  " + typed.of(next));
            });
    if (findings.doubt().isEmpty()) {
      new TakeReport(findings, performance, out).tables();
    }
  }

  private void tables() {
    findings.pulse().ifPresent(this::pulse);
    TakeRoundTable.print(findings.rounds(), out);
    if (findings.pulse().isPresent()) {
      changes();
      TakeRoundTable.printEvenness(findings.evenness(), out);
      landing();
      breaths();
    }
    if (seconds() > 60.0 * Care.REST_AFTER_MINUTES) {
      out.println();
      out.println(
          Paragraph.of(
              "This was more than "
                  + Care.REST_AFTER_MINUTES
                  + " minutes of voice: rest and drink some water before the next take. A general"
                  + " caution, not medical advice."));
    }
  }

  private double seconds() {
    int last = findings.sollus().size() - 1;
    return last < 0 ? 0 : findings.sollus().get(last).onsetSeconds();
  }

  private void pulse(Pulse pulse) {
    out.println();
    line("pulse", "%.2f beats a minute", pulse.beatsPerMinute());
    line(
        "drift", "%s %% from the first beat to the last", SignedNumber.of(pulse.driftPercent(), 1));
    line("spread", "%.1f ms around the pulse", 1_000 * pulse.spreadSeconds());
    pulse
        .leadSeconds()
        .ifPresent(
            lead ->
                line(
                    "lead",
                    "%.0f ms %s the beat heard in the take (a habit of most, no fault)",
                    1_000 * Math.abs(lead),
                    lead < 0 ? "before" : "after"));
    long restarts = findings.brokenOff().size();
    if (restarts > 0) {
      line("restarts", "%d", restarts);
    }
    List<TimingJump> slips = TimingJump.of(findings.alignment(), findings.sollus(), pulse.line());
    list(
        "Slips",
        slips.stream().map(slip -> slip.words() + " before " + written(slip.place())).toList());
  }

  private void line(String name, String format, Object... values) {
    out.println(
        String.format(Locale.ROOT, "%-10s ", name) + String.format(Locale.ROOT, format, values));
  }

  private void changes() {
    List<String> lines = new ArrayList<>();
    for (SaidNadaiChange change : findings.changes()) {
      String steady =
          change.beatsUntilSteady().isPresent()
              ? change.beatsUntilSteady().getAsInt() == 0
                  ? "at once"
                  : "after " + change.beatsUntilSteady().getAsInt() + " beats"
              : "never";
      lines.add(
          String.format(
              Locale.ROOT,
              "round %d, %d to %d: %.3f times as fast (asked %.3f), steady %s",
              change.round(),
              change.from(),
              change.to(),
              change.ratio(),
              change.asked(),
              steady));
    }
    list("Changes of nadai", lines);
    list("Habits", habits());
  }

  private List<String> habits() {
    List<String> lines = new ArrayList<>();
    for (HabitFound found : findings.habits()) {
      lines.add(
          String.format(
              Locale.ROOT,
              "round %d: %s, %.0f %% of it, in %d beats (it explains %.0f %%)",
              found.round(),
              found.habit().words(),
              100 * found.amount(),
              found.beats(),
              100 * found.sure()));
    }
    return lines;
  }

  private void list(String heading, List<String> lines) {
    if (!lines.isEmpty()) {
      out.println();
      out.println(heading);
      lines.stream().limit(MOST_ROUNDS).map(text -> "  " + text).forEach(out::println);
    }
  }

  private void landing() {
    out.println();
    out.println(
        findings
            .landing()
            .map(found -> LandingLine.of(findings, found))
            .orElse(
                findings.alignment().recorded().to() < findings.alignment().expected().size()
                    ? "landing    the last sollu was not recorded"
                    : "landing    the last sollu was not heard"));
    places("missed", findings.alignment().missed(), this::written);
    places(
        "added",
        findings.alignment().added(),
        onset ->
            String.format(
                Locale.ROOT, "%.2f s", findings.alignment().onsets().get(onset).seconds()));
  }

  private String written(int place) {
    ExpectedSollu asked = findings.alignment().expected().get(place);
    return asked.sollu().spelling()
        + " (round "
        + asked.round()
        + ", beat "
        + performance.avartana().placeOf(asked.beat()).plus(Ratio.ONE).toMixed()
        + ")";
  }

  private void places(String name, List<Integer> which, Function<Integer, String> words) {
    if (!which.isEmpty()) {
      String first = String.join(", ", which.stream().limit(6).map(words).toList());
      String more = which.size() > 6 ? " and " + (which.size() - 6) + " more" : "";
      out.println(Paragraph.of(String.format(Locale.ROOT, "%-10s %s%s", name, first, more)));
    }
  }

  private void breaths() {
    BreathFindings breathing = findings.breathing();
    if (breathing.taken().isEmpty()) {
      out.println("breaths    no breath was heard");
    } else {
      line(
          "breaths",
          "%d of %d planned places used, %d elsewhere; longest stretch %.1f s",
          breathing.kept(),
          breathing.planned(),
          breathing.taken().size() - breathing.kept(),
          breathing.longestSeconds());
    }
  }
}
