package org.matraloom.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.time.Ratio;

/** Joints by what is said, in whatever way it is written. */
class JointsTest {

  @Test
  void linesSectionsStatementsAndPhrases() {
    String korvai =
        """
        Drip = takita tom , ,
        Fall = takita tadiginatom
        Part = Drip Fall
        Song = Drip Part Drip  Fall , ; Fall , ; Fall
        """;
    assertEquals(
        List.of(
            "6 section", "12 phrase", "20 section", "26 section", "37 statement", "48 statement"),
        joints(korvai));
  }

  /** Written as words, as names, as groups, as a repeat, the gaps of a mora are its gaps. */
  @Test
  void aMoraHoweverItIsWritten() {
    List<String> gaps = List.of("9 statement", "18 statement");
    assertEquals(gaps, joints("Song = tadiginatom ; ; tadiginatom ; ; tadiginatom\n"));
    assertEquals(gaps, joints("S = tadiginatom\nSong = S ; ; S ; ; S\n"));
    assertEquals(gaps, joints("Song = 5(4)5(4)5\n"));
    assertEquals(gaps, joints("Song = (tadiginatom ; ;) x2 tadiginatom\n"));
    assertEquals(gaps, joints("Song = tadiginatom , . , . tadiginatom , . , . tadiginatom\n"));
    Mora mora = of("Song = 5(4)5(4)5\n").moras().get(0);
    assertEquals(List.of(Ratio.of(5), Ratio.of(5), Ratio.of(5)), mora.statements());
    assertEquals(Ratio.of(4), mora.gap());
    assertTrue(mora.isEqual());
  }

  /** Three moras of three: the inner gaps are statements, what lies between them is a section. */
  @Test
  void morasOfMoras() {
    String score = "Weir = 5(2)5(2)5\nSong = takadimi dhim ; , Weir ; ; Weir ; ; Weir\n";
    assertEquals(
        List.of(
            "8 section",
            "15 statement",
            "22 statement",
            "31 section",
            "38 statement",
            "45 statement",
            "54 section",
            "61 statement",
            "68 statement"),
        joints(score));
    List<Mora> moras = of(score).moras();
    assertEquals(4, moras.size());
    assertEquals(List.of(Ratio.of(19), Ratio.of(19), Ratio.of(19)), moras.get(0).statements());
    assertEquals(5, of(score).lastMora().orElseThrow().start(), "the whole of it");
    assertEquals(
        9,
        of("Song = 5(2)5(2)5(2) 5(2)5(2)5(2) 5(2)5(2)5\n").moras().get(0).statements().size(),
        "equal gaps all through are one mora");
  }

  @Test
  void morasThatGrowAndShrink() {
    assertEquals(List.of("7 statement", "15 statement"), joints("Song = 5(2)6(2)7\n"));
    assertEquals(List.of("9 statement", "17 statement"), joints("Song = 7(2)6(2)5\n"));
    assertEquals(
        List.of("5 statement", "11 statement"), joints("Song = takita ; takadimi ; takatakita\n"));
    assertFalse(of("Song = 5(2)6(2)7\n").moras().get(0).isEqual());
    assertTrue(of("Song = 5(2)6(2)8\n").moras().isEmpty(), "steps of 1 and 2");
    assertTrue(
        of("A = takita tom ,\nB = takadimi tom ,\nC = takatakita tom ,\nSong = A B C\n")
            .moras()
            .isEmpty(),
        "lines that grow, each with its karvai, are a purvanga");
  }

  /** Three moras that grow are one: 19(2)22(2)25. */
  @Test
  void growingMorasAreOne() {
    Joints joints = of("words plain\nSong = takadimi tom , 5(2)5(2)5(2) 6(2)6(2)6(2) 7(2)7(2)7\n");
    assertEquals("19(2)22(2)25", joints.lastMora().orElseThrow().written());
    assertEquals(5, joints.lastMora().orElseThrow().start(), "the whole of it");
    assertEquals(4, joints.moras().size());
    assertEquals(
        3,
        of("words plain\nSong = 5(2)5(2)5(2) 6(2)6(2)6(2) 8(2)8(2)8\n").moras().size(),
        "steps of 3 and 6 matras");
  }

  /** A mora in the middle, and one inside a line. */
  @Test
  void morasAnywhere() {
    String middle = "Song = takadimi tom , 5(2)5(2)5 , , takadimi takajunu\n";
    assertEquals(
        List.of("6 section", "13 statement", "20 statement", "27 section"), joints(middle));
    String inside = "Plank = taki , taki , taki , tom , ,\nSong = Plank takadimi Plank\n";
    assertEquals(2, of(inside).moras().size());
  }

  /** Closing sollus rest inside a phrase; others do not, and not one that begins a phrase. */
  @Test
  void longSoundsInsideAPhrase() {
    assertEquals(
        List.of("7 pause", "14 pause"), joints("Song = takadimi dhim ; takita tom , , , takita\n"));
    assertEquals(List.of(), joints("Song = ta , di , gi , na tom\n"));
    assertEquals(List.of(), joints("Song = dhim ; takita takadimi\n"));
    assertEquals(List.of("6 pause"), joints("Song = takadimi . . takita\n"));
    assertEquals(List.of(), joints("Song = takadimi . takita\n"));
    assertEquals(List.of("6 pause"), joints("Song = takadimi ; takita , taka ; takadimi\n"));
  }

  @Test
  void equalPlacesHaveOneNumber() {
    Joints joints = of("Reed = taka , dimi tom ,\nSong = Reed takita Reed takadimi Reed\n");
    assertEquals(joints.place(1), joints.place(9), "after the ka of each");
    assertEquals(joints.place(4), joints.place(12), "after each");
    assertNotEquals(joints.place(1), joints.place(4));
    Joints mora = of("Song = takadimi tom , 5(2)5(2)5\n");
    assertEquals(mora.place(9), mora.place(14), "the gaps of a mora");
  }

  private static Joints of(String phrases) {
    Composition piece =
        ScoreReader.read("tala adi\ntempo 60\n" + phrases, "", Lexicon.standard())
            .composition()
            .orElseThrow();
    return Joints.of(piece, "Song", 4);
  }

  private static List<String> joints(String phrases) {
    Joints joints = of(phrases);
    List<String> all = new ArrayList<>();
    for (int sollu = 0; sollu + 1 < joints.sollus(); sollu++) {
      if (joints.after(sollu) != Joint.INSIDE) {
        all.add(joints.matrasAfter(sollu).toMixed() + " " + joints.after(sollu).word());
      }
    }
    return all;
  }
}
