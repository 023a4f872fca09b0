package org.matraloom.film;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.matraloom.script.Script;
import org.matraloom.sheet.Sheets;

/** Chapters and subtitles, worked out by hand. */
class FilmTextsTest {

  /** 72 beats a minute: a card of 4 s, 8 beats counted in, 4 to the start, then 10, 10 and 8. */
  @Test
  void chaptersBeginWhereRoundsDo() {
    FilmOrder order =
        Films.order(FilmSize.WIDE, 30, Films.pass(Sheets.sample("culvert"), Script.LATIN, ""));
    List<FilmTexts.Chapter> chapters = new FilmTexts(new FilmPlan(order)).chapters();
    assertEquals(
        List.of(0L, 672_000L, 1_072_000L, 1_472_000L),
        chapters.stream().map(FilmTexts.Chapter::frame).toList());
    assertEquals("Title", chapters.get(0).name());
    assertEquals("Round 3 of 3 · Song · khanda nadai (5)", chapters.get(3).name());
  }

  @Test
  void namesAreWrittenSoThatTheyAreReadBack() {
    String score =
        "title A\ntala adi\ntempo 60\nSong = (takadimi takajunu) x4\nperform\n"
            + "  part One; two = three #4\n  Song nadai 4\n";
    FilmOrder order =
        Films.order(FilmSize.WIDE, 30, Films.pass(Sheets.score(score), Script.LATIN, ""));
    String file = new FilmTexts(new FilmPlan(order)).chapterFile();
    assertTrue(file.startsWith(";FFMETADATA1\n[CHAPTER]\nTIMEBASE=1/48000\nSTART=0\n"), file);
    assertTrue(file.contains("title=One\\; two \\= three"), file);
  }

  @Test
  void subtitlesHoldTheSollusBeatByBeatAndNoneWhereTheyAreHidden() {
    FilmPass shown = Films.pass(Sheets.sample("monsoon-ledger"), Script.LATIN, "");
    FilmPass hidden =
        new FilmPass(shown.timeline(), shown.sheet(), shown.mix(), "from memory", true);
    String once = new FilmTexts(new FilmPlan(Films.order(FilmSize.WIDE, 30, shown))).subtitleFile();
    assertTrue(
        once.startsWith(
            "WEBVTT\n\n00:00:12.000 --> 00:00:16.000\n"
                + "ta ka ju nu | tom , , , | ta ka ju nu | ta ka tom ,\n"),
        once.substring(0, 120));
    String twice =
        new FilmTexts(new FilmPlan(Films.order(FilmSize.WIDE, 30, shown, hidden))).subtitleFile();
    assertEquals(once, twice);
    assertFalse(once.isEmpty());
  }
}
