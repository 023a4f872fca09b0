package org.matraloom.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.matraloom.score.Place;

class LexerTest {

  private static List<Token> tokens(String text) {
    return Lexer.tokens(new SourceLine(7, text));
  }

  private static void assertTokens(String expected, String text) {
    assertEquals(
        expected,
        tokens(text).stream()
            .map(token -> (token.tight() ? "~" : "") + token.kind() + token.text())
            .collect(Collectors.joining(" ")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "ta ki ta ! WORDta WORDki WORDta END",
        "takadimi , ; . ! WORDtakadimi COMMA, SEMICOLON; DOT. END",
        "ta,;.|||ta ! WORDta ~COMMA, ~SEMICOLON; ~DOT. ~DOUBLE_BAR|| ~BAR| ~WORDta END",
        "tan-gu ! WORDtan-gu END",
        "tan- gu ! WORDtan ~DASH- WORDgu END",
        "- ta ! DASH- WORDta END",
        "ta – ki ! WORDta DASH– WORDki END",
        "Song x3 ! NAMESong TIMESx ~NUMBER3 END",
        "Song x 3 ! NAMESong TIMESx NUMBER3 END",
        "(ta)×3 ! ROUND_OPEN( ~WORDta ~ROUND_CLOSE) ~TIMES× ~NUMBER3 END",
        "Song_2 X3 ! NAMESong_2 NAMEX3 END",
        "9(1)9 ! NUMBER9 ~ROUND_OPEN( ~NUMBER1 ~ROUND_CLOSE) ~NUMBER9 END",
        "9 (1) ! NUMBER9 ROUND_OPEN( ~NUMBER1 ~ROUND_CLOSE) END",
        "5*6 ! NUMBER5 ~STAR* ~NUMBER6 END",
        "{5: ta} ! CURLY_OPEN{ ~NUMBER5 ~COLON: WORDta ~CURLY_CLOSE} END",
        "[[ta] ] ! SQUARE_OPEN[ ~SQUARE_OPEN[ ~WORDta ~SQUARE_CLOSE] SQUARE_CLOSE] END",
        "Tail = +1/2 ! NAMETail EQUALS= PLUS+ ~NUMBER1 ~SLASH/ ~NUMBER2 END",
        "ta # ki ! WORDta END",
        "# ta ! END",
        "ta2 ! WORDta ~NUMBER2 END",
        "xta ! WORDxta END",
        "giṇa tōm ! WORDgiṇa WORDtōm END",
        "Ōḍai ! NAMEŌḍai END",
        "தகிட ! WORDதகிட END",
        "ta … ! WORDta STRANGE… END",
        "🇮🇳👨‍👩‍👧 ! STRANGE🇮🇳 ~STRANGE👨‍👩‍👧 END",
        "kiTa ! WORDkiTa END"
      })
  void aLineIsCut(String text, String expected) {
    assertTokens(expected, text);
  }

  @Test
  void marksMayBeTypedApart() {
    assertTokens("WORDta\u0304ki\u0323 END", "ta\u0304ki\u0323");
  }

  @Test
  void invisibleCharactersAreSpace() {
    assertTokens("WORDta WORDki END", "\u200eta\u00a0\u200bki\t\ufeff");
  }

  @Test
  void placesCountCharactersAsAReaderDoes() {
    List<Token> tokens = tokens("\ta\u0323\u0304 🇮🇳 ta");
    assertEquals(new Place(7, 2), tokens.get(0).place());
    assertEquals(new Place(7, 4), tokens.get(1).place());
    assertEquals(new Place(7, 6), tokens.get(2).place());
  }

  @Test
  void numbersDoNotOverflow() {
    assertEquals(Integer.MAX_VALUE, tokens("99999999999999999999").get(0).value());
    assertEquals(12, tokens("0012").get(0).value());
  }

  @Test
  void keywordsAreKnownInAnyCase() {
    assertTrue(tokens("Tala").get(0).is("tala"));
    assertFalse(tokens("1").get(0).is("1"));
  }
}
