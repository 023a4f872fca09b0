package org.matraloom.app.lesson;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/**
 * Measures for nobody what there is of the first take while it is still recorded: the first runs of
 * that code take several times as long as the next, and somebody would wait for them.
 */
final class EarWarming {

  private static final long LOOK_NANOS = TimeUnit.MILLISECONDS.toNanos(500);
  private static final int MOST_LOOKS = 240;
  private static final int TIMES = 3;

  private EarWarming() {}

  /**
   * Begins, on a thread of its own that gives way to all others.
   *
   * @param ear measures
   * @param pass what is being said
   * @param take its file, which grows
   * @param enoughBytes of it
   */
  static void begin(PassEar ear, LessonPass pass, Path take, long enoughBytes) {
    Thread thread = new Thread(() -> run(ear, pass, take, enoughBytes), "matraloom-warming");
    thread.setDaemon(true);
    thread.setPriority(Thread.MIN_PRIORITY);
    thread.start();
  }

  private static void run(PassEar ear, LessonPass pass, Path take, long enoughBytes) {
    try {
      int measured = 0;
      for (int look = 0; look < MOST_LOOKS && measured < TIMES; look++) {
        LockSupport.parkNanos(LOOK_NANOS);
        if (Files.exists(take) && Files.size(take) >= enoughBytes * (2 + measured) / 2) {
          ear.listen(pass, take, Optional.empty());
          measured++;
        }
      }
    } catch (IOException ofHalfATake) {
      return; // The measure of the whole take will tell.
    }
  }
}
