package org.matraloom.app.open;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.cli.UserError;
import org.matraloom.door.DoorRequest;
import org.matraloom.log.PracticeLog;
import org.matraloom.score.Lexicon;
import org.matraloom.shelf.ScoreFolder;
import org.matraloom.wav.WavReader;

/** A session as the page goes through it, without a browser. */
class PageSessionTest {

  private static final int HEAD_BYTES = 44;
  private static final int MOST_LOOKS = 6000;
  private static final String SCORE =
      "title Rill\ntala adi\ntempo 150\nSong = (takadimi takajunu) x4\nperform\n Song nadai 4\n";

  @TempDir private Path top;
  private PracticeLog log;
  private SessionAnswers sessions;

  @BeforeEach
  void open() throws IOException {
    Path folder = Files.createDirectory(top.resolve("scores"));
    Files.writeString(folder.resolve("rill.loom"), SCORE);
    Files.writeString(folder.resolve("wrong.loom"), "tala adi\nSong = blub\n");
    ScoreFolder scores = new ScoreFolder(folder, top.resolve("kept"), Clock.systemUTC());
    log = new PracticeLog(top.resolve("log.jsonl"));
    OpenDesk desk = new OpenDesk(scores, Lexicon.standard(), log, new NoProgram(), "low");
    sessions =
        new SessionAnswers(
            desk,
            new HandOnAnswers(scores, desk.voice()),
            new PlayAnswers(desk.lexicon(), desk.voice()));
  }

  private static DoorRequest request(String body) {
    return new DoorRequest("/", Map.of(), body.getBytes(UTF_8));
  }

  private String look(int seen) throws IOException {
    return new String(sessions.look(request("{\"seen\":" + seen + "}")).body(), UTF_8);
  }

  private static String field(String json, String name) {
    Matcher found = Pattern.compile("\"" + name + "\":\"?([^\",}]+)").matcher(json);
    assertTrue(found.find(), name + " in " + json);
    return found.group(1);
  }

  /** The state after the one that was seen. */
  private String next(int seen) throws Exception {
    for (int turn = 0; turn < MOST_LOOKS; turn++) {
      String state = look(seen);
      int number = Integer.parseInt(field(state, "number"));
      if (number != seen && number > 0) {
        return state;
      }
      Thread.sleep(10);
    }
    throw new AssertionError("nothing came after " + seen);
  }

  /** Ends the session, and waits until it has written all that it writes. */
  private void end(int seen) throws Exception {
    sessions.end(request("{}"));
    String state = next(seen);
    while (!field(state, "kind").equals("end")) {
      state = next(Integer.parseInt(field(state, "number")));
    }
  }

  private void take(int number, int seconds) throws Exception {
    byte[] silence = new byte[HEAD_BYTES + seconds * 96_000];
    sessions.take(new DoorRequest("/", Map.of("number", Integer.toString(number)), silence));
  }

  private long takes() throws IOException {
    try (Stream<Path> all = Files.walk(top)) {
      return all.filter(path -> path.getFileName().toString().matches("pass-\\d+\\.wav")).count();
    }
  }

  @Test
  void silenceIsToldAndEndsTheSessionAfterThreePasses() throws Exception {
    sessions.begin(request("{\"name\":\"rill.loom\",\"goal\":\"150\",\"onlyTheWhole\":true}"));
    int seen = 0;
    for (int pass = 0; pass < 3; pass++) {
      String playing = next(seen);
      assertEquals("pass", field(playing, "kind"), playing);
      assertTrue(playing.contains("The whole, 120 beats a minute"), playing);
      assertTrue(playing.contains("\"rows\":[{"), "a pass comes with its sheet");
      seen = Integer.parseInt(field(playing, "number"));
      assertFalse(look(seen).contains("\"rows\""), "which is sent once");
      assertTrue(new String(sessions.play(request("{}")).body(), UTF_8).contains("\"id\":"));
      take(seen - 1, 8);
      assertEquals(seen, Integer.parseInt(field(look(seen), "number")), "an old take is none");
      take(seen, 8);
      String told = next(seen);
      assertEquals("told", field(told, "kind"), told);
      assertTrue(told.contains("silent"), told);
      seen = Integer.parseInt(field(told, "number"));
      assertThrows(UserError.class, () -> sessions.play(request("{}")), "nothing to play now");
      sessions.answer(request("{\"number\":" + seen + "}"));
    }
    String end = next(seen);
    assertEquals("end", field(end, "kind"), end);
    assertTrue(end.contains("Three passes running could not be judged"), end);
    assertEquals(3, takes());
    assertEquals(3, log.read().entries().size());
  }

  @Test
  void thePassThatIsCutOffIsNoPass() throws Exception {
    sessions.begin(request("{\"name\":\"rill.loom\",\"minutes\":1,\"onlyTheWhole\":true}"));
    int seen = Integer.parseInt(field(next(0), "number"));
    sessions.end(request("{}"));
    String end = next(seen);
    assertTrue(end.contains("Ended as you asked; the pass that was cut off does not count."), end);
    assertTrue(log.read().entries().isEmpty());
  }

  @Test
  void theTakeTellsWhereItsGuideWas() throws Exception {
    sessions.begin(request("{\"name\":\"rill.loom\",\"onlyTheWhole\":true}"));
    int seen = Integer.parseInt(field(next(0), "number"));
    Map<String, String> query =
        Map.of("number", "" + seen, "guideFrame", "4800", "tripFrames", "960");
    sessions.take(new DoorRequest("/", query, new byte[HEAD_BYTES + 960_000]));
    int told = Integer.parseInt(field(next(seen), "number"));
    try (Stream<Path> all = Files.walk(top)) {
      Path take = all.filter(path -> path.endsWith("pass-01.wav")).findFirst().orElseThrow();
      try (WavReader reader = new WavReader(take)) {
        assertTrue(reader.cues().stream().anyMatch(cue -> cue.label().equals("count-in")));
      }
      String text = Files.readString(take, ISO_8859_1);
      assertTrue(
          Pattern.compile("start frame: +4800;.*round trip frames: +960;").matcher(text).find(),
          "the note in the file");
    }
    end(told);
  }

  @Test
  void blocksOfThePassAreHeardAndThoseOfAnotherAreNot() throws Exception {
    sessions.begin(request("{\"name\":\"rill.loom\",\"onlyTheWhole\":true}"));
    int seen = Integer.parseInt(field(next(0), "number"));
    Map<String, String> query = Map.of("number", "" + seen, "guideFrame", "4800");
    byte[] click = new byte[1920];
    Arrays.fill(click, 960, 1100, (byte) 64);
    for (int block = 0; block < 200; block++) {
      byte[] pcm = block % 20 == 0 ? click : new byte[1920];
      String told = new String(sessions.heard(new DoorRequest("/", query, pcm)).body(), UTF_8);
      assertTrue(told.contains("\"marks\":["), told);
    }
    Map<String, String> late = Map.of("number", "" + (seen - 1), "guideFrame", "4800");
    assertEquals(
        "{\"marks\":[],\"notice\":\"\"}",
        new String(sessions.heard(new DoorRequest("/", late, click)).body(), UTF_8));
    end(seen);
  }

  @Test
  void whatCannotBePractisedIsRefused() {
    for (String sent :
        new String[] {
          "{\"name\":\"wrong.loom\"}",
          "{\"name\":\"rill.loom\",\"goal\":\"9000\"}",
          "{\"name\":\"rill.loom\",\"minutes\":0}",
          "{\"name\":\"none.loom\"}"
        }) {
      assertThrows(UserError.class, () -> sessions.begin(request(sent)), sent);
    }
    assertThrows(UserError.class, () -> look(0), "no session has begun");
    assertEquals(Optional.empty(), new PageSession().playing());
  }
}
