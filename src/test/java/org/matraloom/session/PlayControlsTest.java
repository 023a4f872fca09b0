package org.matraloom.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.matraloom.device.FakeOut;
import org.matraloom.live.LivePiece;
import org.matraloom.live.LivePlayer;
import org.matraloom.live.Rivers;
import org.matraloom.sound.Mix;
import org.matraloom.sound.MixPart;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/** Each key does what the list of keys says, and what is shown is what was asked for. */
@Timeout(60)
class PlayControlsTest {

  private static final int RATE = Rivers.RATE;

  private final FakeOut out = new FakeOut();
  private final LivePiece piece = Rivers.piece(Tempo.of(240), 1);
  private final LivePlayer player = new LivePlayer(piece, Optional.empty(), out);
  private final PlayControls desk = new PlayControls(piece, Mix.lesson(), player);

  @BeforeEach
  void open() {
    player.open();
  }

  @AfterEach
  void close() {
    out.letGo();
    player.close();
  }

  private void press(KeyAction... actions) {
    for (KeyAction action : actions) {
      desk.press(new KeyPress(action, 0, System.nanoTime()));
    }
  }

  private void pressRound(int number) {
    desk.press(new KeyPress(KeyAction.ROUND, number, 0));
  }

  private static void await(BooleanSupplier what) {
    while (!what.getAsBoolean()) {
      Thread.yield();
    }
  }

  private void hear(long frames) {
    out.allow(frames);
    out.awaitFrames(frames);
    await(() -> player.pendingWishes() == 0);
  }

  private void hearUntil(Predicate<PlayState> what) {
    long frames = out.playedFrames();
    while (!what.test(desk.state())) {
      frames += RATE / 50;
      hear(frames);
    }
  }

  @Test
  void startAndStop() {
    assertFalse(desk.state().played().isPlaying());
    press(KeyAction.START_STOP);
    assertTrue(desk.state().played().isPlaying());
    hear(RATE);
    press(KeyAction.START_STOP);
    out.letGo();
    await(() -> !desk.state().played().isPlaying());
    assertTrue(desk.state().told().message().startsWith("stopped"), desk.state().told().message());
  }

  @Test
  void tempoKeys() {
    press(KeyAction.FASTER, KeyAction.FASTER, KeyAction.SLOWER, KeyAction.MUCH_FASTER);
    assertEquals(Tempo.of(246), desk.state().chosen().tempo());
    press(KeyAction.MUCH_SLOWER, KeyAction.HALF);
    assertEquals(new Tempo(Ratio.of(241, 2)), desk.state().chosen().tempo());
    press(KeyAction.DOUBLE, KeyAction.DOUBLE);
    assertEquals(Tempo.of(482), desk.state().chosen().tempo());
    press(KeyAction.DOUBLE);
    assertEquals(Tempo.of(482), desk.state().chosen().tempo());
    assertEquals("the tempo stays from 5 to 600", desk.state().told().message());
  }

  @Test
  void aTempoKeyWhilePlayingIsHeard() {
    press(KeyAction.START_STOP);
    hear(RATE);
    press(KeyAction.HALF);
    assertEquals(Tempo.of(120), desk.state().chosen().tempo());
    hearUntil(state -> state.played().spot().orElseThrow().lap().tempo().equals(Tempo.of(120)));
  }

  @Test
  void tapsSetTheTempo() {
    for (int tap = 0; tap < 4; tap++) {
      desk.press(new KeyPress(KeyAction.TAP, 0, tap * 500_000_000L));
    }
    assertEquals(Tempo.of(120), desk.state().chosen().tempo());
  }

  @Test
  void mutesOfEveryPart() {
    for (PartSwitch part : desk.state().chosen().parts()) {
      press(part.action());
      assertTrue(desk.state().chosen().mix().channels().get(part.part()).muted(), part.words());
      press(part.action());
      assertFalse(desk.state().chosen().mix().channels().get(part.part()).muted(), part.words());
    }
    assertEquals(
        List.of(
            PartSwitch.CLAPS,
            PartSwitch.COUNTS,
            PartSwitch.WAVES,
            PartSwitch.TICKS,
            PartSwitch.VOICE),
        desk.state().chosen().parts(),
        "no drone and no breath cues in this piece");
    press(KeyAction.DRONE);
    assertEquals(Mix.lesson(), desk.state().chosen().mix());
  }

  @Test
  void sectionsForwardAndBackAndFromTheBeginning() {
    press(KeyAction.NEXT, KeyAction.NEXT);
    assertEquals("Delta", desk.state().chosen().section().name());
    press(KeyAction.PREVIOUS);
    assertEquals("Bend", desk.state().chosen().section().name());
    press(KeyAction.FIRST, KeyAction.PREVIOUS);
    assertEquals("Source", desk.state().chosen().section().name());
    assertEquals(1, desk.state().chosen().sectionNumber());
  }

  @Test
  void goingToARoundStartsItsFirstSection() {
    pressRound(3);
    assertTrue(desk.state().played().isPlaying());
    assertEquals(3, desk.state().chosen().section().round());
    assertEquals("Source", desk.state().chosen().section().name());
    pressRound(8);
    assertEquals("there is no round 8", desk.state().told().message());
  }

  @Test
  void againGoesBackToTheSectionThatIsHeard() {
    press(KeyAction.START_STOP);
    hearUntil(state -> state.chosen().section().name().equals("Bend"));
    hear(out.playedFrames() + RATE / 2);
    press(KeyAction.AGAIN);
    hearUntil(
        state ->
            state.played().spot().orElseThrow().lap().section().name().equals("Bend")
                && !state.played().spot().orElseThrow().isBeforeTheMouth());
    assertEquals(8, desk.state().played().spot().orElseThrow().beat());
  }

  @Test
  void aLoopIsSetShownAndLetGo() {
    press(KeyAction.START_STOP);
    hear(RATE);
    press(KeyAction.LOOP);
    assertEquals("Source", desk.state().chosen().loop().orElseThrow().name());
    hearUntil(state -> state.played().spot().orElseThrow().lap().shiftBeats() > 0);
    press(KeyAction.LOOP);
    assertEquals(Optional.empty(), desk.state().chosen().loop());
    press(KeyAction.LOOP_ROUND);
    assertEquals("River", desk.state().chosen().loop().orElseThrow().name());
  }

  @Test
  void theListOfKeysComesAndGoes() {
    press(KeyAction.HELP);
    assertTrue(desk.state().told().showsKeys());
    press(KeyAction.HELP);
    assertFalse(desk.state().told().showsKeys());
    press(KeyAction.HELP, KeyAction.TICKS);
    assertFalse(
        desk.state().told().showsKeys(), "any other key does what it does and shows the page");
    assertTrue(desk.state().chosen().mix().channels().get(MixPart.TICK).muted());
  }

  @Test
  void quitting() {
    assertFalse(desk.hasQuit());
    press(KeyAction.QUIT);
    assertTrue(desk.hasQuit());
  }
}
