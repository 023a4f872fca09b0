package org.matraloom.app.lesson;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import org.matraloom.breath.Care;
import org.matraloom.log.VoicedTime;
import org.matraloom.staircase.StairStep;

/**
 * A practice session: plays a pass, listens to it, says one thing, decides, and goes on by itself.
 *
 * <p>It ends when the time is up, by a key, when the goal is reached, when nothing could be judged
 * three times running, or when a device goes; after a quarter of an hour of voice it rests.
 */
public final class Lesson {

  private static final int MOST_UNJUDGED = 3;

  /** After so much voice it rests. */
  static final double REST_AFTER_SECONDS = TimeUnit.MINUTES.toSeconds(Care.REST_AFTER_MINUTES);

  private static final double REST_SECONDS = TimeUnit.MINUTES.toSeconds(VoicedTime.REST_MINUTES);
  private static final double NANOS = 1e9;
  private static final String ENDED = "Ended as you asked.";
  private static final String REST =
      "That was a quarter of an hour of voice. Rest it for five minutes and drink some water; the"
          + " session then goes on by itself, or at once by any other key.";

  private final Course course;
  private final PassPlayer player;
  private final PassEar ear;
  private final LessonNotes notes;
  private final boolean explains;
  private final double restAfterSeconds;
  private final LessonTally tally = new LessonTally();

  private int unjudged;
  private double restedAtSeconds;
  private boolean saidTheWhole;

  Lesson(
      Course course,
      PassPlayer player,
      PassEar ear,
      LessonNotes notes,
      boolean explains,
      double restAfterSeconds) {
    this.restAfterSeconds = restAfterSeconds;
    this.course = course;
    this.player = player;
    this.ear = ear;
    this.notes = notes;
    this.explains = explains;
  }

  /**
   * How a session ended.
   *
   * @param why a sentence
   * @param summary what it came to, a sentence a line
   * @param isBroken whether a device or the disk had gone
   */
  public record End(String why, List<String> summary, boolean isBroken) {}

  /**
   * Goes on until the time is up, and to the end of the pass begun.
   *
   * @param seconds how long
   * @param clockNanos a clock of nanoseconds
   * @return how it ended
   */
  public End run(double seconds, LongSupplier clockNanos) {
    long begun = clockNanos.getAsLong();
    try {
      String why = "";
      while (why.isEmpty()) {
        why =
            (clockNanos.getAsLong() - begun) / NANOS >= seconds
                ? "The time is up."
                : onePass(clockNanos);
      }
      notes.decided("end: " + why);
      return end(why, false);
    } catch (IOException gone) {
      String kept =
          "The session broke off: "
              + gone.getMessage()
              + "; "
              + notes.takes()
              + (notes.takes() == 1 ? " take is" : " takes are")
              + " kept in "
              + notes.folder()
              + ".";
      return end(kept, true);
    }
  }

  private End end(String why, boolean isBroken) {
    return new End(
        why,
        new ArrayList<>(tally.summary(course.step(), course.settledTempo(), saidTheWhole)),
        isBroken);
  }

  /** Plays, listens and decides; empty if it goes on, else why it ends. */
  private String onePass(LongSupplier clockNanos) throws IOException {
    LessonPass pass = course.pass();
    boolean isWhole = course.isWhole();
    Path take = notes.nextTake();
    PlayedPass said = player.play(pass, take);
    if (!said.goesOn()) {
      return "Ended as you asked; the pass that was cut off does not count.";
    }
    long played = clockNanos.getAsLong();
    PassEar.Verdict verdict = ear.listen(pass, take, said.heard());
    double listened = (clockNanos.getAsLong() - played) / NANOS;
    notes.note(verdict.entry());
    tally.voiced(verdict.voicedSeconds());
    saidTheWhole |= isWhole;
    StairStep step = decide(pass, verdict, isWhole);
    notes.decided(
        String.format(
            Locale.ROOT,
            "%s: %s: %s %s (measured in %.2f s)",
            take.getFileName(),
            pass.words(),
            verdict
                .heard()
                .map(heard -> heard.clean() ? "clean." : "missed.")
                .orElse("not judged."),
            verdict.sentence() + " " + step.reason(),
            listened));
    boolean goesOn =
        player.tell(step, verdict.sentence(), explains ? step.reason() : shortly(step));
    if (step.isDone()) {
      return step.reason();
    }
    return goesOn ? whetherToGoOn() : ENDED;
  }

  private StairStep decide(LessonPass pass, PassEar.Verdict verdict, boolean isWhole) {
    if (verdict.heard().isEmpty()) {
      unjudged++;
      StairStep now = course.step();
      return new StairStep(
          now.tempo(),
          now.help(),
          now.looped(),
          StairStep.Move.SAME,
          "Not judged: the same again.",
          false);
    }
    unjudged = 0;
    tally.add(pass, verdict.heard().get(), isWhole);
    return course.after(verdict.heard().get());
  }

  private String whetherToGoOn() throws IOException {
    if (unjudged >= MOST_UNJUDGED) {
      return "Three passes running could not be judged; look at the microphone and the score.";
    }
    if (tally.voicedSeconds() - restedAtSeconds < restAfterSeconds) {
      return "";
    }
    restedAtSeconds = tally.voicedSeconds();
    notes.decided("rest: " + REST);
    return player.rest(REST_SECONDS, REST) ? "" : ENDED;
  }

  private static String shortly(StairStep step) {
    String what = step.looped().map(place -> place.words() + " ").orElse("");
    return "Next: " + what + "at " + step.tempo() + ", " + step.help().words() + ".";
  }
}
