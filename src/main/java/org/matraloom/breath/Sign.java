package org.matraloom.breath;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.matraloom.score.Matras;
import org.matraloom.score.Moment;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.score.Spoken;
import org.matraloom.time.Ratio;

/**
 * What stands for a matra, or for a planned silence, in lines with breath marks.
 *
 * @param beat where it begins, in beats of the performance
 * @param text how it is written
 * @param sollu whether it is a sollu
 */
record Sign(Ratio beat, String text, boolean sollu) {

  /** The signs of a performance, in order. */
  static List<Sign> of(Performance performance) {
    List<Sign> signs = new ArrayList<>();
    boolean planned = false;
    Iterator<Moment> moments = performance.moments();
    while (moments.hasNext()) {
      Moment moment = moments.next();
      if (moment instanceof Spoken spoken) {
        signs.add(new Sign(spoken.beat(), spoken.sollu().spelling(), true));
        spoken.rings().forEach(ring -> add(ring, ",", signs));
      } else if (moment instanceof Moment.SpanStart start) {
        planned = start.span() instanceof Span.Pause;
      } else if (moment instanceof Moment.Rest rest && planned) {
        String beats = Counts.beats(rest.matras().beats());
        signs.add(new Sign(rest.beat(), "(silence of " + beats + ")", false));
      } else if (moment instanceof Moment.Rest rest) {
        add(rest.matras(), ".", signs);
      }
    }
    return signs;
  }

  private static void add(Matras matras, String text, List<Sign> signs) {
    matras.each().forEach(one -> signs.add(new Sign(one.beat(), text, false)));
  }
}
