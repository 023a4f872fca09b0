package org.matraloom.app.prove;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.Json;
import org.matraloom.app.cli.Paragraph;
import org.matraloom.kanakku.Landing;
import org.matraloom.kanakku.LengthWords;
import org.matraloom.repair.Repair;
import org.matraloom.schedule.SpokenLeadIn;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.time.Ratio;
import picocli.CommandLine.Model.CommandSpec;

/** Where a written piece ends, and every way to make it land. */
final class RepairReport {

  private final WrittenPiece piece;
  private final RepairOptions options;
  private final Landing landing;
  private final RepairList list;

  RepairReport(WrittenPiece piece, RepairOptions options) {
    this.piece = piece;
    this.options = options;
    this.landing = Landing.of(Performance.of(piece.composition()));
    this.list = new RepairList(RepairList.of(piece.composition(), piece.lexicon()), options);
  }

  int print(CommandSpec command, boolean json) throws IOException {
    PrintWriter out = command.commandLine().getOut();
    if (options.number().isPresent()) {
      Repair chosen = list.repair(options.number().getAsInt());
      list.write(piece, chosen.edits(), chosen.words(), out);
      return ExitCode.DONE;
    }
    if (json) {
      printJson(out);
    } else {
      printText(out);
    }
    return landing.lands() || !list.repairs().isEmpty() ? ExitCode.DONE : ExitCode.CHECK_FAILED;
  }

  private void printText(PrintWriter out) {
    out.println(Paragraph.hanging(2, heading()));
    out.println(Paragraph.hanging(2, verdict()));
    SpokenLeadIn.words(landing.performance())
        .filter(words -> landing.lands())
        .ifPresent(words -> out.println(Paragraph.of("Lead in from samam with " + words + ".")));
    list.print(out);
    if (!list.repairs().isEmpty() && !piece.isSum()) {
      out.println("To write one into a copy:");
      out.println("  fit " + piece.path() + " --apply 1 -o mended.loom");
    }
  }

  private String heading() {
    Composition composition = piece.composition();
    Avartana avartana = composition.avartana();
    String title = composition.title().isEmpty() ? "" : composition.title() + ": ";
    List<Span.Round> rounds = landing.performance().rounds();
    int first = rounds.get(0).matrasPerBeat();
    return title
        + LengthWords.matras(rounds.get(0).matras())
        + (rounds.size() == 1 ? "" : " a round, " + rounds.size() + " rounds")
        + ", "
        + LengthWords.beats(landing.beats())
        + " in all, from "
        + avartana.say(composition.startBeat())
        + "; "
        + avartana.tala().name()
        + " has "
        + LengthWords.beats(Ratio.of(avartana.beats()))
        + " ("
        + LengthWords.matras(Ratio.of((long) avartana.beats() * first))
        + ").";
  }

  private String verdict() {
    Composition composition = piece.composition();
    List<Span.Round> rounds = landing.performance().rounds();
    int last = rounds.get(rounds.size() - 1).matrasPerBeat();
    String eduppu = composition.avartana().say(composition.eduppuBeat());
    if (landing.lands()) {
      return "It lands as it is, on " + eduppu + ".";
    }
    boolean late = landing.missBeats().signum() > 0;
    Ratio miss = late ? landing.missBeats() : landing.missBeats().negate();
    return "It misses: it ends "
        + LengthWords.length(miss, last)
        + (late ? " after " : " before ")
        + eduppu
        + ".";
  }

  private void printJson(PrintWriter out) throws IOException {
    try (Json json = Json.to(out)) {
      JsonGenerator generator = json.generator();
      generator.writeStartObject();
      generator.writeStringField("title", piece.composition().title());
      generator.writeBooleanField("lands", landing.lands());
      generator.writeStringField("missBeats", landing.missBeats().toString());
      list.write(generator);
      generator.writeEndObject();
    }
  }
}
