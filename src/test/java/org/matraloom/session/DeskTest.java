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
import org.matraloom.sound.Part;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/** Each key does what the list of keys says, and what is shown is what was asked for. */
@Timeout(60)
class DeskTest {

  private static final int RATE = Rivers.RATE;

  private final FakeOut out = new FakeOut();
  private final LivePiece piece = Rivers.piece(Tempo.of(240), 1);
  private final LivePlayer player = new LivePlayer(piece, Optional.empty(), out);
  private final Desk desk = new Desk(piece, Mix.lesson(), player);

  @BeforeEach
  void open() {
    player.open();
  }

  @AfterEach
  void close() {
    out.letGo();
    player.close();
  }

  private void press(Action... actions) {
    for (Action action : actions) {
      desk.press(new Press(action, 0, System.nanoTime()));
    }
  }

  private void pressRound(int number) {
    desk.press(new Press(Action.ROUND, number, 0));
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

  private void hearUntil(Predicate<DeskState> what) {
    long frames = out.playedFrames();
    while (!what.test(desk.state())) {
      frames += RATE / 50;
      hear(frames);
    }
  }

  @Test
  void startAndStop() {
    assertFalse(desk.state().played().isPlaying());
    press(Action.START_STOP);
    assertTrue(desk.state().played().isPlaying());
    hear(RATE);
    press(Action.START_STOP);
    out.letGo();
    await(() -> !desk.state().played().isPlaying());
    assertTrue(desk.state().told().message().startsWith("stopped"), desk.state().told().message());
  }

  @Test
  void tempoKeys() {
    press(Action.FASTER, Action.FASTER, Action.SLOWER, Action.MUCH_FASTER);
    assertEquals(Tempo.of(246), desk.state().chosen().tempo());
    press(Action.MUCH_SLOWER, Action.HALF);
    assertEquals(new Tempo(Ratio.of(241, 2)), desk.state().chosen().tempo());
    press(Action.DOUBLE, Action.DOUBLE);
    assertEquals(Tempo.of(482), desk.state().chosen().tempo());
    press(Action.DOUBLE);
    assertEquals(Tempo.of(482), desk.state().chosen().tempo());
    assertEquals("the tempo stays from 5 to 600", desk.state().told().message());
  }

  @Test
  void aTempoKeyWhilePlayingIsHeard() {
    press(Action.START_STOP);
    hear(RATE);
    press(Action.HALF);
    assertEquals(Tempo.of(120), desk.state().chosen().tempo());
    hearUntil(state -> state.played().spot().orElseThrow().lap().tempo().equals(Tempo.of(120)));
  }

  @Test
  void tapsSetTheTempo() {
    for (int tap = 0; tap < 4; tap++) {
      desk.press(new Press(Action.TAP, 0, tap * 500_000_000L));
    }
    assertEquals(Tempo.of(120), desk.state().chosen().tempo());
  }

  @Test
  void mutesOfEveryPart() {
    for (Switch part : desk.state().chosen().parts()) {
      press(part.action());
      assertTrue(desk.state().chosen().mix().channels().get(part.part()).muted(), part.words());
      press(part.action());
      assertFalse(desk.state().chosen().mix().channels().get(part.part()).muted(), part.words());
    }
    assertEquals(
        List.of(Switch.CLAPS, Switch.COUNTS, Switch.WAVES, Switch.TICKS, Switch.VOICE),
        desk.state().chosen().parts(),
        "no drone and no breath cues in this piece");
    press(Action.DRONE);
    assertEquals(Mix.lesson(), desk.state().chosen().mix());
  }

  @Test
  void sectionsForwardAndBackAndFromTheBeginning() {
    press(Action.NEXT, Action.NEXT);
    assertEquals("Delta", desk.state().chosen().section().name());
    press(Action.PREVIOUS);
    assertEquals("Bend", desk.state().chosen().section().name());
    press(Action.FIRST, Action.PREVIOUS);
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
    press(Action.START_STOP);
    hearUntil(state -> state.chosen().section().name().equals("Bend"));
    hear(out.playedFrames() + RATE / 2);
    press(Action.AGAIN);
    hearUntil(
        state ->
            state.played().spot().orElseThrow().lap().section().name().equals("Bend")
                && !state.played().spot().orElseThrow().isBeforeTheMouth());
    assertEquals(8, desk.state().played().spot().orElseThrow().beat());
  }

  @Test
  void aLoopIsSetShownAndLetGo() {
    press(Action.START_STOP);
    hear(RATE);
    press(Action.LOOP);
    assertEquals("Source", desk.state().chosen().loop().orElseThrow().name());
    hearUntil(state -> state.played().spot().orElseThrow().lap().shiftBeats() > 0);
    press(Action.LOOP);
    assertEquals(Optional.empty(), desk.state().chosen().loop());
    press(Action.LOOP_ROUND);
    assertEquals("River", desk.state().chosen().loop().orElseThrow().name());
  }

  @Test
  void theListOfKeysComesAndGoes() {
    press(Action.HELP);
    assertTrue(desk.state().told().showsKeys());
    press(Action.HELP);
    assertFalse(desk.state().told().showsKeys());
    press(Action.HELP, Action.TICKS);
    assertFalse(
        desk.state().told().showsKeys(), "any other key does what it does and shows the page");
    assertTrue(desk.state().chosen().mix().channels().get(Part.TICK).muted());
  }

  @Test
  void quitting() {
    assertFalse(desk.hasQuit());
    press(Action.QUIT);
    assertTrue(desk.hasQuit());
  }
}
