package org.matraloom.app.prove;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import org.matraloom.app.cli.Paragraph;
import org.matraloom.kanakku.BeatRow;
import org.matraloom.kanakku.LengthWords;
import org.matraloom.score.Nadai;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;

/**
 * A round cut by the beat, a row a kriya.
 *
 * @param round the round
 * @param cycle beats of an avartana
 * @param rows its beats
 */
record BeatTable(Span.Round round, int cycle, List<BeatRow> rows) {

  private static final int WIDEST = 30;
  private static final int COLUMNS = 80;
  private static final String BESIDE = "   ";

  /** Copies the list. */
  BeatTable {
    rows = List.copyOf(rows);
  }

  static BeatTable of(Span.Round round, Performance performance) {
    int cycle = performance.avartana().beats();
    return new BeatTable(round, cycle, BeatRow.of(round, performance));
  }

  void print(int most, PrintWriter out) {
    String kalam = round.kalam() == 1 ? "" : ", kalam " + round.kalam();
    out.println(
        Paragraph.hanging(
            2,
            round.phrase()
                + " in "
                + Nadai.inWords(round.nadai())
                + kalam
                + ": "
                + LengthWords.matras(round.matras())
                + ", "
                + LengthWords.beats(round.beats())));
    int shown = Math.min(most, rows.size());
    int widest =
        rows.subList(0, shown).stream()
            .map(row -> String.join(" ", row.marks()))
            .mapToInt(String::length)
            .filter(width -> width <= WIDEST)
            .max()
            .orElse(0);
    rows.subList(0, shown).forEach(row -> print(row, cycle, widest, out));
    if (shown < rows.size()) {
      out.println("... and " + (rows.size() - shown) + " more beats; --all shows them.");
    }
  }

  void write(JsonGenerator generator) throws IOException {
    generator.writeStartObject();
    generator.writeStringField("phrase", round.phrase());
    generator.writeNumberField("nadai", round.nadai());
    generator.writeNumberField("kalam", round.kalam());
    generator.writeStringField("matras", round.matras().toString());
    generator.writeStringField("beats", round.beats().toString());
    generator.writeArrayFieldStart("rows");
    for (BeatRow row : rows) {
      generator.writeStartObject();
      generator.writeNumberField("beat", Math.floorMod(row.beat(), (long) cycle) + 1);
      generator.writeStringField("kriya", row.kriya().words());
      generator.writeStringField("marks", String.join(" ", row.marks()));
      if (row.onTheBeat().isPresent()) {
        generator.writeStringField("onTheBeat", row.onTheBeat().get().spelling());
      } else {
        generator.writeNullField("onTheBeat");
      }
      generator.writeBooleanField("begins", row.begins());
      generator.writeEndObject();
    }
    generator.writeEndArray();
    generator.writeEndObject();
  }

  /** A remark stands beside the marks, or below them if they are too wide for that. */
  private static void print(BeatRow row, int cycle, int widest, PrintWriter out) {
    String head =
        String.format(
            "%s %3d %-14s ",
            row.samam() ? "||" : "  ",
            Math.floorMod(row.beat(), (long) cycle) + 1,
            row.kriya().words());
    String under = " ".repeat(head.length());
    String remark = onTheBeat(row);
    List<String> lines = lines(row.marks(), COLUMNS - head.length());
    boolean beside = lines.size() == 1 && lines.get(0).length() <= widest;
    String gap = beside ? " ".repeat(widest - lines.get(0).length()) + BESIDE : "";
    out.println(head + lines.get(0) + (remark.isEmpty() || !beside ? "" : gap + remark));
    lines.subList(1, lines.size()).forEach(line -> out.println(under + line));
    if (!remark.isEmpty() && !beside) {
      out.println(under + BESIDE + remark);
    }
  }

  /** The marks in lines of a width, at least one. */
  private static List<String> lines(List<String> marks, int width) {
    List<String> lines = new ArrayList<>(List.of(""));
    for (String mark : marks) {
      int last = lines.size() - 1;
      String longer = lines.get(last).isEmpty() ? mark : lines.get(last) + " " + mark;
      if (longer.length() <= width) {
        lines.set(last, longer);
      } else {
        lines.add(mark);
      }
    }
    return lines;
  }

  private static String onTheBeat(BeatRow row) {
    if (row.onTheBeat().isEmpty()) {
      return "silent on the beat";
    }
    String sollu = row.onTheBeat().get().spelling();
    return row.begins() ? "" : sollu + " rings over the beat";
  }
}
