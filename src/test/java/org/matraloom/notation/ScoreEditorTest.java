package org.matraloom.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.matraloom.repair.Conversion;
import org.matraloom.repair.ConversionWish;
import org.matraloom.repair.Repair;
import org.matraloom.repair.Repairs;
import org.matraloom.score.Composition;
import org.matraloom.score.Edit;
import org.matraloom.score.Element;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.Step;
import org.matraloom.score.Tala;
import org.matraloom.score.Wording;
import org.matraloom.spell.ChapuTala;
import org.matraloom.spell.TalaReader;
import org.matraloom.time.Ratio;

class ScoreEditorTest {

  private static final Lexicon LEXICON = Lexicon.standard();

  private static final String SONG =
      """
      # the gutter in the rain
      title   Gutter Song      # working title
      tala    adi
      tempo   66

      Drip  =  takita ,  takita ,     # twice
      Tail  = 5(2)5(2)5
      Song  = Drip   takadimi
              [takadimi takadimi] Tail   # ends here

      perform                 # slowly
        Song  x2    nadai 4   # plain
        Song        nadai 5   # quick
      """;

  @Test
  void aHeaderIsSetInItsPlace() {
    assertEquals(
        SONG.replace("tala    adi", "tala    misra chapu"),
        edited(new Edit.InTala(ChapuTala.MISRA.tala())));
  }

  /** Desadi lands 1 1/2 aksharas after samam by itself (ajsriram.blogspot.com, 2004/01). */
  @Test
  void theEduppuOfATalaIsKeptInAnother() {
    String song = "tala desadi\nA = takita\n";
    Edit.InTala misra = new Edit.InTala(ChapuTala.MISRA.tala());
    assertEquals(
        "tala misra chapu\neduppu beat 2 1/2\nA = takita\n",
        ScoreEditor.apply(song, List.of(misra), LEXICON));
    Composition desadi = ScoreReader.read(song, "desadi", LEXICON).composition().orElseThrow();
    Edit.InTala back = new Edit.InTala(desadi.avartana().tala());
    assertEquals(
        "tala desadi\neduppu samam\nA = takita\n",
        ScoreEditor.apply(song.replace("desadi", "adi"), List.of(back), LEXICON));
    String given = song.replace("desadi\n", "desadi\neduppu +1/2\n");
    assertEquals(
        given.replace("desadi", "misra chapu"), ScoreEditor.apply(given, List.of(misra), LEXICON));
  }

  @Test
  void aMissingHeaderComesAfterTheOthers() {
    assertEquals(
        SONG.replace("tempo   66\n", "tempo   66\nstart   beat 4 1/5\n"),
        edited(new Edit.Start(Ratio.of(16, 5))));
    assertEquals(
        SONG.replace("tempo   66\n", "tempo   66\nstart   -1/4\n"),
        edited(new Edit.Start(Ratio.of(-1, 4))));
  }

  @Test
  void aWaitIsPutBetweenTheLines() {
    Step wait = new Step.RestMatras(16, 5);
    assertEquals(
        SONG.replace("# plain\n", "# plain\n  rest 16 matras nadai 5\n"),
        edited(new Edit.Plan(List.of(say(2, 4), wait, say(1, 5)))));
  }

  @Test
  void aLineIsCutForAWaitInsideIt() {
    Step wait = new Step.RestBeats(Ratio.of(2));
    assertEquals(
        SONG.replace(
            "Song  x2    nadai 4   # plain\n",
            "Song nadai 4   # plain\n  rest 2 beats\n  Song nadai 4\n"),
        edited(new Edit.Plan(List.of(say(1, 4), wait, say(1, 4), say(1, 5)))));
  }

  @Test
  void aNumberIsChangedInItsPlace() {
    assertEquals(
        SONG.replace("Song        nadai 5", "Song        nadai 3"),
        edited(new Edit.Plan(List.of(say(2, 4), say(1, 3)))));
  }

  @Test
  void aStepTakenOutLeavesItsNote() {
    assertEquals(
        SONG.replace("  Song  x2    nadai 4   # plain", "  # plain"),
        edited(new Edit.Plan(List.of(say(1, 5)))));
  }

  @Test
  void aScoreWithoutAPlanGetsOne() {
    String text = "tala adi\r\nSong = takadimi takita";
    assertEquals(
        "tala adi\r\nSong = takadimi takita\r\n\r\nperform\r\n  Song nadai 5\r\n",
        ScoreEditor.apply(text, List.of(new Edit.Plan(List.of(say(1, 5)))), LEXICON));
  }

  @Test
  void elementsOfAPhraseAreReplaced() {
    assertEquals(
        SONG.replace("= Drip   takadimi", "= 16 Drip   takadimi"),
        edited(new Edit.Splice("Song", 0, 0, List.of(group(16, 0)))));
    assertEquals(
        SONG.replace("5(2)5(2)5", "5(1)5(1)5"),
        edited(new Edit.Splice("Tail", 0, 3, List.of(group(5, 1), group(5, 1), group(5, 0)))));
    assertEquals(
        SONG.replace("5(2)5(2)5", "5(2)5 5"),
        edited(new Edit.Splice("Tail", 1, 2, List.of(group(5, 0)))));
    assertEquals(
        SONG.replace("takita ,  takita ,     #", "takita ,  takita # twice")
            .replace("# twice twice", "# twice"),
        edited(new Edit.Splice("Drip", 3, 4, List.of())));
  }

  @Test
  void aReplacementMayCrossALineEnd() {
    assertEquals(
        SONG.replace("Drip   takadimi\n        [takadimi takadimi] Tail", "Drip   7\n        Tail"),
        edited(new Edit.Splice("Song", 1, 3, List.of(group(7, 0)))));
  }

  @Test
  void aScoreWithErrorsIsRefused() {
    List<Edit> edits = List.of(new Edit.Start(Ratio.ONE));
    assertThrows(
        IllegalArgumentException.class,
        () -> ScoreEditor.apply("tala adi\nSong = hoopla", edits, LEXICON));
  }

  @Test
  void everyRepairWrittenIntoATextLandsAndTouchesLittle() {
    Random random = new Random(2024);
    Set<Repair.Kind> kinds = EnumSet.noneOf(Repair.Kind.class);
    int seen = 0;
    for (int i = 0; i < 120; i++) {
      String text = text(random);
      Composition piece = read(text);
      List<Repair> repairs = Repairs.of(piece, LEXICON, List.copyOf(TalaReader.names().values()));
      for (Repair repair : repairs) {
        String changed = ScoreEditor.apply(text, repair.edits(), LEXICON);
        assertEquals(
            repair.performance().spans(),
            Performance.of(read(changed)).spans(),
            () -> repair.words() + "\n" + text + "\n" + changed);
        for (String note : text.lines().filter(line -> line.contains("#")).toList()) {
          assertTrue(changed.contains(note.substring(note.indexOf('#'))), changed);
        }
        assertTrue(linesGone(text, changed) <= 3, () -> text + "\n" + changed);
        kinds.add(repair.kind());
        seen++;
      }
    }
    assertTrue(seen > 800, "repairs were written: " + seen);
    assertEquals(EnumSet.allOf(Repair.Kind.class), kinds);
  }

  /** All kinds of notation, in an irregular hand. */
  @Test
  void repairsOfAnyScoreAreWrittenRightly() {
    RandomScores scores = new RandomScores(4711);
    List<Tala> talas = List.copyOf(TalaReader.names().values());
    int seen = 0;
    for (int i = 0; i < 200; i++) {
      String text = scores.text();
      Composition piece = read(text);
      List<Repair> repairs = Repairs.of(piece, LEXICON, talas);
      for (Repair repair : repairs.subList(0, Math.min(8, repairs.size()))) {
        String changed = ScoreEditor.apply(text, repair.edits(), LEXICON);
        assertEquals(
            repair.performance().spans(),
            Performance.of(read(changed)).spans(),
            () -> repair.words() + "\n" + text + "\n" + changed);
        seen++;
      }
      Tala tala = talas.get(scores.number(talas.size()));
      Conversion conversion =
          Conversion.of(piece, new ConversionWish(Optional.empty(), Optional.of(tala), false));
      String converted = ScoreEditor.apply(text, conversion.edits(), LEXICON);
      assertEquals(
          conversion.landing().performance().spans(), Performance.of(read(converted)).spans());
    }
    assertTrue(seen > 500, "repairs were written: " + seen);
  }

  private static final String ENDINGS =
      """
      tala adi
      Fall = takita tom
      Close = takadimi takita
      Song = takadimi (Fall {not last: , ;}) x3   # thrice
             takita
      perform
        Song x3 nadai 4 last Close # the end
      """;

  private static String endings(Edit edit) {
    String changed = ScoreEditor.apply(ENDINGS, List.of(edit), LEXICON);
    assertEquals(edit.appliedTo(read(ENDINGS)), read(changed), changed);
    return changed;
  }

  @Test
  void endingsOfSomeTimesStayWhereTheChangeIsElsewhere() {
    assertEquals(
        ENDINGS.replace("tala adi\n", "tala adi\nstart beat 3\n"),
        endings(new Edit.Start(Ratio.of(2))));
    assertEquals(
        ENDINGS.replace("takadimi (Fall", "7 takadimi (Fall"),
        endings(new Edit.Splice("Song", 0, 0, List.of(group(7, 0)))));
    assertEquals(
        ENDINGS.replace("       takita\n", "       7\n"),
        endings(new Edit.Splice("Song", 3, 4, List.of(group(7, 0)))));
    assertEquals(
        ENDINGS.replace("       takita\n", "       7 takita\n"),
        endings(new Edit.Splice("Song", 3, 3, List.of(group(7, 0)))));
    assertEquals(
        ENDINGS.replace("(Fall {not last: , ;}) x3", "(Fall , ;) x2 7"),
        endings(new Edit.Splice("Song", 2, 3, List.of(group(7, 0)))));
  }

  @Test
  void aLastRoundOfItsOwnStaysWhereItCan() {
    Step.Say first = new Step.Say("Song", 2, 5, 1);
    Step.Say last = new Step.Say("Close", 1, 5, 1);
    assertEquals(
        ENDINGS.replace("nadai 4 last", "nadai 5 last"),
        endings(new Edit.Plan(List.of(first, last))));
    Step rest = new Step.RestBeats(Ratio.of(2));
    Step.Say asItWas = new Step.Say("Close", 1, 4, 1);
    assertEquals(
        ENDINGS.replace("the end\n", "the end\n  rest 2 beats\n"),
        endings(new Edit.Plan(List.of(say(2, 4), asItWas, rest))));
    assertEquals(
        ENDINGS.replace("perform\n", "perform\n  rest 2 beats\n"),
        endings(new Edit.Plan(List.of(rest, say(2, 4), asItWas))));
    assertEquals(
        ENDINGS
            .replace("Song x3 nadai 4 last Close", "Song x2 nadai 4")
            .replace("the end\n", "the end\n  rest 2 beats\n  Close nadai 4\n"),
        endings(new Edit.Plan(List.of(say(2, 4), rest, asItWas))));
    assertEquals(
        ENDINGS
            .replace("Song x3 nadai 4 last Close", "Song x2 nadai 4")
            .replace("the end\n", "the end\n  Close nadai 5\n"),
        endings(new Edit.Plan(List.of(say(2, 4), last))));
  }

  @Test
  void repairsOfAScoreWithEndingsLandAndKeepWhatTheyDoNotTouch() {
    Composition piece = read(ENDINGS);
    List<Repair> repairs = Repairs.of(piece, LEXICON, List.copyOf(TalaReader.names().values()));
    int kept = 0;
    for (Repair repair : repairs) {
      String changed = ScoreEditor.apply(ENDINGS, repair.edits(), LEXICON);
      assertEquals(
          repair.performance().spans(), Performance.of(read(changed)).spans(), repair.words());
      kept += changed.contains("{not last: , ;}") ? 1 : 0;
    }
    assertTrue(repairs.size() > 5 && kept > repairs.size() / 2, kept + " of " + repairs.size());
  }

  private static long linesGone(String before, String after) {
    List<String> left = new ArrayList<>(after.lines().toList());
    return before.lines().filter(line -> !left.remove(line)).count();
  }

  private static String text(Random random) {
    String[] words = {
      "takita", "takadimi", "takatakita", "tadiginatom", "taka", "takita,", "7", "ta;"
    };
    String[] endings = {"5(2)5(2)5", "9(1)9(1)9", "takita ; takita ; takita", "(takadimi) x3"};
    StringBuilder text = new StringBuilder("# no. " + random.nextInt(99) + "\ntala  adi\n");
    if (random.nextBoolean()) {
      text.append("start\t+").append(random.nextInt(7)).append("/4 # late\n");
    }
    text.append("\nDrip =");
    int count = 2 + random.nextInt(4);
    for (int i = 0; i < count; i++) {
      text.append(" ".repeat(1 + random.nextInt(3))).append(words[random.nextInt(words.length)]);
      text.append(i == 1 ? "   # a turn\n    " : "");
    }
    text.append(" .\nSong= Drip  ")
        .append(endings[random.nextInt(endings.length)])
        .append(" #end\n");
    if (random.nextInt(4) > 0) {
      text.append("perform\n Song  x2   nadai 4 # first\n");
      text.append(random.nextInt(3) == 0 ? "   rest 3 matras nadai 4\n" : "");
      text.append(" Song nadai ").append(3 + random.nextInt(3)).append("  # last");
    }
    return random.nextBoolean() ? text.toString() : text.toString().replace("\n", "\r\n");
  }

  private static String edited(Edit edit) {
    return ScoreEditor.apply(SONG, List.of(edit), LEXICON);
  }

  private static Composition read(String text) {
    Reading reading = ScoreReader.read(text, "test", LEXICON);
    return reading
        .composition()
        .orElseThrow(() -> new AssertionError(reading.format() + "\n" + text));
  }

  private static Step say(int times, int nadai) {
    return new Step.Say("Song", times, nadai, 1);
  }

  private static Element group(int size, int karvai) {
    return Wording.USUAL.group(size, 1, karvai, LEXICON);
  }
}
