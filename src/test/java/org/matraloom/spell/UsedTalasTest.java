package org.matraloom.spell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.matraloom.notation.Reading;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.FingerCustom;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Tala;

/** Talas as they are shown today, and talas with kriyas of their own. */
class UsedTalasTest {

  private static Composition score(String head) {
    Reading reading =
        ScoreReader.read("tala " + head + "\nSong = takadimi\n", "t", Lexicon.standard());
    return reading.composition().orElseThrow(() -> new AssertionError(reading.format()));
  }

  private static String hand(String tala, int kalai) {
    Tala read = TalaReader.read(tala).tala().orElseThrow();
    Avartana avartana = Avartana.of(read, kalai, FingerCustom.RESTART);
    List<String> kriyas = new ArrayList<>();
    for (int beat = 0; beat < avartana.beats(); beat++) {
      String again = avartana.repeatsKriya(beat) ? " again" : "";
      kriyas.add(avartana.kriyaAt(beat).words() + again);
    }
    return String.join(", ", kriyas);
  }

  /**
   * Rupaka: lvnaga.wordpress.com 2014/08 and ajsriram.blogspot.com 2004/01; khanda chapu in three
   * beats 2:1:2: ajsriram; misra chapu turned: from memory.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "rupaka in three; clap, clap, wave",
        "rupaka 3; clap, clap, wave",
        "Rupakam 3; clap, clap, wave",
        "khanda chapu 1 3 4; clap, hold, clap, clap, hold",
        "khanda chapu 1 3; clap, hold, clap, hold, hold",
        "chapu 1,4,6; clap, hold, hold, clap, hold, clap, hold",
        "misra chapu turned; wave, wave, hold, clap, hold, clap, hold",
        "Ferry: clap clap wave | clap little; clap, clap, wave, clap, little finger",
        "clap hold | WAVE; clap, hold, wave"
      })
  void theHandIsAsItIsShown(String tala, String kriyas) {
    assertEquals(kriyas, hand(tala, 1));
  }

  /** Common practice: in two kalai a chapu clap is given once, a suladi kriya twice. */
  @Test
  void inTwoKalaiAChapuTalaClapsOnce() {
    assertEquals("clap, hold, hold, hold, clap, hold, hold, hold, hold, hold", hand("2+3", 2));
    assertEquals("clap, clap again, clap, clap again, wave, wave again", hand("rupaka 3", 2));
  }

  /** Desadi: ajsriram.blogspot.com, 3/8 of the laghu; madhyadi: from memory. */
  @Test
  void desadiAndMadhyadiAreAdiWithAPlaceForTheSong() {
    assertEquals(hand("adi", 1), hand("desadi", 1));
    assertEquals("3/2", score("desadi").eduppuBeat().toString());
    assertEquals("3", score("desadi\nkalai 2").eduppuBeat().toString());
    assertEquals("1/2", score("madhyadi").eduppuBeat().toString());
    assertEquals("0", score("desadi\neduppu sam").eduppuBeat().toString());
    assertEquals("0", score("adi").eduppuBeat().toString());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "rupaka in three",
        "khanda chapu 1 3 4",
        "misra chapu turned",
        "desadi",
        "madhyadi",
        "Ferry: clap clap wave | clap little",
        "clap thumb | hold",
        "sankirna chapu 1 5 7"
      })
  void whatIsPrintedReadsTheSame(String tala) {
    Composition piece = score(tala);
    Composition again =
        ScoreReader.read(ScorePrinter.print(piece), "t", Lexicon.standard())
            .composition()
            .orElseThrow();
    assertEquals(piece, again);
  }

  @Test
  void barsAreCheckedAgainstAngasOfOnesOwn() {
    Tala ferry = TalaReader.read("Ferry: clap clap wave | clap little").tala().orElseThrow();
    assertEquals(List.of(0, 3), Avartana.of(ferry, 1, FingerCustom.RESTART).angaStarts());
    assertEquals("Ferry", ferry.name());
  }

  @Test
  void whatIsWrongIsSaid() {
    assertEquals(
        "no kriya is called \"clop\"",
        TalaReader.read("clap clop").fault().orElseThrow().message());
    assertTrue(TalaReader.read("clap | | wave").tala().isEmpty());
    assertTrue(TalaReader.read("khanda chapu 2 3").tala().isEmpty());
    assertTrue(TalaReader.read("khanda chapu 1 9").tala().isEmpty());
  }
}
