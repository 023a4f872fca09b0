package org.matraloom.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.matraloom.notation.RandomScores;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Performance;
import org.matraloom.script.Script;
import org.matraloom.script.SolluWriting;
import org.matraloom.sheet.Sheets;

/** Captions against the rules of WebVTT (w3c/webvtt, sections 4.1 and 6.3). */
class CaptionsTest {

  private static final SolluWriting WRITING = new SolluWriting(Script.LATIN, Sheets.LEXICON);
  private static final Pattern TIMES =
      Pattern.compile(
          "(\\d{2,}):([0-5]\\d):([0-5]\\d)\\.(\\d{3}) --> (\\d{2,}):([0-5]\\d):([0-5]\\d)\\.(\\d{3})");

  @Test
  void aPhraseIsACaptionWithATimeForEachSollu() throws IOException {
    Timeline timeline = ScoreTimeline.of(Performance.of(Sheets.sample("gutter-song")), 1);
    String text = phrases(timeline);
    assertTrue(
        text.startsWith(
            """
            WEBVTT

            Round 1 Drip
            00:00:05.455 --> 00:00:06.818
            ta <00:00:05.682>ki <00:00:05.909>ta <00:00:06.136>tom
            """),
        text);
  }

  @Test
  void everyFileKeepsTheRules() throws IOException {
    RandomScores scores = new RandomScores(21);
    int cues = 0;
    for (int count = 0; count < 60; count++) {
      Timeline timeline = ScoreTimeline.of(Performance.of(scores.composition()), 1);
      for (String text : List.of(phrases(timeline), sollus(timeline))) {
        cues += check(text);
      }
      assertEquals(said(timeline), check(sollus(timeline)), "one caption a sollu");
    }
    assertTrue(cues > 1_000, "captions were checked: " + cues);
  }

  private static int said(Timeline timeline) {
    int said = 0;
    for (Event event : timeline) {
      said += event instanceof Event.SolluSaid ? 1 : 0;
    }
    return said;
  }

  private static int check(String text) {
    List<String> blocks = new ArrayList<>(List.of(text.split("\n\n")));
    assertEquals("WEBVTT", blocks.remove(0).strip());
    long previous = 0;
    for (String block : blocks) {
      String[] lines = block.strip().split("\n");
      assertEquals(3, lines.length, block);
      assertFalse(lines[0].contains("-->"), block);
      Matcher times = TIMES.matcher(lines[1]);
      assertTrue(times.matches(), block);
      long start = ms(times, 1);
      long end = ms(times, 5);
      assertTrue(start >= previous, "starts never go back: " + block);
      assertTrue(end > start, "ends after it starts: " + block);
      assertFalse(lines[2].contains("-->"), block);
      previous = start;
    }
    return blocks.size();
  }

  private static long ms(Matcher times, int group) {
    return ((Long.parseLong(times.group(group)) * 60 + Long.parseLong(times.group(group + 1))) * 60
                + Long.parseLong(times.group(group + 2)))
            * 1000
        + Long.parseLong(times.group(group + 3));
  }

  @Test
  void hoursAreWritten() {
    assertEquals("100:00:00.000", Captions.stamp(360_000_000));
    assertEquals("00:01:02.003", Captions.stamp(62_003));
  }

  private static String phrases(Timeline timeline) throws IOException {
    StringBuilder text = new StringBuilder();
    Captions.ofPhrases(timeline, WRITING, text);
    return text.toString();
  }

  private static String sollus(Timeline timeline) throws IOException {
    StringBuilder text = new StringBuilder();
    Captions.ofSollus(timeline, WRITING, text);
    return text.toString();
  }
}
