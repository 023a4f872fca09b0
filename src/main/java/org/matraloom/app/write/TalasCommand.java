package org.matraloom.app.write;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.Json;
import org.matraloom.app.cli.Paragraph;
import org.matraloom.app.cli.UserError;
import org.matraloom.score.Avartana;
import org.matraloom.score.FingerCustom;
import org.matraloom.score.Kriya;
import org.matraloom.score.Tala;
import org.matraloom.spell.TalaReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists talas with their kriyas. */
@Command(
    name = "talas",
    mixinStandardHelpOptions = true,
    description = "List the talas with their angas and kriyas.",
    footer = {"", "Example: matraloom talas adi --kalai 2"})
public final class TalasCommand implements Callable<Integer> {

  /** Stands for a space at which a line must not be broken. */
  private static final char HELD = '\u00a0';

  @Spec private CommandSpec command;

  @Parameters(
      arity = "0..*",
      paramLabel = "NAME",
      description = "A tala by name, formula or grouping; all of them if none is given.")
  private List<String> names = List.of();

  @Option(
      names = "--kalai",
      paramLabel = "N",
      defaultValue = "1",
      description = "Counted beats an akshara: 1, 2 or 4 (default ${DEFAULT-VALUE}).")
  private int kalai;

  @Option(
      names = "--fingers",
      paramLabel = "CUSTOM",
      defaultValue = "restart",
      description =
          "After the thumb: restart at the little finger, or return (default ${DEFAULT-VALUE}).")
  private FingerCustom fingers;

  @Option(names = "--json", description = "Write JSON.")
  private boolean json;

  @Override
  public Integer call() throws IOException {
    if (kalai != 1 && kalai != 2 && kalai != 4) {
      throw new UserError("kalai is 1, 2 or 4, given " + kalai);
    }
    List<Avartana> cycles =
        chosen().stream().map(tala -> Avartana.of(tala, kalai, fingers)).toList();
    PrintWriter out = command.commandLine().getOut();
    if (json) {
      printJson(cycles, out);
    } else {
      cycles.forEach(cycle -> print(cycle, out));
    }
    return ExitCode.DONE;
  }

  private List<Tala> chosen() {
    return names.isEmpty() ? List.copyOf(TalaReader.names().values()) : List.of(named());
  }

  private Tala named() {
    String written = String.join(" ", names);
    TalaReader.Result result = TalaReader.read(written);
    return result.tala().orElseThrow(() -> new UserError(explain(written, result)));
  }

  private static String explain(String written, TalaReader.Result result) {
    TalaReader.Fault fault = result.fault().orElseThrow();
    String help = fault.help().map(text -> "; " + text).orElse("");
    return "tala '" + written + "': " + fault.message() + help;
  }

  private void print(Avartana cycle, PrintWriter out) {
    Tala tala = cycle.tala();
    out.printf(Locale.ROOT, "%s  %s  %d beats%n", tala.name(), tala.formula(), cycle.beats());
    List<String> hand = new ArrayList<>();
    for (int beat = 0; beat < cycle.beats(); beat++) {
      String again = cycle.repeatsKriya(beat) ? " again" : "";
      String kriya = (beat + 1) + " " + cycle.kriyaAt(beat).words() + again;
      hand.add(kriya.replace(' ', HELD));
    }
    out.println(Paragraph.indented(4, String.join(", ", hand)).replace(HELD, ' '));
  }

  private void printJson(List<Avartana> cycles, PrintWriter out) throws IOException {
    try (Json json = Json.to(out)) {
      json.generator().writeStartArray();
      for (Avartana cycle : cycles) {
        json.generator().writeStartObject();
        json.generator().writeStringField("name", cycle.tala().name());
        json.generator().writeStringField("formula", cycle.tala().formula());
        json.generator().writeNumberField("aksharas", cycle.tala().aksharas());
        json.generator().writeNumberField("beats", cycle.beats());
        json.generator().writeArrayFieldStart("kriyas");
        for (int beat = 0; beat < cycle.beats(); beat++) {
          Kriya kriya = cycle.kriyaAt(beat);
          json.generator().writeString(kriya.words());
        }
        json.generator().writeEndArray();
        json.generator().writeEndObject();
      }
      json.generator().writeEndArray();
    }
  }
}
