package org.matraloom.app.voices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.CommandLineRun;
import org.matraloom.mouth.MadeMouth;

/** The voice commands from making to removing, and the voice in other commands. */
class VoiceCommandTest {

  @TempDir private Path folder;
  private String list;
  private String shelf;

  @BeforeEach
  void speak() throws IOException {
    list = new MadeMouth().write(folder).toString();
    shelf = folder.resolve("voices").toString();
  }

  private CommandLineRun make(String name, String... more) {
    String[] words = {
      "voice", "make", name, list, "--owner", "Mira of the Delta", "--consent", "--shelf", shelf
    };
    String[] all = Arrays.copyOf(words, words.length + more.length);
    System.arraycopy(more, 0, all, words.length, more.length);
    return CommandLineRun.of(all);
  }

  @Test
  void aVoiceIsMadeListedCheckedHeardSharedAndRemoved() {
    CommandLineRun made = make("river");
    assertEquals(0, made.code(), made.err());
    assertTrue(made.out().contains("samples of 15 sollus"), made.out());

    CommandLineRun listed = CommandLineRun.of("voice", "list", "--shelf", shelf);
    assertTrue(listed.out().contains("Spoken by Mira of the Delta."), listed.out());

    String picture = folder.resolve("kit.svg").toString();
    CommandLineRun checked =
        CommandLineRun.of("voice", "check", "river", "--shelf", shelf, "--picture", picture);
    assertEquals(0, checked.code(), checked.err());
    assertTrue(checked.out().contains("ḍa (by ṭa)"), checked.out());
    assertTrue(Files.exists(Path.of(picture)));

    String heard = folder.resolve("heard.wav").toString();
    CommandLineRun said =
        CommandLineRun.of("voice", "hear", "river", "ta ka jem", "-o", heard, "--shelf", shelf);
    assertEquals(0, said.code(), said.err());
    assertTrue(said.err().contains("Not recorded by river: jem (said by the synthesiser)."));

    String zip = folder.resolve("river.zip").toString();
    assertEquals(
        0, CommandLineRun.of("voice", "share", "river", "-o", zip, "--shelf", shelf).code());
    CommandLineRun received = CommandLineRun.of("voice", "make", "delta", zip, "--shelf", shelf);
    assertEquals(0, received.code(), received.err());
    assertTrue(received.out().contains("Spoken by Mira of the Delta."), received.out());

    assertEquals(0, CommandLineRun.of("voice", "remove", "river", "--shelf", shelf).code());
    CommandLineRun gone = CommandLineRun.of("voice", "check", "river", "--shelf", shelf);
    assertTrue(gone.err().contains("there is no voice river; there are delta"), gone.err());
  }

  @Test
  void aPieceIsRenderedAndAPageIsMadeInIt() throws IOException {
    make("river");
    Path score = folder.resolve("drops.loom");
    Files.writeString(score, "tala 4\ntempo 60\nDrops = takadimi\nperform\n  Drops nadai 4\n");
    String voice = folder.resolve("voices/river").toString();
    Path own = folder.resolve("own.wav");
    Path usual = folder.resolve("usual.wav");
    CommandLineRun rendered =
        CommandLineRun.of("render", score.toString(), "-o", own.toString(), "--voice", voice);
    assertEquals(0, rendered.code(), rendered.err());
    CommandLineRun.of("render", score.toString(), "-o", usual.toString());
    assertEquals(Files.size(usual), Files.size(own), "as long as with the synthesiser");
    assertFalse(Arrays.equals(Files.readAllBytes(usual), Files.readAllBytes(own)));
    String page = folder.resolve("drops.html").toString();
    CommandLineRun paged =
        CommandLineRun.of("page", score.toString(), "-o", page, "--voice", voice);
    assertEquals(0, paged.code(), paged.err());
  }

  @Test
  void aTakeInItIsMeasuredWithWhatIsKnownOfIt() throws IOException {
    make("river");
    String voice = folder.resolve("voices/river").toString();
    String song = "samples-synth/gutter-song.loom";
    String take = folder.resolve("take.wav").toString();
    CommandLineRun.of("render", song, "-o", take, "--only", "voice", "--voice", voice);
    CommandLineRun plain = CommandLineRun.of("take", song, take, "--no-log", "--json");
    CommandLineRun known =
        CommandLineRun.of("take", song, take, "--no-log", "--json", "--voice", voice);
    assertEquals(0, known.code(), known.err());
    assertEquals(plain.out(), known.out(), "nothing was wrong, so nothing is told otherwise");
    assertError(
        "--voice takes a recorded voice here: there is no voice nobody",
        CommandLineRun.of("take", song, take, "--no-log", "--voice", "nobody"));
  }

  @Test
  void theVoiceOfATakeIsTheUsualOneOfItsLogUntilNoneIsNamed() throws IOException {
    make("river");
    String voice = folder.resolve("voices/river").toString();
    String song = "samples-synth/gutter-song.loom";
    String take = folder.resolve("take.wav").toString();
    CommandLineRun.of("render", song, "-o", take, "--only", "voice", "--voice", voice);
    Path log = folder.resolve("practice.jsonl");
    String usual = "Measured with the recorded voice " + voice + ", the usual one";
    assertFalse(words(take(song, take, log)).contains("recorded voice"), "none is usual yet");
    CommandLineRun first = take(song, take, log, "--voice", voice);
    assertEquals(0, first.code(), first.err());
    assertTrue(words(first).startsWith("Takes of this log are measured with this voice from now"));
    assertTrue(words(take(song, take, log)).startsWith(usual), words(take(song, take, log)));
    assertTrue(take(song, take, log, "--json").out().contains("Measured with the recorded voice"));
    assertFalse(words(take(song, take, log, "--no-log")).contains("recorded voice"));
    assertEquals(
        1, Files.readAllLines(log).stream().filter(line -> line.contains("\"voice\"")).count());

    CommandLineRun.of("voice", "remove", "river", "--shelf", shelf, "--yes");
    if (Files.exists(Path.of(voice))) {
      Files.move(Path.of(voice), folder.resolve("gone"));
    }
    String without = words(take(song, take, log));
    assertTrue(without.startsWith("Measured without the usual voice of the practice log"), without);
    CommandLineRun none = take(song, take, log, "--voice", "none");
    assertEquals(0, none.code(), none.err());
    assertTrue(words(none).contains("without a recorded voice from now on."), words(none));
    assertFalse(words(take(song, take, log)).contains("recorded voice"));
    assertError("\"none\" is said where no voice is wanted", make("none"));
  }

  private static CommandLineRun take(String song, String take, Path log, String... more) {
    String[] words = {"take", song, take, "--log-file", log.toString()};
    String[] all = Arrays.copyOf(words, words.length + more.length);
    System.arraycopy(more, 0, all, words.length, more.length);
    return CommandLineRun.of(all);
  }

  private static String words(CommandLineRun run) {
    return run.out().replaceAll("\\s+", " ");
  }

  @Test
  void withoutConsentNothingIsMade() {
    CommandLineRun refused = CommandLineRun.of("voice", "make", "river", list, "--shelf", shelf);
    assertEquals(2, refused.code());
    assertTrue(refused.err().contains("consent"), refused.err());
    assertFalse(Files.exists(Path.of(shelf, "river")));
  }

  @Test
  void whatIsWrongIsToldInOneSentence() {
    make("river");
    assertError("there is a voice river already", make("river"));
    assertError("is a voice of the program", make("low"));
    assertError("there is no cue sheet", make("delta", "--cue", folder + "/none.txt"));
    assertError(
        "--voice takes low, high or a recorded voice",
        CommandLineRun.of("sollus", "--hear", "ta", "-o", folder + "/x.wav", "--voice", "nobody"));
    assertError(
        "a voice is shared as .zip",
        CommandLineRun.of("voice", "share", "river", "-o", folder + "/x.wav", "--shelf", shelf));
  }

  private static void assertError(String expected, CommandLineRun run) {
    assertEquals(2, run.code(), run.out());
    String said = run.err().replaceAll("\\s+", " ");
    assertTrue(said.contains(expected), said);
    assertFalse(said.contains("Exception"), said);
  }
}
