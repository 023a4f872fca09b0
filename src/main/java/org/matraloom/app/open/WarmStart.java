package org.matraloom.app.open;

import java.io.IOException;
import java.util.Map;
import org.matraloom.door.DoorRequest;

/**
 * Reads and plays a sample for nobody while the browser starts, for the first run of the code is
 * slow.
 */
final class WarmStart {

  private static final String PIECE = "gutter-song.loom";
  private static final int TIMES = 200;

  private WarmStart() {}

  static void begin(OpenDesk desk) {
    Thread thread = new Thread(() -> run(desk), "matraloom-warm-start");
    thread.setDaemon(true);
    thread.setPriority(Thread.MIN_PRIORITY);
    thread.start();
  }

  private static void run(OpenDesk desk) {
    ReadingAnswers reading = new ReadingAnswers(desk.lexicon());
    PlayAnswers playing = new PlayAnswers(desk.lexicon(), desk.voice());
    try {
      DoorRequest text = request(json -> json.writeStringField("text", Samples.text(PIECE)));
      reading.read(text);
      playing.begin(text);
      DoorRequest frames =
          request(
              json -> {
                json.writeNumberField("id", 1);
                json.writeNumberField("frames", 48_000);
              });
      playing.next(frames);
      for (int time = 0; time < TIMES; time++) {
        reading.read(text);
        playing.next(frames);
      }
    } catch (IOException unreadable) {
      // the page will say what is wrong with the program's own files
    }
  }

  private static DoorRequest request(JsonReply.Fields fields) throws IOException {
    return new DoorRequest("/", Map.of(), JsonReply.of(fields).body());
  }
}
