package org.matraloom.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MetaMessage;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.matraloom.app.cli.ExitCode;

/**
 * Two reciters in one score, from the proof to the files.
 *
 * <p>That one holds four a beat while another says five over the same beats, and that one answers
 * in the silence of the other, is common practice.
 */
class TwoRecitersTest {

  private static final String HEAD =
      "title Two Gutters\ntala adi\ntempo 60\n\n"
          + "Song = takadimi takadimi takajonu takadimi\n"
          + "Answer = takatakita takatakita takatakita takatakita\n"
          + "Ask = takadimi takajonu\n\nperform\n";
  private static final String EVEN =
      HEAD
          + "  Song x2 nadai 4\n  with Answer x2 nadai 5\n"
          + "  Ask nadai 4\n  rest 2 beats\n  with Ask nadai 4\n"
          + "  Song nadai 4\n  with Answer nadai 5\n";

  @TempDir private Path folder;

  private Path score;

  @BeforeEach
  void writeScore() throws IOException {
    score = Files.writeString(folder.resolve("two.loom"), EVEN);
  }

  private CommandLineRun check(String text) throws IOException {
    Path file = Files.writeString(folder.resolve("other.loom"), text);
    CommandLineRun run = CommandLineRun.of("check", file.toString());
    return new CommandLineRun(run.code(), run.out().replaceAll("\\s+", " "), run.err());
  }

  @Test
  void bothLandAndTheirSpansAreEven() {
    CommandLineRun run = CommandLineRun.of("check", score.toString());
    assertEquals(ExitCode.DONE, run.code(), run.err());
    // By hand: 2 x 16 matras at 4 and 2 x 20 at 5 are 8 beats each.
    assertTrue(
        run.out().contains("From samam: 8 beats and, beside it, 8 beats; they end together."),
        run.out());
    assertTrue(run.out().contains("From beat 3: a silence of 2 beats"), run.out());
    assertTrue(run.out().contains("Both land, and they begin and end together."), run.out());
    assertEquals(2, run.out().split("It lands: ", -1).length - 1, run.out());
  }

  @Test
  void aMatraTooFewIsAMissOfAFifthOfABeat() throws IOException {
    CommandLineRun run =
        check(
            HEAD.replace("Ask =", "Short = takatakita takatakita takatakita takataki\nAsk =")
                + "  Song x2 nadai 4\n  with Short x2 nadai 5\n");
    assertEquals(ExitCode.CHECK_FAILED, run.code());
    // By hand: 2 x 19 matras at 5 are 7 3/5 beats, 2/5 short of 8.
    assertTrue(run.out().contains("ends 2 matras (2/5 beat) too early"), run.out());
    assertTrue(run.out().contains("It lands: "), "the first one lands: " + run.out());
    assertTrue(run.out().contains("2 matras (2/5 beat) too early for samam"), run.out());
  }

  @Test
  void oneWhoOverrunsBeginsTheNextLineLate() throws IOException {
    CommandLineRun run =
        check(
            HEAD
                + "  Song nadai 4\n  with Answer nadai 4\n"
                + "  Song nadai 4\n  with Song nadai 4\n");
    assertEquals(ExitCode.CHECK_FAILED, run.code());
    // By hand: 20 matras at 4 are 5 beats, one more than the 4 of the line.
    assertTrue(run.out().contains("ends 4 matras (1 beat) too late"), run.out());
    assertTrue(run.out().contains("begins 4 matras (1 beat) late"), run.out());
  }

  @Test
  void aLongAnswerMayEndWithALaterRound() throws IOException {
    CommandLineRun run = check(HEAD + "  Song nadai 4\n  with Answer x2 nadai 5\n  Song nadai 4\n");
    assertTrue(run.out().contains("4 beats and, beside it, 8 beats; they end together"), run.out());
    assertEquals(ExitCode.DONE, run.code(), run.out());
  }

  @Test
  void checkAsJsonHoldsBothProofs() throws IOException {
    CommandLineRun run = CommandLineRun.of("check", score.toString(), "--json");
    assertEquals(ExitCode.DONE, run.code());
    assertTrue(run.out().contains("\"holds\" : true"), run.out());
    assertEquals(2, run.out().split("\"lands\" : true", -1).length - 1, run.out());
  }

  private List<String> sollus(String... arguments) {
    CommandLineRun run = CommandLineRun.of(arguments);
    assertEquals(ExitCode.DONE, run.code(), run.err());
    return run.out().lines().filter(line -> line.startsWith("sollu,")).toList();
  }

  @Test
  void eventsSayWhichReciter() {
    List<String> both = sollus("events", score.toString());
    // By hand: 16 + 16 + 8 + 16 and 20 + 20 + 8 + 20.
    assertEquals(56, both.stream().filter(line -> line.startsWith("sollu,1,")).count());
    assertEquals(68, both.stream().filter(line -> line.startsWith("sollu,2,")).count());
    List<String> second = sollus("events", score.toString(), "--reciter", "2");
    assertEquals(
        both.stream()
            .filter(line -> line.startsWith("sollu,2,"))
            .map(line -> line.replaceFirst("^sollu,2,", "sollu,"))
            .toList(),
        second);
  }

  @Test
  void aSheetReadsBackAsTheSameTwo() throws IOException {
    Path text = folder.resolve("page.loom");
    CommandLineRun run = CommandLineRun.of("sheet", score.toString(), "-o", text.toString());
    assertEquals(ExitCode.DONE, run.code(), run.err());
    assertEquals(places(score), places(text));
    CommandLineRun proof = CommandLineRun.of("check", text.toString());
    assertEquals(ExitCode.DONE, proof.code(), proof.out() + proof.err());
  }

  @Test
  void theSheetOfTwoMarksTheBreathsOfEach() {
    CommandLineRun marked = CommandLineRun.of("sheet", score.toString());
    assertEquals(ExitCode.DONE, marked.code(), marked.err());
    assertTrue(marked.out().matches("(?s).*# +breath.*"), marked.out());
    for (String reciter : List.of("1", "2")) {
      String alone = CommandLineRun.of("sheet", score.toString(), "--reciter", reciter).out();
      assertTrue(alone.contains("breath"), "reciter " + reciter + " breathes: " + alone);
    }
    String bare = CommandLineRun.of("sheet", score.toString(), "--no-breaths").out();
    assertFalse(bare.contains("breath"), bare);
  }

  /** Both rows of a line share one grid, so their beats stand under one another at any width. */
  @Test
  void beatsOfBothStandInTheSameColumnsOfHtml() throws IOException {
    Path page = folder.resolve("page.html");
    assertEquals(
        ExitCode.DONE, CommandLineRun.of("sheet", score.toString(), "-o", page.toString()).code());
    String[] systems = Files.readString(page).split("<div class=\"system\" style=\"--beats:");
    assertTrue(systems.length > 3, "lines of two");
    for (String system : List.of(systems).subList(1, systems.length)) {
      int beats = Integer.parseInt(system.substring(0, system.indexOf('"')));
      String both = system.substring(0, system.indexOf("\n</div>"));
      String[] rows = both.split("<section class=\"row\"");
      assertEquals(3, rows.length, both);
      assertEquals(beats + 1, rows[1].split("<div class=\"beat ").length, rows[1]);
      assertEquals(beats + 1, rows[2].split("<div class=\"beat ").length, rows[2]);
    }
  }

  /** Who says something where, without the round and the spelling. */
  private String places(Path file) {
    List<String> lines = sollus("events", file.toString());
    assertEquals(124, lines.size());
    return lines.stream()
        .map(line -> line.split(","))
        .map(cells -> cells[1] + " " + cells[3])
        .collect(Collectors.joining("\n"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"svg", "html"})
  void bothStandOnOneDrawnSheet(String ending) throws IOException {
    Path page = folder.resolve("page." + ending);
    CommandLineRun run = CommandLineRun.of("sheet", score.toString(), "-o", page.toString());
    assertEquals(ExitCode.DONE, run.code(), run.err());
    String drawn = Files.readString(page);
    assertFalse(drawn.isEmpty());
    if (ending.equals("html")) {
      assertTrue(drawn.contains("aria-label=\"reciter 1\""), "rows of the first");
      assertTrue(drawn.contains("aria-label=\"reciter 2\""), "rows of the second");
    }
  }

  @Test
  void midiHasATrackForEach() throws IOException, InvalidMidiDataException {
    Path file = folder.resolve("two.mid");
    CommandLineRun run = CommandLineRun.of("export", score.toString(), "-o", file.toString());
    assertEquals(ExitCode.DONE, run.code(), run.err());
    Track[] tracks = MidiSystem.getSequence(file.toFile()).getTracks();
    assertEquals(4, tracks.length, "signs, sollus, hand, sollus of the second");
    assertEquals(56, notes(tracks[1]));
    assertEquals(68, notes(tracks[3]));
    MetaMessage name = (MetaMessage) tracks[3].get(0).getMessage();
    assertEquals("Sollus, second reciter", new String(name.getData()));
  }

  private static int notes(Track track) {
    int notes = 0;
    for (int index = 0; index < track.size(); index++) {
      if (track.get(index).getMessage() instanceof ShortMessage message
          && message.getCommand() == ShortMessage.NOTE_ON
          && message.getData2() > 0) {
        notes++;
      }
    }
    return notes;
  }

  private double[] energy(String... more) throws IOException {
    Path file = folder.resolve("two.wav");
    List<String> arguments =
        new ArrayList<>(List.of("render", score.toString(), "-o", file.toString()));
    arguments.addAll(List.of(more));
    CommandLineRun run = CommandLineRun.of(arguments.toArray(new String[0]));
    assertEquals(ExitCode.DONE, run.code(), run.err());
    ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(file)).order(ByteOrder.LITTLE_ENDIAN);
    // 48,000 frames a second in stereo, 16 bits: 4 bytes a frame; the head is a few bytes long.
    double[] sides = new double[2];
    for (int at = 48_000; at < 44 + bytes.getInt(40); at += 4) {
      sides[0] += Math.pow(bytes.getShort(at), 2);
      sides[1] += Math.pow(bytes.getShort(at + 2), 2);
    }
    return sides;
  }

  @Test
  void theyStandLeftAndRightAndEachCanBeMuted() throws IOException {
    double[] first = energy("--only", "voice");
    double[] second = energy("--only", "second");
    double[] none = energy("--only", "drone");
    assertEquals(0, none[0] + none[1], "nobody speaks");
    // A side that is 0.8 away keeps 0.2 of the amplitude: 0.04 of the energy.
    assertEquals(0.04, first[1] / first[0], 0.005);
    assertEquals(0.04, second[0] / second[1], 0.005);
  }

  @Test
  void aDrumBesideTheVoiceIsAPartOfTheMix() throws IOException {
    double[] voice = energy("--only", "voice", "--with-drum");
    double[] both = energy("--only", "voice,drum", "--with-drum");
    double[] drum = energy("--only", "drum", "--with-drum");
    double[] without = energy("--only", "voice");
    assertEquals(without[0], voice[0], "a muted drum changes nothing");
    assertTrue(drum[0] > 0 && both[0] > voice[0], "the drum is heard");
  }

  @Test
  void inPlaceAndBesideAreNotAskedForAtOnce() {
    CommandLineRun run =
        CommandLineRun.of(
            "render", score.toString(), "-o", folder + "/x.wav", "--drum", "--with-drum");
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertTrue(run.err().contains("take one"), run.err());
  }

  @Test
  void aTakeMeasuresTheReciterThatIsNamed() throws IOException {
    Path wav = folder.resolve("second.wav");
    String[] render = {
      "render",
      score.toString(),
      "-o",
      wav.toString(),
      "--reciter",
      "2",
      "--only",
      "voice",
      "--count-in",
      "0"
    };
    assertEquals(ExitCode.DONE, CommandLineRun.of(render).code());
    CommandLineRun unnamed =
        CommandLineRun.of("take", score.toString(), wav.toString(), "--no-log");
    assertEquals(ExitCode.BAD_INPUT, unnamed.code());
    assertTrue(unnamed.err().contains("--reciter"), unnamed.err());
    CommandLineRun second =
        CommandLineRun.of("take", score.toString(), wav.toString(), "--no-log", "--reciter", "2");
    assertEquals(ExitCode.DONE, second.code(), second.out() + second.err());
  }

  @ParameterizedTest
  @ValueSource(strings = {"play", "breaths", "fit", "convert", "shape"})
  void whatTakesOneReciterSaysSoInOneSentence(String command) {
    CommandLineRun run = CommandLineRun.of(command, score.toString());
    assertEquals(ExitCode.BAD_INPUT, run.code(), command);
    assertEquals(1, run.err().lines().count(), run.err());
    assertTrue(run.err().contains("one reciter"), run.err());
  }

  @Test
  void aThirdReciterIsRefused() {
    CommandLineRun run = CommandLineRun.of("check", score.toString(), "--reciter", "3");
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertTrue(run.err().contains("--reciter takes 1 or 2, given 3"), run.err());
  }

  /** Below each line of the voice stand the strokes, beat under beat; the sum stands once. */
  @Test
  void theStrokesOfADrumStandBelowTheVoice() throws IOException {
    String score = "samples-synth/gutter-song.loom";
    Path page = folder.resolve("drum.html");
    CommandLineRun run = CommandLineRun.of("sheet", score, "--with-drum", "-o", page.toString());
    assertEquals(ExitCode.DONE, run.code(), run.err());
    String html = Files.readString(page);
    List<String> systems =
        Arrays.stream(html.split("<div class=\"system\""))
            .skip(1)
            .map(TwoRecitersTest::words)
            .toList();
    // Seven avartanas: rupaka at four in 2 and 4 beats, at five in 2, 2 and 2.
    assertEquals(5 * 2 + 2 * 3, systems.size());
    assertTrue(systems.get(0).contains("ta ki ta tom Trickle 10 , , ta ka voice 24 (24/60)"));
    assertTrue(systems.get(0).contains("ta ki ta thom , , ta ki drum"), systems.get(0));
    assertFalse(systems.get(0).matches(".*drum.*60.*"), "the sum stands once");
    Path own = folder.resolve("own.loom");
    Files.writeString(own, "tala adi\ndrum tom = nam + tha\nSong = takadimi tom , tom ,\n");
    Path pdf = folder.resolve("own.html");
    CommandLineRun.of("booklet", own.toString(), "--with-drum", "-o", pdf.toString());
    assertTrue(words(Files.readString(pdf)).contains("nam+tha"), words(Files.readString(pdf)));
    CommandLineRun text = CommandLineRun.of("sheet", score, "--with-drum");
    assertEquals(ExitCode.BAD_INPUT, text.code());
    assertTrue(text.err().replaceAll("\\s+", " ").contains("take --drum, which has both in text"));
    assertTrue(
        CommandLineRun.of("sheet", score, "--drum", "--lead-in-avartanas", "1")
            .out()
            .contains("lead-in from samam"));
  }

  /** What a reader sees: without markup and without what only a screen reader meets. */
  private static String words(String html) {
    return html.replaceAll("<span class=\"vh\">[^<]*</span>", "")
        .replaceAll("<[^>]*>", " ")
        .replaceAll("\\s+", " ");
  }
}
