package org.matraloom.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.matraloom.madetake.KhandaFault;
import org.matraloom.madetake.Speakers;
import org.matraloom.madetake.TakeCase;

/** Adds up the verdicts on many made takes; one line for each thing that is asked. */
final class TakeTally {

  private static final double LEAST_MATCHED = 0.95;
  private static final double LEAST_MATCHED_LOUD = 0.90;
  private static final double MOST_ONSET_MS = 5;
  private static final double MOST_LANDING_MS = 10;
  private static final double MOST_DRIFT_PERCENT = 0.2;
  private static final double LEAST_NAMED = 0.9;

  private final List<TakeVerdict> verdicts;
  private final List<String> lines = new ArrayList<>();
  private boolean good = true;

  TakeTally(List<TakeVerdict> verdicts) {
    this.verdicts = List.copyOf(verdicts);
  }

  /** Adds everything up. */
  List<String> lines() {
    for (TakeCase.Group group : TakeCase.Group.values()) {
      note(group.toString(), verdict -> verdict.made().group() == group);
    }
    verdicts.stream()
        .map(verdict -> verdict.made().voice())
        .distinct()
        .sorted()
        .forEach(voice -> note("voice " + voice, verdict -> verdict.made().voice().equals(voice)));
    matched("sollus matched", verdict -> !verdict.made().group().isLoud(), LEAST_MATCHED);
    for (TakeCase.Group group : TakeCase.Group.values()) {
      if (group.isLoud()) {
        String name = group == TakeCase.Group.NOISE ? "noise at 20 dB" : "strokes at -12 dB";
        matched(
            "sollus matched with " + name,
            verdict -> verdict.made().group() == group,
            LEAST_MATCHED_LOUD);
      }
    }
    double onset = median(values(verdict -> true, TakeVerdict::onsetErrors));
    line(onset <= MOST_ONSET_MS / 1000, "median onset error %.2f ms, 5 asked", 1000 * onset);
    Predicate<TakeVerdict> exact = verdict -> verdict.made().group().isExact();
    Predicate<TakeVerdict> tells = verdict -> verdict.scatterPercent() <= MOST_DRIFT_PERCENT / 2;
    each("landing error (ms)", exact, MOST_LANDING_MS, 1000, TakeVerdict::landingSeconds);
    each("drift (percent)", exact.and(tells), MOST_DRIFT_PERCENT, 1, TakeVerdict::driftPercent);
    List<TakeVerdict> scattered = verdicts.stream().filter(exact.and(tells.negate())).toList();
    lines.add(
        String.format(
            Locale.ROOT,
            "# in %d takes more the drift cannot be told so closely by anybody: the scatter of so few"
                + " sollus feigns as much; there it is off by %.2f in the middle, at most %.2f",
            scattered.size(),
            median(drifts(scattered)),
            drifts(scattered).stream().mapToDouble(Math::abs).max().orElse(0)));
    breaths();
    for (KhandaFault fault : KhandaFault.values()) {
      named(fault);
    }
    long wrong =
        verdicts.stream()
            .filter(verdict -> verdict.made().flaws().khanda.isEmpty() && !verdict.habitsRight())
            .peek(
                verdict -> lines.add("# named without cause: " + verdict.made() + verdict.habits()))
            .count();
    line(wrong == 0, "habits named in %d takes that have none, 0 asked", wrong);
    long doubted =
        verdicts.stream()
            .filter(verdict -> verdict.doubt().isPresent())
            .peek(
                verdict -> lines.add("# doubted: " + verdict.made() + " " + verdict.doubt().get()))
            .count();
    line(doubted == 0, "takes that were not judged: %d, 0 asked", doubted);
    return List.copyOf(lines);
  }

  boolean isGood() {
    return good;
  }

  private void line(boolean fine, String text, Object... values) {
    good &= fine;
    lines.add((fine ? "ok - " : "not ok - ") + String.format(Locale.ROOT, text, values));
  }

  private void note(String name, Predicate<TakeVerdict> which) {
    List<TakeVerdict> some = verdicts.stream().filter(which).toList();
    if (some.isEmpty()) {
      return;
    }
    int said = some.stream().mapToInt(TakeVerdict::said).sum();
    lines.add(
        String.format(
            Locale.ROOT,
            "# %-14s %3d takes, %5d sollus, %5.1f %% matched, %4.1f %% wrong;"
                + " medians: onset %4.1f ms, felt %4.1f ms (%+.1f), tempo %.2f %%",
            name,
            some.size(),
            said,
            100.0 * some.stream().mapToInt(TakeVerdict::matched).sum() / said,
            100.0 * some.stream().mapToInt(TakeVerdict::wrong).sum() / said,
            1000 * median(values(which, TakeVerdict::onsetErrors)),
            1000 * median(values(which, TakeVerdict::feltErrors)),
            1000 * middle(values(which, TakeVerdict::feltErrors)),
            median(values(which, verdict -> verdict.tempoPercent().stream().toList()))));
  }

  private void matched(String name, Predicate<TakeVerdict> which, double least) {
    List<TakeVerdict> some = verdicts.stream().filter(which).toList();
    int said = some.stream().mapToInt(TakeVerdict::said).sum();
    int matched = some.stream().mapToInt(TakeVerdict::matched).sum();
    some.stream()
        .filter(verdict -> verdict.matched() < least * verdict.said())
        .forEach(
            verdict ->
                lines.add(
                    "# " + verdict.matched() + " of " + verdict.said() + " in " + verdict.made()));
    line(
        said > 0 && matched >= least * said,
        "%s: %.2f %% of %d in %d takes, %.0f asked",
        name,
        100.0 * matched / said,
        said,
        some.size(),
        100 * least);
  }

  /** Something that must be found closely enough in every take of some. */
  private void each(
      String name,
      Predicate<TakeVerdict> which,
      double most,
      double unit,
      Function<TakeVerdict, Optional<Double>> value) {
    List<TakeVerdict> exact = verdicts.stream().filter(which).toList();
    List<Double> errors = new ArrayList<>();
    int within = 0;
    for (TakeVerdict verdict : exact) {
      double error = unit * Math.abs(value.apply(verdict).orElse(Double.POSITIVE_INFINITY));
      errors.add(error);
      if (error <= most) {
        within++;
      } else {
        lines.add(String.format(Locale.ROOT, "# %s off by %.2f: %s", name, error, verdict.made()));
      }
    }
    if (exact.isEmpty()) {
      line(false, "%s: there was no take to tell it from", name);
      return;
    }
    errors.sort(null);
    line(
        within == exact.size(),
        "%s within %.1f in %d of %d takes, all asked (median %.2f, 95 in 100 within %.2f, worst %.2f)",
        name,
        most,
        within,
        exact.size(),
        errors.get(errors.size() / 2),
        errors.get((int) (0.95 * (errors.size() - 1))),
        errors.get(errors.size() - 1));
  }

  private static List<Double> drifts(List<TakeVerdict> some) {
    return some.stream().map(TakeVerdict::driftPercent).flatMap(Optional::stream).toList();
  }

  /** In our own voices only: words of a stranger are short, and what follows them is a pause. */
  private void breaths() {
    List<TakeVerdict> own =
        verdicts.stream()
            .filter(verdict -> Speakers.isOwn(verdict.made().voice()))
            .filter(verdict -> verdict.made().group().isExact())
            .toList();
    List<BreathVerdict> taken =
        own.stream().map(TakeVerdict::breaths).filter(breaths -> breaths.taken() > 0).toList();
    List<BreathVerdict> none =
        own.stream().map(TakeVerdict::breaths).filter(breaths -> breaths.taken() == 0).toList();
    lines.add(
        String.format(
            Locale.ROOT,
            "# breaths: %d of %d found in %d takes, the longest stretch off by %.2f s in the middle;"
                + " %d pauses in %d takes without any",
            taken.stream().mapToInt(BreathVerdict::found).sum(),
            taken.stream().mapToInt(BreathVerdict::taken).sum(),
            taken.size(),
            median(taken.stream().map(BreathVerdict::longestErrorSeconds).toList()),
            none.stream().mapToInt(BreathVerdict::pauses).sum(),
            none.size()));
  }

  private void named(KhandaFault fault) {
    List<TakeVerdict> some =
        verdicts.stream()
            .filter(verdict -> verdict.made().flaws().khanda.filter(fault::equals).isPresent())
            .toList();
    long right = some.stream().filter(TakeVerdict::habitsRight).count();
    some.stream()
        .filter(verdict -> !verdict.habitsRight())
        .forEach(verdict -> lines.add("# not named: " + verdict.made() + verdict.habits()));
    line(
        !some.isEmpty() && right >= LEAST_NAMED * some.size(),
        "%s named rightly in %d of %d takes, 9 in 10 asked",
        fault,
        right,
        some.size());
  }

  private List<Double> values(
      Predicate<TakeVerdict> which, Function<TakeVerdict, List<Double>> value) {
    return verdicts.stream().filter(which).map(value).flatMap(List::stream).toList();
  }

  private static double median(List<Double> values) {
    return middle(values.stream().map(Math::abs).toList());
  }

  private static double middle(List<Double> values) {
    List<Double> sorted = Stream.of(values).flatMap(List::stream).sorted().toList();
    return sorted.isEmpty() ? Double.NaN : sorted.get(sorted.size() / 2);
  }
}
