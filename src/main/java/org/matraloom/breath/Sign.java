package org.matraloom.breath;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import org.matraloom.form.Joint;
import org.matraloom.form.Joints;
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
 * @param joint what ends before it, if it is a sollu
 */
record Sign(Ratio beat, String text, boolean sollu, Joint joint) {

  /** The signs of a performance, in order. */
  static List<Sign> of(Performance performance) {
    List<String> said = performance.rounds().stream().map(Span.Round::phrase).toList();
    Map<String, Joints> joints = Joints.of(performance.composition(), said);
    List<Sign> signs = new ArrayList<>();
    boolean planned = false;
    String phrase = "";
    int inRound = 0;
    Iterator<Moment> moments = performance.moments();
    while (moments.hasNext()) {
      Moment moment = moments.next();
      if (moment instanceof Spoken spoken) {
        boolean begins = spoken.opens() == Spoken.Opens.ROUND;
        inRound = begins ? 0 : inRound + 1;
        Joint joint = begins ? Joint.ROUND : joints.get(phrase).after(inRound - 1);
        signs.add(new Sign(spoken.beat(), spoken.sollu().spelling(), true, joint));
        spoken.rings().forEach(ring -> add(ring, ",", signs));
      } else if (moment instanceof Moment.SpanStart start) {
        planned = start.span() instanceof Span.Pause;
        phrase = start.span() instanceof Span.Round round ? round.phrase() : phrase;
      } else if (moment instanceof Moment.Rest rest && planned) {
        String beats = Counts.beats(rest.matras().beats());
        signs.add(new Sign(rest.beat(), "(silence of " + beats + ")", false, Joint.INSIDE));
      } else if (moment instanceof Moment.Rest rest) {
        add(rest.matras(), ".", signs);
      }
    }
    return signs;
  }

  private static void add(Matras matras, String text, List<Sign> signs) {
    matras.each().forEach(one -> signs.add(new Sign(one.beat(), text, false, Joint.INSIDE)));
  }

  /** How wide it is with the space after it. */
  int width() {
    return text.length() + 1;
  }
}
