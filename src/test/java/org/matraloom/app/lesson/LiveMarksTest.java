package org.matraloom.app.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.score.Sollu;
import org.matraloom.session.LivePass;
import org.matraloom.session.SaidMark;
import org.matraloom.time.Ratio;

/** What is told and kept of what was heard live. */
class LiveMarksTest {

  @TempDir private Path folder;

  private final Sollu ta = new Sollu("ta", "ta");

  private LivePass.Shown shown(int place, double lateSeconds) {
    Ratio beat = Ratio.of(place).dividedBy(Ratio.of(4));
    return new LivePass.Shown(
        new SaidMark(place, ta, beat, 48_000L + 12_000 * place, lateSeconds),
        52_000L + 12_000 * place);
  }

  private LivePass pass(int broken, LivePass.Shown... marks) {
    return new LivePass(true, List.of(marks), 5, OptionalDouble.empty(), broken, Optional.empty());
  }

  @Test
  void aLineTellsHowManyWereHeardEarlyAndLate() {
    LivePass pass = pass(0, shown(0, -0.03), shown(1, 0.019), shown(2, 0.021), shown(3, 0.05));
    assertEquals(
        Optional.of("Heard live: 4 of 5 sollus, 1 early and 2 late by more than 20 ms."),
        LiveMarks.words(pass));
    assertEquals(Optional.empty(), LiveMarks.words(pass(0)), "silence is told after the pass");
    assertEquals(
        Optional.of(
            "Heard live: 0 of 5 sollus, 0 early and 0 late by more than 20 ms;"
                + " the sound broke off 2 times."),
        LiveMarks.words(pass(2)));
  }

  @Test
  void theyAreKeptBesideTheTake() throws IOException {
    LiveMarks.write(
        pass(0, shown(0, -0.03), shown(3, 0.0125)), folder.resolve("pass-07.wav"), 48_000);
    assertEquals(
        List.of(
            "place,sollu,beat,onset_s,seen_s,late_ms",
            "1,ta,0,1.0000,1.0833,-30.0",
            "4,ta,3/4,1.7500,1.8333,12.5"),
        Files.readAllLines(folder.resolve("pass-07-marks.csv")));
  }
}
