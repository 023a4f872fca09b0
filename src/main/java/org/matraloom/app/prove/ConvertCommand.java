package org.matraloom.app.prove;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.UserError;
import org.matraloom.kanakku.PlaceWords;
import org.matraloom.notation.TalaReader;
import org.matraloom.repair.Conversion;
import org.matraloom.repair.Repair;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Span;
import org.matraloom.score.Tala;
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
      "Without an option: all usual versions, a line each."
    },
    footer = {"", "Example: matraloom convert samples-synth/monsoon-ledger.loom --nadai 3"})
public final class ConvertCommand implements Callable<Integer> {

  @Spec private CommandSpec command;

  @Parameters(paramLabel = "FILE", description = "The score, a .loom file.")
  private Path file;

  @Option(names = "--nadai", paramLabel = "N", description = "All rounds in this nadai.")
  private Integer nadai;

  @Option(names = "--tala", paramLabel = "TALA", description = "Another tala.")
  private String tala;

  @Option(names = "--same-place", description = "Start where it lands: eduppu to eduppu.")
  private boolean samePlace;

  @Mixin private RepairOptions options;

  @Override
  public Integer call() throws IOException {
    WrittenPiece piece = WrittenPiece.read(file, command);
    PrintWriter out = command.commandLine().getOut();
    if (nadai == null && tala == null && !samePlace) {
      options.refuseApply();
      Conversion.versions(piece.composition()).forEach(version -> out.println(line(version)));
      return ExitCode.DONE;
    }
    Conversion version = version(piece.composition());
    RepairList list =
        new RepairList(
            version.repairs(piece.composition(), Lexicon.standard(), RepairList.talas()), options);
    if (options.number().isPresent()) {
      apply(options.number().getAsInt(), piece, version, list, out);
      return ExitCode.DONE;
    }
    out.println(line(version));
    list.print(out);
    out.println("--apply 0 -o new.loom writes it as it stands, --apply 1 the first way.");
    return ExitCode.DONE;
  }

  private Conversion version(Composition piece) {
    if (nadai != null) {
      if (nadai < 1 || nadai > Composition.HIGHEST_NADAI) {
        throw new UserError("--nadai is 1 to " + Composition.HIGHEST_NADAI + ", given " + nadai);
      }
      return Conversion.toNadai(piece, nadai);
    } else if (tala != null) {
      TalaReader.Result result = TalaReader.read(tala);
      Tala other =
          result
              .tala()
              .orElseThrow(
                  () -> new UserError("--tala " + tala + ": " + result.fault().get().message()));
      return Conversion.toTala(piece, other);
    }
    return Conversion.eduppuToEduppu(piece);
  }

  private static void apply(
      int number, WrittenPiece piece, Conversion version, RepairList list, PrintWriter out)
      throws IOException {
    if (number == 0) {
      list.write(piece, version.edits(), version.words(), out);
    } else {
      Repair chosen = list.repair(number);
      list.write(piece, chosen.edits(), version.words() + "; " + chosen.words(), out);
    }
  }

  private static String line(Conversion version) {
    List<Span.Round> rounds = version.landing().performance().rounds();
    int last = rounds.get(rounds.size() - 1).matrasPerBeat();
    return version.words()
        + ": "
        + PlaceWords.beats(version.landing().beats())
        + ", "
        + MissWords.of(version.landing().missBeats(), last);
  }
}
