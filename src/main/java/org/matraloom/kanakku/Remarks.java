package org.matraloom.kanakku;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.matraloom.score.Avartana;
import org.matraloom.score.Nadai;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.time.Ratio;

/**
 * What a musician should be warned of in a performance; nothing is ever refused.
 *
 * <p>A nadai is normally kept through a whole avartana (mridangams.com, Kalai and Ghathi, 2007), so
 * a change inside one is remarked on, and one inside a beat is called hard.
 */
public final class Remarks {

  /** The most rounds that are remarked on one by one. */
  public static final int MOST_ROUNDS = 20;

  private Remarks() {}

  /**
   * Everything worth a warning, most of it about rounds in their order.
   *
   * @param performance what is performed
   * @return sentences without a full stop, possibly none
   */
  public static List<String> on(Performance performance) {
    return on(performance, SpeechRate.of(performance));
  }

  /**
   * The same where the rates of speech are known.
   *
   * @param performance what is performed
   * @param rates {@link SpeechRate#of(Performance)} of it
   * @return sentences without a full stop, possibly none
   */
  public static List<String> on(Performance performance, List<SpeechRate> rates) {
    List<String> remarks = new ArrayList<>();
    List<Entrance> entrances = Entrance.of(performance);
    Avartana avartana = performance.avartana();
    for (Entrance entrance : entrances) {
      boolean told = entrance.insideBeat() || isChangeInsideAvartana(entrance);
      if (told && remarks.size() < MOST_ROUNDS) {
        remarks.add(onEntrance(entrance, avartana));
      }
    }
    Optional<String> stroke = lateStroke(performance);
    if (stroke.isPresent()) {
      remarks.add(stroke.get());
    }
    for (SpeechRate rate : rates) {
      if (isHard(rate)) {
        remarks.add(onRate(rate));
      }
    }
    for (FalseClaim claim : FalseClaim.in(performance)) {
      remarks.add(onClaim(claim, avartana));
    }
    return List.copyOf(remarks);
  }

  /** The commonest miss: the last stroke stands in the phrase, and so is counted. */
  private static Optional<String> lateStroke(Performance performance) {
    Landing landing = Landing.of(performance);
    List<Span.Round> rounds = performance.rounds();
    int last = rounds.get(rounds.size() - 1).number();
    if (landing.missBeats().signum() <= 0 || performance.closing().stroke().isPresent()) {
      return Optional.empty();
    }
    return performance
        .onlyRounds(last, last)
        .spoken()
        .reduce((earlier, later) -> later)
        .filter(said -> performance.endBeat().minus(said.beat()).equals(landing.missBeats()))
        .map(said -> said.sollu().spelling())
        .map(
            sollu ->
                "the last sollu, "
                    + sollu
                    + ", begins where the piece must land: if it is the last stroke, take it out of"
                    + " the phrase and write stroke "
                    + sollu
                    + " in the head, for it lands by its attack");
  }

  private static boolean isChangeInsideAvartana(Entrance entrance) {
    return entrance.changesNadai() && entrance.insideAvartana();
  }

  private static String onEntrance(Entrance entrance, Avartana avartana) {
    Span.Round round = entrance.round();
    String where = avartana.say(round.startBeat());
    if (!entrance.changesNadai()) {
      return "round " + round.number() + " begins inside a beat: " + where;
    }
    String change = "round " + round.number() + " changes to " + Nadai.inWords(round.nadai());
    return entrance.insideBeat()
        ? change + " inside a beat, " + where + ": hard to feel"
        : change + " inside an avartana, on " + where;
  }

  /**
   * What is to be said of the fastest passage of several performances.
   *
   * @param performances what is performed, at its tempo
   * @param perSecond the rate, in sollus a second, from which on it is worth a word
   * @return a sentence without a full stop; none if nothing is faster than that
   */
  public static Optional<String> onFastest(List<Performance> performances, double perSecond) {
    return performances.stream()
        .flatMap(performance -> SpeechRate.of(performance).stream())
        .max(Comparator.comparingDouble(SpeechRate::fastestPerSecond))
        .filter(rate -> rate.fastestPerSecond() > perSecond)
        .map(Remarks::onRate);
  }

  private static boolean isHard(SpeechRate rate) {
    return rate.fastestPerSecond() > SpeechRate.HARD_PER_SECOND;
  }

  private static String onRate(SpeechRate rate) {
    double fastest = rate.fastestPerSecond();
    String verdict =
        fastest > SpeechRate.IMPOSSIBLE_PER_SECOND
            ? "impossible to say"
            : fastest > SpeechRate.VERY_HARD_PER_SECOND ? "very hard to say" : "hard to say";
    return String.format(
        Locale.ROOT,
        "%s: up to %.1f sollus a second where a beat holds %d matras",
        verdict,
        fastest,
        rate.matrasPerBeat());
  }

  private static String onClaim(FalseClaim claim, Avartana avartana) {
    String mark = claim.bar().endsAvartana() ? "||" : "|";
    String limb = claim.bar().endsAvartana() ? "avartana" : "anga";
    String side = claim.missBeats().signum() > 0 ? "after" : "before";
    Ratio miss = claim.missBeats();
    return "line "
        + claim.bar().place().line()
        + ", column "
        + claim.bar().place().column()
        + ": the bar "
        + mark
        + " says that an "
        + limb
        + " ends here, but this is "
        + avartana.say(claim.atBeat())
        + ", "
        + LengthWords.beats(miss.signum() < 0 ? miss.negate() : miss)
        + " "
        + side
        + " the end of one";
  }
}
