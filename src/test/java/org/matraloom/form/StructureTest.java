package org.matraloom.form;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.matraloom.kanakku.Cycles;
import org.matraloom.kanakku.Pieces;
import org.matraloom.score.Composition;
import org.matraloom.score.Element;
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
        structure.purvanga().stream().map(l -> l.text()).toList());
    assertEquals(Yati.SROTOVAHA, structure.yati());
    assertEquals("equal steps of 3", structure.steps().inWords());
    assertEquals(Ratio.of(51), Structure.matras(structure.purvanga()));
    assertEquals(Ratio.of(29), Structure.matras(structure.uttaranga()));
    assertEquals("Tail", structure.uttaranga().get(0).text());
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
    assertEquals("7*4", structure.purvanga().get(0).text());
    assertEquals(List.of(), structure.uttaranga());
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
        structure.purvanga().stream().map(Structure.Line::matras).toList());
    assertEquals(3, structure.uttaranga().size());
    assertEquals(Ratio.of(19), Structure.matras(structure.uttaranga()));
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
    assertEquals(2, structure.purvanga().get(0).times());
    assertEquals(Ratio.of(12), structure.purvanga().get(0).matras());
    assertEquals(Ratio.of(27), Structure.matras(structure.uttaranga()));
    assertEquals(Ratio.of(57), Structure.matras(structure.purvanga()).plus(Ratio.of(27)));
  }

  @Test
  void growingKanakkuGroupsAreAnEnding() {
    Sequence song =
        Sequence.of(Pieces.word(8), Pieces.group(3, 1), Pieces.group(4, 1), Pieces.group(5, 0));
    Structure structure = structure(Map.of("Song", song));
    assertEquals(Ratio.of(14), Structure.matras(structure.uttaranga()));
    assertEquals(1, structure.purvanga().size());
  }

  @Test
  void aPassageWithItsOwnNadaiIsCountedInThatOfTheRound() {
    Sequence song =
        Sequence.of(Pieces.word(4), new Element.InnerNadai(5, Pieces.words(10)), Pieces.word(3));
    Structure structure = structure(Map.of("Song", song));
    assertEquals(
        List.of(Ratio.of(4), Ratio.of(8), Ratio.of(3)),
        structure.purvanga().stream().map(Structure.Line::matras).toList());
    assertEquals(Yati.MRIDANGA, structure.yati());
  }

  private static Structure structure(Map<String, Sequence> phrases) {
    Composition piece = Pieces.of(Cycles.ADI, phrases, List.of(new Step.Say("Song", 1, 4, 1)));
    return Structure.of(piece, "Song", 4);
  }
}
