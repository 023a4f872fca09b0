package org.matraloom.app.hear;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import org.matraloom.measure.Evenness;
import org.matraloom.measure.RoundFindings;
import org.matraloom.score.Nadai;

/** The rounds of a take and the places of its beats, as tables. */
final class TakeRoundTable {

  private static final int MOST_ROUNDS = 24;

  private TakeRoundTable() {}

  static void print(List<RoundFindings> rounds, PrintWriter out) {
    out.println();
    out.println("round  phrase       nadai  sollus  missed  added   tempo  spread ms");
    for (RoundFindings round : rounds.subList(0, Math.min(MOST_ROUNDS, rounds.size()))) {
      out.println(
          String.format(
              Locale.ROOT,
              "%5d  %-12s %5d  %6d  %6d  %5d  %6s  %9s",
              round.round(),
              shortened(round.phrase()),
              round.matrasPerBeat(),
              round.sollus(),
              round.missed(),
              round.added(),
              round.beatsPerMinute() > 0
                  ? String.format(Locale.ROOT, "%.1f", round.beatsPerMinute())
                  : "-",
              round.beatsPerMinute() > 0
                  ? String.format(Locale.ROOT, "%.1f", 1_000 * round.spreadSeconds())
                  : "-"));
    }
    if (rounds.size() > MOST_ROUNDS) {
      out.println("and " + (rounds.size() - MOST_ROUNDS) + " more rounds; --json has them all");
    }
  }

  private static String shortened(String phrase) {
    return phrase.length() <= 12 ? phrase : phrase.substring(0, 11) + "~";
  }

  /** One row a nadai: how late each place of its beat is, and how much that varies. */
  static void printEvenness(List<Evenness> evenness, PrintWriter out) {
    out.println();
    out.println("Evenness: how late each matra of the beat is, ms (and its spread)");
    List<Integer> nadais = evenness.stream().map(Evenness::matrasPerBeat).distinct().toList();
    for (int nadai : nadais) {
      StringBuilder row = new StringBuilder("  " + Nadai.inWords(nadai) + ":");
      for (Evenness place : evenness) {
        if (place.matrasPerBeat() == nadai) {
          row.append(
              String.format(
                  Locale.ROOT,
                  " %s (%.0f)",
                  SignedNumber.of(1_000 * place.meanSeconds(), 0),
                  1_000 * place.spreadSeconds()));
        }
      }
      out.println(row);
    }
  }
}
