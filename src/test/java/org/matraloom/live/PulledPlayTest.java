package org.matraloom.live;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.matraloom.breath.BreathSettings;
import org.matraloom.notation.ScoreReader;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.sound.Mix;
import org.matraloom.sound.Renderer;
import org.matraloom.time.FrameClock;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;
import org.matraloom.voice.FormantVoice;
import org.matraloom.voice.VoiceSettings;
import org.matraloom.wav.PcmFormat;

/** Whoever asks gets what is rendered, in whatever pieces they ask. */
class PulledPlayTest {

  private static final int RATE = PcmFormat.USUAL.ratePerSecond();
  private static final String SCORE =
      "tala rupaka\ntempo 120\nSong = takadimi takita tom\nperform\n Song nadai 4\n Song nadai 5\n";

  private static Timeline timeline() {
    return ScoreTimeline.of(
        Performance.of(ScoreReader.read(SCORE, "", Lexicon.standard()).composition().orElseThrow()),
        1);
  }

  private static FormantVoice voice() {
    return new FormantVoice(RATE, Lexicon.standard(), VoiceSettings.USUAL);
  }

  private static LivePiece piece() {
    return new LivePiece(
        List.of(timeline()), 1, voice(), Optional.empty(), PcmFormat.USUAL, BreathSettings.study());
  }

  private static PulledPlay play(LivePiece piece) {
    PieceSection first = PieceSections.of(piece.passages()).first();
    return new PulledPlay(piece, Optional.empty(), first, Tempo.of(120), Mix.lesson());
  }

  @Test
  void oddPiecesMakeTheRenderedWhole() {
    Timeline timeline = timeline();
    FrameClock clock = timeline.clock(RATE);
    int length = (int) Renderer.lengthFrames(timeline, clock);
    float[] wanted = new float[2 * length];
    Renderer renderer = new Renderer(timeline, clock, Mix.lesson(), voice(), 2);
    for (int done = 0; done < length; ) {
      float[] part = new float[2 * (length - done)];
      int got = renderer.render(part, length - done);
      System.arraycopy(part, 0, wanted, 2 * done, 2 * got);
      done += got;
    }
    PulledPlay play = play(piece());
    float[] heard = new float[0];
    for (int frames = 1; ; frames = frames * 3 % 7919 + 1) {
      float[] block = new float[2 * frames];
      int got = play.pull(block, frames);
      int before = heard.length;
      heard = Arrays.copyOf(heard, before + 2 * got);
      System.arraycopy(block, 0, heard, before, 2 * got);
      if (got < frames) {
        break;
      }
    }
    assertTrue(length > RATE, "there is something to hear: " + length);
    assertArrayEquals(wanted, heard);
  }

  @Test
  void aNewTempoBeginsOnABeat() {
    PulledPlay play = play(piece());
    play.pull(new float[2 * RATE], RATE);
    play.tempo(Tempo.of(60));
    List<LiveSegment> segments = play.segments();
    assertEquals(2, segments.size());
    LiveSegment next = segments.get(1);
    assertEquals(next.clockFrame(), segments.get(0).frameAt(next.fromBeat()));
    assertTrue(next.clockFrame() >= RATE, "it is not heard yet: " + next.clockFrame());
  }

  @Test
  void aStretchIsInsideThePiece() {
    LivePiece piece = piece();
    PieceSection stretch = PulledPlay.section(piece, Ratio.ONE, Ratio.of(2));
    assertEquals(Ratio.ONE, stretch.startBeat());
    for (Ratio end : List.of(Ratio.ONE, Ratio.ZERO, Ratio.of(1000))) {
      assertThrows(IllegalArgumentException.class, () -> PulledPlay.section(piece, Ratio.ONE, end));
    }
  }
}
