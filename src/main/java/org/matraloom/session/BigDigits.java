package org.matraloom.session;

import java.util.ArrayList;
import java.util.List;

/** Figures of five lines, to be read from where one sits with both hands busy. */
final class BigDigits {

  /** How many lines a figure has. */
  static final int HEIGHT = 5;

  private static final String[][] FIGURES = {
    {" ##### ", " #   # ", " #   # ", " #   # ", " ##### "},
    {"   #   ", "  ##   ", "   #   ", "   #   ", "  ###  "},
    {" ##### ", "     # ", " ##### ", " #     ", " ##### "},
    {" ##### ", "     # ", "  #### ", "     # ", " ##### "},
    {" #   # ", " #   # ", " ##### ", "     # ", "     # "},
    {" ##### ", " #     ", " ##### ", "     # ", " ##### "},
    {" ##### ", " #     ", " ##### ", " #   # ", " ##### "},
    {" ##### ", "     # ", "    #  ", "   #   ", "   #   "},
    {" ##### ", " #   # ", " ##### ", " #   # ", " ##### "},
    {" ##### ", " #   # ", " ##### ", "     # ", " ##### "},
  };

  private BigDigits() {}

  /** The lines of a number, 0 or more. */
  static List<String> of(long number) {
    List<String> lines = new ArrayList<>();
    for (int line = 0; line < HEIGHT; line++) {
      StringBuilder text = new StringBuilder();
      for (char digit : Long.toString(number).toCharArray()) {
        text.append(FIGURES[digit - '0'][line]);
      }
      lines.add(text.toString());
    }
    return lines;
  }
}
