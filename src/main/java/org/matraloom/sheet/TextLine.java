package org.matraloom.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Sollu;

/**
 * Some cells of one round in the notation of a score, cell by cell, so that they can be put in
 * columns and read back.
 *
 * <p>Sollus that stand apart are heard apart by a reader of scores, and those that stand together
 * are heard together. Where that would change a sound, the sollu is written by its sound, or set
 * apart as said once.
 */
final class TextLine {

  private final Lexicon lexicon;
  private final int roundDensity;
  private final int kalamDensity;
  private Optional<Sollu> before = Optional.empty();

  /**
   * A line without a round writes marks plainly.
   *
   * @param roundDensity matras a beat of the round, kalam included
   * @param kalamDensity 1, 2 or 4
   */
  TextLine(Lexicon lexicon, int roundDensity, int kalamDensity) {
    this.lexicon = lexicon;
    this.roundDensity = roundDensity;
    this.kalamDensity = kalamDensity;
  }

  /** The next marks of the line, all of one cell; one piece a mark. */
  List<String> write(List<Mark> marks) {
    List<String> pieces = new ArrayList<>();
    for (int index = 0; index < marks.size(); index++) {
      Mark mark = marks.get(index);
      boolean opens = index == 0 || !alike(marks.get(index - 1), mark);
      boolean closes = index + 1 == marks.size() || !alike(mark, marks.get(index + 1));
      if (opens && isBracketed(mark)) {
        before = Optional.empty();
      }
      String sign = sign(mark);
      pieces.add((opens ? opening(mark) : "") + sign + (closes ? closing(mark) : ""));
      if (closes && isBracketed(mark)) {
        before = Optional.empty();
      }
    }
    return pieces;
  }

  private boolean isBracketed(Mark mark) {
    return mark.speed() > 1 || mark.matrasPerBeat() != roundDensity;
  }

  private static boolean alike(Mark a, Mark b) {
    return a.speed() == b.speed() && a.matrasPerBeat() == b.matrasPerBeat();
  }

  private String sign(Mark mark) {
    if (mark instanceof Mark.Said said) {
      String written = said(said.sollu());
      before = Optional.of(said.sollu());
      return written;
    }
    before = Optional.empty();
    return mark.sign();
  }

  private String said(Sollu sollu) {
    Optional<Sollu> alone =
        lexicon.sound(sollu.spelling()).map(sound -> new Sollu(sollu.spelling(), sound.name()));
    Sollu here = alone.orElse(sollu);
    Sollu heard = before.map(earlier -> lexicon.inCompany(earlier, here)).orElse(here);
    if (heard.sound().equals(sollu.sound())) {
      return sollu.spelling();
    }
    return here.sound().equals(sollu.sound()) ? "(" + sollu.spelling() + ") x1" : sollu.sound();
  }

  private String opening(Mark mark) {
    String inner =
        mark.matrasPerBeat() == roundDensity
            ? ""
            : "{" + mark.matrasPerBeat() / kalamDensity + ": ";
    return inner + brackets(mark.speed(), "[[", "[");
  }

  private String closing(Mark mark) {
    return brackets(mark.speed(), "]]", "]") + (mark.matrasPerBeat() == roundDensity ? "" : "}");
  }

  /** Double brackets for four times, single ones for twice; a space keeps them apart. */
  private static String brackets(int speed, String fourfold, String twofold) {
    List<String> brackets = new ArrayList<>();
    int left = speed;
    while (left >= 4) {
      brackets.add(fourfold);
      left /= 4;
    }
    if (left == 2) {
      brackets.add(fourfold.startsWith("]") ? 0 : brackets.size(), twofold);
    }
    return String.join(" ", brackets);
  }
}
