package org.matraloom.film;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.matraloom.film.FilmPen.Stylus;
import org.matraloom.picture.Typeface;
import org.matraloom.score.Performance;
import org.matraloom.script.Script;
import org.matraloom.sheet.Sheets;

/** The name of a coming nadai is written whole beside its figures, in every script. */
class ChangeWordsTest {

  private static final Color INK = Color.BLACK;

  @ParameterizedTest
  @EnumSource(Script.class)
  void theNameOfANadaiIsNeverCut(Script script) {
    FilmPen pen = new FilmPen((shape, color) -> {}, new Typeface(), FilmLook.LIGHT);
    int seen = 0;
    for (int nadai : new int[] {3, 4, 5, 7, 9}) {
      String score =
          "tala adi\nSong = takadimi\nperform\n  Song nadai 4 kalam 2\n  Song nadai "
              + nadai
              + " kalam 2\n";
      FilmPass pass = Films.pass(Sheets.score(score), script, "");
      Performance performance = pass.timeline().performance();
      String words = new PassWords(pass).nadai(performance.rounds().get(1));
      assertTrue(words.contains("kalam"), words);
      for (FilmSize size : FilmSize.values()) {
        double room = ScreenBands.changeRoom(size, 8, 2 * nadai, pen);
        Stylus usual = new Stylus(44, true, INK);
        assertTrue(
            pen.goesInto(words, room, ScreenBands.NEWS_LINES, pen.fitting(words, room, 3, usual)),
            words + " in " + room + " of " + size);
        seen++;
      }
    }
    assertTrue(seen >= 15, "seen: " + seen);
  }
}
