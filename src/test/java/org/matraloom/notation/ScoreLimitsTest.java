package org.matraloom.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.matraloom.score.Lexicon;

/** What is too large is refused with a message of its own, without a hang or a full memory. */
class ScoreLimitsTest {

  private static final Lexicon LEXICON = Lexicon.standard();
  private static final String HEAD = "tala adi\ntempo 60\n";
  private static final int NEARLY_A_MEGABYTE = 990_000;

  @TempDir private Path folder;

  private static Reading read(String phrases) {
    return ScoreReader.read(HEAD + phrases, "t.loom", LEXICON);
  }

  private static void assertAccepted(String phrases) {
    Reading reading = read(phrases);
    assertTrue(reading.composition().isPresent(), reading::format);
  }

  private static void assertRefused(String start, Reading reading) {
    assertTrue(reading.composition().isEmpty());
    String first = reading.problems().get(0).format();
    assertTrue(first.startsWith("t.loom:" + start), first);
  }

  private static void assertRefused(String start, String phrases) {
    assertRefused(start, read(phrases));
  }

  /** Indented lines full of one piece of text. */
  private static String lines(String piece) {
    String line = " " + piece.repeat(5_000 / piece.length()) + "\n";
    return line.repeat(NEARLY_A_MEGABYTE / line.getBytes(StandardCharsets.UTF_8).length);
  }

  @Test
  void aTextOfMoreThanAMegabyteIsRefused() {
    assertAccepted("Song = ta" + "\n".repeat(900_000));
    assertRefused(" error: a score has at most 1 MB (1,000,000 bytes)", "\n".repeat(1_000_000));
    assertRefused(" error: a score has at most 1 MB (1,000,000 bytes)", "ṭ".repeat(400_000));
  }

  @Test
  void aLineOfMoreThanTenThousandCharactersIsRefused() {
    assertAccepted("Song = ta #" + " ".repeat(9_989));
    assertRefused(
        "3:1: error: a line has at most 10000 characters, this one has 10001",
        "Song = ta #" + " ".repeat(9_990));
  }

  @Test
  void longWordsAndNamesAreRefused() {
    assertAccepted("Song = " + "ta".repeat(100));
    assertRefused("3:8: error: a word has at most 200 letters", "Song = " + "ta".repeat(101));
    assertRefused("3:8: error: a name has at most 200 letters", "Song = " + "T".repeat(201));
  }

  @ParameterizedTest
  @ValueSource(strings = {"(|) x1", "{5:|}", "(|)x1"})
  void bracketsStandThirtyTwoDeep(String pair) {
    String[] sides = pair.split("\\|");
    assertAccepted("Song = " + sides[0].repeat(32) + "ta" + sides[1].repeat(32));
    Reading refused = read("Song = " + sides[0].repeat(33) + "ta" + sides[1].repeat(33));
    assertEquals(
        "brackets stand at most 32 deep inside each other", refused.problems().get(0).message());
    assertEquals(1, refused.problems().size());
  }

  @Test
  void phrasesStandThirtyTwoDeep() {
    String chain =
        IntStream.rangeClosed(1, 33)
            .mapToObj(number -> "P" + number + " = P" + (number - 1) + "\n")
            .collect(Collectors.joining("", "P0 = ta\n", ""));
    assertAccepted(chain.substring(0, chain.indexOf("P33")));
    assertRefused(
        "36:1: error: in P33 brackets and phrases stand more than 32 deep inside each other",
        chain);
  }

  @Test
  void speedIsLimitedThroughPhrasesToo() {
    assertAccepted("Song = [[[[[[ta]]]]]]");
    assertRefused(
        "3:1: error: in Song square brackets make something more than 64 times as fast",
        "Song = [[[[[[[ta]]]]]]]");
    assertRefused(
        "4:1: error: in Song square brackets make something more than 64 times as fast",
        "Rain = [[[[ta]]]]\nSong = [[[Rain]]]");
  }

  @Test
  void aRepeatOfARepeatIsRefused() {
    assertAccepted("Song = ((((ta) x10) x10) x10) x10");
    assertRefused(
        "3:1: error: phrase Song is too long: it passes more than 2,000,000 sollus and marks",
        "Song = (((ta) x999) x999) x999");
    assertRefused(
        "3:1: error: phrase Song is too long: it passes more than 2,000,000 sollus and marks",
        "Song = " + "(".repeat(30) + "ta" + ") x999".repeat(30));
  }

  @Test
  void aPhraseThatDoublesAgainAndAgainIsRefused() {
    String doubling =
        IntStream.rangeClosed(1, 31)
            .mapToObj(number -> "P" + number + (" = P" + (number - 1)) + " P" + (number - 1) + "\n")
            .collect(Collectors.joining("", "P0 = takadimi\n", ""));
    assertRefused(
        "22:1: error: phrase P19 is too long: it passes more than 2,000,000 sollus and marks",
        doubling);
  }

  @Test
  void aPerformanceIsLimitedInRoundsStepsAndHours() {
    String ten = "\n  Song x999".repeat(10);
    assertAccepted("Song = ta\nperform" + ten + "\n  Song x10");
    assertRefused(
        "15:3: error: the performance has more than 10,000 rounds and rests",
        "Song = ta\nperform" + ten + "\n  Song x11");
    assertRefused(
        "6:3: error: the performance passes more than 2,000,000 sollus and marks",
        "Song = (ta) x700\nperform\n  Song x999 kalam 3\n  Song x999 kalam 3");
    assertRefused(
        "6:3: error: the performance lasts more than 24 hours at this tempo",
        "Song = ta\nperform\n  Song\n  rest 86400 beats");
    assertAccepted("Song = ta\nperform\n  Song\n  rest 86399 beats");
  }

  @Test
  void aLongChainAndALongCircleAreSeenThrough() {
    String chain =
        IntStream.range(0, 40_000)
            .mapToObj(number -> "P" + number + " = P" + (number + 1) + "\n")
            .collect(Collectors.joining());
    Reading deep = read(chain + "P40000 = ta");
    assertEquals(101, deep.problems().size());
    assertTrue(deep.problems().get(0).message().contains("more than 32 deep"), deep::format);
    assertRefused(
        "40003:10: error: phrase P0 speaks of itself by way of P1", chain + "P40000 = P0");
  }

  @Test
  void manyPhrasesOfOneLongPhraseAreMeasuredOnce() {
    String base = "Base =\n" + (" " + "ta ".repeat(1_000) + "\n").repeat(130);
    String many =
        IntStream.range(0, 50_000)
            .mapToObj(number -> "P" + number + "=Base\n")
            .collect(Collectors.joining());
    assertAccepted(base + many);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "(",
        "{5:",
        "]",
        "(ta) x2 ",
        "-",
        "9",
        "9(1)",
        ",",
        "|",
        "zzqxkadimotakqu ",
        "Zork ",
        "kiṭa |",
        "\u0301",
        "\ud83c\uddee",
        "\u0000",
        "[[ta]]"
      })
  void aMegabyteOfAnythingIsAnswered(String piece) {
    String text = "Song =\n" + lines(piece);
    assertTrue(text.length() > 300_000);
    Reading reading = read(text);
    assertTrue(reading.problems().size() <= 101);
    assertTrue(reading.composition().isPresent() || !reading.problems().isEmpty());
    assertTrue(reading.format().length() < 100_000);
  }

  @Test
  void aFileIsRead() throws IOException {
    Path file = folder.resolve("rain.loom");
    Files.writeString(file, "\ufeff" + HEAD.replace("\n", "\r\n") + "Song = ta\r\n  kiṭa");
    Reading reading = ScoreReader.read(file, LEXICON);
    assertTrue(reading.composition().isPresent(), reading::format);
  }

  @Test
  void noMoreOfAFileIsReadThanAllowed() throws IOException {
    Path file = folder.resolve("flood.loom");
    try (FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      channel.write(ByteBuffer.wrap(new byte[] {'#'}), 5_000_000_000L);
    }
    assertEquals(
        file
            + ": error: a score has at most 1 MB (1,000,000 bytes)\n"
            + "help: split it into several scores",
        ScoreReader.read(file, LEXICON).format());
  }

  @Test
  void aFileThatIsNotThereOrIsAFolderIsRefused() {
    assertEquals(
        folder.resolve("none.loom")
            + ": error: there is no such file\n"
            + "help: check the name and the folder",
        ScoreReader.read(folder.resolve("none.loom"), LEXICON).format());
    assertEquals(
        folder + ": error: this is a folder\nhelp: name a score inside it",
        ScoreReader.read(folder, LEXICON).format());
  }

  @Test
  void aForgottenEndingIsNamed() throws IOException {
    Files.writeString(folder.resolve("rain.loom"), "tala adi\n");
    assertEquals(
        folder.resolve("rain") + ": error: there is no such file\nhelp: there is a rain.loom",
        ScoreReader.read(folder.resolve("rain"), LEXICON).format());
  }

  @Test
  void aFileThatIsNotUtf8IsRefusedWithThePlace() throws IOException {
    Path file = folder.resolve("old.loom");
    Files.write(file, "tala adi\r\n# caf\u00e9\r\nSong = ta".getBytes(StandardCharsets.ISO_8859_1));
    assertEquals(
        file
            + ":2:6: error: the file is not UTF-8 text: byte e9\n# caf\ufffd\n     ^\n"
            + "help: save it as UTF-8 in the editor",
        ScoreReader.read(file, LEXICON).format());
    Files.write(file, "tala adi".getBytes(StandardCharsets.UTF_16));
    assertEquals(
        file
            + ":1:1: error: the file is not UTF-8 text: byte fe\n\ufffd\n^\n"
            + "help: save it as UTF-8 in the editor",
        ScoreReader.read(file, LEXICON).format());
    Files.write(file, new byte[] {'t', 'a', (byte) 0xe1, (byte) 0xb9});
    assertEquals(
        "the file is not UTF-8 text: byte e1",
        ScoreReader.read(file, LEXICON).problems().get(0).message());
  }
}
