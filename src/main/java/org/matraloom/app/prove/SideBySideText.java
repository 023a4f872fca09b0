package org.matraloom.app.prove;

import java.io.PrintWriter;
import org.matraloom.app.cli.Paragraph;
import org.matraloom.kanakku.BothLandings;
import org.matraloom.kanakku.Landing;
import org.matraloom.score.Avartana;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.score.TwoReciters.SideBySide;
import org.matraloom.time.Ratio;

/** What two reciters do, in a musician's words: each for itself, then side by side. */
final class SideBySideText {

  private final BothLandings both;
  private final Avartana avartana;

  SideBySideText(BothLandings both) {
    this.both = both;
    this.avartana = both.first().performance().avartana();
  }

  /** Tells the sums and landings of both, and where they stand side by side. */
  void print(PrintWriter out) {
    out.println("First reciter");
    new LandingText(both.first()).print(out);
    out.println();
    out.println("Second reciter");
    LandingText second = new LandingText(both.second());
    if (both.judgedSecond().isPresent()) {
      second.print(out);
    } else {
      second.printUnjudged(out);
      out.println(
          Paragraph.hanging(
              2,
              "It is silent from "
                  + avartana.say(both.second().performance().endBeat())
                  + " on, so its end is not judged."));
    }
    out.println();
    out.println("Side by side");
    both.reciters().stretches().forEach(each -> out.println(Paragraph.hanging(2, words(each))));
    out.println(Paragraph.hanging(2, verdict()));
  }

  /** One stretch: both lengths, and by how much they do not meet. */
  String words(SideBySide stretch) {
    String lengths =
        "From "
            + avartana.say(stretch.lineFrom())
            + ": "
            + (stretch.silent() ? "a silence of " : "")
            + beats(stretch.lineTo().minus(stretch.lineFrom()))
            + " and, beside it, "
            + beats(stretch.to().minus(stretch.from()));
    String late =
        stretch.lateBeats().signum() == 0
            ? ""
            : "; the second reciter begins "
                + miss(stretch.lateBeats(), stretch.from())
                + " late, not yet done with what came before";
    if (stretch.missBeats().signum() != 0) {
      Ratio miss = stretch.missBeats();
      return lengths
          + late
          + "; the second reciter ends "
          + miss(miss.signum() < 0 ? miss.negate() : miss, stretch.from())
          + (miss.signum() < 0 ? " too early." : " too late.");
    }
    boolean within = stretch.silent() && stretch.to().compareTo(stretch.lineTo()) < 0;
    return lengths + late + (within ? "; it ends within the silence." : "; they end together.");
  }

  /** Beats, and matras as the second reciter counts them. */
  private String miss(Ratio beats, Ratio from) {
    Performance second = both.second().performance();
    int density =
        second.rounds().stream()
            .filter(round -> round.startBeat().compareTo(from) >= 0)
            .findFirst()
            .map(Span.Round::matrasPerBeat)
            .orElse(1);
    Ratio matras = beats.times(density);
    return matras.toMixed()
        + (matras.compareTo(Ratio.ONE) <= 0 ? " matra (" : " matras (")
        + beats(beats)
        + ")";
  }

  private String verdict() {
    long uneven = both.reciters().stretches().stream().filter(each -> !each.isEven()).count();
    boolean lands = both.first().lands() && both.judgedSecond().map(Landing::lands).orElse(true);
    if (uneven == 0) {
      return lands && both.judgedSecond().isPresent()
          ? "Both land, and they begin and end together."
          : "They begin and end together.";
    }
    return "They do not go together in " + uneven + (uneven == 1 ? " place." : " places.");
  }

  private static String beats(Ratio beats) {
    return beats.toMixed() + (beats.compareTo(Ratio.ONE) <= 0 ? " beat" : " beats");
  }
}
