package org.matraloom.film;

import java.awt.Color;
import org.matraloom.paper.Drawn;

/** The colours of a film: paper and ink, one lamp for the beat that is said. */
public enum FilmLook {
  /** Ink on paper. */
  LIGHT(0xfbf9f4, 0x111111, 0x555555, 0x9a9a9a, 0xdedcd6, 0xffd45e),
  /** Chalk on slate. */
  DARK(0x15181b, 0xf4f2ec, 0xb4b4b0, 0x73777b, 0x34393e, 0x8a5a00);

  private final Color paper;
  private final Color ink;
  private final Color quiet;
  private final Color rule;
  private final Color tint;
  private final Color lamp;

  FilmLook(int paper, int ink, int quiet, int rule, int tint, int lamp) {
    this.paper = new Color(paper);
    this.ink = new Color(ink);
    this.quiet = new Color(quiet);
    this.rule = new Color(rule);
    this.tint = new Color(tint);
    this.lamp = new Color(lamp);
  }

  Color paper() {
    return paper;
  }

  Color ink() {
    return ink;
  }

  Color quiet() {
    return quiet;
  }

  Color rule() {
    return rule;
  }

  /** The ground of the beat that goes on. */
  Color lamp() {
    return lamp;
  }

  /** What a shade of the sheet is here. */
  Color of(Drawn.Shade shade) {
    return switch (shade) {
      case INK -> ink;
      case QUIET -> quiet;
      case RULE -> rule;
      case TINT -> tint;
    };
  }
}
