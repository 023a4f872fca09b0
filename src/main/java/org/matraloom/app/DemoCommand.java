package org.matraloom.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.Program;
import org.matraloom.app.cli.WholeFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The whole job on the piece that comes with the program: each command is shown and then run. */
@Command(
    name = "demo",
    mixinStandardHelpOptions = true,
    description = "Do the whole job on a piece that comes with the program.",
    footer = {"", "Example: matraloom demo --folder river-demo"})
final class DemoCommand implements Callable<Integer> {

  private static final String SCORE = "SCORE";

  /**
   * A step of the job: why, and the command; a word that ends in a dot and a kind is a new file.
   */
  private record Stage(String why, String command) {}

  private static final List<Stage> STAGES =
      List.of(
          new Stage("Does it land?", "check SCORE"),
          new Stage("Where is there time to breathe?", "breaths SCORE"),
          new Stage("A page to read from the floor.", "sheet SCORE -o river-steps.pdf --cues"),
          new Stage(
              "Slow, with everything: claps, finger counts, ticks and the voice.",
              "render SCORE -o 1-slow-with-everything.wav --slow 75%"),
          new Stage(
              "At full tempo without the ticks, then with the hands alone.",
              "render SCORE -o 2-no-ticks.wav --mix practice --without ticks"),
          new Stage("", "render SCORE -o 3-hands-only.wav --only claps,counts,waves"),
          new Stage("Only the join where the nadai changes.", "drill join SCORE -o 4-join.wav"),
          new Stage(
              "A take is measured against the score; here the guide's own voice stands in for you.",
              "render SCORE -o guide.wav --only voice --mono"),
          new Stage("", "take SCORE guide.wav --picture guide.png --no-log"));

  @Spec private CommandSpec command;

  @Option(
      names = {"-o", "--output", "-d", "--folder"},
      paramLabel = "DIR",
      defaultValue = "matraloom-demo",
      description = "Where the files go (default ${DEFAULT-VALUE}).")
  private Path folder;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = command.commandLine().getOut();
    Files.createDirectories(folder);
    Path score = folder.resolve(DemoScore.FILE);
    if (Files.exists(score)) {
      out.println("The piece, as you left it in " + score + ":");
    } else {
      WholeFile.writeText(score, text -> text.append(DemoScore.text()));
      out.println("The piece, as written in " + score + ":");
    }
    out.println();
    Files.readAllLines(score).forEach(line -> out.println("    " + line));
    for (Stage stage : STAGES) {
      if (!stage.why().isEmpty()) {
        out.println();
        out.println("-- " + stage.why());
      }
      int code = run(words(stage.command(), score), out);
      if (code > ExitCode.CHECK_FAILED) {
        return code;
      }
    }
    out.println();
    out.println("Keep the level low when you listen. Change the score and go on:");
    out.println("    matraloom check " + score);
    out.println("    matraloom play " + score);
    out.println("    matraloom record " + score + " --only claps -o my-take.wav");
    return ExitCode.DONE;
  }

  private List<String> words(String line, Path score) {
    return Arrays.stream(line.split(" "))
        .map(word -> word.equals(SCORE) ? score.toString() : word)
        .map(word -> word.matches(".*\\.(wav|pdf|png)") ? folder.resolve(word).toString() : word)
        .toList();
  }

  private int run(List<String> words, PrintWriter out) {
    out.println();
    out.println(
        Stream.concat(Stream.of("matraloom"), words.stream().map(DemoCommand::quoted))
            .collect(Collectors.joining(" ", "$ ", "")));
    Program program = (Program) command.root().userObject();
    return program.runAlso(out, command.commandLine().getErr(), words.toArray(String[]::new));
  }

  private static String quoted(String word) {
    return word.contains(" ") ? "\"" + word + "\"" : word;
  }
}
