package org.matraloom.live;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.matraloom.breath.BreathSettings;
import org.matraloom.device.DeviceException;
import org.matraloom.device.FakeOut;
import org.matraloom.sound.Mix;
import org.matraloom.sound.MixPart;
import org.matraloom.sound.Renderer;
import org.matraloom.time.Tempo;
import org.matraloom.wav.PcmCodec;

/** The two threads together, on a device that stands still until the test lets it go on. */
@Timeout(60)
class LivePlayerTest {

  private static final int RATE = Rivers.RATE;
  private static final int QUIET = RATE / 50;
  private static final Tempo TEMPO = Tempo.of(240);
  private static final Mix CLAPS = Mix.lesson().only(Set.of(MixPart.CLAP));

  private static final Mix HAND =
      Mix.lesson().only(Set.of(MixPart.CLAP, MixPart.COUNT, MixPart.WAVE));

  private final FakeOut out = new FakeOut();
  private final LivePiece piece = Rivers.piece(TEMPO, 1);
  private final PieceSections sections = PieceSections.of(piece.passages());
  private final LivePlayer player = new LivePlayer(piece, Optional.empty(), out);

  @AfterEach
  void close() {
    out.letGo();
    player.close();
  }

  private static void await(BooleanSupplier what) {
    while (!what.getAsBoolean()) {
      Thread.yield();
    }
  }

  @Test
  void whatIsHeardIsWhatIsRendered() throws IOException {
    player.open();
    player.start(sections.first(), TEMPO, Mix.lesson());
    out.letGo();
    await(() -> !player.isPlaying());
    player.check();

    Renderer renderer =
        new Renderer(
            piece.passages().get(0),
            piece.passages().get(0).clock(RATE),
            Mix.lesson(),
            piece.voice(),
            1);
    float[] samples = new float[30 * RATE];
    int frames = renderer.render(samples, samples.length);
    PcmCodec codec = new PcmCodec(16);
    short[] expected = new short[QUIET + frames];
    for (int i = 0; i < frames; i++) {
      expected[QUIET + i] = (short) codec.encode(samples[i]);
    }
    assertEquals(64 * RATE / 4 + RATE, frames);
    assertArrayEquals(expected, out.samples(), "bit for bit, after a short silence");
  }

  @Test
  void theHeardPlaceFollowsTheDeviceAndNotTheRenderer() {
    player.open();
    assertEquals(Optional.empty(), player.position());
    out.allow(RATE);
    player.start(sections.first(), TEMPO, CLAPS);
    out.awaitFrames(RATE);
    LivePosition position = player.position().orElseThrow();
    assertEquals(
        -8 + 3, position.beat(), "a second less the short silence is 3.9 beats of 4 a second");
    assertTrue(position.isBeforeTheMouth());
    out.allow(RATE * 3);
    out.awaitFrames(RATE * 3);
    assertEquals(-8 + 11, player.position().orElseThrow().beat());
  }

  @Test
  void aTempoKeyIsHeardAtTheNextBeatThatIsNotRendered() {
    player.open();
    out.allow(3 * RATE);
    player.start(sections.first(), TEMPO, HAND);
    out.awaitFrames(3 * RATE);
    player.tempo(Tempo.of(120));
    await(() -> player.pendingWishes() == 0);
    out.letGo();
    await(() -> !player.isPlaying());
    List<Long> gaps = gaps(onsets(out.samples()));
    int slower = gaps.indexOf((long) RATE / 2);
    assertTrue(slower >= 12 && slower <= 13, "the beat after the key, or one later: " + slower);
    assertEquals(64, gaps.size(), "no beat too many or too few");
    for (int i = 0; i < gaps.size(); i++) {
      assertEquals(i < slower ? RATE / 4L : RATE / 2L, gaps.get(i), "gap " + i);
    }
  }

  @Test
  void aStopIsSoonAndSoftAndTheNextStartBeginsAfresh() {
    player.open();
    out.allow(2 * RATE);
    player.start(sections.first(), TEMPO, Mix.lesson());
    out.awaitFrames(2 * RATE);
    player.stop();
    await(() -> player.pendingWishes() == 0);
    out.letGo();
    await(() -> !player.isPlaying());
    short[] stopped = out.samples();
    assertTrue(stopped.length <= 2 * RATE + 3 * RATE / 100, "within a few blocks");
    assertEquals(0, stopped[stopped.length - 1]);

    player.start(sections.all().get(2), TEMPO, CLAPS);
    await(() -> out.playedFrames() > stopped.length + RATE);
    LivePosition position = player.position().orElseThrow();
    assertEquals("Delta", position.segment().section().name());
    assertTrue(position.beat() >= 8, "an avartana before beat 16");
  }

  @Test
  void aDeviceThatGoesIsTold() {
    player.open();
    out.allow(RATE / 2);
    player.start(sections.first(), TEMPO, CLAPS);
    out.awaitFrames(RATE / 2);
    out.breakWith(new DeviceException("the roof takes no more sound"));
    DeviceException told =
        assertThrows(
            DeviceException.class,
            () -> {
              while (true) {
                player.check();
              }
            });
    assertEquals("the roof takes no more sound", told.getMessage());
  }

  @Test
  void closingStopsAndClosesTheDevice() {
    player.open();
    out.allow(RATE / 2);
    player.start(sections.first(), TEMPO, CLAPS);
    out.awaitFrames(RATE / 2);
    out.letGo();
    player.close();
    assertTrue(out.isClosed());
    assertFalse(player.isPlaying());
  }

  @Test
  void afterAnUnderrunMoreIsRenderedAhead() {
    player.open();
    out.allow(RATE / 2);
    player.start(sections.first(), TEMPO, CLAPS);
    out.awaitFrames(RATE / 2);
    int before = player.aheadMs();
    out.runDry();
    out.allow(RATE);
    out.awaitFrames(RATE);
    await(() -> player.aheadMs() > before);
    assertEquals(1, player.gaps().count());
  }

  @Test
  void passagesFollowOneAnotherEachAtItsTempo() {
    LivePiece two =
        new LivePiece(
            List.of(Rivers.timeline(TEMPO, 0), Rivers.timeline(Tempo.of(300), 0)),
            0,
            piece.voice(),
            Optional.empty(),
            Rivers.MONO,
            BreathSettings.study());
    FakeOut device = new FakeOut();
    try (LivePlayer both = new LivePlayer(two, Optional.empty(), device)) {
      both.open();
      both.start(PieceSections.of(two.passages()).first(), TEMPO, HAND);
      device.letGo();
      await(() -> !both.isPlaying());
    }
    List<Long> gaps = gaps(onsets(device.samples()));
    assertEquals(56 + 1 + 56, gaps.size());
    for (int i = 0; i < gaps.size(); i++) {
      long expected = i < 56 ? RATE / 4L : i == 56 ? RATE : RATE / 5L;
      assertEquals(expected, gaps.get(i), "gap " + i);
    }
  }

  @Test
  void goingToAnotherPassageBeginsItAfresh() {
    LivePiece two =
        new LivePiece(
            List.of(Rivers.timeline(TEMPO, 1), Rivers.timeline(Tempo.of(480), 1)),
            1,
            piece.voice(),
            Optional.empty(),
            Rivers.MONO,
            BreathSettings.study());
    PieceSections all = PieceSections.of(two.passages());
    FakeOut device = new FakeOut();
    try (LivePlayer both = new LivePlayer(two, Optional.empty(), device)) {
      both.open();
      device.allow(RATE);
      both.start(all.first(), TEMPO, HAND);
      device.awaitFrames(RATE);
      both.start(all.all().get(9), Tempo.of(480), HAND);
      device.letGo();
      await(() -> both.pendingWishes() == 0);
      LivePosition position = both.position().orElseThrow();
      assertEquals(1, position.segment().section().passage());
      assertEquals(Tempo.of(480), position.segment().tempo());
    }
  }

  private static List<Long> onsets(short[] samples) {
    List<Long> onsets = new ArrayList<>();
    int quiet = RATE;
    for (int i = 0; i < samples.length; i++) {
      if (samples[i] != 0 && quiet >= RATE / 50) {
        onsets.add((long) i);
      }
      quiet = samples[i] == 0 ? quiet + 1 : 0;
    }
    return onsets;
  }

  private static List<Long> gaps(List<Long> onsets) {
    List<Long> gaps = new ArrayList<>();
    for (int i = 1; i < onsets.size(); i++) {
      gaps.add(onsets.get(i) - onsets.get(i - 1));
    }
    return gaps;
  }
}
