package org.matraloom.film;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.sheet.Cell;
import org.matraloom.sheet.Mark;
import org.matraloom.sheet.Row;
import org.matraloom.sheet.SheetWords;
import org.matraloom.time.FrameClock;
import org.matraloom.time.Ratio;

/**
 * What a film says in letters beside its pictures: chapters at rounds and changes of nadai, and the
 * sollus as subtitles.
 *
 * <p>Sources of the forms: FFMETADATA1, ffmpeg's documentation of formats, Metadata; WebVTT, w3c,
 * cue timings and cue text.
 */
final class FilmTexts {

  private static final int MOST_MARKS = 16;
  private static final int MS_PER_SECOND = 1_000;
  private static final long MS_PER_MINUTE = 60_000;
  private static final long MS_PER_HOUR = 3_600_000;

  private final FilmPlan plan;

  /** A place of the film with a name. */
  record Chapter(long frame, String name) {}

  FilmTexts(FilmPlan plan) {
    this.plan = plan;
  }

  /** The chapters, the first one at the beginning. */
  List<Chapter> chapters() {
    List<Chapter> chapters = new ArrayList<>();
    for (FilmPlan.Part part : plan.parts()) {
      FilmPass pass = plan.pass(part);
      if (part.isCard()) {
        String name = pass.name().isEmpty() ? "Count-in" : pass.name();
        chapters.add(new Chapter(part.startFrame(), part.pass() == 0 ? "Title" : name));
      } else {
        chapters.addAll(chapters(part, pass));
      }
    }
    return chapters;
  }

  private List<Chapter> chapters(FilmPlan.Part part, FilmPass pass) {
    Performance performance = pass.timeline().performance();
    SheetWords words = new SheetWords(pass.sheet());
    FrameClock clock = pass.timeline().clock(plan.clock().ratePerSecond());
    PassWords sections = new PassWords(pass);
    TreeMap<Ratio, String> places = new TreeMap<>();
    for (Row row : pass.sheet().rows()) {
      row.turns()
          .forEach(turn -> places.put(turn.beat(), "Nadai " + words.nadai(turn.matrasPerBeat())));
    }
    for (Span.Round round : performance.rounds()) {
      places.put(round.startBeat(), sections.section(round.startBeat()));
    }
    String before = pass.name().isEmpty() ? "" : pass.name() + ": ";
    List<Chapter> chapters = new ArrayList<>();
    places.forEach(
        (beat, name) ->
            chapters.add(new Chapter(part.startFrame() + clock.frameAt(beat), before + name)));
    return chapters;
  }

  /** The chapters as ffmpeg reads them, in frames of sound. */
  String chapterFile() {
    StringBuilder file = new StringBuilder(";FFMETADATA1\n");
    List<Chapter> chapters = chapters();
    for (int index = 0; index < chapters.size(); index++) {
      boolean last = index + 1 == chapters.size();
      long end = last ? plan.frames() : chapters.get(index + 1).frame();
      Chapter chapter = chapters.get(index);
      file.append("[CHAPTER]\nTIMEBASE=1/").append(plan.clock().ratePerSecond());
      file.append("\nSTART=").append(chapter.frame()).append("\nEND=").append(end);
      file.append("\ntitle=").append(chapter.name().replaceAll("([=;#\\\\\n])", "\\\\$1"));
      file.append('\n');
    }
    return file.toString();
  }

  /** The sollus as subtitles, some beats each; none where they are to be said from memory. */
  String subtitleFile() {
    StringBuilder file = new StringBuilder("WEBVTT\n");
    for (FilmPlan.Part part : plan.parts()) {
      FilmPass pass = plan.pass(part);
      if (!part.isCard() && !pass.wordsHidden()) {
        for (Row row : pass.sheet().rows()) {
          groups(row).forEach(cells -> subtitle(part, pass, cells, file));
        }
      }
    }
    return file.toString();
  }

  private static List<List<Cell>> groups(Row row) {
    List<List<Cell>> groups = new ArrayList<>();
    List<Cell> group = new ArrayList<>();
    int marks = 0;
    for (Cell cell : row.cells()) {
      if (!group.isEmpty() && marks + cell.marks().size() > MOST_MARKS) {
        groups.add(group);
        group = new ArrayList<>();
        marks = 0;
      }
      group.add(cell);
      marks += cell.marks().size();
    }
    groups.add(group);
    return groups;
  }

  private void subtitle(FilmPlan.Part part, FilmPass pass, List<Cell> cells, StringBuilder file) {
    List<String> beats = new ArrayList<>();
    for (Cell cell : cells) {
      beats.add(String.join(" ", cell.marks().stream().map(Mark::sign).toList()));
    }
    String text = String.join(" | ", beats.stream().filter(beat -> !beat.isEmpty()).toList());
    if (!text.isEmpty()) {
      FrameClock clock = pass.timeline().clock(plan.clock().ratePerSecond());
      long from = part.startFrame() + clock.frameAt(cells.get(0).from());
      long to = part.startFrame() + clock.frameAt(cells.get(cells.size() - 1).to());
      file.append('\n').append(stamp(from)).append(" --> ").append(stamp(to)).append('\n');
      file.append(text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;"));
      file.append('\n');
    }
  }

  private String stamp(long frame) {
    long ms = plan.clock().millisecondsAt(frame);
    return String.format(
        Locale.ROOT,
        "%02d:%02d:%02d.%03d",
        ms / MS_PER_HOUR,
        ms / MS_PER_MINUTE % 60,
        ms / MS_PER_SECOND % 60,
        ms % MS_PER_SECOND);
  }
}
