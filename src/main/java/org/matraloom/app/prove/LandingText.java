package org.matraloom.app.prove;

import java.io.PrintWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.matraloom.app.cli.Paragraph;
import org.matraloom.kanakku.ClosingWords;
import org.matraloom.kanakku.Landing;
import org.matraloom.kanakku.Remarks;
import org.matraloom.kanakku.SpeechRate;
import org.matraloom.kanakku.SumWords;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Nadai;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.time.Ratio;

/** The landing of a score in a musician's words. */
public final class LandingText {

  private static final int MOST_ROUNDS = 24;

  private final Landing landing;
  private final Performance performance;
  private final Composition composition;
  private final Avartana avartana;

  /**
   * Prepares to tell.
   *
   * @param landing where the score ends
   */
  public LandingText(Landing landing) {
    this.landing = landing;
    this.performance = landing.performance();
    this.composition = performance.composition();
    this.avartana = performance.avartana();
  }

  /**
   * Tells the rounds, the sum, where it ends, and what to be warned of.
   *
   * @param out where it is told
   */
  public void print(PrintWriter out) {
    print(out, true);
  }

  /** Tells all but where it ends, for somebody who does not end the piece. */
  void printUnjudged(PrintWriter out) {
    print(out, false);
  }

  private void print(PrintWriter out, boolean judged) {
    if (!composition.title().isEmpty()) {
      out.println(composition.title());
    }
    out.println(Paragraph.hanging(2, setting()));
    out.println();
    printRounds(out);
    out.println();
    out.println(Paragraph.hanging(2, "Sum: " + SumWords.of(landing)));
    for (String line : PartLines.of(performance).places()) {
      out.println(Paragraph.hanging(2, line));
    }
    if (judged) {
      for (String line : verdict().split("\n")) {
        out.println(Paragraph.hanging(2, line));
      }
    }
    List<SpeechRate> rates = SpeechRate.of(performance);
    out.println(Paragraph.hanging(2, inWords(rates)));
    for (String remark : Remarks.on(performance, rates)) {
      out.println(Paragraph.hanging(2, "Note: " + remark + "."));
    }
  }

  private String setting() {
    String kalai = avartana.kalai() == 1 ? "" : " in " + avartana.kalai() + " kalai";
    return avartana.tala().name()
        + kalai
        + " ("
        + avartana.tala().formula()
        + "), "
        + avartana.beats()
        + " beats; tempo "
        + composition.tempo().beatsPerMinute().toMixed()
        + "; from "
        + composition.avartana().say(composition.startBeat())
        + " to "
        + avartana.goingOnAt(performance.endBeat()).say(composition.eduppuBeat());
  }

  private void printRounds(PrintWriter out) {
    List<Span.Round> rounds = performance.rounds();
    List<Span.Round> shown = rounds.subList(0, Math.min(MOST_ROUNDS, rounds.size()));
    RoundTable table = new RoundTable();
    for (Span.Round round : shown) {
      table.add(
          List.of(
              Integer.toString(round.number()),
              round.phrase(),
              nadai(round),
              avartana.say(round.startBeat()),
              round.matras().toMixed(),
              round.beats().toMixed()));
    }
    table.printHead(out);
    PartLines parts = PartLines.of(performance);
    for (int row = 0; row < shown.size(); row++) {
      for (String line : parts.before(shown.get(row))) {
        out.println(line);
      }
      table.print(row, out);
    }
    if (rounds.size() > MOST_ROUNDS) {
      out.println("... and " + (rounds.size() - MOST_ROUNDS) + " more rounds");
    }
  }

  /**
   * Whether it lands, and if not, by how much it misses and what mends it.
   *
   * @return one sentence, or two lines if it misses
   */
  public String verdict() {
    String eduppu = avartana.goingOnAt(performance.endBeat()).say(composition.eduppuBeat());
    if (landing.lands()) {
      return "It lands: "
          + ClosingWords.ends(performance)
          + " on "
          + eduppu
          + "."
          + ClosingWords.goesOn(performance);
    }
    Ratio missBeats = magnitude(landing.missBeats());
    Ratio missMatras = magnitude(landing.missMatras());
    boolean late = landing.missBeats().signum() > 0;
    return "It misses: "
        + ClosingWords.ends(performance)
        + " on "
        + avartana.say(performance.endBeat())
        + ", "
        + SumWords.counted(missMatras, "matra")
        + " ("
        + SumWords.counted(missBeats, "beat")
        + ") too "
        + (late ? "late" : "early")
        + " for "
        + eduppu
        + ".\n"
        + mended(missMatras, late);
  }

  /** A way out that can be said: a start on a matra, whole matras in the last round. */
  private String mended(Ratio missMatras, boolean late) {
    String round = missMatras.isWhole() ? lastRound(missMatras, late) + " in the last round" : "";
    if (!landing.startCanMend()) {
      String why =
          composition.changesTala()
              ? "The tala changes on samam"
              : "It waits for a place in the tala";
      String waits = why + ", so no other start mends it";
      return waits + (round.isEmpty() ? "; fit tells what does." : ": " + round + ".");
    }
    int density = performance.rounds().get(0).matrasPerBeat();
    if (landing.startThatLands().times(density).isWhole()) {
      return "Start on "
          + avartana.say(landing.startThatLands())
          + " and it lands as it is"
          + (round.isEmpty() ? "." : "; or " + round + ".");
    }
    return round.isEmpty()
        ? "No start on a matra mends it, nor whole matras in the last round; fit tells what does."
        : round.substring(0, 1).toUpperCase(Locale.ROOT)
            + round.substring(1)
            + "; no start on a matra mends it. fit tells what else does.";
  }

  /** What the last round must lose or gain; it cannot lose all that it has. */
  private String lastRound(Ratio missMatras, boolean late) {
    Span.Round last = performance.rounds().get(performance.rounds().size() - 1);
    if (late && missMatras.compareTo(last.matras()) < 0) {
      return "cut " + SumWords.counted(missMatras, "matra");
    }
    Ratio avartanaMatras =
        Ratio.of(avartana.goingOnAt(performance.endBeat()).beats()).times(last.matrasPerBeat());
    return "add " + SumWords.counted(late ? avartanaMatras.minus(missMatras) : missMatras, "matra");
  }

  private static String inWords(List<SpeechRate> rates) {
    List<String> words = new ArrayList<>();
    for (SpeechRate rate : rates) {
      words.add(tenths(rate.matrasPerSecond()) + " in " + Nadai.word(rate.matrasPerBeat()));
    }
    return "Matras a second: " + String.join(", ", words) + ".";
  }

  /** Without a locale's own signs, which take 5 ms to be found. */
  private static String tenths(double number) {
    return BigDecimal.valueOf(number).setScale(1, RoundingMode.HALF_UP).toPlainString();
  }

  private static String nadai(Span.Round round) {
    String kalam = round.kalam() == 1 ? "" : ", kalam " + round.kalam();
    return Nadai.word(round.nadai()) + kalam;
  }

  private static Ratio magnitude(Ratio ratio) {
    return ratio.signum() < 0 ? ratio.negate() : ratio;
  }
}
