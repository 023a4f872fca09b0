package org.matraloom.prompt;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.matraloom.onset.Onset;
import org.matraloom.onset.OnsetCurve;
import org.matraloom.recording.HeldRecording;

/**
 * Hears a recorded row and says of each saying whether it can be used, or why it is to be said
 * again: nothing heard, clipped, too soft, a loud room, claps in the microphone, out of step, a
 * sollu that is missing.
 */
public final class SayJudge {

  private static final double SILENT_DB = -60;
  private static final double LEAST_OVER_NOISE_DB = 8;
  private static final double SOFT_DB = -42;
  private static final double SOFTER_DB = 12;
  private static final double CLEAR_OF_NOISE_DB = 25;
  private static final double CLEAR_OF_CLAPS_DB = 30;
  private static final double PRESENT_DB = 20;
  private static final double IN_STEP = 0.6;
  private static final double LEAST_CONFIDENCE = 0.10;
  private static final double EARLY_SECONDS = 0.30;
  private static final double TAIL_SECONDS = 0.20;
  private static final double RINGING_SECONDS = 1.0;
  private static final double QUIET_SHARE = 0.2;
  private static final double LOUD_SHARE = 0.95;

  private final AskedRow row;
  private final float[] sound;
  private final int rate;
  private final double startSeconds;
  private final StretchLevel level;

  /**
   * Prepares to judge.
   *
   * @param row what was asked for
   * @param sound the recording, one channel, full scale at 1
   * @param ratePerSecond its rate
   * @param startSeconds where in it the count-in is heard to begin
   */
  public SayJudge(AskedRow row, float[] sound, int ratePerSecond, double startSeconds) {
    this.row = row;
    this.sound = sound;
    this.rate = ratePerSecond;
    this.startSeconds = startSeconds;
    this.level = new StretchLevel(sound, ratePerSecond);
  }

  /**
   * What was heard.
   *
   * @param says a verdict for each saying that lies in the recording
   * @param usualDb how loud the good ones are in the middle; empty if there are none
   * @param ringSeconds how long the room rings, at most; 0 if that is not heard
   */
  public record Heard(List<SayVerdict> says, OptionalDouble usualDb, double ringSeconds) {

    /** Copies the list. */
    public Heard {
      says = List.copyOf(says);
    }

    /**
     * What may be said of the room.
     *
     * @return a sentence; empty if it does not ring much
     */
    public Optional<String> roomWords() {
      return ringSeconds < RINGING_SECONDS
          ? Optional.empty()
          : Optional.of(
              String.format(
                  Locale.ROOT,
                  "The room rings for up to %.1f s: curtains, books or a bed beside you help.",
                  ringSeconds));
    }
  }

  /**
   * Judges all sayings.
   *
   * @param most how many were asked for
   * @param clapDb how loud the claps are in the microphone, their peaks in dB of full scale; empty
   *     if they are not heard
   * @param usualDb how loud the good rows before were; empty if there were none
   * @return the verdicts
   * @throws IOException never; the sound is in memory
   */
  public Heard judge(int most, OptionalDouble clapDb, OptionalDouble usualDb) throws IOException {
    double quietDb = level.levelDb(startSeconds, startSeconds + AskedRow.sayBegins(0), QUIET_SHARE);
    List<SayVerdict> verdicts = new ArrayList<>();
    List<Double> loudDb = new ArrayList<>();
    double ring = Double.POSITIVE_INFINITY;
    for (int say = 0; say < most && isIn(say); say++) {
      double begins = begins(say);
      double saidDb =
          level.levelDb(begins - EARLY_SECONDS, begins + AskedRow.seconds(), LOUD_SHARE);
      Optional<String> fault = levelFault(begins, saidDb, quietDb, clapDb, usualDb);
      SayVerdict verdict = fault.isPresent() ? SayVerdict.bad(fault.get()) : placed(begins, saidDb);
      if (verdict.isGood()) {
        loudDb.add(saidDb);
        double last = verdict.seconds().get(verdict.seconds().size() - 1);
        double rings = level.ringSeconds(last, begins + AskedRow.seconds() - TAIL_SECONDS);
        ring = rings > 0 ? Math.min(ring, rings) : ring;
      }
      verdicts.add(verdict);
    }
    double[] sorted = loudDb.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    OptionalDouble middle =
        sorted.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(sorted[sorted.length / 2]);
    return new Heard(verdicts, middle, ring == Double.POSITIVE_INFINITY ? 0 : ring);
  }

  private double begins(int say) {
    return startSeconds + AskedRow.sayBegins(say);
  }

  private boolean isIn(int say) {
    return begins(say) + AskedRow.seconds() - TAIL_SECONDS <= (double) sound.length / rate;
  }

  private Optional<String> levelFault(
      double begins, double saidDb, double quietDb, OptionalDouble clapDb, OptionalDouble usualDb) {
    double ends = begins + AskedRow.seconds();
    if (clapDb.isPresent() && clapDb.getAsDouble() > saidDb - CLEAR_OF_CLAPS_DB) {
      return Optional.of(
          String.format(
              Locale.ROOT,
              "the claps are in the microphone, at %.0f dB; put on headphones",
              clapDb.getAsDouble()));
    }
    if (saidDb < SILENT_DB || saidDb < quietDb + LEAST_OVER_NOISE_DB) {
      return Optional.of("nothing was heard; see that the microphone is open");
    }
    if (level.isClipped(begins - EARLY_SECONDS, ends)) {
      return Optional.of("it was clipped; turn the input down, or move a hand's breadth away");
    }
    if (saidDb < SOFT_DB) {
      return Optional.of(
          String.format(
              Locale.ROOT, "it was too soft, %.0f dB; come nearer, or turn the input up", saidDb));
    }
    if (usualDb.isPresent() && saidDb < usualDb.getAsDouble() - SOFTER_DB) {
      return Optional.of(
          String.format(
              Locale.ROOT,
              "it was %.0f dB softer than the rows before; keep your distance",
              usualDb.getAsDouble() - saidDb));
    }
    if (saidDb < quietDb + CLEAR_OF_NOISE_DB) {
      return Optional.of(
          String.format(
              Locale.ROOT,
              "the room is loud, only %.0f dB under you; shut the window, stop the fan",
              saidDb - quietDb));
    }
    return Optional.empty();
  }

  private SayVerdict placed(double begins, double saidDb) throws IOException {
    RowGrid grid = new RowGrid(row.places(), onsets(begins), begins);
    double shift = grid.shiftSeconds();
    List<Optional<Double>> sounds = grid.sounds(shift);
    List<Double> seconds = new ArrayList<>();
    List<String> missing = new ArrayList<>();
    for (int i = 0; i < sounds.size(); i++) {
      AskedRow.DueSollu place = row.places().get(i);
      double due = grid.due(place, shift);
      double nearDb = level.levelDb(due, due + AskedRow.matraSeconds() / 2, LOUD_SHARE);
      if (sounds.get(i).isEmpty() && nearDb < saidDb - PRESENT_DB) {
        missing.add(place.sound());
      }
      seconds.add(sounds.get(i).orElse(due));
    }
    long found = sounds.stream().filter(Optional::isPresent).count();
    if (!missing.isEmpty()) {
      return SayVerdict.bad(String.join(", ", missing) + " was not heard");
    }
    if (found < IN_STEP * sounds.size()) {
      return SayVerdict.bad("it was not in step with the claps; listen to the row once more");
    }
    return SayVerdict.good(inOrder(seconds));
  }

  /** A place that was taken from the grid may lie behind the sound after it. */
  private static List<Double> inOrder(List<Double> seconds) {
    double[] ordered = seconds.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    return Arrays.stream(ordered).boxed().toList();
  }

  private List<Onset> onsets(double begins) throws IOException {
    double from = begins - EARLY_SECONDS;
    int first = Math.max(0, (int) (from * rate));
    int end = Math.min(sound.length, (int) ((begins + AskedRow.seconds() + TAIL_SECONDS) * rate));
    float[] part = Arrays.copyOfRange(sound, first, end);
    OnsetCurve curve = OnsetCurve.of(new HeldRecording(part, rate));
    return curve.onsets(LEAST_CONFIDENCE).stream()
        .map(onset -> new Onset(onset.seconds() + (double) first / rate, onset.confidence()))
        .toList();
  }
}
