package org.matraloom.session;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.util.Optional;
import org.matraloom.device.AudioOut;
import org.matraloom.live.Fade;
import org.matraloom.live.LivePiece;
import org.matraloom.live.LivePlayer;
import org.matraloom.sound.Mix;

/** Plays a piece while somebody looks on and presses keys. */
public final class LiveSession {

  private static final int LOOK_MS = 40;

  private final LivePiece piece;
  private final Mix mix;
  private final Optional<Fade> fade;
  private final AudioOut out;
  private final PlayedTime played = new PlayedTime();

  /**
   * Prepares a session.
   *
   * @param piece what is played
   * @param mix how loud each part is at the start
   * @param fade whether voice and ticks go away
   * @param out where it is heard; closed at the end of the session
   */
  public LiveSession(LivePiece piece, Mix mix, Optional<Fade> fade, AudioOut out) {
    this.piece = piece;
    this.mix = mix;
    this.fade = fade;
    this.out = out;
  }

  /**
   * Takes over the terminal until the user quits; playing begins with a key.
   *
   * @return false, with nothing done, if the program does not run in a terminal
   * @throws IOException if the device or the terminal has gone; the terminal is put back first
   */
  public boolean onScreen() throws IOException {
    Optional<Screen> taken = Screen.open();
    if (taken.isEmpty()) {
      return false;
    }
    try (Screen screen = taken.get();
        LivePlayer player = new LivePlayer(piece, fade, out)) {
      player.open();
      PlayControls desk = new PlayControls(piece, mix, player);
      KeyDecoder keys = new KeyDecoder(screen);
      while (!desk.hasQuit()) {
        player.check();
        played.look(System.nanoTime(), player.isPlaying());
        screen.show(LiveView.lines(desk.state(), screen.columns(), screen.rows()));
        keys.next(LOOK_MS).ifPresent(desk::press);
      }
    }
    return true;
  }

  /**
   * Plays from the beginning to the end and tells what goes on in plain lines; keys are taken from
   * a stream.
   *
   * @param lines where the lines go
   * @param in where keys come from; its end is not a wish to quit
   * @throws IOException if the device has gone
   */
  public void inLines(PrintWriter lines, InputStream in) throws IOException {
    PlainLines plain = new PlainLines(lines);
    try (LivePlayer player = new LivePlayer(piece, fade, out)) {
      player.open();
      PlayControls desk = new PlayControls(piece, mix, player);
      KeyDecoder keys = new KeyDecoder(new InputKeys(in));
      desk.start();
      while (!desk.hasQuit() && player.isPlaying()) {
        player.check();
        played.look(System.nanoTime(), player.isPlaying());
        plain.show(desk.state());
        keys.next(LOOK_MS).ifPresent(desk::press);
      }
      played.look(System.nanoTime(), false);
      player.check();
      lines.println("ended; underruns " + gaps(player).words());
    }
  }

  private GapTally gaps(LivePlayer player) {
    return GapTally.of(player.gaps(), piece.format().ratePerSecond());
  }

  /**
   * How long something was playing so far.
   *
   * @return seconds, stops and pauses not counted
   */
  public double playedSeconds() {
    return played.seconds();
  }
}
