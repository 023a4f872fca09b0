package org.matraloom.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.matraloom.follow.SaidAs;
import org.matraloom.madetake.ClappedTake;
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

  /** A clap on each beat beside a sollu every second beat: the hand is no other piece. */
  @Test
  void clapsAreNoTrouble() throws IOException {
    Timeline slow =
        SaidAs.timeline(
            "tala adi\ntempo 96\nSong = (ta ,,,,,,, ki ,,,,,,, tom ,,,,,,, mi ,,,,,,,) x8\n"
                + "perform\n  Song nadai 4\n");
    MadeTake take = said(slow, new Flaws(3));
    double beat = 60.0 / 96;
    double[] claps = IntStream.range(0, 64).mapToDouble(b -> 0.8 + b * beat).toArray();
    MadeTake clapped = ClappedTake.with(take, claps, ClappedTake.claps(64, 5), 3);
    TakeFindings found = heard(clapped, slow);
    assertTrue(found.alignment().added().size() > 16, "" + found.alignment().added().size());
    assertTrue(found.doubt().isEmpty(), "" + found.doubt());
  }

  /** Of few sollus no more likeness is asked for than before; of many the more, the more is off. */
  @Test
  void moreTroubleAsksForMoreLikenessOfLongTakes() {
    assertEquals(8, DoubtMeasure.leastLikeness(0.3, false, true), 1e-9);
    assertEquals(90, DoubtMeasure.leastLikeness(0.5, false, true), 1e-9);
    assertEquals(8, DoubtMeasure.leastLikeness(0.5, false, false), 1e-9);
    assertTrue(DoubtMeasure.leastLikeness(0.25, true, true) > 8);
  }
}
