package org.matraloom.app.prove;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.Json;
import org.matraloom.app.cli.LexiconOptions;
import org.matraloom.app.cli.NadaiNumber;
import org.matraloom.app.cli.OneTala;
import org.matraloom.app.cli.Paragraph;
import org.matraloom.app.cli.UserError;
import org.matraloom.kanakku.FalseClaim;
import org.matraloom.kanakku.LengthWords;
import org.matraloom.repair.Conversion;
import org.matraloom.repair.ConversionWish;
import org.matraloom.repair.Repair;
import org.matraloom.score.Span;
import org.matraloom.score.Tala;
import org.matraloom.spell.TalaReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes a score over into another nadai or tala. */
@Command(
    name = "convert",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Take a score over into another nadai or tala.",
      "Told are what happens as it stands, and every way to make it land.",
      "--nadai, --tala and --same-place may be given together: all of them are obeyed.",
      "Without an option: all usual versions, a line each."
    },
    footer = {"", "Example: matraloom convert samples-synth/monsoon-ledger.loom --nadai 3"})
public final class ConvertCommand implements Callable<Integer> {

  @Spec private CommandSpec command;

  @Parameters(paramLabel = "FILE", description = "The score, a .loom file.")
  private Path file;

  @Option(names = "--nadai", paramLabel = "N", description = "In this nadai: all rounds.")
  private NadaiNumber nadai;

  @Option(names = "--tala", paramLabel = "TALA", description = "In this tala: the whole piece.")
  private String tala;

  @Option(names = "--same-place", description = "Start where it lands: eduppu to eduppu.")
  private boolean samePlace;

  @Option(names = "--json", description = "Write JSON.")
  private boolean json;

  @Mixin private RepairOptions options;

  @Mixin private LexiconOptions sollus;

  @Override
  public Integer call() throws IOException {
    WrittenPiece piece = WrittenPiece.read(file, sollus.lexicon(), command);
    OneTala.of(piece.composition(), "convert");
    PrintWriter out = command.commandLine().getOut();
    ConversionWish wish = wish();
    if (wish.isEmpty()) {
      options.refuseApply();
      List<Conversion> versions = Conversion.versions(piece.composition());
      if (json) {
        write(versions, out);
      } else {
        versions.forEach(version -> out.println(Paragraph.hanging(2, line(version))));
      }
      return ExitCode.DONE;
    }
    Conversion version = Conversion.of(piece.composition(), wish);
    if (options.number().equals(OptionalInt.of(0))) {
      new RepairList(List.of(), options).write(piece, version.edits(), version.words(), out);
      return ExitCode.DONE;
    }
    RepairList list =
        new RepairList(
            version.repairs(piece.composition(), piece.lexicon(), RepairList.talas()), options);
    if (options.number().isPresent()) {
      Repair chosen = list.repair(options.number().getAsInt());
      list.write(piece, chosen.edits(), version.words() + "; " + chosen.words(), out);
      return ExitCode.DONE;
    }
    if (json) {
      try (Json written = Json.to(out)) {
        written.generator().writeStartObject();
        write(version, written.generator());
        list.write(written.generator());
        written.generator().writeEndObject();
      }
      return ExitCode.DONE;
    }
    out.println(Paragraph.hanging(2, line(version)));
    list.print(out);
    out.println("--apply 0 -o new.loom writes it as it stands, --apply 1 the first way.");
    return ExitCode.DONE;
  }

  private ConversionWish wish() {
    return new ConversionWish(
        Optional.ofNullable(nadai).map(NadaiNumber::matrasPerBeat),
        Optional.ofNullable(tala).map(ConvertCommand::tala),
        samePlace);
  }

  private static Tala tala(String name) {
    TalaReader.Result result = TalaReader.read(name);
    return result
        .tala()
        .orElseThrow(() -> new UserError("--tala " + name + ": " + result.fault().get().message()));
  }

  private static void write(List<Conversion> versions, PrintWriter out) throws IOException {
    try (Json written = Json.to(out)) {
      written.generator().writeStartArray();
      for (Conversion version : versions) {
        written.generator().writeStartObject();
        write(version, written.generator());
        written.generator().writeEndObject();
      }
      written.generator().writeEndArray();
    }
  }

  private static void write(Conversion version, JsonGenerator generator) throws IOException {
    generator.writeStringField("words", version.words());
    generator.writeStringField("beats", version.landing().beats().toString());
    generator.writeBooleanField("lands", version.landing().lands());
    generator.writeStringField("missBeats", version.landing().missBeats().toString());
    generator.writeStringField("missMatras", version.landing().missMatras().toString());
    boolean barsHold = FalseClaim.in(version.landing().performance()).isEmpty();
    generator.writeBooleanField("barsHold", barsHold);
  }

  private static String line(Conversion version) {
    List<Span.Round> rounds = version.landing().performance().rounds();
    int last = rounds.get(rounds.size() - 1).matrasPerBeat();
    return version.words()
        + ": "
        + LengthWords.beats(version.landing().beats())
        + ", "
        + MissWords.of(version.landing().missBeats(), last)
        + (FalseClaim.in(version.landing().performance()).isEmpty()
            ? ""
            : "; some bars then have to move");
  }
}
