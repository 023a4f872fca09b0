package org.matraloom.app.open;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.matraloom.app.cli.UserError;
import org.matraloom.app.lesson.Lesson;
import org.matraloom.app.lesson.LessonPass;
import org.matraloom.app.lesson.PassPlayer;
import org.matraloom.app.lesson.PlayedPass;
import org.matraloom.score.Lexicon;
import org.matraloom.script.Script;
import org.matraloom.sound.TakeNote;
import org.matraloom.sound.TakeWriter;
import org.matraloom.staircase.StairStep;
import org.matraloom.wav.PcmFormat;

/**
 * A practice session whose passes are played and recorded by the page.
 *
 * <p>The session runs on a thread of its own and waits here for what the page brings. A page that
 * asks for nothing for two and a half minutes has gone; a browser may hold up a page that is not in
 * sight.
 */
final class PageSession implements PassPlayer {

  private static final long GONE_NANOS = TimeUnit.SECONDS.toNanos(150);
  private static final long LOOK_MS = 500;

  private long askedNanos = System.nanoTime();
  private int number;
  private SessionView view = SessionView.BEGINNING;
  private Optional<Path> target = Optional.empty();
  private final PageEar ear = new PageEar();
  private boolean isAnswered;
  private boolean isEnded;

  @Override
  public PlayedPass play(LessonPass next, Path take) throws IOException {
    synchronized (this) {
      target = Optional.of(take);
    }
    boolean goesOn = answered(SessionView.pass(next), Long.MAX_VALUE);
    return new PlayedPass(goesOn, ear.whole(number()));
  }

  @Override
  public boolean tell(StairStep step, String sentence, String decision) throws IOException {
    return answered(SessionView.told(step.move(), sentence, decision), Long.MAX_VALUE);
  }

  @Override
  public boolean rest(double seconds, String sentence) throws IOException {
    return answered(SessionView.rest(sentence), Math.round(1e9 * seconds));
  }

  /** Shows how the session ended. */
  synchronized void over(Lesson.End end) {
    ear.end();
    show(SessionView.end(end.why(), end.summary()));
  }

  private void show(SessionView next) {
    view = next;
    number++;
  }

  /** Shows something and waits for the page's answer to it; false if the session is to end. */
  private synchronized boolean answered(SessionView shown, long mostNanos) throws IOException {
    isAnswered = false;
    show(shown);
    long begun = System.nanoTime();
    try {
      while (!isAnswered && !isEnded && System.nanoTime() - begun < mostNanos) {
        if (System.nanoTime() - askedNanos > GONE_NANOS) {
          throw new IOException("the page has gone");
        }
        wait(LOOK_MS);
      }
    } catch (InterruptedException closing) {
      Thread.currentThread().interrupt();
      throw new IOException("the program ends", closing);
    }
    return !isEnded;
  }

  /** What there is to be seen; the sheet of a pass goes with it until the page has seen it. */
  void write(int seen, Script script, Lexicon lexicon, JsonGenerator json) throws IOException {
    SessionView shown;
    int shownNumber;
    synchronized (this) {
      askedNanos = System.nanoTime();
      shown = view;
      shownNumber = number;
    }
    json.writeNumberField("number", shownNumber);
    shown.write(json);
    if (shownNumber != seen && shown.pass().isPresent()) {
      SessionView.sheet(shown.pass().get(), script, lexicon, json);
    }
  }

  /** The page has done what was shown under a number; a late answer is none. */
  synchronized void answer(int answered) {
    isAnswered |= answered == number;
    notifyAll();
  }

  /** Ends the session at once; a pass that is being played does not count. */
  synchronized void end() {
    isEnded = true;
    notifyAll();
  }

  private synchronized int number() {
    return number;
  }

  /** Listens to a pass while it is said. */
  PageEar ear() {
    return ear;
  }

  /** The pass that is shown under a number; empty if that is over. */
  synchronized Optional<LessonPass> playing(int shown) {
    return shown == number ? view.pass() : Optional.empty();
  }

  /** The pass that is being played. */
  synchronized Optional<LessonPass> playing() {
    return view.pass();
  }

  /**
   * Keeps the take of the pass that was shown under a number.
   *
   * @param samples 16 bits, one channel
   * @param startFrame the frame of the take at which the guide begins, if it is known
   * @param tripFrames the round trip, if it is known
   */
  void keep(
      int shown,
      byte[] samples,
      PcmFormat format,
      Optional<Long> startFrame,
      Optional<Long> tripFrames)
      throws IOException {
    Optional<LessonPass> said;
    Path take;
    synchronized (this) {
      said = shown == number ? view.pass() : Optional.empty();
      take = target.orElseThrow(() -> new UserError("no pass has been played yet"));
    }
    if (said.isEmpty()) {
      return;
    }
    TakeNote note = said.get().note(startFrame, tripFrames);
    try (TakeWriter writer = new TakeWriter(take, format, note)) {
      writer.write(samples, samples.length / format.bytesPerFrame() * format.bytesPerFrame());
    }
    answer(shown);
  }
}
