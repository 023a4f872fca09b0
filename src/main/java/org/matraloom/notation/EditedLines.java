package org.matraloom.notation;

import java.util.ArrayList;
import java.util.List;

/** The lines of a score while they are being changed; the lines as they were stay at hand. */
final class EditedLines {

  private final String start;
  private final List<ScoreLine> before;
  private final List<String> now = new ArrayList<>();

  private EditedLines(String start, List<ScoreLine> before) {
    this.start = start;
    this.before = before;
    before.forEach(line -> now.add(line.text() + line.ending()));
  }

  static EditedLines of(String text) {
    String start = text.startsWith("\ufeff") ? "\ufeff" : "";
    return new EditedLines(start, ScoreLine.of(text.substring(start.length())));
  }

  /** The lines as they were. */
  List<ScoreLine> before() {
    return before;
  }

  /** The lines of one use as they were, as indices. */
  List<Integer> indicesOf(ScoreLine.Use use) {
    List<Integer> indices = new ArrayList<>();
    for (int i = 0; i < before.size(); i++) {
      if (before.get(i).use() == use) {
        indices.add(i);
      }
    }
    return indices;
  }

  /** Replaces a part of one line, once; the indices count in the line as it was. */
  void replace(int line, int from, int to, String text) {
    ScoreLine was = before.get(line);
    now.set(line, was.text().substring(0, from) + text + was.text().substring(to) + was.ending());
  }

  /** Takes the tokens of a line out; a note stays, on a line of its own. */
  void clear(int line) {
    ScoreLine was = before.get(line);
    String note = was.text().substring(Lexer.noteStart(was.text()));
    String indent = was.text().substring(0, was.tokens().get(0).start());
    now.set(line, note.isEmpty() ? "" : indent + note + was.ending());
  }

  /** Puts lines in after a line. */
  void insertAfter(int line, List<String> inserted) {
    StringBuilder text = new StringBuilder(now.get(line));
    if (!text.isEmpty() && before.get(line).ending().isEmpty()) {
      text.append(ending());
    }
    inserted.forEach(one -> text.append(one).append(ending()));
    now.set(line, text.toString());
  }

  /** How lines end in this text. */
  private String ending() {
    return before.stream()
        .map(ScoreLine::ending)
        .filter(ending -> !ending.isEmpty())
        .findFirst()
        .orElse("\n");
  }

  String text() {
    return start + String.join("", now);
  }
}
