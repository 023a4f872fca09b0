package org.matraloom.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.matraloom.app.cli.ExitCode;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/**
 * An option means the same in every command, is there wherever it makes sense, and is refused where
 * it would be passed over.
 */
class OptionsMeanTheSameTest {

  /** Said in the same words everywhere. */
  private static final Set<String> ALIKE =
      Set.of(
          "--lead-in",
          "--lead-in-avartanas",
          "--script",
          "--drone",
          "--rounds",
          "--slow",
          "--lexicon",
          "--reciter",
          "--large",
          "--no-breaths",
          "--concert",
          "--longest",
          "--sollus",
          "--shortest",
          "--whole-karvais",
          "--fewest",
          "--strokes",
          "--drum",
          "--mix",
          "--only",
          "--without",
          "--level",
          "--pan",
          "--lines",
          "--rows");

  /** Begins with the same words everywhere; what is done with it follows. */
  private static final Map<String, String> BEGINS =
      Map.of(
          "--nadai", "In this nadai: ",
          "--tala", "In this tala: ",
          "--matras", "So many matras: ",
          "--yati", "Of this shape",
          "--tempo", "Beats a minute");

  private final Map<String, CommandLine> commands = new TreeMap<>();

  OptionsMeanTheSameTest() {
    collect("", new AllCommands().whole());
  }

  private void collect(String path, CommandLine line) {
    commands.put(path, line);
    line.getSubcommands().forEach((name, inner) -> collect((path + " " + name).strip(), inner));
  }

  /** All that is said of an option anywhere; a hidden one is an earlier name. */
  private Map<String, List<String>> meanings(String option) {
    Map<String, List<String>> meanings = new TreeMap<>();
    for (Map.Entry<String, CommandLine> command : commands.entrySet()) {
      OptionSpec found = command.getValue().getCommandSpec().findOption(option);
      if (found != null && !found.hidden()) {
        String words = found.paramLabel() + ": " + String.join(" ", found.description());
        meanings
            .computeIfAbsent(
                found.arity().max() == 0 ? String.join(" ", found.description()) : words,
                text -> new ArrayList<>())
            .add(command.getKey());
      }
    }
    return meanings;
  }

  @Test
  void whatIsNamedAlikeIsSaidAlike() {
    assertTrue(commands.size() > 35, "commands were found: " + commands.keySet());
    for (String option : ALIKE) {
      assertEquals(1, meanings(option).size(), option + " means " + meanings(option));
    }
    BEGINS.forEach(
        (option, words) -> {
          Set<String> all = meanings(option).keySet();
          assertFalse(all.isEmpty(), option);
          all.forEach(text -> assertTrue(text.contains(": " + words), option + ": " + text));
        });
  }

  @ParameterizedTest
  @CsvSource({
    // where the first is, the others are too
    "--count-in, --lead-in --lead-in-avartanas --breath-cue",
    "--lead-in, --lead-in-avartanas",
    "--mix, --drone --level --pan --only --without --voice",
    "--slow, --tempo --lexicon --reciter",
    "--longest, --concert --sollus --shortest --whole-karvais --fewest",
    "--large, --script --lead-in --no-breaths --longest",
    "--drum, --strokes",
    "-o, --output",
    "-d, -o --output --folder"
  })
  void whatBelongsTogetherStandsTogether(String option, String others) {
    Set<String> missing = new TreeSet<>();
    int seen = 0;
    for (Map.Entry<String, CommandLine> command : commands.entrySet()) {
      Set<String> names = command.getValue().getCommandSpec().optionsMap().keySet();
      if (names.contains(option)) {
        seen++;
        Set<String> wanted = new LinkedHashSet<>(List.of(others.split(" ")));
        wanted.removeAll(names);
        wanted.forEach(each -> missing.add(command.getKey() + " " + each));
      }
    }
    assertTrue(seen > 1, option + " was seen " + seen + " times");
    assertEquals(Set.of(), missing);
  }

  @ParameterizedTest
  @CsvSource({
    "--drone, render play practise record pack page film drill.join drill.ladder",
    "--lead-in, render play practise record pack page sheet booklet class export film events",
    "--script, sheet booklet pack page class film export",
    "--rounds, render play record sheet page breaths take export film events",
    "--json, check fit endings shape propose convert rebar breaths events take log talas sollus",
    "--longest, render play record sheet booklet pack page class breaths take export film events"
  })
  void everyCommandThatNeedsItHasIt(String option, String names) {
    Set<String> without =
        List.of(names.split(" ")).stream()
            .map(name -> name.replace('.', ' '))
            .filter(name -> commands.get(name).getCommandSpec().findOption(option) == null)
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(Set.of(), without);
  }

  /** What would be passed over is refused, with a word on what it is for. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "fit SCORE --tala rupaka | --tala: the score says this itself; see convert",
        "fit SCORE --as 4-4 | --as: the score says this itself",
        "fit SCORE --start 2 --matras 9 | --start: the score says this itself",
        "fit SCORE --rounds 1-2 | --rounds: the score says this itself",
        "fit SCORE --nadai 5 | --nadai: this searches in a folder",
        "fit 5(2)5(2)5 --matras 9 | --matras: the sum says this itself",
        "fit samples-synth --start 2 | --start: each score of the folder says this itself",
        "fit --as 4 --rounds 4 | --as and --rounds are one option",
        "check SCORE --nadai 5 | --nadai: this searches in a folder",
        "check samples-synth --slow 60% | --slow: name one score and not a folder",
        "breaths SCORE --rounds 1 --keep none.loom | --keep writes the plan of all rounds"
      })
  void whatWouldBePassedOverIsRefused(String typed, String sentence) {
    String[] words = typed.replace("SCORE", "samples-synth/gutter-song.loom").split(" ");
    CommandLineRun run = CommandLineRun.of(words);
    assertEquals(ExitCode.BAD_INPUT, run.code(), run.out());
    assertTrue(run.err().replaceAll("\\s+", " ").contains(sentence), run.err());
  }

  /** The plan of {@code fit} is asked for by --as; its earlier name is still understood. */
  @Test
  void theEarlierNameOfAPlanIsUnderstood() {
    CommandLineRun now = CommandLineRun.of("fit", "--as", "4-4-5", "--matras", "70..90");
    CommandLineRun before = CommandLineRun.of("fit", "--rounds", "4-4-5", "--matras", "70..90");
    assertEquals(ExitCode.DONE, now.code());
    assertTrue(now.out().contains("80 matras: 20 + 20 + 16 = 56 beats"), now.out());
    assertEquals(now, before);
    assertFalse(CommandLineRun.of("fit", "--help").out().contains("--rounds"));
  }

  @Test
  void breathsOfOneRoundAreThoseOfThatRound() {
    String score = "samples-synth/gutter-song.loom";
    CommandLineRun last = CommandLineRun.of("breaths", score, "--rounds", "3");
    assertEquals(ExitCode.DONE, last.code(), last.err());
    assertTrue(last.out().contains("ta ki ta ta di gi na tom"), last.out());
    assertTrue(last.out().length() * 2 < CommandLineRun.of("breaths", score).out().length());
  }
}
