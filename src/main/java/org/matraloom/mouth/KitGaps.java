package org.matraloom.mouth;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Sollu;
import org.matraloom.score.SolluSound;
import org.matraloom.voice.PhoneSyllable;

/**
 * What a voice lacks.
 *
 * @param byNearest sollus that another one of the voice says, with that one behind: "ṭa (by ta)"
 * @param bySynthesiser sollus that the synthesiser says
 */
public record KitGaps(List<String> byNearest, List<String> bySynthesiser) {

  /** Copies the lists. */
  public KitGaps {
    byNearest = List.copyOf(byNearest);
    bySynthesiser = List.copyOf(bySynthesiser);
  }

  /**
   * Looks for gaps.
   *
   * @param kit the voice
   * @param asked names of sounds of the lexicon; others are passed over
   * @param lexicon the phones of the sollus
   * @return the gaps, in the order of what was asked
   */
  public static KitGaps of(Kit kit, Collection<String> asked, Lexicon lexicon) {
    KitChoice choice = new KitChoice(kit, lexicon);
    List<String> nearest = new ArrayList<>();
    List<String> none = new ArrayList<>();
    for (String sollu : asked) {
      Optional<PhoneSyllable> phones =
          lexicon.sound(new Sollu(sollu, sollu)).map(SolluSound::phones).map(PhoneSyllable::of);
      if (phones.isPresent() && !kit.sollus().contains(sollu)) {
        Optional<String> sayer = choice.sayerOf(sollu, phones.get());
        sayer.ifPresentOrElse(
            other -> nearest.add(sollu + " (by " + other + ")"), () -> none.add(sollu));
      }
    }
    return new KitGaps(nearest, none);
  }

  /**
   * Whether nothing is missing.
   *
   * @return true if all was recorded
   */
  public boolean isEmpty() {
    return byNearest.isEmpty() && bySynthesiser.isEmpty();
  }
}
