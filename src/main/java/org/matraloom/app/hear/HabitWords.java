package org.matraloom.app.hear;

import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.matraloom.log.PlaceFinding;
import org.matraloom.log.PlaceHistory;
import org.matraloom.log.PlaceTrend;
import org.matraloom.log.ScorePlace;
import org.matraloom.score.Nadai;

/** What many takes say of a place, in words that say no more than the figures do. */
final class HabitWords {

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", Locale.ENGLISH);
  private static final DateTimeFormatter CLOCK =
      DateTimeFormatter.ofPattern("HH:mm 'on' EEEE d MMMM uuuu", Locale.ENGLISH);

  private HabitWords() {}

  /** A place, such as "Into the five, round 3". */
  static String place(ScorePlace place) {
    String round = "round " + place.round();
    return switch (place.kind()) {
      case LANDING -> "Landing";
      case INTO -> "Into " + nadai(place) + ", " + round;
      case SPEED -> "Speed of " + nadai(place) + ", " + round;
      case PHRASE -> "Phrase " + place.name() + ", " + round;
      case ROUND -> "Tempo of " + round;
    };
  }

  private static String nadai(ScorePlace place) {
    String to = place.name().substring(place.name().indexOf('>') + 1);
    return to.matches("[1-9]\\d?") ? "the " + count(Integer.parseInt(to)) : "nadai " + to;
  }

  /** The words of the trade for nadais are longer; a teacher says the five. */
  private static String count(int matras) {
    return switch (matras) {
      case 3 -> "three";
      case 4 -> "four";
      case 5 -> "five";
      case 6 -> "six";
      case 7 -> "seven";
      case 8 -> "eight";
      case 9 -> "nine";
      default -> Nadai.inWords(matras);
    };
  }

  /** A habit in sentences: where, how much, in how many takes, and since when it is otherwise. */
  static String sentences(PlaceFinding finding) {
    PlaceHistory part = finding.part();
    StringBuilder words = new StringBuilder(place(finding.history().place()));
    words.append(": ").append(mean(part)).append(" in the mean of ").append(takes(finding));
    words.append(", ").append(side(part)).append(" in ").append(share(part)).append(".");
    finding
        .rest()
        .ifPresent(
            rest ->
                words
                    .append(
                        finding.habit() == PlaceFinding.Habitual.EARLIER
                            ? " In the "
                            : " Before, in ")
                    .append(rest.points().size())
                    .append(
                        finding.habit() == PlaceFinding.Habitual.EARLIER
                            ? " takes since: "
                            : " takes: ")
                    .append(mean(rest))
                    .append(" in the mean."));
    if (finding.trend().isPresent()) {
      words.append(" ").append(trend(finding.trend().get()));
    } else if (finding.trendWasSought()) {
      words.append(" No trend can be told.");
    }
    return words.toString();
  }

  private static String takes(PlaceFinding finding) {
    int count = finding.part().points().size();
    return switch (finding.habit()) {
      case EARLIER -> "the first " + count + " takes";
      case LATER -> "the newest " + count + " takes";
      case ALL, NEVER -> count + " takes";
    };
  }

  private static String share(PlaceHistory part) {
    long same = part.sameSide();
    return same == part.points().size() ? "every one" : same + " of them";
  }

  private static String trend(PlaceTrend trend) {
    ScorePlace.Kind kind = trend.before().place().kind();
    return (trend.better() ? "Better since " : "Worse since ")
        + since(trend)
        + ": off by "
        + size(trend.offBefore(), kind)
        + " in the mean before ("
        + many(trend.before())
        + "), by "
        + size(trend.offAfter(), kind)
        + " since ("
        + many(trend.after())
        + ").";
  }

  private static String many(PlaceHistory part) {
    int count = part.points().size();
    return count == 1 ? "1 take" : count + " takes";
  }

  private static String since(PlaceTrend trend) {
    OffsetDateTime since = trend.since();
    return trend.ofOneDay() ? CLOCK.format(since) : DAY.format(since);
  }

  /** A mean with its side, such as "30.2 ms late". */
  static String mean(PlaceHistory part) {
    double mean = part.mean();
    String size = size(Math.abs(mean), part.place().kind());
    return size.startsWith("0.0 ") ? size + " off" : size + " " + side(part);
  }

  private static String side(PlaceHistory part) {
    boolean isTime = part.place().kind().unit().equals("ms");
    return part.mean() > 0 ? isTime ? "late" : "fast" : isTime ? "early" : "slow";
  }

  private static String size(double value, ScorePlace.Kind kind) {
    return String.format(Locale.ROOT, "%.1f %s", value, kind.unit());
  }
}
