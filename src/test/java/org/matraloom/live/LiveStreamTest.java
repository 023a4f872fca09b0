package org.matraloom.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.matraloom.score.Kriya;
import org.matraloom.sound.Mix;
import org.matraloom.sound.MixPart;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/**
 * What is changed while a piece is played begins on the next beat, and no beat is lost or doubled.
 */
class LiveStreamTest {

  private static final int RATE = Rivers.RATE;
  private static final int BLOCK = 480;
  private static final Mix CLAPS = Mix.lesson().only(Set.of(MixPart.CLAP));
  private static final Mix HAND =
      Mix.lesson().only(Set.of(MixPart.CLAP, MixPart.COUNT, MixPart.WAVE));
  private static final Mix VOICE = Mix.lesson().only(Set.of(MixPart.VOICE));

  private static final class Run {
    private final PieceSections sections;
    private final LivePiece piece;
    private final LiveStream stream;
    private final List<Long> onsets = new ArrayList<>();
    private final float[] block = new float[BLOCK];
    private long frame;
    private int quiet = RATE;

    Run(Tempo tempo, int countIn, Mix mix, Optional<Fade> fade) {
      piece = Rivers.piece(tempo, countIn);
      sections = PieceSections.of(piece.passages());
      stream = new LiveStream(piece, sections.first(), tempo, mix, fade, 0);
    }

    void until(long end) {
      while (frame < end) {
        int frames = stream.render(block, BLOCK);
        for (int i = 0; i < frames; i++) {
          listen(block[i], frame + i);
        }
        frame += frames;
        if (frames == 0) {
          return;
        }
      }
    }

    private void listen(float sample, long at) {
      if (sample != 0 && quiet >= RATE / 50) {
        onsets.add(at);
      }
      quiet = sample == 0 ? quiet + 1 : 0;
    }
  }

  private static Run run(int tempo, int countIn, Mix mix) {
    return new Run(Tempo.of(tempo), countIn, mix, Optional.empty());
  }

  @ParameterizedTest
  @CsvSource({"66, 71", "60, 120", "120, 60", "200, 205"})
  void aNewTempoBeginsOnTheNextBeatAndEveryLaterBeatHasIt(int before, int after) {
    Run run = run(before, 1, HAND);
    long perBeat = 60L * RATE / before;
    run.until(11 * perBeat + perBeat / 3);
    run.stream.tempo(Tempo.of(after));
    run.until(Long.MAX_VALUE);

    LiveSegment first = run.stream.course().laps().get(0);
    LiveSegment second = run.stream.course().last();
    assertEquals(4, second.fromBeat(), "eight beats of count-in, then beats 0, 1, 2, 3");
    assertEquals(first.frameAt(4), second.fromFrame());
    List<Long> expected = new ArrayList<>();
    for (long beat = -8; beat <= 56; beat++) {
      expected.add(beat < 4 ? first.frameAt(beat) : second.frameAt(beat));
    }
    assertEquals(expected, run.onsets);
    for (int i = 13; i < expected.size(); i++) {
      double gap = expected.get(i) - expected.get(i - 1);
      assertEquals(60.0 * RATE / after, gap, 1.0, "beat " + i);
    }
  }

  @Test
  void manyTempiOneAfterAnotherLoseNoBeat() {
    Run run = run(60, 0, CLAPS);
    int tempo = 60;
    for (int i = 0; i < 40; i++) {
      tempo += i % 3 == 2 ? -5 : 7;
      run.stream.tempo(Tempo.of(tempo));
      run.until(run.frame + RATE / 2 + 997L * i);
    }
    run.until(Long.MAX_VALUE);
    long claps =
        Rivers.events(run.piece.passages().get(0), org.matraloom.schedule.Event.HandBeat.class)
            .stream()
            .filter(hand -> hand.kriya() instanceof Kriya.Clap)
            .count();
    assertEquals(claps, run.onsets.size());
  }

  @Test
  void severalWishesWithinOneBeatAllHold() {
    Run run = run(60, 0, HAND);
    run.until(3 * RATE + 100);
    run.stream.tempo(Tempo.of(61));
    run.stream.tempo(Tempo.of(62));
    run.stream.mix(CLAPS);
    run.stream.tempo(Tempo.of(120));
    LiveSegment lap = run.stream.course().last();
    assertEquals(4, lap.fromBeat());
    assertEquals(4L * RATE, lap.fromFrame());
    assertEquals(Tempo.of(120), lap.tempo());
    assertEquals(CLAPS, lap.mix());
    run.until(Long.MAX_VALUE);
    assertEquals(List.of(0L, 48_000L, 96_000L, 144_000L, 192_000L), run.onsets.subList(0, 5));
    assertEquals(192_000L + 2 * 24_000, run.onsets.get(5), "the next clap is two beats later");
  }

  @Test
  void aMutedPartIsSilentFromTheNextBeatOnAndComesBack() {
    Run run = run(60, 0, VOICE);
    run.until(2 * RATE + 10_000);
    run.stream.mix(VOICE.without(Set.of(MixPart.VOICE)));
    run.until(6 * RATE + 10_000);
    run.stream.mix(VOICE);
    run.until(9 * RATE);
    List<Long> expected = new ArrayList<>();
    for (long matra = 0; matra < 36; matra++) {
      if (matra < 12 || matra >= 28) {
        expected.add(matra * RATE / 4);
      }
    }
    assertEquals(expected, run.onsets);
  }

  @Test
  void aJumpKeepsTheTalaAndTheSectionComesInItsPlace() {
    Run hand = run(60, 1, HAND);
    Run mouth = run(60, 1, VOICE);
    for (Run run : List.of(hand, mouth)) {
      run.until(13 * RATE + 5_000);
      PieceSection delta = run.sections.all().get(2);
      assertEquals("Delta", delta.name());
      assertEquals(Ratio.of(16), delta.startBeat());
      run.stream.goTo(delta);
      run.until(40L * RATE);
    }
    LiveSegment lap = hand.stream.course().last();
    assertEquals(6, lap.fromBeat());
    assertEquals(0, lap.shiftBeats(), "beat 16 lies ten beats ahead, in its place");
    List<Long> everyBeat = new ArrayList<>();
    for (long beat = 0; beat < 40; beat++) {
      everyBeat.add(beat * RATE);
    }
    assertEquals(everyBeat, hand.onsets);
    assertTrue(mouth.onsets.contains(13L * RATE + 36_000), "said up to the beat of the jump");
    assertTrue(mouth.onsets.stream().noneMatch(at -> at >= 14L * RATE && at < 24L * RATE));
    assertTrue(mouth.onsets.contains(24L * RATE), "and again from the section on");
  }

  @Test
  void aJumpBackTakesTheNextPlaceThatFits() {
    Run run = run(60, 0, HAND);
    run.until(14 * RATE + 5_000);
    run.stream.goTo(run.sections.first());
    LiveSegment lap = run.stream.course().last();
    assertEquals(15, lap.fromBeat());
    assertEquals(24, lap.shiftBeats(), "samam at 16 is too near, the one at 24 is taken");
    run.until(30L * RATE);
    assertEquals(30, run.onsets.size(), "and the hand gives every beat");
  }

  @Test
  void aLoopComesBackUntilItIsLetGo() {
    Run run = run(120, 0, HAND);
    PieceSection bend = run.sections.all().get(1);
    assertEquals("Bend", bend.name());
    assertEquals(Ratio.of(8), bend.startBeat());
    assertEquals(Ratio.of(16), bend.endBeat(), "said twice running, one section");
    run.stream.loop(Optional.of(bend));
    run.until(40 * RATE / 2 + 100);
    assertEquals(
        List.of(0L, 16L, 32L),
        run.stream.course().laps().stream().map(LiveSegment::shiftBeats).toList(),
        "a samam four beats or more after the end each time");
    run.stream.loop(Optional.empty());
    run.until(Long.MAX_VALUE);
    int beats = 56 + 32;
    assertEquals(beats + 1, run.onsets.size());
    for (int beat = 0; beat <= beats; beat++) {
      assertEquals(beat * RATE / 2L, run.onsets.get(beat));
    }
  }

  @Test
  void aLoopOfARoundThatEndsInsideABeatSilencesTheMouthAtItsEnd() {
    Run run = run(60, 0, VOICE);
    PieceSection delta = run.sections.all().get(8);
    assertEquals(3, delta.round());
    PieceSection source = run.sections.all().get(6);
    assertEquals(Ratio.of(40), source.startBeat());
    assertEquals(Ratio.of(232, 5), source.endBeat());
    run.stream.goTo(source);
    run.stream.loop(Optional.of(source));
    run.until(60L * RATE);
    long end = 232L * RATE / 5;
    assertTrue(run.onsets.stream().anyMatch(at -> at > end - RATE / 4));
    assertTrue(run.onsets.stream().noneMatch(at -> at >= end && at < 56L * RATE));
    assertTrue(run.onsets.contains(56L * RATE), "two avartanas later it begins again");
  }

  @Test
  void voiceAndTicksGoAwayAvartanaByAvartana() {
    Run run = new Run(Tempo.of(120), 1, Mix.lesson(), Optional.of(new Fade(3)));
    run.until(Long.MAX_VALUE);
    List<LiveSegment> laps = run.stream.course().laps();
    assertEquals(List.of(-8L, 8L, 16L, 24L), laps.stream().map(LiveSegment::fromBeat).toList());
    assertEquals(
        List.of(-3.0, -11.0, -19.0),
        laps.subList(0, 3).stream().map(lap -> channel(lap, MixPart.VOICE).levelDb()).toList());
    assertTrue(channel(laps.get(3), MixPart.VOICE).muted());
    assertTrue(channel(laps.get(3), MixPart.TICK).muted());
    assertEquals(0, channel(laps.get(3), MixPart.CLAP).levelDb());
    assertEquals(laps.get(0).frameAt(24), laps.get(3).fromFrame(), "the beat has not moved");
  }

  private static Mix.Channel channel(LiveSegment lap, MixPart part) {
    return lap.mix().channels().get(part);
  }

  @Test
  void wishesAfterTheEndChangeNothing() {
    Run run = run(120, 0, HAND);
    run.until(Long.MAX_VALUE);
    long length = run.frame;
    run.stream.tempo(Tempo.of(60));
    run.stream.mix(CLAPS);
    run.until(Long.MAX_VALUE);
    assertEquals(56L * RATE / 2 + RATE, length);
    assertEquals(length, run.frame);
  }
}
