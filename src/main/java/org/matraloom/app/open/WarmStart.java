package org.matraloom.app.open;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.matraloom.app.cli.Program;
import org.matraloom.door.DoorRequest;

/**
 * Does for nobody what will be asked for: while the browser starts, the shelf, a sample read and
 * played; while a first take is recorded, the measure of a take. The first run of that code takes
 * several times as long as the next.
 */
final class WarmStart {

  private static final String PIECE = "gutter-song.loom";
  private static final int TIMES = 200;

  private static final int TAKES = 2;

  private WarmStart() {}

  static void begin(OpenDesk desk) {
    aside(
        () -> {
          new ShelfAnswers(desk).list();
          readAndPlay(desk);
        });
  }

  static void beginTakes(Program program) {
    aside(() -> measure(program));
  }

  /** Work that reads the program's own files. */
  private interface Work {
    void run() throws IOException;
  }

  private static void aside(Work work) {
    Thread thread =
        new Thread(
            () -> {
              try {
                work.run();
              } catch (IOException unreadable) {
                // the page will say what is wrong with the program's own files
              }
            },
            "matraloom-warm-start");
    thread.setDaemon(true);
    thread.setPriority(Thread.MIN_PRIORITY);
    thread.start();
  }

  private static void readAndPlay(OpenDesk desk) throws IOException {
    ReadingAnswers reading = new ReadingAnswers(desk.lexicon());
    PlayAnswers playing = new PlayAnswers(desk.lexicon(), desk.voice());
    DoorRequest text = request(json -> json.writeStringField("text", Samples.text(PIECE)));
    playing.begin(text);
    DoorRequest frames =
        request(
            json -> {
              json.writeNumberField("id", 1);
              json.writeNumberField("frames", 48_000);
            });
    for (int time = 0; time < TIMES; time++) {
      reading.read(text);
      playing.next(frames);
    }
  }

  /** Measures the program's own voice. */
  private static void measure(Program program) throws IOException {
    Path score = Files.createTempFile("warm-start", ".loom");
    Path take = Files.createTempFile("warm-start", ".wav");
    // Somebody may end the program meanwhile.
    score.toFile().deleteOnExit();
    take.toFile().deleteOnExit();
    try {
      Files.writeString(score, Samples.text(PIECE));
      run(program, "render", score.toString(), "-o", take.toString(), "--only", "voice");
      for (int time = 0; time < TAKES; time++) {
        run(program, "take", score.toString(), take.toString(), "--json", "--no-log");
      }
    } finally {
      Files.deleteIfExists(score);
      Files.deleteIfExists(take);
    }
  }

  private static void run(Program program, String... words) {
    PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
    program.runAlso(nowhere, nowhere, words);
  }

  private static DoorRequest request(JsonReply.Fields fields) throws IOException {
    return new DoorRequest("/", Map.of(), JsonReply.of(fields).body());
  }
}
