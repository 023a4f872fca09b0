package org.matraloom.sheet;

import java.io.IOException;
import java.util.Optional;
import org.matraloom.paper.Figure;
import org.matraloom.picture.Xml;

/** Marks as HTML: how they look is told by their classes, what they mean in words for a reader. */
final class HtmlMarks {

  private final boolean large;
  private final Optional<String> prefix;
  private final Appendable out;
  private int number;

  /**
   * Marks of a page.
   *
   * @param prefix what their names begin with, before their numbers from 0; with none they have no
   *     names and their widths are data, for a page that allows no styles in its text
   */
  HtmlMarks(boolean large, Optional<String> prefix, Appendable out) {
    this.large = large;
    this.prefix = prefix;
    this.out = out;
  }

  /** The classes of a mark under the bracket of a statement, and of one that opens a round. */
  private static String bracket(Mark each, Row row) {
    StringBuilder classes = new StringBuilder();
    for (Row.Tag tag : row.tags()) {
      boolean inside =
          tag.kind() == Row.Tag.Kind.STATEMENT
              && each.beat().compareTo(tag.from()) >= 0
              && each.beat().compareTo(tag.to()) < 0;
      if (inside) {
        classes.append(" st");
        classes.append(each.beat().equals(tag.from()) ? " sb" : "");
        classes.append(each.endBeat().compareTo(tag.to()) >= 0 ? " se" : "");
      }
    }
    boolean opens =
        row.parts().stream()
            .anyMatch(
                part ->
                    part.opensHere()
                        && part.from().equals(each.beat())
                        && !part.from().equals(row.startBeat()));
    return classes + (opens ? " r" : "");
  }

  /** Writes a mark, under a name of its own if marks have names. */
  void write(Mark each, Row row) throws IOException {
    String kind = each instanceof Mark.Said ? "s" : each instanceof Mark.Karvai ? "v" : "q";
    String speed = each.speed() == 1 ? "" : each.speed() == 2 ? " x2" : " x4";
    boolean opens = each instanceof Mark.Said said && said.opens();
    boolean turns = row.turns().stream().anyMatch(turn -> turn.beat().equals(each.beat()));
    out.append("<span");
    if (prefix.isPresent()) {
      out.append(" id=\"" + prefix.get() + number++ + "\"");
    }
    out.append(" class=\"" + kind + speed + (opens ? " o" : "") + (turns ? " t" : ""));
    out.append(bracket(each, row));
    out.append(prefix.isPresent() ? "\" style=\"flex-grow:" : "\" data-grow=\"");
    out.append(HtmlRows.beats(each.beats()) + "\">");
    if (each.breath().isPresent()) {
      out.append("<span class=\"air\">" + HtmlRows.figure(Figure.BREATH));
      out.append("<span class=\"vh\">breathe </span></span>");
    }
    if (each instanceof Mark.Said said) {
      out.append(Xml.escape(said.text()));
    } else if (each instanceof Mark.Karvai) {
      out.append(sign(large ? "\u25a1" : ",", "rings on"));
    } else {
      out.append(sign(".", "silent"));
    }
    out.append("</span> ");
  }

  private static String sign(String shown, String said) {
    return "<span aria-hidden=\"true\">" + shown + "</span><span class=\"vh\">" + said + "</span>";
  }
}
