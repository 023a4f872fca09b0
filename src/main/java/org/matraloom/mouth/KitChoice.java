package org.matraloom.mouth;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Sollu;
import org.matraloom.score.SolluSound;
import org.matraloom.voice.PhoneSyllable;

/** Which sample says which sollu. */
final class KitChoice {

  private final Kit kit;
  private final Lexicon lexicon;
  private final Map<String, List<Integer>> bySollu = new HashMap<>();
  private final Map<String, List<Integer>> answers = new HashMap<>();

  KitChoice(Kit kit, Lexicon lexicon) {
    this.kit = kit;
    this.lexicon = lexicon;
    for (int i = 0; i < kit.samples().size(); i++) {
      bySollu.computeIfAbsent(kit.samples().get(i).sollu(), name -> new ArrayList<>()).add(i);
    }
  }

  /**
   * Chooses a sample.
   *
   * @param sollu the name of the sound that is asked for
   * @param syllable its phones
   * @param company the sollu said just before it
   * @param take which of several is wanted
   * @return its index in the kit; nothing if no sample is near enough
   */
  Optional<Integer> of(String sollu, PhoneSyllable syllable, Optional<String> company, int take) {
    List<Integer> all = answers.computeIfAbsent(sollu, name -> good(name, syllable));
    if (all.isEmpty()) {
      return Optional.empty();
    }
    List<Integer> inCompany =
        all.stream().filter(i -> kit.samples().get(i).after().equals(company)).toList();
    List<Integer> from = inCompany.isEmpty() ? all : inCompany;
    return Optional.of(from.get(take % from.size()));
  }

  /** The sollu that says another one; nothing if none is near enough. */
  Optional<String> sayerOf(String sollu, PhoneSyllable syllable) {
    return good(sollu, syllable).stream().findFirst().map(i -> kit.samples().get(i).sollu());
  }

  private List<Integer> good(String sollu, PhoneSyllable syllable) {
    List<Integer> all = bySollu.containsKey(sollu) ? bySollu.get(sollu) : nearest(syllable);
    List<Integer> sure = all.stream().filter(i -> kit.samples().get(i).doubts().isEmpty()).toList();
    return sure.isEmpty() ? all : sure;
  }

  private List<Integer> nearest(PhoneSyllable syllable) {
    double least = SolluNearness.NEAR;
    List<Integer> best = List.of();
    for (String name : kit.sollus()) {
      double distance =
          syllable(name)
              .map(phones -> SolluNearness.between(syllable, phones))
              .orElse(Double.MAX_VALUE);
      if (distance < least) {
        least = distance;
        best = bySollu.get(name);
      }
    }
    return best;
  }

  /** The phones of a recorded sollu; nothing if the lexicon does not know it. */
  Optional<PhoneSyllable> syllable(String name) {
    return lexicon.sound(new Sollu(name, name)).map(SolluSound::phones).map(PhoneSyllable::of);
  }
}
