package org.matraloom.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.cli.Program;
import picocli.CommandLine;

/**
 * Every command, asked for help, used wrongly, and used on the samples: nothing that it says is
 * wider than 80 columns. Paths are the user's own, and so are lines of a score that are shown.
 */
class EveryLineFitsTest {

  private static final int COLUMNS = 80;

  /** What goes to work without a score, or does not end by itself. */
  private static final List<String> WORKING =
      List.of("open", "demo", "calibrate", "practise", "packaging", "warm-up", "log");

  /** A line of a text that tidy did not understand stays whole. */
  private static final String NOT_READ = "# not read: ";

  @TempDir private Path folder;

  private final List<String> wide = new ArrayList<>();
  private int lines;

  private String run(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    PrintWriter answers = new PrintWriter(out);
    PrintWriter errors = new PrintWriter(new ErrorLines(err), true);
    Main.run(answers, errors, arguments);
    answers.flush();
    errors.flush();
    String all = out + "\n" + err;
    List<String> said = all.lines().toList();
    for (int index = 0; index < said.size(); index++) {
      String line = said.get(index).replace(folder + "/", "").replaceAll("^.*\r", "");
      lines++;
      boolean tooWide = line.codePointCount(0, line.length()) > COLUMNS;
      boolean shown = index + 1 < said.size() && said.get(index + 1).matches("\\s*\\^~*");
      boolean theirs = shown || line.startsWith(NOT_READ);
      if (tooWide && !theirs) {
        wide.add(String.join(" ", arguments) + ": " + line);
      }
    }
    return all;
  }

  /** The names of all commands, those inside others among them. */
  private static List<String[]> commands(CommandLine line, String... before) {
    List<String[]> all = new ArrayList<>();
    all.add(before);
    line.getSubcommands()
        .forEach(
            (name, inner) -> {
              List<String> path = new ArrayList<>(List.of(before));
              path.add(name);
              all.addAll(commands(inner, path.toArray(String[]::new)));
            });
    return all;
  }

  private static String[] with(String[] command, String... more) {
    return Stream.concat(Stream.of(command), Stream.of(more)).toArray(String[]::new);
  }

  @Test
  void helpAndMistakesFit() throws IOException {
    Program program = new AllCommands();
    List<String[]> commands = commands(program.whole());
    assertTrue(commands.size() > 35, "commands were found: " + commands.size());
    Path bad = folder.resolve("bad.loom");
    Files.writeString(
        bad,
        "tala adii\nstart beat 400\nSong = blorb takadimi (x3 {7 ta\nfoo bar\n"
            + "drum ta = nam + din\n7 = ta di\nperform\n Song x2 nada 4\n at beat 99\n"
            + " use \"nothing at all.loom\"\n fill until\n Song last\n rest many\n");
    for (String[] command : commands) {
      if (!List.of(command).contains("warm-up") && !List.of(command).contains("packaging")) {
        String help = run(with(command, "--help"));
        assertTrue(help.contains("Usage: matraloom"), help);
      }
      if (command.length > 0 && !WORKING.contains(command[0])) {
        run(with(command, "--nosuchoption"));
        String none = folder.resolve("none.loom").toString();
        run(with(command, none, "-o", folder.resolve("x.xyz").toString(), "--tempo", "9000"));
        run(with(command, none));
        run(with(command, bad.toString()));
      }
    }
    assertEquals(List.of(), wide);
  }

  @Test
  void answersOnEverySampleFit() throws IOException {
    List<Path> samples;
    try (Stream<Path> files = Files.list(Path.of("samples-synth"))) {
      samples = files.sorted(Comparator.naturalOrder()).toList();
    }
    assertFalse(samples.isEmpty());
    for (Path sample : samples) {
      String score = sample.toString();
      for (String command :
          List.of("check", "fit", "shape", "convert", "rebar", "breaths", "sheet")) {
        run(command, score);
      }
      run("fit", score, "--all");
      run("fit", score, "--apply", "1", "-o", folder.resolve("m.loom").toString());
      run("breaths", score, "--why");
      run("breaths", score, "--tempo", "24", "--whole-karvais", "--why");
      run("breaths", score, "--keep", "-o", folder.resolve("k.loom").toString());
      run("sheet", score, "--read-aloud");
      run("sheet", score, "--rebar", "5");
      run("sheet", score, "--cues", "--drum");
      run("drill", "join", score);
      run("drill", "answer", score);
      run("drill", "ladder", score);
      run("drill", "fade", score);
      run("convert", score, "--nadai", "7");
      run("convert", score, "--tala", "rupaka", "--same-place");
      for (String ending : List.of("mid", "musicxml", "vtt", "csv")) {
        run("export", score, "-o", folder.resolve("x." + ending).toString());
      }
    }
    for (String command : List.of("check", "fit")) {
      run(command, "samples-synth");
    }
    run("booklet", samples.get(0).toString(), "-o", folder.resolve("b.pdf").toString());
    Path pasted = folder.resolve("message.txt");
    Files.writeString(
        pasted,
        "Hello, this is the korvai that we said we would practise on Tuesday morning, is it not?\n"
            + "1) TA ka di mi | taka takita, 5 x 3 = 15\nand now for the words that I forgot: foo bar\n");
    run("tidy", pasted.toString());
    run("sollus");
    run("sollus", "--groups");
    run("talas", "--kalai", "2");
    run("drill", "switch", "4", "5");
    run("drill", "nadais");
    run("drill", "speeds", "takadimi takajonu");
    assertTrue(lines > 5_000, "lines were seen: " + lines);
    assertEquals(List.of(), wide);
  }
}
