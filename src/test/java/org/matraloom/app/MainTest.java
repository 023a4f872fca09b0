package org.matraloom.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.cli.ExitCode;
import picocli.CommandLine;
import picocli.CommandLine.Command;

class MainTest {

  @Test
  void withoutArgumentsItSaysHowToStart() {
    CommandLineRun run = CommandLineRun.of();
    assertEquals(ExitCode.DONE, run.code());
    assertTrue(run.out().contains("Start with: matraloom open"), run.out());
  }

  @Test
  void theVersionIsThatOfTheBuild() throws IOException {
    Matcher built =
        Pattern.compile("<artifactId>matraloom</artifactId>\\s*<version>([^<]+)</version>")
            .matcher(Files.readString(Path.of("pom.xml")));
    assertTrue(built.find());
    CommandLineRun run = CommandLineRun.of("--version");
    assertEquals(ExitCode.DONE, run.code());
    assertEquals("matraloom " + built.group(1), run.out().strip());
  }

  @Test
  void everyCommandHasHelpWithAnExample() {
    CommandLine line = Commands.lineFor(new AllCommands());
    List<CommandLine> commands =
        line.getSubcommands().values().stream()
            .filter(command -> !command.getCommandSpec().usageMessage().hidden())
            .toList();
    assertTrue(commands.size() >= 5, "commands were found");
    for (CommandLine command : commands) {
      CommandLineRun run = CommandLineRun.of(command.getCommandName(), "--help");
      assertEquals(ExitCode.DONE, run.code(), command.getCommandName());
      assertTrue(
          run.out().contains("Example: matraloom " + command.getCommandName()),
          command.getCommandName() + " shows an example");
      assertFalse(run.out().contains("=<"), command.getCommandName() + " names every value");
      String first = command.getCommandSpec().usageMessage().description()[0];
      assertTrue(first.matches(".*[.;]"), "it stands alone in the list of commands: " + first);
    }
  }

  @Test
  void theListKnowsEveryCommandByItsOwnName() {
    assertTrue(Commands.byName().size() > 20, "commands were found");
    Commands.byName()
        .forEach((name, type) -> assertEquals(name, type.getAnnotation(Command.class).name()));
  }

  @Test
  void aCommandFoundAloneIsTheOneFoundAmongAll() {
    CommandLine all = Commands.lineFor(new AllCommands());
    for (String name : Commands.byName().keySet()) {
      CommandLine alone = Commands.lineFor(new AllCommands(), name);
      assertEquals(List.of(name), List.copyOf(alone.getSubcommands().keySet()));
      assertEquals(
          all.getSubcommands().get(name).getUsageMessage(),
          alone.getSubcommands().get(name).getUsageMessage());
    }
  }

  @Test
  void aPlainCheckSaysWhatTheCommandSays(@TempDir Path folder) throws IOException {
    List<Path> scores = new ArrayList<>(List.of(folder, folder.resolve("none.loom")));
    try (DirectoryStream<Path> samples = Files.newDirectoryStream(Path.of("samples-synth"))) {
      samples.forEach(sample -> scores.add(sample.toString().endsWith(".loom") ? sample : folder));
    }
    scores.add(Files.writeString(folder.resolve("faulty.loom"), "tala adi\nA = tx ta\n"));
    scores.add(Files.writeString(folder.resolve("misses.loom"), "tala adi\nA = takita\n"));
    scores.add(Files.write(folder.resolve("noise.loom"), new byte[] {-1, 0, 7}));
    scores.add(Files.createDirectory(folder.resolve("inner")));
    assertTrue(
        scores.stream().filter(score -> PlainLine.is("check", score.toString())).count() > 5,
        "some are plain");
    for (Path score : scores) {
      CommandLineRun plain = CommandLineRun.of("check", score.toString());
      assertEquals(CommandLineRun.of("check", "--", score.toString()), plain, score.toString());
    }
  }

  @Test
  void aVersionIsToldEitherWay() {
    StringWriter out = new StringWriter();
    Commands.lineFor(new AllCommands()).setOut(new PrintWriter(out)).execute("--version");
    assertEquals(out.toString(), CommandLineRun.of("--version").out());
    assertEquals(CommandLineRun.of("--version"), CommandLineRun.of("-V"));
  }

  @Test
  void wrongUseIsToldWithoutAProgrammersWords() {
    assertTrue(CommandLineRun.of("endings", "abc").err().contains("'abc' is not a whole number"));
    String side = CommandLineRun.of("render", "x.loom", "-o", "x.wav", "--pan", "voice=left").err();
    assertTrue(side.contains("'left' is not a number such as -6 or 0.5"), side);
    String mix = CommandLineRun.of("render", "x.loom", "-o", "x.wav", "--mix", "loud").err();
    assertTrue(mix.contains("'loud' is none of lesson, practice"), mix);
    String word = CommandLineRun.of("chek").err();
    assertTrue(word.startsWith("matraloom: not understood: chek"), word);
  }

  @Test
  void aMisspeltCommandIsBadUsageWithAHint() {
    CommandLineRun run = CommandLineRun.of("chek");
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertTrue(run.err().contains("check"), run.err());
  }

  @Test
  void talasNamesTheKriyasOfAdi() {
    CommandLineRun run = CommandLineRun.of("talas", "adi");
    assertEquals(
        """
        adi  I4 O O  8 beats
            1 clap, 2 little finger, 3 ring finger, 4 middle finger, 5 clap, 6 wave,
            7 clap, 8 wave
        """,
        run.out());
  }

  @Test
  void talasListsAllThirtyFiveAdiAndTheChapus() {
    long heads =
        CommandLineRun.of("talas").out().lines().filter(line -> line.endsWith(" beats")).count();
    assertEquals(35 + 1 + 8, heads);
  }
}
