package org.matraloom.app.open;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.cli.UserError;
import org.matraloom.device.RoundTrips;
import org.matraloom.door.DoorReply;
import org.matraloom.door.DoorRequest;
import org.matraloom.measure.GuideStart;
import org.matraloom.score.Lexicon;
import org.matraloom.shelf.ScoreName;

/** The round trip of a pair of devices, and the place of the guide in a take that knows it. */
class RoundTripAnswersTest {

  private static final int OFFSET = 3_000;
  private static final int DELAY = 1_234;
  private static final String PIECE = "tala adi\nSong = (takadimi) x8\nperform\n Song nadai 4\n";

  @TempDir private Path folder;

  private static String text(DoorReply reply) {
    return new String(reply.body(), StandardCharsets.UTF_8);
  }

  @Test
  void clicksThatComeBackLaterAreMeasuredAndKept() throws Exception {
    RoundTripAnswers answers = new RoundTripAnswers(new RoundTrips(folder.resolve("trips.tsv")));
    byte[] clicks = answers.clicks().body();
    byte[] recorded = new byte[clicks.length + 96_000];
    System.arraycopy(clicks, 0, recorded, 2 * (OFFSET + DELAY), clicks.length);
    Map<String, String> query = Map.of("input", "reed", "offset", Integer.toString(OFFSET));
    String told = text(answers.measure(new DoorRequest("/", query, recorded)));
    assertTrue(told.contains("\"frames\":" + DELAY), told);
    assertEquals(
        told, text(answers.known(new DoorRequest("/", Map.of("input", "reed"), new byte[0]))));
    assertEquals(
        "{}", text(answers.known(new DoorRequest("/", Map.of("input", "pipe"), new byte[0]))));
    UserError silent =
        assertThrows(
            UserError.class,
            () -> answers.measure(new DoorRequest("/", query, new byte[recorded.length])));
    assertTrue(silent.getMessage().contains("nothing was heard"), silent.getMessage());
  }

  /** One avartana of eight beats at 60 is counted in, so beat 0 is 8 s after the guide's start. */
  @Test
  void aTakeSaysWhereItsGuideWas() throws Exception {
    Path file = folder.resolve("take-1.wav");
    Map<String, String> query =
        Map.of("guideFrame", "24000", "tripFrames", "960", "tempo", "6000", "countIn", "1");
    assertTrue(GuidedTake.isOne(query));
    new GuidedTake(Lexicon.standard())
        .write(file, new ScoreName("a.loom"), PIECE, query, new byte[44 + 96_000]);
    GuideStart start = GuideStart.of(file).orElseThrow();
    assertEquals(-8, start.originBeat());
    assertEquals(0.5, start.originSeconds());
    assertEquals(60, start.beatsPerMinute());
    for (String bad : new String[] {"guideFrame", "tripFrames", "tempo", "countIn"}) {
      Map<String, String> wrong = new HashMap<>(query);
      wrong.put(bad, "many");
      assertThrows(
          UserError.class,
          () ->
              new GuidedTake(Lexicon.standard())
                  .write(
                      folder.resolve("b.wav"), new ScoreName("a.loom"), PIECE, wrong, new byte[1]));
    }
  }
}
