package org.matraloom.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.matraloom.follow.SaidAs;
import org.matraloom.madetake.Flaws;
import org.matraloom.madetake.MadeTake;
import org.matraloom.madetake.Speakers;
import org.matraloom.onset.OnsetCurve;
import org.matraloom.recording.SoundFiles;
import org.matraloom.schedule.Timeline;

/** A piece that is said to the guide of another one, with sollus that both have. */
class AnotherPieceTest {

  private static Timeline sample(String name, int tempo) throws IOException {
    String text = Files.readString(Path.of("samples-synth", name + ".loom"));
    return SaidAs.timeline(text.replaceFirst("(?m)^tempo .*$", "tempo " + tempo));
  }

  private static MadeTake said(Timeline timeline, Flaws flaws) {
    return MadeTake.of(timeline, flaws, new Speakers(Path.of(".")).named(Speakers.LOW));
  }

  private static TakeFindings heard(MadeTake take, Timeline timeline) throws IOException {
    return TakeFindings.of(
        timeline, OnsetCurve.of(SoundFiles.recording(take.sound(), take.rate())));
  }

  /** No wait and no kept speed is told of it: which fault it was is not to be known. */
  @Test
  void itIsNotJudged() throws IOException {
    List<Integer> judged = new ArrayList<>();
    int tried = 0;
    for (int tempo = 90; tempo <= 150; tempo += 10) {
      MadeTake other = said(sample("tin-roof", tempo), new Flaws(tempo));
      if (heard(other, sample("gutter-song", tempo)).doubt().isEmpty()) {
        judged.add(tempo);
      }
      tried++;
    }
    assertEquals(7, tried);
    assertEquals(List.of(), judged);
  }

  /** Who broke off and began again is still told of that. */
  @Test
  void aRestartIsJudged() throws IOException {
    Timeline timeline = sample("gutter-song", 66);
    Flaws flaws = new Flaws(5);
    flaws.restarts = true;
    TakeFindings found = heard(said(timeline, flaws), timeline);
    assertTrue(found.doubt().isEmpty(), "" + found.doubt());
    assertTrue(found.hasRestart());
  }
}
