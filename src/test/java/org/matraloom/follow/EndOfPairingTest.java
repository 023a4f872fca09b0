package org.matraloom.follow;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.matraloom.onset.Onset;

/** What is made of the last sounds of a pairing, and of a wait with sounds in it. */
class EndOfPairingTest {

  /** Sollus a fifth of a second apart, a matra each. */
  private static final int SOLLUS = 24;

  private static final double MATRA = 0.2;

  private final double[] expected =
      IntStream.range(0, SOLLUS).mapToDouble(k -> k * MATRA).toArray();
  private final double[] matras = IntStream.range(0, SOLLUS).mapToDouble(k -> MATRA).toArray();
  private final PairingModel model = PairingModel.plain(SOLLUS);

  private static List<Onset> onsets(double... seconds) {
    return DoubleStream.of(seconds).mapToObj(at -> new Onset(at, 0.9)).toList();
  }

  /** The first sollus in time, then sounds at these moments. */
  private List<Onset> begun(int sollus, double... later) {
    return onsets(
        DoubleStream.concat(DoubleStream.of(expected).limit(sollus), DoubleStream.of(later))
            .toArray());
  }

  private static List<Alignment.Said> straight(int sollus) {
    return IntStream.range(0, sollus).mapToObj(k -> new Alignment.Said(k, k)).toList();
  }

  private static List<Alignment.Said> with(List<Alignment.Said> said, int sollu, int onset) {
    List<Alignment.Said> more = new ArrayList<>(said);
    more.add(new Alignment.Said(sollu, onset));
    return more;
  }

  @Test
  void aLastSolluEarlyOrLateGetsTheSoundThatIsLeftOver() {
    List<Alignment.Said> said = straight(SOLLUS - 1);
    for (double off : new double[] {-0.13, -0.08, 0, 0.09, 0.18}) {
      List<Onset> onsets = begun(SOLLUS - 1, expected[SOLLUS - 1] + off);
      assertEquals(
          with(said, SOLLUS - 1, SOLLUS - 1),
          DisplacedEnd.found(said, expected, matras, onsets, model),
          "off by " + off);
    }
  }

  @Test
  void ofTwoSoundsTheNearerIsTheLastSollu() {
    List<Alignment.Said> said = straight(SOLLUS - 1);
    double due = expected[SOLLUS - 1];
    List<Onset> onsets = begun(SOLLUS - 1, due - 0.12, due + 0.03, due + 0.15);
    assertEquals(
        with(said, SOLLUS - 1, SOLLUS), DisplacedEnd.found(said, expected, matras, onsets, model));
  }

  @Test
  void aSoundAMatraAwayOrRightAfterTheOneBeforeIsNoLastSollu() {
    List<Alignment.Said> said = straight(SOLLUS - 1);
    for (double off : new double[] {-0.16, 0.2, 0.5}) {
      List<Onset> onsets = begun(SOLLUS - 1, expected[SOLLUS - 1] + off);
      assertEquals(said, DisplacedEnd.found(said, expected, matras, onsets, model), "" + off);
    }
    List<Alignment.Said> shorter = straight(SOLLUS - 2);
    List<Onset> onsets = begun(SOLLUS - 2, expected[SOLLUS - 1]);
    assertEquals(shorter, DisplacedEnd.found(shorter, expected, matras, onsets, model));
  }

  @Test
  void theLastSolluIsMissingIfTheSoundsBeforeItFitAPlaceEarlier() {
    for (int moved = 1; moved <= 3; moved++) {
      List<Alignment.Said> said = new ArrayList<>(straight(SOLLUS - 1 - moved));
      for (int k = SOLLUS - moved; k < SOLLUS; k++) {
        said.add(new Alignment.Said(k, k - 1));
      }
      assertEquals(
          straight(SOLLUS - 1),
          ShortEnd.found(said, expected, matras, begun(SOLLUS - 1), model),
          moved + " moved");
    }
  }

  @Test
  void aSolluLeftUnsaidBeforeALandingInTimeStaysUnsaid() {
    List<Alignment.Said> said = with(straight(SOLLUS - 2), SOLLUS - 1, SOLLUS - 2);
    List<Onset> onsets = begun(SOLLUS - 2, expected[SOLLUS - 1] - 0.06);
    assertEquals(said, ShortEnd.found(said, expected, matras, onsets, model));
    assertEquals(
        straight(SOLLUS), ShortEnd.found(straight(SOLLUS), expected, matras, begun(SOLLUS), model));
  }

  @Test
  void soundsInAWaitThatKeepThePulseAreAPassageBrokenOff() {
    double begunAgain = expected[12] + 1.5;
    double[] later =
        DoubleStream.concat(
                DoubleStream.of(expected).skip(10).limit(3),
                DoubleStream.of(expected).skip(10).map(at -> at - expected[10] + begunAgain))
            .toArray();
    List<Onset> onsets = begun(10, later);
    List<Alignment.Said> asAWait = new ArrayList<>(straight(12));
    for (int k = 12; k < SOLLUS; k++) {
      asAWait.add(new Alignment.Said(k, k + 3));
    }
    List<Alignment.Said> broken = new ArrayList<>(straight(13));
    for (int k = 10; k < SOLLUS; k++) {
      broken.add(new Alignment.Said(k, k + 3));
    }
    BrokenOff brokenOff = new BrokenOff(expected, matras, onsets, model);
    assertEquals(broken, brokenOff.found(asAWait, List.of(12)));
    assertEquals(asAWait, brokenOff.found(asAWait, List.of()), "only where it waits");
  }

  @Test
  void clapsInAWaitAreNoPassage() {
    double[] later =
        DoubleStream.concat(
                DoubleStream.of(expected[11] + 0.45, expected[11] + 1.15, expected[11] + 1.85),
                DoubleStream.of(expected).skip(12).map(at -> at + 2.2))
            .toArray();
    List<Onset> onsets = begun(12, later);
    List<Alignment.Said> waits = new ArrayList<>(straight(12));
    for (int k = 12; k < SOLLUS; k++) {
      waits.add(new Alignment.Said(k, k + 3));
    }
    BrokenOff brokenOff = new BrokenOff(expected, matras, onsets, model);
    assertEquals(waits, brokenOff.found(waits, List.of(12)));
  }

  @Test
  void ofTwoSoundsAtTheLandingTheSurerNearItIsTaken() {
    List<Onset> onsets = new ArrayList<>(begun(SOLLUS - 1));
    onsets.add(new Onset(expected[SOLLUS - 1] - 0.005, 0.95));
    onsets.add(new Onset(expected[SOLLUS - 1] + 0.08, 0.2));
    List<Alignment.Said> later = with(straight(SOLLUS - 1), SOLLUS - 1, SOLLUS);
    LandingSound landing = new LandingSound(expected, matras, onsets, model);
    assertEquals(straight(SOLLUS), landing.likeliest(later));
    assertEquals(straight(SOLLUS), landing.likeliest(straight(SOLLUS)));
    assertEquals(
        straight(SOLLUS - 1), landing.likeliest(straight(SOLLUS - 1)), "none where none was");
  }

  /** A last sollu of an old-speed end is looked for at that speed, not where the score has it. */
  @Test
  void theLandingIsLookedForAtTheSpeedOfThoseBeforeIt() {
    double[] slower = new double[SOLLUS];
    for (int k = 0; k < SOLLUS; k++) {
      slower[k] = k < 8 ? expected[k] : expected[8] + (k - 8) * MATRA * 1.25;
    }
    List<Onset> onsets = new ArrayList<>(onsets(slower));
    onsets.add(SOLLUS - 1, new Onset(slower[SOLLUS - 1] - 0.08, 0.2));
    List<Alignment.Said> earlier = straight(SOLLUS);
    assertEquals(
        with(straight(SOLLUS - 1), SOLLUS - 1, SOLLUS),
        new LandingSound(expected, matras, onsets, model).likeliest(earlier));
  }
}
