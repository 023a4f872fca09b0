package org.matraloom.exchange;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Step;
import org.matraloom.script.SolluWriting;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/**
 * A timeline as WebVTT captions for a lesson video that begins where the timeline does.
 *
 * <p>A caption is a phrase, shorter where it would be too long to read, with a time inside it for
 * each sollu; or a caption is a sollu. Source of the form: WebVTT, w3c/webvtt, sections on cue
 * timings and cue text.
 */
public final class Captions {

  /** The most sollus in one caption. */
  public static final int MOST_SOLLUS = 16;

  private static final int MS_PER_SECOND = 1_000;
  private static final long MS_PER_MINUTE = 60_000;
  private static final long MS_PER_HOUR = 3_600_000;

  private final Timeline timeline;
  private final SolluWriting writing;
  private final Appendable out;
  private final boolean eachSollu;
  private final List<Event.SolluSaid> waiting = new ArrayList<>();
  private String name = "";
  private String named = "Round ";
  private long lastStartMs;

  private Captions(Timeline timeline, SolluWriting writing, boolean eachSollu, Appendable out) {
    this.timeline = timeline;
    this.writing = writing;
    this.eachSollu = eachSollu;
    this.out = out;
  }

  /**
   * Writes captions, one a phrase.
   *
   * @param timeline what happens
   * @param writing how sollus are written
   * @param out where the captions go
   * @throws IOException if they cannot be written
   */
  public static void ofPhrases(Timeline timeline, SolluWriting writing, Appendable out)
      throws IOException {
    new Captions(timeline, writing, false, out).write();
  }

  /**
   * Writes captions, one a sollu.
   *
   * @param timeline what happens
   * @param writing how sollus are written
   * @param out where the captions go
   * @throws IOException if they cannot be written
   */
  public static void ofSollus(Timeline timeline, SolluWriting writing, Appendable out)
      throws IOException {
    new Captions(timeline, writing, true, out).write();
  }

  private void write() throws IOException {
    out.append("WEBVTT\n");
    for (Event event : timeline) {
      if (event instanceof Event.RoundStart round) {
        flush();
        name = named + round.number();
      } else if (event instanceof Event.NoticePut put
          && put.notice().step() instanceof Step.Part part) {
        named = part.name() + ", round ";
      } else if (event instanceof Event.SectionStart section) {
        flush();
        name = named + section.round() + " " + section.phrase();
      } else if (event instanceof Event.Silence || event instanceof Event.LandingPoint) {
        flush();
      } else if (event instanceof Event.SolluSaid said) {
        if (waiting.size() >= (eachSollu ? 1 : MOST_SOLLUS)) {
          flush();
        }
        waiting.add(said);
      }
    }
    flush();
  }

  private void flush() throws IOException {
    if (waiting.isEmpty()) {
      return;
    }
    Event.SolluSaid last = waiting.get(waiting.size() - 1);
    long startMs = Math.max(lastStartMs, ms(waiting.get(0).beat()));
    long endMs = Math.max(startMs + 1, ms(last.beat().plus(last.beats())));
    lastStartMs = startMs;
    out.append("\n" + identifier() + "\n" + stamp(startMs) + " --> " + stamp(endMs) + "\n");
    long innerMs = startMs;
    for (int index = 0; index < waiting.size(); index++) {
      Event.SolluSaid said = waiting.get(index);
      long atMs = ms(said.beat());
      if (index > 0 && atMs > innerMs && atMs < endMs) {
        out.append(" <" + stamp(atMs) + ">");
        innerMs = atMs;
      } else if (index > 0) {
        out.append(' ');
      }
      out.append(safe(writing.alone(said.sollu())));
    }
    out.append('\n');
    waiting.clear();
  }

  /** The name of the phrase; an arrow may not stand in it. */
  private String identifier() {
    return name.replace("-->", "->");
  }

  private static String safe(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  private long ms(Ratio beat) {
    Tempo tempo = timeline.performance().composition().tempo();
    return tempo.unitsOf(beat.minus(timeline.originBeat()), MS_PER_SECOND);
  }

  static String stamp(long ms) {
    return String.format(
        Locale.ROOT,
        "%02d:%02d:%02d.%03d",
        ms / MS_PER_HOUR,
        ms / MS_PER_MINUTE % 60,
        ms / MS_PER_SECOND % 60,
        ms % MS_PER_SECOND);
  }
}
