package org.matraloom.app.handon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MetaMessage;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Track;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.matraloom.app.CommandLineRun;
import org.matraloom.app.cli.ExitCode;

/** Parts, words to students, used scores and changes of tala in everything that is handed on. */
class PartsAndTalasTest {

  private static final String MAIN =
      """
      title Two rivers
      tala adi
      tempo 72
      A = (takadimi) x4
      perform
        part Purvanga
        tell Keep the clap soft
        A x2
        use "weir.loom"
        fill until samam
        tala rupaka
        tell Now in six
        A x3 nadai 4
      """;
  private static final String WEIR = "title Weir\ntala adi\nB = takadimi tarikita takita\n";

  @TempDir private Path folder;
  private String score;

  @BeforeEach
  void write() throws IOException {
    Files.writeString(folder.resolve("weir.loom"), WEIR);
    score = Files.writeString(folder.resolve("main.loom"), MAIN).toString();
  }

  private String file(String command, String name) throws IOException {
    String target = folder.resolve(name).toString();
    CommandLineRun run = CommandLineRun.of(command, score, "-o", target);
    assertEquals(ExitCode.DONE, run.code(), run.err());
    return Files.readString(Path.of(target), StandardCharsets.UTF_8);
  }

  private static void holds(String text, String... parts) {
    int at = 0;
    for (String part : parts) {
      int next = text.indexOf(part, at);
      assertTrue(next >= 0, () -> part + " is not, in its place, in\n" + text);
      at = next + part.length();
    }
  }

  @Test
  void checkTellsPartsEntriesLandingsAndMinutes() {
    CommandLineRun run = CommandLineRun.of("check", score);
    assertEquals(ExitCode.CHECK_FAILED, run.code());
    holds(
        run.out(),
        "Purvanga\n  (Keep the clap soft)\n1 ",
        "\nWeir\n3 ",
        "\nTala chatusra rupaka\n  (Now in six)\n5 ",
        "2 avartanas of adi and 2 avartanas of chatusra rupaka",
        "Parts: Purvanga 8 beats, Weir 2 3/4 beats; 23 s in all.",
        "Weir enters on samam.",
        "It is not as written: Weir lands on beat 3 3/4, 2 3/4 beats too late for samam.",
        "It lands: the last matra ends on samam.");
    holds(
        CommandLineRun.of("check", "--json", score).out(),
        "\"avartanas\" : \"4\"",
        "\"part\" : \"Weir\"",
        "\"missBeats\" : \"11/4\"");
  }

  @Test
  void sheetsShowThemInTheirPlaces() throws IOException {
    String text = file("sheet", "s.loom");
    holds(
        text,
        "# Purvanga\n# Keep the clap soft\n# Round 1",
        "# Weir\n# Round 3",
        "# Tala chatusra rupaka\n# Now in six\n# Round 5",
        "\npart Weir\nat samam for Weir\nRound3",
        "\ntala chatusra rupaka\ntell Now in six\nRound5");
    String again = folder.resolve("again.loom").toString();
    CommandLineRun twice =
        CommandLineRun.of("sheet", folder.resolve("s.loom").toString(), "-o", again);
    assertEquals(ExitCode.DONE, twice.code(), twice.err());
    holds(
        file("sheet", "s.html"),
        "<p class=\"told\">Purvanga</p>\n<p class=\"told\">Keep the clap soft</p>\n<h2",
        "<p class=\"told\">Weir</p>",
        "<p class=\"told\">Tala chatusra rupaka</p>");
    holds(
        CommandLineRun.of("sheet", "--read-aloud", score).out(),
        "Purvanga.\nKeep the clap soft.\nRound 1",
        "Weir.\n",
        "Tala chatusra rupaka.\nNow in six.\nRound 5",
        "Beat 2, wave: ");
  }

  @Test
  void thePageForAPhoneHasThem() throws IOException {
    holds(
        file("page", "p.html"),
        "Keep the clap soft",
        "\"talas\":[{\"beat\":0,\"cycle\":8,\"first\":0},{\"beat\":16,\"cycle\":6,\"first\":8}]",
        "{\"beat\":0.0,\"words\":\"Purvanga: Round 1",
        "\"words\":\"Tala chatusra rupaka: Round 5");
  }

  @Test
  void theTimelineAndOtherProgramsHaveThem() throws IOException, InvalidMidiDataException {
    holds(
        CommandLineRun.of("events", score).out(),
        "part,0,0,",
        ",Purvanga",
        ",Keep the clap soft",
        ",samam for Weir",
        "tala,4,16,",
        ",chatusra rupaka",
        "wave,5,17,");
    holds(
        file("export", "x.musicxml"),
        "<beats>4+2+2</beats>",
        "<words>Purvanga</words>",
        "<words>Tala chatusra rupaka</words>");
    assertTrue(file("export", "y.musicxml").contains("<beats>2+4</beats>"), "the other metre");
    holds(file("export", "v.vtt"), "Purvanga, round 1", "Weir, round 3");
    Path midi = folder.resolve("m.mid");
    CommandLineRun run = CommandLineRun.of("export", score, "-o", midi.toString());
    assertEquals(ExitCode.DONE, run.code(), run.err());
    assertEquals(List.of("0: 8", (8 + 16) * 5040 + ": 6"), metres(midi.toFile()));
  }

  /** Where metres begin and how many beats they have (Standard MIDI Files 1.0, FF 58). */
  private static List<String> metres(File midi) throws IOException, InvalidMidiDataException {
    List<String> metres = new ArrayList<>();
    Track signs = MidiSystem.getSequence(midi).getTracks()[0];
    for (int index = 0; index < signs.size(); index++) {
      MidiEvent event = signs.get(index);
      if (event.getMessage() instanceof MetaMessage meta && meta.getType() == 0x58) {
        metres.add(event.getTick() + ": " + meta.getData()[0]);
      }
    }
    return metres;
  }

  @ParameterizedTest
  @ValueSource(strings = {"play", "fit", "convert", "rebar", "drill answer", "record"})
  void whatKeepsToOneTalaSaysSo(String command) {
    List<String> words = new ArrayList<>(List.of(command.split(" ")));
    words.add(score);
    CommandLineRun run = CommandLineRun.of(words.toArray(String[]::new));
    assertEquals(ExitCode.BAD_INPUT, run.code(), run.out());
    assertTrue(run.err().contains("keeps to one tala, and this score changes it"), run.err());
  }
}
