package org.matraloom.fit;

import java.util.List;
import java.util.stream.Collectors;
import org.matraloom.kanakku.Entrance;
import org.matraloom.kanakku.LengthWords;
import org.matraloom.score.Avartana;
import org.matraloom.score.Span;
import org.matraloom.time.Ratio;

/** Says the answers of a fit in a musician's words, in matras and in beats. */
public final class FitWords {

  private static final int MOST_REASONS = 4;

  private FitWords() {}

  /**
   * One answer in a line, with everything.
   *
   * @param answer the answer
   * @return for example "80 matras in 4-4-5: 20 + 20 + 16 = 56 beats = 7 avartanas, from samam to
   *     samam"
   */
  public static String line(FitAnswer answer) {
    return length(answer, true) + ": " + sum(answer) + places(answer) + hard(answer);
  }

  /**
   * One answer in a line, without what the question fixed.
   *
   * @param answer the answer
   * @param problem the question
   * @return for example "80 matras: 20 + 20 + 16 = 56 beats = 7 avartanas"
   */
  public static String line(FitAnswer answer, FitProblem problem) {
    boolean placesFixed =
        problem.starts() instanceof AskedPlaces.Named
            && problem.eduppus() instanceof AskedPlaces.Named;
    return length(answer, problem.plans().size() > 1)
        + ": "
        + sum(answer)
        + (placesFixed ? "" : places(answer))
        + hard(answer);
  }

  private static String length(FitAnswer answer, boolean withPlan) {
    String wait =
        answer.plan().hasOpenWait()
            ? " and a rest of " + LengthWords.matras(Ratio.of(answer.waitMatras()))
            : "";
    return LengthWords.matras(Ratio.of(answer.matras()))
        + wait
        + (withPlan ? " in " + answer.plan() : "");
  }

  private static String places(FitAnswer answer) {
    Avartana avartana = answer.performance().avartana();
    return ", from " + avartana.say(answer.start()) + " to " + avartana.say(answer.eduppu());
  }

  private static String hard(FitAnswer answer) {
    Avartana avartana = answer.performance().avartana();
    return answer.changesInsideABeat().stream()
            .map(Entrance::round)
            .map(round -> avartana.say(round.startBeat()))
            .map(place -> "; hard: the nadai changes inside a beat (" + place + ")")
            .collect(Collectors.joining())
        + answer.roundsOffTheClaps().stream()
            .map(Entrance::round)
            .map(r -> "; hardly playable: no matra of round " + r.number() + " meets a clap")
            .collect(Collectors.joining());
  }

  private static String sum(FitAnswer answer) {
    List<Span> spans = answer.performance().spans();
    String terms =
        spans.stream()
            .map(span -> span instanceof Span.Pause ? "(" + said(span) + ")" : said(span))
            .collect(Collectors.joining(" + "));
    String beats = LengthWords.beats(answer.beats());
    return (spans.size() == 1 ? beats : terms + " = " + beats) + cycles(answer);
  }

  private static String said(Span span) {
    return span.beats().toMixed();
  }

  /** The length in whole avartanas and the beats left over; nothing below one avartana. */
  private static String cycles(FitAnswer answer) {
    int cycle = answer.performance().avartana().beats();
    return LengthWords.avartanas(answer.beats(), cycle).map(" = "::concat).orElse("");
  }

  /**
   * Why nothing in the asked ranges lands.
   *
   * @param problem a problem without an answer
   * @return one or more sentences, one for each plan, at most four
   */
  public static List<String> why(FitProblem problem) {
    return problem.plans().stream()
        .map(plan -> plan + ": " + why(problem, plan))
        .limit(MOST_REASONS)
        .toList();
  }

  private static String why(FitProblem problem, RoundPlan plan) {
    String from =
        problem.starts() instanceof AskedPlaces.Named
            ? "from " + place(problem.starts(), problem, plan)
            : "from no matra of the first round";
    String to =
        problem.eduppus() instanceof AskedPlaces.Named
            ? place(problem.eduppus(), problem, plan)
            : "a matra of a round or a quarter of a beat";
    boolean fixed = problem.matras().isFixed();
    String matras = LengthWords.matras(Ratio.of(problem.matras().low()));
    if (fixed && !plan.hasOpenWait()) {
      boolean open = !(problem.starts() instanceof AskedPlaces.Named);
      return matras + " " + from + (open ? " end on " : " do not end on ") + to + ".";
    }
    LandingGrid reach = LandingGrid.of(problem, plan);
    if (reach.isPossible()) {
      return "possible, but not inside the lengths asked for.";
    }
    return (fixed
            ? "impossible with " + matras + ", however many whole matras the rest has"
            : "impossible with whole matras")
        + ". The end can only fall on "
        + grid(reach, problem.eduppus().of(plan, problem.avartana()).get(0))
        + ", and "
        + to
        + " lies "
        + LengthWords.beats(reach.beyondStep())
        + " past one of these places.";
  }

  private static String place(AskedPlaces places, FitProblem problem, RoundPlan plan) {
    Ratio place = places.of(plan, problem.avartana()).get(0);
    return problem.avartana().say(place);
  }

  private static String grid(LandingGrid reach, Ratio eduppu) {
    boolean onDivisions = eduppu.minus(reach.beyondStep()).dividedBy(reach.stepBeats()).isWhole();
    return onDivisions
        ? grid(reach.stepBeats())
        : "places " + LengthWords.beats(reach.stepBeats()) + " apart";
  }

  private static String grid(Ratio step) {
    if (step.num() == 1) {
      return switch ((int) step.den()) {
        case 1 -> "whole beats";
        case 2 -> "halves of a beat";
        case 3 -> "thirds of a beat";
        case 4 -> "quarters of a beat";
        case 5 -> "fifths of a beat";
        case 10 -> "tenths of a beat";
        case 20 -> "twentieths of a beat";
        default -> "parts of a beat as small as 1/" + step.den();
      };
    }
    return "places " + LengthWords.beats(step) + " apart";
  }

  /**
   * A way out in a line.
   *
   * @param advice what is changed and how it lands
   * @return for example "longer phrase: 80 matras in 4-4-5: ..."
   */
  public static String line(FitAdvice advice) {
    String change =
        switch (advice.change()) {
          case SHORTER -> "a shorter phrase";
          case LONGER -> "a longer phrase";
          case EARLIER_EDUPPU -> "land a little earlier";
          case LATER_EDUPPU -> "land a little later";
          case EDUPPU_TO_EDUPPU -> "start where it lands, eduppu to eduppu";
          case OTHER_START -> "another start";
          case WAIT -> "a rest before the last round";
          case LAST_NADAI -> "another last round";
        };
    return change + ": " + line(advice.answer());
  }
}
