package org.matraloom.app.prove;

import java.util.List;
import java.util.Optional;
import org.matraloom.fit.WholeRange;
import org.matraloom.form.Yati;
import org.matraloom.score.Anga;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.score.Tala;
import org.matraloom.time.Ratio;

/**
 * What a score must have to be listed; what is left open matches every score.
 *
 * @param tala its tala, by its angas
 * @param nadai the nadai of one of its rounds
 * @param matras the length of its first round
 * @param yati the shape of its purvanga
 */
record CatalogueFilter(
    Optional<Tala> tala,
    Optional<Integer> nadai,
    Optional<WholeRange> matras,
    Optional<Yati> yati) {

  static final CatalogueFilter EVERYTHING =
      new CatalogueFilter(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  /** Whether a readable score matches; one that cannot be read matches only an open filter. */
  boolean matches(CatalogueEntry entry) {
    if (entry.landing().isEmpty()) {
      return equals(EVERYTHING);
    }
    Performance performance = entry.landing().get().performance();
    List<Anga> angas = performance.avartana().tala().angas();
    List<Span.Round> rounds = performance.rounds();
    return tala.map(t -> t.angas().equals(angas)).orElse(true)
        && nadai.map(n -> rounds.stream().anyMatch(r -> r.nadai() == n)).orElse(true)
        && matras.map(m -> isIn(m, rounds.get(0).matras())).orElse(true)
        && yati.map(entry.yati()::equals).orElse(true);
  }

  private static boolean isIn(WholeRange range, Ratio matras) {
    return matras.isWhole() && range.contains(matras.num());
  }
}
