package org.matraloom.app.lesson;

import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.OptionalDouble;
import org.matraloom.app.hear.TakeEntry;
import org.matraloom.breath.BreathPlanner;
import org.matraloom.breath.BreathSettings;
import org.matraloom.log.LogEntry;
import org.matraloom.measure.GuideGaps;
import org.matraloom.measure.GuideStart;
import org.matraloom.measure.TakeFindings;
import org.matraloom.onset.BandEnergies;
import org.matraloom.onset.KnownSounds;
import org.matraloom.onset.OnsetCurve;
import org.matraloom.recording.Recording;
import org.matraloom.recording.Recordings;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.session.GuideHeard;
import org.matraloom.staircase.PassHeard;
import org.matraloom.staircase.Spot;
import org.matraloom.verdict.Cleanness;
import org.matraloom.verdict.Judgement;
import org.matraloom.verdict.PracticeAdvice;
import org.matraloom.wav.WavReader;

/** Measures the take of a pass with the full measure of {@code take}. */
final class PassEar {

  private static final String HEADPHONES =
      "The guide is in the microphone, so this pass does not count: wear headphones, or play softer.";

  private final Lexicon lexicon;
  private final KnownSounds mouth;

  /** An ear that knows no mouth beforehand. */
  PassEar(Lexicon lexicon) {
    this(lexicon, KnownSounds.NONE);
  }

  /**
   * An ear.
   *
   * @param lexicon how sollus are said
   * @param mouth what it knows of who recites
   */
  PassEar(Lexicon lexicon, KnownSounds mouth) {
    this.lexicon = lexicon;
    this.mouth = mouth;
  }

  /**
   * What was heard.
   *
   * @param heard how it went; empty if it cannot be judged
   * @param sentence the one thing to say of it
   * @param entry for the practice log
   * @param voicedSeconds how long the voice was in use
   */
  record Verdict(
      Optional<PassHeard> heard, String sentence, LogEntry entry, double voicedSeconds) {}

  /**
   * Measures a take.
   *
   * @param heard what was looked at of it while it was said; the verdict is the same without
   */
  Verdict listen(LessonPass pass, Path take, Optional<BandEnergies> heard) throws IOException {
    Performance performance = Performance.of(pass.composition());
    if (GuideHeard.in(take, pass.composition().tempo())) {
      return unjudged(pass, HEADPHONES);
    }
    OnsetCurve curve = curve(take, heard);
    TakeFindings findings =
        TakeFindings.of(
            ScoreTimeline.of(performance, 0),
            curve,
            lexicon,
            GuideStart.of(take),
            BreathPlanner.plan(performance, BreathSettings.study()),
            mouth);
    Judgement judgement = Judgement.of(findings, performance);
    if (judgement.practice().isEmpty()) {
      return unjudged(pass, judgement.wrong());
    }
    Cleanness clean = new Cleanness(findings, performance);
    PassHeard went =
        clean.ofWhole()
            ? PassHeard.CLEAN
            : PassHeard.missed(judgement.practice().get().told(new FaultSpot()));
    String sentence = went.clean() ? judgement.good() : judgement.wrong();
    LogEntry entry = remarked(TakeEntry.of(findings, performance, take), pass.help().words());
    return new Verdict(Optional.of(went), sentence, entry, clean.voicedSeconds());
  }

  /** What was heard meanwhile stands for the file if it is all of it, and all of it counts. */
  private static OnsetCurve curve(Path take, Optional<BandEnergies> heard) throws IOException {
    GuideGaps gaps = GuideGaps.of(take);
    if (heard.isPresent()
        && gaps.stretches().isEmpty()
        && frames(take) == heard.get().lengthFrames()) {
      return OnsetCurve.of(heard.get());
    }
    try (Recording sound = gaps.leftOutOf(Recordings.open(take))) {
      return OnsetCurve.of(sound);
    }
  }

  private static long frames(Path take) throws IOException {
    try (WavReader reader = new WavReader(take)) {
      return reader.lengthFrames();
    }
  }

  private static Verdict unjudged(LessonPass pass, String why) {
    String title = pass.composition().title();
    LogEntry entry =
        new LogEntry(
            OffsetDateTime.now(),
            LogEntry.Kind.DRILL,
            title.isBlank() ? "untitled" : title,
            OptionalDouble.of(pass.tempo()),
            LogEntry.Outcome.UNKNOWN,
            0,
            Optional.empty(),
            shortened(why));
    return new Verdict(Optional.empty(), why, entry, 0);
  }

  private static LogEntry remarked(LogEntry entry, String remark) {
    return new LogEntry(
        entry.when(),
        entry.kind(),
        entry.piece(),
        entry.tempo(),
        entry.outcome(),
        entry.voicedSeconds(),
        entry.recording(),
        shortened(remark));
  }

  private static String shortened(String words) {
    return words.substring(0, Math.min(words.length(), LogEntry.LONGEST_TEXT));
  }

  /** Where the fault is that an advice is given for. */
  private static final class FaultSpot implements PracticeAdvice.Cases<Optional<Spot>> {
    @Override
    public Optional<Spot> join(PracticeAdvice.Join join) {
      return Optional.of(new Spot(Spot.Kind.JOIN, Integer.toString(join.number())));
    }

    @Override
    public Optional<Spot> switching(PracticeAdvice.Switch words) {
      return Optional.empty();
    }

    @Override
    public Optional<Spot> loop(PracticeAdvice.Loop loop) {
      return Optional.of(new Spot(Spot.Kind.PHRASE, loop.phrase()));
    }

    @Override
    public Optional<Spot> clicks(PracticeAdvice.Clicks clicks) {
      return Optional.empty();
    }

    @Override
    public Optional<Spot> ladder(PracticeAdvice.Ladder ladder) {
      return Optional.empty();
    }
  }
}
