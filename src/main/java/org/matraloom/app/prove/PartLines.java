package org.matraloom.app.prove;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.matraloom.kanakku.LengthWords;
import org.matraloom.kanakku.PlaceClaim;
import org.matraloom.score.Notice;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.score.Step;
import org.matraloom.time.Ratio;

/**
 * What is said of the parts of a piece: their names between its rounds, and where pieces that were
 * put together enter and land.
 *
 * @param performance what is performed
 */
record PartLines(Performance performance) {

  private static final int SECONDS_A_MINUTE = 60;

  static PartLines of(Performance performance) {
    return new PartLines(performance);
  }

  /** The names of the parts that begin with a round, and what is told to students there. */
  List<String> before(Span.Round round) {
    int span = performance.indexOf(round);
    int after = span;
    while (after > 0 && performance.spans().get(after - 1) instanceof Span.Pause) {
      after--;
    }
    List<String> lines = new ArrayList<>();
    for (Notice notice : performance.notices()) {
      if (notice.span() >= after && notice.span() <= span) {
        boolean tells = notice.step() instanceof Step.Tell;
        notice.words().ifPresent(words -> lines.add(tells ? "  (" + words + ")" : words));
      }
    }
    return lines;
  }

  /** How long the parts are, where pieces enter and land, how long all of it takes. */
  List<String> places() {
    List<Notice> parts = new ArrayList<>();
    for (Notice notice : performance.notices()) {
      if (notice.step() instanceof Step.Part) {
        parts.add(notice);
      }
    }
    List<PlaceClaim> claims = PlaceClaim.in(performance);
    List<String> lines = new ArrayList<>();
    if (!parts.isEmpty()) {
      lines.add("Parts: " + lengths(parts) + "; " + minutes() + " in all.");
    }
    for (PlaceClaim claim : claims) {
      String words = claim.words(performance.avartana());
      String told = claim.holds() ? words : "It is not as written: " + words;
      lines.add(told.substring(0, 1).toUpperCase(Locale.ROOT) + told.substring(1) + ".");
    }
    return lines;
  }

  private String lengths(List<Notice> parts) {
    List<String> lengths = new ArrayList<>();
    for (int index = 0; index < parts.size(); index++) {
      Ratio next = index + 1 < parts.size() ? parts.get(index + 1).beat() : performance.endBeat();
      String name = ((Step.Part) parts.get(index).step()).name();
      Ratio begin = parts.get(index).beat();
      Ratio beats = landing(name, begin).orElse(next).minus(begin);
      if (beats.signum() > 0) {
        lengths.add(name + " " + LengthWords.beats(beats));
      }
    }
    return String.join(", ", lengths);
  }

  /** Where a piece that was taken over lands, which is the end of its part. */
  private Optional<Ratio> landing(String name, Ratio begin) {
    return PlaceClaim.in(performance).stream()
        .filter(claim -> claim.whose().equals(name) && !claim.enters())
        .map(PlaceClaim::atBeat)
        .filter(beat -> beat.compareTo(begin) > 0)
        .findFirst();
  }

  /** How long all of it lasts at its tempo, to the second. */
  private String minutes() {
    long seconds = performance.composition().tempo().unitsOf(performance.beats(), 1);
    long minutes = seconds / SECONDS_A_MINUTE;
    String rest = seconds % SECONDS_A_MINUTE + " s";
    return minutes == 0 ? rest : minutes + " min " + rest;
  }
}
