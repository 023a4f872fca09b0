package org.matraloom.form;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.matraloom.kanakku.Cycles;
import org.matraloom.kanakku.Pieces;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Composition;
import org.matraloom.score.Element;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.Sequence;
import org.matraloom.score.Step;
import org.matraloom.time.Ratio;

class StructureTest {

  @Test
  void namedLinesAndAKanakkuEnding() {
    Map<String, Sequence> phrases = new LinkedHashMap<>();
    phrases.put("Drip", Pieces.words(14));
    phrases.put("Rain", Pieces.words(17));
    phrases.put("Flood", Pieces.words(20));
    phrases.put("Tail", Sequence.of(Pieces.group(9, 1), Pieces.group(9, 1), Pieces.group(9, 0)));
    phrases.put(
        "Song",
        Sequence.of(
            new Element.Reference("Drip"),
            new Element.Reference("Rain"),
            new Element.Reference("Flood"),
            new Element.Reference("Tail")));
    Structure structure = structure(phrases);
    assertEquals(
        List.of("Drip", "Rain", "Flood"),
        lines(structure.purvanga()).stream().map(l -> l.text()).toList());
    assertEquals(Yati.SROTOVAHA, structure.yati());
    assertEquals("equal steps of 3", structure.steps().inWords());
    assertEquals(Ratio.of(51), Structure.matras(structure.purvanga()));
    assertEquals(Ratio.of(29), Structure.matras(structure.uttaranga().stream().toList()));
    assertEquals("Tail", lines(structure.uttaranga().stream().toList()).get(0).text());
  }

  /** The cow's tail 28 21 14 7, each line of sevens (yogeswaran.in, lesson 000013-2). */
  @Test
  void repeatsOfDifferentLengths() {
    Structure structure =
        structure(
            Map.of(
                "Song",
                Sequence.of(
                    Pieces.held(7, 4), Pieces.held(7, 3), Pieces.held(7, 2), Pieces.held(7, 1))));
    assertEquals(Yati.GOPUCCHA, structure.yati());
    assertEquals("equal steps of 7", structure.steps().inWords());
    assertEquals("7*4", lines(structure.purvanga()).get(0).text());
    assertEquals(Optional.empty(), structure.uttaranga());
    assertEquals(Ratio.of(70), Structure.matras(structure.purvanga()));
  }

  @Test
  void wordsBreakIntoLinesAfterAKarvai() {
    Sequence song =
        Sequence.of(
            Pieces.word(4),
            new Element.Karvai(1),
            Pieces.word(4),
            Pieces.word(3),
            new Element.Karvai(2),
            new Element.Bar(false, new org.matraloom.score.Place(1, 1)),
            Pieces.word(5),
            new Element.Karvai(2),
            Pieces.word(5),
            new Element.Karvai(2),
            Pieces.word(5));
    Structure structure = structure(Map.of("Song", song));
    assertEquals(
        List.of(Ratio.of(5), Ratio.of(9)),
        lines(structure.purvanga()).stream().map(Structure.Line::matras).toList());
    assertEquals(3, structure.uttaranga().orElseThrow().lines().size());
    assertEquals(Ratio.of(19), Structure.matras(structure.uttaranga().stream().toList()));
    assertEquals(Yati.NONE, structure.yati());
  }

  @Test
  void aRepeatCountsAsEqualLines() {
    Sequence song =
        Sequence.of(
            new Element.Repeat(Pieces.words(6), 2),
            new Element.Repeat(Pieces.words(5), 2),
            new Element.Repeat(Pieces.words(4), 2),
            new Element.Repeat(Pieces.words(9), 3));
    Structure structure = structure(Map.of("Song", song));
    assertEquals(Yati.GOPUCCHA, structure.yati());
    assertEquals(2, lines(structure.purvanga()).get(0).times());
    assertEquals(Ratio.of(12), lines(structure.purvanga()).get(0).matras());
    assertEquals(Ratio.of(27), Structure.matras(structure.uttaranga().stream().toList()));
    assertEquals(Ratio.of(57), Structure.matras(structure.purvanga()).plus(Ratio.of(27)));
  }

  @Test
  void growingKanakkuGroupsAreAnEnding() {
    Sequence song =
        Sequence.of(Pieces.word(8), Pieces.group(3, 1), Pieces.group(4, 1), Pieces.group(5, 0));
    Structure structure = structure(Map.of("Song", song));
    assertEquals(Ratio.of(14), Structure.matras(structure.uttaranga().stream().toList()));
    assertEquals(1, lines(structure.purvanga()).size());
  }

  @Test
  void aPassageWithItsOwnNadaiIsCountedInThatOfTheRound() {
    Sequence song =
        Sequence.of(Pieces.word(4), new Element.InnerNadai(5, Pieces.words(10)), Pieces.word(3));
    Structure structure = structure(Map.of("Song", song));
    assertEquals(
        List.of(Ratio.of(4), Ratio.of(8), Ratio.of(3)),
        lines(structure.purvanga()).stream().map(Structure.Line::matras).toList());
    assertEquals(Yati.MRIDANGA, structure.yati());
  }

  /** Each piece as it is written, and its parts: what they are called and how long they are. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Song = 8 10 12 10(4)10(4)10 ; 10(4)10(4)10 ; 10(4)10(4)10 | lines 30, mora of moras 118!",
        "Mora = 10(4)10(4)10;Song = 8 10 12 Mora ,; Mora ,; Mora | lines 30, mora of moras 120!",
        "Mora = 10(4)10(4)10;Song = 8 10 12 (Mora ; ,) x2 Mora | lines 30, mora of moras 120!",
        "Song = 8 10 12 (5(1)5(1)5 ,) x3 | lines 30, mora of moras 54!",
        "Song = 8 5(2)5(2)5(2) 6(2)6(2)6(2) 7(2)7(2)7 | lines 8, mora of moras 70!",
        "Song = 8 10 5(2)5(2)5 12 14 7(1)7(1)7 | lines 18, mora 19, lines 26, mora 23!",
        "Mora = 5(2)5(2)5;Song = 8 10 Mora 12 14 7(1)8(1)9 | lines 18, mora 19, lines 26, mora 26!",
        "Song = 8 10 Rain ; Rain ; Rain 12 9;Rain = takita taka | lines 18, mora 19, lines 21",
        "Song = 8 8 8 6 6 6 4 4 4 4 | lines 58",
        "Rain = 8;Song = Rain x3 6 6 6 7(2)7(2)7(2)7 | lines 76",
        "Song = takadimi taka ; takadimi taka ; takadimi taka | mora 22!",
        "A = takadimi ,;B = takita ;;Song = 8 9 11 A B , A B , A B | lines 28, mora 32!",
        "Song = 8 (takadimi taka) x3 | lines 8, mora 18!",
        "Tail = (takadimi taka) x3;Song = 8 Tail | lines 8, mora 18!",
        "Song = 8 (takadimi taka) x3 8 | lines 34",
        "A = takita;B = takadimi;C = takatakita;Song = A , B , C 9(1)9(1)9 | lines 14, mora 29!",
        "Song = 3(1)4(1)5 10 12 9(1)9(1)9 | mora 14, lines 22, mora 29!",
        "Song = 8 (takita ,) x6 | lines 32",
        "Song = takadimi takita takita ta , takadimitakajonu takadimi ta , 9(1)9(1)9"
            + " | lines 26, mora 29!"
      })
  void partsAreFound(String written, String parts) {
    String score =
        "tala adi\n" + written.replaceAll(";(?=[A-Z])", "\n") + "\nperform\n  Song nadai 4\n";
    Composition piece = ScoreReader.read(score, "", Lexicon.standard()).composition().orElseThrow();
    Structure structure = Structure.of(piece, "Song", 4);
    assertEquals(
        parts,
        structure.parts().stream()
            .map(
                part ->
                    (part.isMora() ? part.mora() : "lines")
                        + " "
                        + Structure.matras(List.of(part)).toMixed()
                        + (part.ends() ? "!" : ""))
            .collect(Collectors.joining(", ")));
    assertEquals(
        Performance.of(piece).rounds().get(0).matras(), Structure.matras(structure.parts()));
  }

  /**
   * A single sollu that rings between long lines is no line of the shape; at the end of a tail it
   * is.
   */
  @Test
  void aLinkIsNoLine() {
    Sequence linked =
        Sequence.of(
            Pieces.word(8),
            Pieces.word(1),
            new Element.Karvai(1),
            Pieces.group(12, 0),
            Pieces.group(14, 0));
    assertEquals(
        List.of(Ratio.of(10), Ratio.of(12), Ratio.of(14)),
        lines(structure(Map.of("Song", linked)).purvanga()).stream()
            .map(Structure.Line::matras)
            .toList());
    Sequence tail =
        Sequence.of(
            Pieces.word(5),
            new Element.Karvai(1),
            Pieces.word(3),
            new Element.Karvai(1),
            Pieces.word(1),
            new Element.Karvai(1));
    Structure structure = structure(Map.of("Song", tail));
    assertEquals(Yati.GOPUCCHA, structure.yati());
    assertEquals("equal steps of 2", structure.steps().inWords());
  }

  private static List<Structure.Line> lines(List<Structure.Part> parts) {
    return parts.stream().flatMap(part -> part.lines().stream()).toList();
  }

  private static Structure structure(Map<String, Sequence> phrases) {
    Composition piece = Pieces.of(Cycles.ADI, phrases, List.of(new Step.Say("Song", 1, 4, 1)));
    return Structure.of(piece, "Song", 4);
  }
}
