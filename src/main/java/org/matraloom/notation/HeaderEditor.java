package org.matraloom.notation;

import java.util.List;
import org.matraloom.notation.Token.TokenKind;

/** Sets the value of a header in a text, or puts the header in after the others. */
final class HeaderEditor {

  private HeaderEditor() {}

  /** Whether a header stands in the text. */
  static boolean has(EditedLines lines, String keyword) {
    return lines.indicesOf(ScoreLine.Use.HEADER).stream()
        .anyMatch(index -> lines.before().get(index).name().equals(keyword));
  }

  static void set(EditedLines lines, String keyword, String value) {
    List<Integer> headers = lines.indicesOf(ScoreLine.Use.HEADER);
    for (int index : headers) {
      ScoreLine line = lines.before().get(index);
      if (line.name().equals(keyword)) {
        lines.replace(index, valueStart(line), line.lastEnd(), value);
        return;
      }
    }
    int last = headers.get(headers.size() - 1);
    ScoreLine line = lines.before().get(last);
    int column = valueStart(line) - line.tokens().get(0).start();
    int width = Math.max(keyword.length() + 1, column);
    String indent = line.text().substring(0, line.tokens().get(0).start());
    lines.insertAfter(last, List.of(indent + String.format("%-" + width + "s", keyword) + value));
  }

  private static int valueStart(ScoreLine line) {
    Token after = line.tokens().get(1);
    boolean sign = after.is(TokenKind.COLON) || after.is(TokenKind.EQUALS);
    return line.tokens().get(sign ? 2 : 1).start();
  }
}
