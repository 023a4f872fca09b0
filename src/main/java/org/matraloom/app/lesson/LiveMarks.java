package org.matraloom.app.lesson;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.matraloom.app.cli.WholeFile;
import org.matraloom.session.LivePass;
import org.matraloom.time.FrameClock;

/** What was heard live in a pass: a file beside its take, and a line of words. */
final class LiveMarks {

  private static final double NEAR_SECONDS = 0.020;

  private LiveMarks() {}

  /**
   * Writes {@code pass-01-marks.csv} beside {@code pass-01.wav}: a line for each mark, with its
   * sollu and place, when it was heard and seen in seconds of the take, and how late it was in ms.
   */
  static void write(LivePass live, Path take, int rate) throws IOException {
    String name = take.getFileName().toString().replaceFirst("[.]wav$", "-marks.csv");
    StringBuilder text = new StringBuilder("place,sollu,beat,onset_s,seen_s,late_ms\n");
    for (LivePass.Shown shown : live.marks()) {
      text.append(
          String.format(
              Locale.ROOT,
              "%d,%s,%s,%.4f,%.4f,%.1f%n",
              shown.mark().place() + 1,
              shown.mark().sollu().spelling(),
              shown.mark().beat(),
              FrameClock.seconds(shown.mark().onsetFrame(), rate),
              FrameClock.seconds(shown.shownFrame(), rate),
              1000 * shown.mark().lateSeconds()));
    }
    WholeFile.writeText(take.resolveSibling(name), out -> out.append(text));
  }

  /** What was heard, in a line; empty if nothing was. */
  static Optional<String> words(LivePass live) {
    long early = live.marks().stream().filter(shown -> late(shown) < -NEAR_SECONDS).count();
    long late = live.marks().stream().filter(shown -> late(shown) > NEAR_SECONDS).count();
    String broken = live.broken() == 0 ? "" : "; the sound broke off " + live.broken() + " times";
    return live.marks().isEmpty() && broken.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Heard live: "
                + live.marks().size()
                + " of "
                + live.sollus()
                + " sollus, "
                + early
                + " early and "
                + late
                + " late by more than 20 ms"
                + broken
                + ".");
  }

  private static double late(LivePass.Shown shown) {
    return shown.mark().lateSeconds();
  }
}
