package org.matraloom.app.prove;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.stream.Collectors;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.Json;
import org.matraloom.app.cli.Paragraph;
import org.matraloom.fit.AskedPlaces;
import org.matraloom.fit.FitAdvice;
import org.matraloom.fit.FitAnswer;
import org.matraloom.fit.FitProblem;
import org.matraloom.fit.FitResult;
import org.matraloom.fit.FitSearch;
import org.matraloom.fit.FitWords;
import org.matraloom.fit.RoundPlan;
import org.matraloom.kanakku.LengthWords;
import org.matraloom.schedule.SpokenLeadIn;
import org.matraloom.score.Span;
import org.matraloom.time.Ratio;
import picocli.CommandLine.Model.CommandSpec;

/** The answers to a question in numbers, as text or JSON. */
final class FitReport {

  private static final int MOST_PLANS_NAMED = 4;
  private static final int MOST_WITH_LEAD_IN = 3;

  private final FitProblem problem;
  private final RepairOptions options;
  private final FitResult result;

  FitReport(FitProblem problem, RepairOptions options) {
    this.problem = problem;
    this.options = options;
    this.result = FitSearch.search(problem, options.most());
  }

  int print(CommandSpec command, boolean json) throws IOException {
    PrintWriter out = command.commandLine().getOut();
    if (json) {
      printJson(out);
    } else {
      printText(out);
    }
    return result.count() > 0 ? ExitCode.DONE : ExitCode.CHECK_FAILED;
  }

  private void printText(PrintWriter out) {
    out.println(Paragraph.hanging(2, question()));
    for (FitAnswer answer : result.answers()) {
      String lead =
          result.count() > MOST_WITH_LEAD_IN
              ? ""
              : SpokenLeadIn.words(answer.performance()).map("; lead in: "::concat).orElse("");
      out.println(Paragraph.folded("  " + FitWords.line(answer, problem) + lead));
    }
    if (result.more() > 0) {
      out.println(options.more(result.more()));
    }
    if (result.count() == 0) {
      FitWords.why(problem).forEach(why -> out.println(Paragraph.hanging(2, why)));
      List<FitAdvice> advice = FitAdvice.forProblem(problem);
      if (!advice.isEmpty()) {
        out.println("The nearest that lands:");
        advice.forEach(way -> out.println(Paragraph.folded("  " + FitWords.line(way))));
      }
    }
  }

  private String question() {
    List<RoundPlan> plans = problem.plans();
    String named =
        plans.stream()
            .limit(MOST_PLANS_NAMED)
            .map(RoundPlan::toString)
            .collect(Collectors.joining(", "));
    int beats = problem.avartana().beats();
    return named
        + (plans.size() > MOST_PLANS_NAMED
            ? " and " + (plans.size() - MOST_PLANS_NAMED) + " more"
            : "")
        + " in "
        + problem.avartana().tala().name()
        + " ("
        + LengthWords.beats(Ratio.of(beats))
        + "), "
        + (problem.matras().isFixed() ? "" : problem.matras().low() + " to ")
        + LengthWords.matras(Ratio.of(problem.matras().high()))
        + ", from "
        + place(problem.starts())
        + " to "
        + place(problem.eduppus())
        + ":";
  }

  private String place(AskedPlaces places) {
    return places instanceof AskedPlaces.Named named
        ? problem.avartana().say(named.places().get(0))
        : "any place";
  }

  private void printJson(PrintWriter out) throws IOException {
    try (Json json = Json.to(out)) {
      JsonGenerator generator = json.generator();
      generator.writeStartObject();
      generator.writeStringField("tala", problem.avartana().tala().name());
      generator.writeNumberField("count", result.count());
      generator.writeArrayFieldStart("answers");
      for (FitAnswer answer : result.answers()) {
        write(answer, generator);
      }
      generator.writeEndArray();
      generator.writeArrayFieldStart("reasons");
      for (String reason : result.count() == 0 ? FitWords.why(problem) : List.<String>of()) {
        generator.writeString(reason);
      }
      generator.writeEndArray();
      generator.writeEndObject();
    }
  }

  private static void write(FitAnswer answer, JsonGenerator generator) throws IOException {
    generator.writeStartObject();
    generator.writeStringField("plan", answer.plan().toString());
    generator.writeNumberField("matras", answer.matras());
    generator.writeNumberField("waitMatras", answer.waitMatras());
    generator.writeStringField("startBeat", answer.start().toString());
    generator.writeStringField("eduppuBeat", answer.eduppu().toString());
    generator.writeStringField("beats", answer.beats().toString());
    generator.writeStringField("avartanas", answer.avartanas().toString());
    generator.writeArrayFieldStart("roundBeats");
    for (Span.Round round : answer.performance().rounds()) {
      generator.writeString(round.startBeat().toString());
    }
    generator.writeEndArray();
    generator.writeBooleanField("changesInsideABeat", !answer.changesInsideABeat().isEmpty());
    generator.writeBooleanField("hardlyPlayable", answer.isHardlyPlayable());
    generator.writeEndObject();
  }
}
