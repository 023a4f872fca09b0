package org.matraloom.live;

import java.util.List;
import java.util.Optional;
import org.matraloom.schedule.Timeline;
import org.matraloom.schedule.TimelineExcerpt;
import org.matraloom.sound.Mix;
import org.matraloom.sound.Passage;
import org.matraloom.sound.PlayChange;
import org.matraloom.sound.Renderer;
import org.matraloom.sound.TrackPlace;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/**
 * A piece while it is played: its tempo, mix and place may be changed, and each change begins on
 * the next beat that is not rendered yet.
 *
 * <p>The hand goes on through every change without a beat too many or too few: a jump keeps the
 * place in the tala, and a new tempo is counted from the frame of the beat on which it begins. One
 * thread renders and changes.
 */
final class LiveStream {

  /** The least number of beats before the mouth begins after a jump. */
  static final int LEAST_LEAD_BEATS = 4;

  /** The renderer may settle so many frames more than were asked of it. */
  private static final int SETTLED_AHEAD_FRAMES = 512;

  private final Timeline whole;
  private final int cycleBeats;
  private final long startFrame;
  private final Renderer renderer;
  private final Optional<Fade> fade;
  private Mix mix;
  private LiveClock course;
  private Optional<PieceSection> loop = Optional.empty();
  private long fadeBeat;

  /**
   * Begins to play a passage.
   *
   * @param piece what it belongs to
   * @param section where the mouth begins; the count-in lies before it
   * @param tempo the tempo
   * @param mix how loud each part is
   * @param fade whether voice and ticks go away
   * @param startFrame the frame by which the first frame is called
   */
  LiveStream(
      LivePiece piece,
      PieceSection section,
      Tempo tempo,
      Mix mix,
      Optional<Fade> fade,
      long startFrame) {
    this.whole = piece.timeline(section);
    this.cycleBeats = piece.composition(section).avartana().beats();
    this.mix = mix;
    this.fade = fade;
    this.startFrame = startFrame;
    TimelineExcerpt opening =
        TimelineExcerpt.countedIn(whole, section.startBeat(), piece.countInAvartanas());
    long origin = opening.originBeat().floor();
    int rate = piece.format().ratePerSecond();
    LiveSegment first = new LiveSegment(origin, 0, origin, startFrame, tempo, rate, section, mix);
    this.course = new LiveClock(List.of(first));
    this.fadeBeat = section.startBeat().floor();
    this.renderer =
        new Renderer(
            opening,
            first.pieceClock(),
            mix,
            piece.voice(),
            piece.format().channels(),
            piece.drone(),
            TrackPlace.whole(Long.MAX_VALUE));
  }

  LiveClock course() {
    return course;
  }

  Mix mix() {
    return mix;
  }

  boolean plays(PieceSection section) {
    return section.passage() == last().section().passage();
  }

  /** Renders the next frames, as {@link Renderer#render} does. */
  int render(float[] block, int frames) {
    long settled = openFrame() + frames + SETTLED_AHEAD_FRAMES;
    loopBefore(settled);
    fadeBefore(settled);
    return renderer.render(block, frames);
  }

  void tempo(Tempo tempo) {
    long beat = nextBeat();
    if (isInPiece(beat)) {
      takeOver(last().at(tempo, beat));
    }
  }

  void mix(Mix next) {
    mix = next;
    long beat = nextBeat();
    if (isInPiece(beat)) {
      takeOver(last().with(mix, beat));
    }
  }

  void goTo(PieceSection section) {
    loop = loop.map(looped -> section);
    long beat = nextBeat();
    LiveSegment lap = jump(section, beat);
    fadeBeat = lap.live(section.startBeat()).floor();
    takeOver(lap);
  }

  void loop(Optional<PieceSection> section) {
    loop = section.filter(this::plays);
  }

  private void loopBefore(long settledFrame) {
    if (loop.isEmpty()) {
      return;
    }
    PieceSection section = loop.get();
    Ratio end = last().live(section.endBeat());
    long endFrame = last().frameAt(end);
    if (endFrame < settledFrame) {
      long beat = Math.max(end.ceil(), nextBeat());
      takeOver(jump(section, beat), Math.max(endFrame, openFrame()));
    }
  }

  private void fadeBefore(long settledFrame) {
    long cycle = cycleBeats;
    long samam = (Math.floorDiv(nextBeat() - 1, cycle) + 1) * cycle;
    long avartana = avartana(samam);
    boolean fades = fade.isPresent() && avartana > 0 && !fade.get().isOver(avartana - 1);
    boolean isDue = last().fromBeat() < samam && last().frameAt(samam) < settledFrame;
    if (fades && isDue && isInPiece(samam)) {
      takeOver(last().with(mix, samam));
    }
  }

  private Mix faded(long beat) {
    return fade.map(fading -> fading.apply(mix, avartana(beat))).orElse(mix);
  }

  /** How many avartanas have begun since the mouth began, the one it began in not counted. */
  private long avartana(long beat) {
    long cycle = cycleBeats;
    return Math.max(0, Math.floorDiv(beat, cycle) - Math.floorDiv(fadeBeat, cycle));
  }

  /** A new run at a section, so that it comes in its place in the tala and not at once. */
  private LiveSegment jump(PieceSection section, long beat) {
    Ratio lead = Ratio.of(beat + LEAST_LEAD_BEATS).minus(section.startBeat());
    long cycle = cycleBeats;
    return last().to(section, lead.dividedBy(cycle).ceil() * cycle, beat);
  }

  private void takeOver(LiveSegment lap) {
    takeOver(lap, lap.fromFrame());
  }

  private void takeOver(LiveSegment next, long silentFrame) {
    LiveSegment lap = next.with(faded(next.fromBeat()), next.fromBeat());
    Ratio origin = lap.ofPiece(lap.fromBeat());
    Ratio start = lap.section().startBeat();
    Ratio mouth = start.compareTo(origin) > 0 ? start : origin;
    Passage passage = new Passage(TimelineExcerpt.of(whole, origin, mouth), lap.mix());
    renderer.change(
        new PlayChange(
            passage,
            lap.pieceClock(),
            lap.clockFrame() - startFrame,
            lap.fromFrame() - startFrame,
            silentFrame - startFrame));
    course = course.followedBy(lap);
  }

  private long openFrame() {
    return startFrame + renderer.openFrame();
  }

  private long nextBeat() {
    return last().beatFrom(openFrame());
  }

  private boolean isInPiece(long beat) {
    return last().ofPiece(beat).compareTo(whole.endBeat()) <= 0;
  }

  private LiveSegment last() {
    return course.last();
  }
}
