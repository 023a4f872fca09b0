package org.matraloom.site;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.time.Ratio;

/**
 * A piece of a class.
 *
 * @param name the name of its file without the ending, and of its folder
 * @param performance what is said
 * @param entry what the list of the class says of it
 * @param files the files that are made of it, in the order in which they are shown
 */
public record SitePiece(
    String name, Performance performance, ClassEntry entry, List<SiteFile> files) {

  private static final int SECONDS_PER_MINUTE = 60;

  /** Copies the list. */
  public SitePiece {
    files = List.copyOf(files);
  }

  /**
   * The title.
   *
   * @return of the score; the name of its file if it has none
   */
  public String title() {
    String title = composition().title();
    return title.isEmpty() ? name : title;
  }

  String tala() {
    return composition().avartana().tala().name();
  }

  String tempo() {
    return composition().tempo().beatsPerMinute().toMixed();
  }

  /** A share of the tempo in beats a minute. */
  String tempo(int percent) {
    Ratio tempo = composition().tempo().beatsPerMinute().times(Ratio.of(percent, 100));
    return Long.toString(tempo.plus(Ratio.of(1, 2)).floor());
  }

  /** The nadais in order, each once. */
  String nadais() {
    Set<String> nadais = new LinkedHashSet<>();
    for (Span.Round round : performance.rounds()) {
      nadais.add(round.nadai() + (round.kalam() == 1 ? "" : " (kalam " + round.kalam() + ")"));
    }
    return nadais.stream().collect(Collectors.joining(", "));
  }

  /** Minutes and seconds at the full tempo. */
  String length() {
    long seconds = composition().tempo().secondsOf(performance.beats()).ceil();
    return String.format(
        Locale.ROOT, "%d:%02d", seconds / SECONDS_PER_MINUTE, seconds % SECONDS_PER_MINUTE);
  }

  Composition composition() {
    return performance.composition();
  }
}
