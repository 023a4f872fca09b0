package org.matraloom.clap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.matraloom.follow.Alignment;
import org.matraloom.follow.SaidAs;
import org.matraloom.madetake.ClappedTake;
import org.matraloom.madetake.MadeTake;
import org.matraloom.madetake.OwnSpeaker;
import org.matraloom.madetake.SolluSpeaker;
import org.matraloom.madetake.TakePlan;
import org.matraloom.onset.Onset;
import org.matraloom.onset.OnsetCurve;
import org.matraloom.recording.SoundFiles;
import org.matraloom.schedule.Timeline;
import org.matraloom.voice.VoicePerson;

/** Claps beside a voice, each at times that are known because they were placed. */
class HeardBeatTest {

  private static final double BEAT = 60.0 / 72;
  private static final double START = 4.5;
  private static final int COUNTED = 4;

  /** Every matra of 24 beats is said: twelve beats of four, twelve of five. */
  private static final String DENSE =
      """
      title Gravel Bar
      tala adi
      tempo 72
      Four = (takadimi) x12
      Five = (takatakita) x12
      perform
        Four nadai 4
        Five nadai 5
      """;

  /** Two beats of sollus, a beat and a half of karvai. */
  private static final String RINGING =
      """
      title Slow Pool
      tala adi
      tempo 72
      Pool = (takadimi takajunu tam , , , , , , ,) x6
      perform
        Pool nadai 4
      """;

  private static final DoubleUnaryOperator STEADY = beat -> START + BEAT * beat;

  private record Heard(
      Optional<HeardBeat> beat, List<Onset> onsets, Set<Integer> paired, double[] claps) {}

  @Test
  void clapsInTheKarvaisOfAVoiceInTime() throws IOException {
    double[] claps = every(STEADY, 24, 1);
    Heard heard = heard(RINGING, STEADY, claps, ClappedTake.claps(9, 1), 10, 1);
    assertOnTheBeat(heard, STEADY, 24, 0.010);
    assertTrue(heard.beat.orElseThrow().spreadSeconds() < 0.005);
    assertEquals(1, heard.beat.orElseThrow().ticks());
  }

  /** The case it is for: the five is said 5 % slow, the landing is most of a beat late. */
  @Test
  void clapsStayWhereTheyAreWhenTheVoiceGoesSlow() throws IOException {
    for (double slow : new double[] {0.05, -0.05, 0.08}) {
      double[] claps = every(STEADY, 25, 1);
      Heard heard = heard(DENSE, slowFrom(16, slow), claps, ClappedTake.claps(9, 2), 6, 2);
      assertOnTheBeat(heard, STEADY, 24, 0.010);
    }
  }

  @Test
  void clicksOfAMachineStayToo() throws IOException {
    double[] clicks = every(STEADY, 25, 1);
    Heard heard = heard(DENSE, slowFrom(16, 0.05), clicks, ClappedTake.clicks(1_800, 0.004), 14, 3);
    assertOnTheBeat(heard, STEADY, 24, 0.006);
    assertTrue(heard.beat.orElseThrow().spreadSeconds() < 0.002);
  }

  /** Tempo within one per cent, each clap 10 ms off for itself. */
  @Test
  void handsThatWander() throws IOException {
    DoubleUnaryOperator wandering =
        beat -> STEADY.applyAsDouble(beat) + 0.03 * Math.sin(2 * Math.PI * beat / 24);
    Random random = new Random(4);
    double[] claps =
        Arrays.stream(every(wandering, 24, 1))
            .map(at -> at + 0.010 * random.nextGaussian())
            .toArray();
    Heard heard = heard(RINGING, wandering, claps, ClappedTake.claps(9, 4), 8, 4);
    assertOnTheBeat(heard, wandering, 24, 0.025);
    double spread = heard.beat.orElseThrow().spreadSeconds();
    assertTrue(spread > 0.003 && spread < 0.025, "spread " + spread);
  }

  @Test
  void ticksOnEveryMatra() throws IOException {
    double[] ticks = every(STEADY, 24, 4);
    Heard heard = heard(RINGING, STEADY, ticks, ClappedTake.clicks(2_400, 0.003), 12, 5);
    assertOnTheBeat(heard, STEADY, 24, 0.006);
    assertEquals(4, heard.beat.orElseThrow().ticks());
  }

  /** Adi: a clap on beats 1, 5 and 7; fingers and waves make no sound. */
  @Test
  void clapsOfATalaOnly() throws IOException {
    double[] claps =
        IntStream.range(-8, 24)
            .filter(beat -> List.of(0, 4, 6).contains(Math.floorMod(beat, 8)))
            .mapToDouble(STEADY::applyAsDouble)
            .filter(at -> at > 0)
            .toArray();
    Heard heard = heard(RINGING, slowFrom(12, 0.05), claps, ClappedTake.claps(9, 6), 4, 6);
    assertOnTheBeat(heard, STEADY, 24, 0.010);
  }

  /** Broken off and begun again two seconds and a half later; the machine goes on. */
  @Test
  void aRestartBesideAMachine() throws IOException {
    TakePlan plan = ClappedTake.said(SaidAs.timeline(RINGING), STEADY, 0.006, 7);
    TakePlan again = ClappedTake.restarted(plan, 30, 18, 14 * BEAT);
    double[] clicks = every(STEADY, 36, 1);
    Heard heard = heard(again, STEADY, clicks, ClappedTake.clicks(1_500, 0.006), 10, 7);
    assertOnTheBeat(heard, STEADY, 36, 0.010);
  }

  /** Hands that pause with the voice begin again where they will. */
  @Test
  void handsThatBeginAgain() throws IOException {
    double later = 14.4 * BEAT;
    TakePlan plan = ClappedTake.said(SaidAs.timeline(RINGING), STEADY, 0.006, 8);
    TakePlan again = ClappedTake.restarted(plan, 27, 9, later);
    double pause = plan.sollus().get(27).feltSeconds();
    double[] claps =
        IntStream.concat(
                IntStream.range(-COUNTED, 60).filter(b -> STEADY.applyAsDouble(b) < pause - 0.1),
                IntStream.range(1_000 + 2, 1_000 + 24))
            .mapToDouble(
                b -> b < 500 ? STEADY.applyAsDouble(b) : START + later + BEAT * (b - 1_000))
            .toArray();
    Heard heard = heard(again, STEADY, claps, ClappedTake.claps(9, 8), 6, 8);
    HeardBeat beat = heard.beat.orElseThrow();
    int compared = 0;
    for (double clap : claps) {
      if (beat.isKnownAt(clap)) {
        double nearest =
            IntStream.range(-20, 80)
                .mapToDouble(n -> Math.abs(beat.secondsAt(n) - clap))
                .min()
                .orElseThrow();
        assertEquals(0, nearest, 0.012);
        compared++;
      }
    }
    assertTrue(compared > 0.8 * claps.length, compared + " of " + claps.length + " known");
    assertTrue(beat.isKnownAt(claps[claps.length - 3]), "known after the pause");
  }

  @Test
  void aVoiceAloneHasNoClaps() throws IOException {
    for (int seed = 20; seed < 28; seed++) {
      String score = seed % 2 == 0 ? DENSE : RINGING;
      DoubleUnaryOperator voice = seed % 4 < 2 ? STEADY : slowFrom(14, 0.06);
      Heard heard = heard(score, voice, new double[0], ClappedTake.claps(1, 1), 0, seed);
      assertTrue(heard.paired.size() > 40, "the voice is heard");
      assertEquals(Optional.empty(), heard.beat, "seed " + seed);
    }
  }

  /** Strokes of a hand on a drum, a tenth of them not taken for what they are. */
  @Test
  void strokesThatAreNotPairedAreNoClaps() throws IOException {
    for (int seed = 40; seed < 44; seed++) {
      List<float[]> strokes = ClappedTake.claps(400, seed);
      int[] next = {0};
      SolluSpeaker drum =
          (before, cue, after) -> new SolluSpeaker.Spoken(strokes.get(next[0]++), 0, 0);
      TakePlan plan = ClappedTake.said(SaidAs.timeline(DENSE), STEADY, 0.006, seed);
      MadeTake take = MadeTake.of(plan, seed, drum);
      OnsetCurve curve = OnsetCurve.of(SoundFiles.recording(take.sound(), take.rate()));
      List<Onset> onsets = curve.heard(Alignment.LEAST_CONFIDENCE);
      Set<Integer> paired = new TreeSet<>(ClappedTake.paired(take.plan(), onsets));
      int all = paired.size();
      assertTrue(all > 90, "the strokes are heard");
      Random random = new Random(seed);
      paired.removeIf(j -> random.nextInt(10) == 0);
      assertTrue(paired.size() < all, "some are not paired");
      assertEquals(Optional.empty(), HeardBeat.of(curve, onsets, paired, BEAT, START));
    }
  }

  private static DoubleUnaryOperator slowFrom(double from, double slow) {
    return beat -> STEADY.applyAsDouble(beat) + Math.max(0, beat - from) * slow * BEAT;
  }

  private static double[] every(DoubleUnaryOperator beats, int last, int ticks) {
    return IntStream.range(-COUNTED * ticks, last * ticks + 1)
        .mapToDouble(tick -> beats.applyAsDouble((double) tick / ticks))
        .toArray();
  }

  private static Heard heard(
      String score,
      DoubleUnaryOperator voice,
      double[] claps,
      List<float[]> strokes,
      double belowDb,
      long seed)
      throws IOException {
    Timeline timeline = SaidAs.timeline(score);
    return heard(
        ClappedTake.said(timeline, voice, 0.006, seed), voice, claps, strokes, belowDb, seed);
  }

  /** What is known of the voice is 1 % and 20 ms wrong. */
  private static Heard heard(
      TakePlan plan,
      DoubleUnaryOperator voice,
      double[] claps,
      List<float[]> strokes,
      double belowDb,
      long seed)
      throws IOException {
    MadeTake said =
        MadeTake.of(plan, seed, new OwnSpeaker(seed % 2 == 0 ? VoicePerson.LOW : VoicePerson.HIGH));
    MadeTake take = ClappedTake.with(said, claps, strokes, belowDb);
    OnsetCurve curve = OnsetCurve.of(SoundFiles.recording(take.sound(), take.rate()));
    List<Onset> onsets = curve.heard(Alignment.LEAST_CONFIDENCE);
    Set<Integer> paired = ClappedTake.paired(said.plan(), onsets);
    double begins = voice.applyAsDouble(0) + 0.020;
    return new Heard(
        HeardBeat.of(curve, onsets, paired, 1.01 * BEAT, begins), onsets, paired, claps);
  }

  /** Every beat from the first to the last, where it is known, and most of them are. */
  private static void assertOnTheBeat(
      Heard heard, DoubleUnaryOperator truth, int beats, double withinSeconds) {
    assertTrue(heard.beat.isPresent(), "claps are found");
    HeardBeat beat = heard.beat.get();
    int known = 0;
    for (int n = 0; n <= beats; n++) {
      if (beat.isKnownAt(truth.applyAsDouble(n))) {
        assertEquals(truth.applyAsDouble(n), beat.secondsAt(n), withinSeconds, "beat " + n);
        known++;
      }
    }
    assertTrue(known >= 0.9 * beats, known + " of " + beats + " beats known");
    double half = (beat.secondsAt(2) + beat.secondsAt(3)) / 2;
    assertEquals(half, beat.secondsAt(2.5), 1e-3 + withinSeconds / 4);
    assertTrue(beat.claps().size() >= 4, "onsets are told to be claps");
    for (int j : beat.claps()) {
      assertTrue(!heard.paired.contains(j), "no sollu is a clap");
      double at = heard.onsets.get(j).seconds();
      double off = Arrays.stream(heard.claps).map(clap -> Math.abs(clap - at)).min().orElseThrow();
      assertEquals(0, off, 0.030, "clap at " + at);
    }
  }
}
