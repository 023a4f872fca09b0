package org.matraloom.madetake;

import java.nio.file.Path;
import java.util.List;
import org.matraloom.notation.ScoreReader;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;

/**
 * One take to be made and measured.
 *
 * @param group what it is to show
 * @param sample the name of a sample score
 * @param voice who says it: low, high, or the name of a folder of words
 * @param flaws what is right and wrong in it
 * @param room where it is recorded
 */
public record TakeCase(Group group, String sample, String voice, Flaws flaws, RoomKind room) {

  /** What a take is to show. */
  public enum Group {
    CLEAN,
    DRIFT,
    LANDING,
    SOLLUS,
    RESTART,
    NOISE,
    BLEED,
    ROOM,
    LEAD,
    HABIT;

    /** Whether tempo and landing must be found exactly. */
    public boolean isExact() {
      return this == CLEAN || this == DRIFT || this == LANDING || this == LEAD;
    }

    /** Whether other sounds are so loud that fewer sollus need be matched. */
    public boolean isLoud() {
      return this == NOISE || this == BLEED;
    }
  }

  private static final double BEHIND_SECONDS = 0.015;

  public Timeline timeline() {
    return timeline(Path.of("samples-synth", sample + ".loom"));
  }

  /** A score without a count-in. */
  public static Timeline timeline(Path score) {
    return ScoreTimeline.of(
        Performance.of(ScoreReader.read(score, Lexicon.standard()).composition().orElseThrow()), 0);
  }

  /** Makes the take. */
  public MadeTake make(Speakers speakers) {
    Timeline timeline = timeline();
    MadeTake take = MadeTake.of(timeline, flaws, speakers.named(voice));
    return room.record(
        take, room == RoomKind.SECOND_VOICE ? behind(timeline, speakers) : take, flaws.seed);
  }

  /** The same piece at the same tempo by another voice, a little later. */
  private MadeTake behind(Timeline timeline, Speakers speakers) {
    Flaws other = new Flaws(flaws.seed + 1);
    other.tempoFactor = flaws.tempoFactor;
    other.driftPercent = flaws.driftPercent;
    other.startSeconds = flaws.startSeconds + BEHIND_SECONDS;
    return MadeTake.of(timeline, other, speakers.named(voice.equals("low") ? "high" : "low"));
  }

  /** The rounds with five in a beat. */
  public List<Integer> khandaRounds() {
    return timeline().performance().rounds().stream()
        .filter(round -> round.nadai() == 5)
        .map(Span.Round::number)
        .toList();
  }

  @Override
  public String toString() {
    return group
        + " "
        + sample
        + " "
        + voice
        + " "
        + room
        + " "
        + flaws.khanda.map(Enum::name).orElse("")
        + " seed "
        + flaws.seed;
  }
}
