package org.matraloom.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.matraloom.kanakku.PlaceClaim;
import org.matraloom.score.Composition;
import org.matraloom.score.Edit;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.score.Step;
import org.matraloom.spell.ScorePrinter;
import org.matraloom.time.Ratio;

/**
 * Parts, words to students, endings for some of the times, fill-ins, and scores of several pieces.
 *
 * <p>How a thani avartanam is put together, each piece from its eduppu to its own landing and plain
 * solkattu between them, is common practice.
 */
class PutTogetherTest {

  private static final Lexicon LEXICON = Lexicon.standard();
  private static final String HEAD = "tala adi\ntempo 60\n";

  @TempDir private Path folder;

  private static Composition score(String text) {
    Reading reading = ScoreReader.read(HEAD + text, "p.loom", LEXICON);
    return reading.composition().orElseThrow(() -> new AssertionError(reading.format()));
  }

  private Reading used(String main, String... others) throws IOException {
    for (int index = 0; index < others.length; index += 2) {
      Path file = folder.resolve(others[index]);
      Files.createDirectories(file.getParent());
      Files.writeString(file, others[index + 1]);
    }
    Path file = folder.resolve("main.loom");
    Files.writeString(file, main);
    return ScoreReader.read(file, LEXICON);
  }

  private Composition put(String main, String... others) throws IOException {
    Reading reading = used(main, others);
    return reading.composition().orElseThrow(() -> new AssertionError(reading.format()));
  }

  private static String fault(Reading reading) {
    assertTrue(reading.composition().isEmpty(), "it is refused");
    assertEquals(1, reading.problems().size(), reading.format());
    Problem problem = reading.problems().get(0);
    return problem.place().line() + ":" + problem.place().column() + " " + problem.message();
  }

  private static List<String> sollus(Composition piece) {
    return Performance.of(piece).spoken().map(said -> said.beat() + " " + said.sollu()).toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "(takita {not last: tom ,}) x3 | (takita tom ,) x2 takita",
        "(takita {first: tom} {last: dim}) x3 | takita tom takita takita dim",
        "(takita {first: tom} {last: dim}) x4 | takita tom (takita) x2 takita dim",
        "(takita {first: tom} {last: dim}) x2 | takita tom takita dim",
        "(takita {first: tom} {last: dim}) x1 | takita tom dim",
        "(takita {not first: tom}) x3 | takita (takita tom) x2",
        "((ta {not last: ki}) x2 {not last: tom}) x2 | ta ki ta tom ta ki ta",
        "([ta {last: ki}] tom) x2 | [ta] tom [ta ki] tom",
        "(ta [{last: ki tom}]) x3 | (ta) x2 ta [ki tom]",
        "(ta {5: {first: ki}} {last: [[{not first: tom}]] x2}) x2 | ta {5: ki} ta ([[tom]]) x2",
        "(9 {not last: (ta) x2}) x3 | (9 (ta) x2) x2 9"
      })
  void anEndingIsTheSameAsTheTimesWrittenOut(String shorter, String full) {
    assertEquals(score("A = " + full).phrases(), score("A = " + shorter).phrases());
  }

  @Test
  void endingsStandInRepeatsOnly() {
    Reading loose = ScoreReader.read(HEAD + "A = ta {last: ki}", "p.loom", LEXICON);
    assertEquals(
        "3:9 an ending for some of the times stands in round brackets that are repeated",
        fault(loose));
    Reading misspelt = ScoreReader.read(HEAD + "A = (ta {lsat: ki}) x2", "p.loom", LEXICON);
    assertTrue(misspelt.format().contains("help: the nearest is last"), misspelt.format());
    Reading deep =
        ScoreReader.read(
            HEAD + "A = " + "(".repeat(5) + "ta" + " {last: ki}) x2".repeat(5), "p.loom", LEXICON);
    assertTrue(deep.format().contains("of their own stand at most 3 deep"), deep.format());
  }

  @Test
  void manyBracketsAroundAnEndingAreReadAtOnce() {
    String many = "(".repeat(200_00) + "{last: ta}" + ")".repeat(200);
    assertTrue(
        ScoreReader.read("tala adi\nA = " + many.substring(0, 9_000), "p.loom", LEXICON)
            .composition()
            .isEmpty());
  }

  @Test
  void theLastRoundMayBeAnotherPhrase() {
    String phrases = "A = takadimi\nB = takita tom\nperform\n";
    assertEquals(
        sollus(score(phrases + "A x2 nadai 5\nB nadai 5")),
        sollus(score(phrases + "A x3 nadai 5 last B")));
    Reading once = ScoreReader.read(HEAD + phrases + "A last B", "p.loom", LEXICON);
    assertEquals("6:8 there is no last time of what is said once", fault(once));
    Reading unknown = ScoreReader.read(HEAD + phrases + "A x2 last Bb", "p.loom", LEXICON);
    assertTrue(unknown.format().endsWith("help: the nearest is B"), unknown.format());
  }

  @Test
  void partsAndWordsToStudentsTakeNoTimeAndReadBack() {
    Composition piece =
        score(
            "A = (takadimi) x4\nperform\n  part Purvanga # mine\n  tell Clap softly, (all)!\n"
                + "  A x2\n  at samam\n  part: Uttaranga\n  A\n  at beat 5 for Weir");
    assertEquals(
        List.of(
            new Step.Part("Purvanga"),
            new Step.Tell("Clap softly, (all)!"),
            new Step.Say("A", 2, 4, 1),
            new Step.Stands(Ratio.ZERO, ""),
            new Step.Part("Uttaranga"),
            new Step.Say("A", 1, 4, 1),
            new Step.Stands(Ratio.of(4), "Weir")),
        piece.plan());
    Performance performance = Performance.of(piece);
    assertEquals(
        List.of(0, 0, 2, 2, 3), performance.notices().stream().map(one -> one.span()).toList());
    assertEquals(Ratio.of(8), performance.notices().get(3).beat());
    assertEquals(
        performance.spans(), Performance.of(score("A = (takadimi) x4\nperform\nA x3")).spans());
    assertEquals(piece, score(ScorePrinter.print(piece).replaceFirst("(?s)^.*?\n\n", "")));
  }

  @Test
  void aPhraseMayBeCalledLikeALineOfThePlan() {
    Composition piece =
        score("Part = takita\nUse = taka\nTell = ta\nperform\nPart x2\nUse\nTell\nPart");
    assertEquals(5, Performance.of(piece).rounds().size());
    assertEquals(0, Performance.of(piece).notices().size());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "fill 8 beats | 8 | 32",
        "fill 2 avartanas nadai 5 | 16 | 80",
        "fill until samam | 5 1/4 | 21",
        "fill until beat 4 nadai 8 | 1/4 | 2",
        "fill 1 1/2 beats nadai khanda | - | -"
      })
  void aFillInIsCountedInWholeMatras(String line, String beats, String matras) {
    String text = HEAD + "A = takadimi takadimi takita\nperform\nA\n" + line + "\n";
    Reading reading = ScoreReader.read(text, "p.loom", LEXICON);
    if (beats.equals("-")) {
      assertTrue(fault(reading).contains("it would be 7 1/2 matras of khanda"), reading.format());
      return;
    }
    Performance performance = Performance.of(reading.composition().orElseThrow());
    Span.Round fill = performance.rounds().get(1);
    assertEquals(beats, fill.beats().toMixed());
    assertEquals(matras, fill.matras().toMixed());
    assertEquals(fill.sollus(), fill.matras().num(), "a sollu on every matra");
  }

  @Test
  void anEmptyFillInIsRefused() {
    Reading nothing =
        ScoreReader.read(HEAD + "A = ta\nperform\nfill until samam\nA", "p.loom", LEXICON);
    assertEquals("5:1 there is nothing to fill: the tala stands there already", fault(nothing));
    Reading unit = ScoreReader.read(HEAD + "A = ta\nperform\nA\nfill 3 baets", "p.loom", LEXICON);
    assertTrue(unit.format().endsWith("help: the nearest is beats"), unit.format());
  }

  private static final String WEIR =
      """
      title Weir
      tala adi
      start beat 5
      stroke tom
      A = (takadimi) x4
      B = A takadimi ; ; | takita
      perform
        part Slope
        A x2
        A nadai 8 x3
        rest 2 beats
      """;

  @Test
  void piecesArePutTogetherAndProvenAsOne() throws IOException {
    Composition piece =
        put(
            HEAD
                + "A = takita tom\nperform\nA x2\nfill until beat 5\nuse \"in/weir.loom\"\n"
                + "fill until beat 5\nuse \"in/weir.loom\"",
            "in/weir.loom",
            WEIR);
    List<PlaceClaim> claims = PlaceClaim.in(Performance.of(piece));
    assertEquals(
        List.of(
            "Weir enters on beat 5", "Weir lands on beat 5, 4 beats too late for samam",
            "Weir enters on beat 5", "Weir lands on beat 5, 4 beats too late for samam"),
        claims.stream().map(claim -> claim.words(piece.avartana())).toList());
    assertEquals("tom", piece.closing().stroke().orElseThrow().sollu().spelling());
    assertTrue(piece.phrases().containsKey("A_2"), "both have a phrase A: " + piece.phrases());
    Composition written =
        score(
            "A = takita tom\nFirst = (takadimi) x4\nStroke = tom ; ,,,,,\n"
                + "F = (4) x2\nG = (4) x1\n"
                + "perform\nA x2\nF\nFirst x2\nFirst nadai 8 x3\nrest 2 beats");
    List<String> whole = sollus(piece);
    List<String> begin = sollus(written);
    assertEquals(begin, whole.subList(0, begin.size()));
    String printed = ScorePrinter.print(piece);
    assertEquals(piece, ScoreReader.read(printed, "printed", LEXICON).composition().orElseThrow());
  }

  @Test
  void everyReasonWhyAScoreCannotBeUsedIsToldAtItsLine() throws IOException {
    String main = "tala adi\ntempo 60\nA = ta\nperform\nA\nuse \"other.loom\"";
    assertEquals("6:6 there is no file other.loom beside the score", fault(used(main)));
    assertTrue(
        used(main, "others.loom", WEIR).format().endsWith("help: the nearest is others.loom"));
    assertEquals(
        "6:6 other.loom is at 61 beats a minute and this score at 60",
        fault(used(main, "other.loom", "tempo 61\n" + WEIR)));
    assertEquals(
        "6:6 other.loom is in rupaka and this score in adi",
        fault(used(main, "other.loom", "tala rupaka\nB = ta\n")).replace("chatusra ", ""));
    assertEquals(
        "6:6 other.loom is in adi in 2 kalai and this score in adi",
        fault(used(main, "other.loom", "kalai 2\n" + WEIR)));
    assertEquals(
        "6:6 other.loom cannot be used: line 2, column 5: no sollus known for \"blorb\"",
        fault(used(main, "other.loom", "tala adi\nA = blorb\n")));
    assertEquals(
        "6:6 other.loom cannot be used: line 4, column 6: main.loom uses itself by way of other.loom",
        fault(used(main, "other.loom", "tala adi\nA = ta\nperform\nuse \"main.loom\"")));
    assertEquals(
        "4:6 main.loom uses itself", fault(used("tala adi\nA = ta\nperform\nuse \"main.loom\"")));
  }

  @ParameterizedTest
  @CsvSource({"../x.loom", "/etc/hostname", "a/../../x.loom", "link.loom", "sub/link.loom"})
  void nothingOutsideTheFolderIsOpened(String path) throws IOException {
    Path outside = Files.createTempDirectory("outside");
    Path secret = Files.writeString(outside.resolve("x.loom"), WEIR);
    Files.createDirectories(folder.resolve("sub"));
    Files.createSymbolicLink(folder.resolve("link.loom"), secret);
    Files.createSymbolicLink(folder.resolve("sub/link.loom"), secret);
    String text = "tala adi\nA = ta\nperform\nuse \"" + path + "\"";
    assertEquals("4:6 " + path + " lies outside the folder of the score", fault(used(text)));
    Files.delete(secret);
    Files.delete(outside);
  }

  @Test
  void aTextThatIsInNoFileUsesNone() {
    Reading reading = ScoreReader.read("tala adi\nperform\nuse \"a.loom\"", "typed", LEXICON);
    assertEquals("3:6 a score that is not in a file cannot use others", fault(reading));
    Reading bare = ScoreReader.read("tala adi\nperform\nuse a.loom", "typed", LEXICON);
    assertEquals("3:5 expected a file in quotation marks after use, found \"a.loom\"", fault(bare));
    Reading early = ScoreReader.read("tala adi\nuse \"a.loom\"\nA = ta", "typed", LEXICON);
    assertEquals("2:1 \"use\" stands under a line perform", fault(early));
  }

  @Test
  void wordsOfItsOwnComeWithAPiece() throws IOException {
    Composition piece =
        put(
            "tala adi\nperform\nuse \"own.loom\"",
            "own.loom",
            "tala adi\n5 = ta , dim , tom\nA = 5 5(2)\n");
    assertEquals(
        List.of("ta", "dim", "tom", "ta", "dim", "tom"),
        Performance.of(piece).spoken().map(said -> said.sollu().spelling()).toList());
    assertEquals(
        sollus(piece),
        sollus(ScoreReader.read(ScorePrinter.print(piece), "p", LEXICON).composition().get()));
  }

  @Test
  void aChangeWritesAPutTogetherScoreOut() throws IOException {
    Composition piece =
        put("tala adi\nA = (ta {last: ki}) x2\nperform\nA\nuse \"weir.loom\"", "weir.loom", WEIR);
    Path file = folder.resolve("main.loom");
    Edit edit = new Edit.Start(Ratio.of(2));
    String changed = ScoreEditor.apply(Files.readString(file), file, List.of(edit), LEXICON);
    assertEquals(
        edit.appliedTo(piece),
        ScoreReader.read(changed, "changed", LEXICON).composition().orElseThrow());
  }

  @Test
  void filesAreReadOnceHoweverOftenTheyAreUsed() throws IOException {
    StringBuilder chain = new StringBuilder("tala adi\nA = ta\nperform\n");
    chain.append("use \"b.loom\"\n".repeat(40));
    String many = chain.toString();
    Composition piece =
        put(many, "b.loom", many.replace("b.loom", "c.loom"), "c.loom", "tala adi\nA = ta ka\n");
    assertEquals(40 * 40, Performance.of(piece).rounds().size());
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(3, files.count());
    }
  }
}
