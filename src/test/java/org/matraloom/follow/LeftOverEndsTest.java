package org.matraloom.follow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.matraloom.onset.Onset;

/** Sounds beside the first and the last sollu of takes without sound, of which all is known. */
class LeftOverEndsTest {

  private static final String SCORE =
      "tala adi\ntempo 72\nSong = (takadimi takajunu) x4\nperform\n  Song nadai 4\n";

  private static final double BEGIN = 2;

  /** A take said to its end, and what stands beside it. */
  private static final class Ends {
    final HeardTake take;

    /** When the last sollu falls. */
    final double end;

    final double matra;

    private final boolean strange;

    Ends(long number) {
      this(number, false);
    }

    /** With a last sollu of its own sound, or of that of another. */
    Ends(long number, boolean strange) {
      this.strange = strange;
      take = new HeardTake(SCORE, number, 0);
      take.blur = 0.4;
      take.jitterSeconds = 0.005;
      take.stretch = 0.8 + 0.05 * number;
      int last = take.expected.size() - 1;
      if (strange) {
        end = take.say(0, last, BEGIN);
        take.extra(0, end);
      } else {
        end = take.say(0, last + 1, BEGIN);
      }
      matra = take.matraSeconds(0);
      assertEquals(take.expected.get(1).seconds() * take.stretch, matra, 1e-9);
    }

    /** A sound like a sollu so many matras before the first. */
    void before(double matras) {
      take.extra(2, BEGIN - matras * matra);
    }

    /** The same after the last. */
    void after(double matras) {
      take.extra(3, end + matras * matra);
    }

    /** What cannot be told, with the sounds that are no sollus so sure. */
    Optional<EndAmbiguity> unsure(double confidence) {
      return unsure(confidence, 0, take.expected.size());
    }

    Optional<EndAmbiguity> unsure(double confidence, int from, int to) {
      List<HeardTake.Heard> heard = take.heard();
      List<Onset> onsets = new ArrayList<>();
      List<Alignment.Said> said = new ArrayList<>();
      for (int j = 0; j < heard.size(); j++) {
        Onset onset = heard.get(j).onset();
        boolean isStrange =
            heard.get(j).sollu() < 0 && strange && Math.abs(onset.seconds() - end) < 0.03;
        int sollu = isStrange ? take.expected.size() - 1 : heard.get(j).sollu();
        onsets.add(sollu < 0 ? new Onset(onset.seconds(), confidence) : onset);
        if (sollu >= from && sollu < to) {
          said.add(new Alignment.Said(sollu, j));
        }
      }
      SoundColours colours =
          new SoundColours(heard.stream().map(HeardTake.Heard::colour).toArray(double[][]::new));
      int sollus = take.expected.size();
      SolluModels models = SolluModels.of(colours, ExpectedSollu.kinds(take.expected), said);
      PairingModel model =
          new PairingModel(
              take.stretch, new double[sollus], new double[sollus], 0, 0.01, true, models);
      return LeftOverEnds.of(onsets, said, model, Intervals.matras(take.expected));
    }
  }

  /**
   * A last sollu that was found by its place only, and a sure sound after it: that may be the
   * sollu, come late. Where it was heard for itself, or the sound is not sure or is far, all is
   * well.
   */
  @Test
  void aSureSoundAfterALastSolluThatWasHardlyHeardIsAskedAbout() {
    List<ExpectedSollu> asked = SaidAs.expected(SCORE);
    int last = asked.size() - 1;
    double matra = asked.get(1).seconds();
    int tried = 0;
    for (double matras : new double[] {0.4, 0.8, 1, 2, 2.4, 2.7}) {
      for (double confidence : new double[] {0.3, 0.9}) {
        for (double ofLast : new double[] {FaintSollus.CONFIDENCE, 0.2}) {
          List<Onset> onsets = new ArrayList<>();
          asked.forEach(each -> onsets.add(new Onset(BEGIN + each.seconds(), 0.9)));
          double end = BEGIN + asked.get(last).seconds();
          onsets.set(last, new Onset(end, ofLast));
          onsets.add(new Onset(end + matras * matra, confidence));
          List<Alignment.Said> said =
              IntStream.rangeClosed(0, last).mapToObj(k -> new Alignment.Said(k, k)).toList();
          boolean isAsked =
              matras > 0.65 && matras < 2.5 && confidence > 0.5 && ofLast == FaintSollus.CONFIDENCE;
          assertEquals(
              isAsked ? leftOver(EndAmbiguity.End.LAST) : Optional.empty(),
              LeftOverEnds.afterFaint(asked, onsets, said),
              matras + " matras after, " + confidence);
          assertEquals(
              Optional.empty(), LeftOverEnds.afterFaint(asked, onsets, said.subList(0, last)));
          tried++;
        }
      }
    }
    assertEquals(24, tried);
  }

  private static Optional<EndAmbiguity> leftOver(EndAmbiguity.End end) {
    return Optional.of(new EndAmbiguity(false, end));
  }

  private static final double[] A_MATRA_AWAY = {0.75, 0.9, 1, 1.1, 1.3, 1.5};

  @Test
  void aSoundLikeASolluAMatraBesideAnEndIsOneTooMany() {
    int tried = 0;
    for (long number = 0; number < 8; number++) {
      for (double matras : A_MATRA_AWAY) {
        Ends first = new Ends(number);
        first.before(matras);
        assertEquals(leftOver(EndAmbiguity.End.FIRST), first.unsure(0.6), "before by " + matras);
        Ends last = new Ends(number);
        last.after(matras);
        assertEquals(leftOver(EndAmbiguity.End.LAST), last.unsure(0.6), "after by " + matras);
        last.before(matras);
        assertEquals(leftOver(EndAmbiguity.End.EITHER), last.unsure(0.6), "both by " + matras);
        tried++;
      }
    }
    assertEquals(48, tried);
  }

  @Test
  void whatIsNearerIsOfTheSameSolluAndWhatIsFartherIsNoMatter() {
    for (long number = 0; number < 8; number++) {
      for (double matras : new double[] {0.3, 0.5, 2.6, 3}) {
        Ends ends = new Ends(number);
        ends.before(matras);
        ends.after(matras);
        assertEquals(Optional.empty(), ends.unsure(0.9), matras + " matras away");
      }
    }
  }

  /**
   * What follows the last sollu by two matras may be that sollu, late; before the first it is not.
   */
  @Test
  void aSoundTwoMatrasAfterTheLastIsOneTooMany() {
    for (long number = 0; number < 8; number++) {
      for (double matras : new double[] {1.7, 2, 2.4}) {
        Ends before = new Ends(number);
        before.before(matras);
        assertEquals(Optional.empty(), before.unsure(0.9), matras + " matras before");
        Ends after = new Ends(number);
        after.after(matras);
        assertEquals(leftOver(EndAmbiguity.End.LAST), after.unsure(0.9), matras + " matras after");
      }
    }
  }

  /** One near the end does not hide another a matra away. */
  @Test
  void aSoundInBetweenHidesNothing() {
    for (long number = 0; number < 8; number++) {
      Ends ends = new Ends(number);
      ends.after(0.4);
      ends.after(1);
      assertEquals(leftOver(EndAmbiguity.End.LAST), ends.unsure(0.7));
    }
  }

  @Test
  void whatIsHardlyAnOnsetIsNoSollu() {
    for (long number = 0; number < 8; number++) {
      Ends ends = new Ends(number);
      ends.before(1);
      ends.after(1);
      assertEquals(Optional.empty(), ends.unsure(0.45));
    }
  }

  @Test
  void whatIsUnlikeAllSollusIsNone() {
    for (long number = 0; number < 8; number++) {
      Ends ends = new Ends(number);
      ends.take.noise(BEGIN - ends.matra, 0.9);
      ends.take.noise(ends.end + ends.matra, 0.9);
      assertEquals(Optional.empty(), ends.unsure(0.9), "take " + number);
    }
  }

  /** A last sollu that is unlike itself may be the sound after it, whatever that is like. */
  @Test
  void besideAnEndThatIsUnlikeItsSolluAnySureSoundIsLeftOver() {
    int found = 0;
    for (long number = 0; number < 8; number++) {
      Ends ends = new Ends(number, true);
      ends.take.noise(ends.end + ends.matra, 0.9);
      found += ends.unsure(0.9).equals(leftOver(EndAmbiguity.End.LAST)) ? 1 : 0;
    }
    assertTrue(found >= 7, found + " of 8");
  }

  /** Where the first sollu or the last is missing, what stands there is another question. */
  @Test
  void onlyBesideTheFirstAndTheLastOfTheScore() {
    for (long number = 0; number < 8; number++) {
      Ends ends = new Ends(number);
      ends.before(1);
      ends.after(1);
      int size = ends.take.expected.size();
      assertEquals(leftOver(EndAmbiguity.End.LAST), ends.unsure(0.8, 1, size));
      assertEquals(leftOver(EndAmbiguity.End.FIRST), ends.unsure(0.8, 0, size - 1));
      assertEquals(Optional.empty(), ends.unsure(0.8, 1, size - 1));
      assertEquals(Optional.empty(), ends.unsure(0.8, 5, 6), "one sollu alone");
    }
  }

  @Test
  void aTakeWithoutOtherSoundsHasNothingLeftOver() {
    IntStream.range(0, 8)
        .forEach(number -> assertEquals(Optional.empty(), new Ends(number).unsure(0.9)));
  }
}
