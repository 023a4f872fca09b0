package org.matraloom.breath;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Nadai;
import org.matraloom.score.Span;
import org.matraloom.time.Ratio;

/** Writes a plan for reading: the words of every round with a mark above each breath. */
public final class BreathText {

  private final BreathPlan plan;
  private final List<Cure> cures;
  private final boolean why;
  private final UnaryOperator<String> fold;
  private final Composition composition;
  private final StringBuilder out = new StringBuilder();

  private BreathText(BreathPlan plan, List<Cure> cures, boolean why, UnaryOperator<String> fold) {
    this.plan = plan;
    this.cures = cures;
    this.why = why;
    this.fold = fold;
    this.composition = plan.performance().composition();
  }

  /**
   * Writes a plan.
   *
   * @param plan the plan
   * @param cures what would make an impossible piece possible
   * @param why whether every breath says why it is taken
   * @param fold how a line of prose is broken; marked words are never given to it, for a mark must
   *     stay above its word, nor are cures, which hold phrases to be copied
   * @return lines that end in a line feed; pure ASCII except for the words of the score
   */
  public static String of(
      BreathPlan plan, List<Cure> cures, boolean why, UnaryOperator<String> fold) {
    return new BreathText(plan, cures, why, fold).written();
  }

  /**
   * The mark of a kind of breath.
   *
   * @param kind how deep it is
   * @return "V" for a full breath, "v" for a catch breath
   */
  static String mark(Breath.Kind kind) {
    return kind == Breath.Kind.FULL ? "V" : "v";
  }

  private String written() {
    head();
    MarkedLines lines = new MarkedLines(out, plan.performance(), plan.breaths());
    int breath = 0;
    for (Span span : plan.performance().spans()) {
      if (span instanceof Span.Round round) {
        out.append('\n');
        say(heading(round));
      }
      lines.add(span);
      while (breath < plan.breaths().size()
          && plan.breaths().get(breath).startBeat().compareTo(span.endBeat()) < 0) {
        say(told(breath));
        breath++;
      }
    }
    if (!plan.notes().isEmpty()) {
      out.append('\n');
      plan.notes().forEach(this::say);
    }
    problems();
    out.append('\n');
    Care.of(plan).forEach(this::say);
    return out.toString();
  }

  private void head() {
    BreathSettings settings = plan.settings();
    StringBuilder sums = new StringBuilder();
    if (!composition.title().isEmpty()) {
      sums.append(composition.title()).append(", ");
    }
    sums.append(composition.tempo().beatsPerMinute().toMixed())
        .append(" beats a minute: ")
        .append(Counts.of(plan.breaths().size(), "breath", "breaths"));
    plan.stretches().stream()
        .max((a, b) -> a.seconds().compareTo(b.seconds()))
        .ifPresent(longest -> sums.append("; longest stretch ").append(length(longest)));
    mostSollus().ifPresent(fullest -> sums.append(", fullest ").append(length(fullest)));
    say(sums.append(" (limits ").append(limits()).append(")").toString());
    say(
        "V = full breath, "
            + settings.fullMs()
            + " ms or more; v = catch breath, from "
            + settings.shortestMs()
            + " ms; breathe in before the first sollu");
  }

  private void say(String line) {
    out.append(fold.apply(line)).append('\n');
  }

  /** The stretch with the most sollus, if that is not the longest too. */
  private Optional<BreathStretch> mostSollus() {
    long inLongest =
        plan.stretches().stream()
            .max((a, b) -> a.seconds().compareTo(b.seconds()))
            .map(BreathStretch::sollus)
            .orElse(0L);
    return plan.stretches().stream()
        .max(Comparator.comparingLong(BreathStretch::sollus))
        .filter(fullest -> fullest.sollus() > inLongest);
  }

  private String heading(Span.Round round) {
    return "Round "
        + round.number()
        + ", "
        + round.phrase()
        + ", "
        + Nadai.inWords(round.matrasPerBeat())
        + ", from "
        + plan.performance().avartana().say(round.startBeat());
  }

  private String told(int index) {
    Breath breath = plan.breaths().get(index);
    return "  "
        + mark(breath.kind())
        + " after the "
        + breath.after().sollu()
        + " on "
        + place(breath.afterBeat())
        + ": "
        + String.format(Locale.ROOT, "%.2f s ", breath.seconds().toDouble())
        + source(breath)
        + (breath.beforeChange() ? ", in the beat before the nadai changes" : "")
        + "; then "
        + length(plan.stretches().get(index + 1))
        + (why ? " (" + breath.why() + ")" : "");
  }

  private String source(Breath breath) {
    Ratio cut = composition.tempo().secondsOf(breath.air().cutBeats());
    String shortened = String.format(Locale.ROOT, " is cut by %.2f s", cut.toDouble());
    return switch (breath.air().source()) {
      case SILENCE -> "of silence";
      case KARVAI -> "for air, its karvai" + shortened;
      case SOLLU -> "for air, it" + shortened;
    };
  }

  private void problems() {
    if (!plan.isPossible()) {
      out.append('\n');
      plan.tooLong().forEach(stretch -> say(trouble(stretch)));
      out.append(cures.isEmpty() ? "no single kind of change was found that cures it\n" : "");
      cures.forEach(cure -> say("  it helps to " + cure.words()));
    }
  }

  private String trouble(BreathStretch stretch) {
    return "Too long for one breath: round "
        + stretch.round()
        + ", from "
        + stretch.phrase()
        + " ("
        + place(stretch.startBeat())
        + ") on, "
        + length(stretch)
        + " with no time to breathe; the limits are "
        + limits();
  }

  private String place(Ratio beat) {
    Avartana avartana = plan.performance().avartana();
    return avartana.say(beat);
  }

  private String limits() {
    return Counts.seconds(plan.settings().longestSeconds())
        + " and "
        + Counts.of(plan.settings().longestSollus(), "sollu", "sollus");
  }

  private static String length(BreathStretch stretch) {
    return Counts.seconds(stretch.seconds())
        + " and "
        + Counts.of(stretch.sollus(), "sollu", "sollus");
  }
}
