package org.matraloom.repair;

import java.util.ArrayList;
import java.util.List;
import org.matraloom.kanakku.Landing;
import org.matraloom.score.Composition;
import org.matraloom.score.Edit;
import org.matraloom.score.Jati;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Nadai;
import org.matraloom.score.Performance;
import org.matraloom.score.Step;
import org.matraloom.score.Tala;

/**
 * A piece taken over into another nadai, tala, set of speeds or eduppu.
 *
 * @param words what was changed, in a musician's words
 * @param edits the changes, in order
 * @param landing where the changed piece ends as it stands
 */
public record Conversion(String words, List<Edit> edits, Landing landing) {

  private static final List<Integer> THREE_DENSITIES = List.of(3, 4, 6);

  /** Copies the list. */
  public Conversion {
    edits = List.copyOf(edits);
  }

  /**
   * The usual versions of a piece: all rounds in each other nadai, the last round in each other
   * nadai, three speeds, three densities.
   *
   * @param piece the piece
   * @return the versions that differ from the piece itself
   */
  public static List<Conversion> versions(Composition piece) {
    List<Conversion> versions = new ArrayList<>();
    List<Step> plan = piece.plan();
    for (Jati jati : Jati.values()) {
      int nadai = jati.aksharas();
      add(
          versions,
          piece,
          "all rounds in " + Nadai.inWords(nadai),
          PlanSurgery.inNadai(plan, nadai));
      add(
          versions,
          piece,
          "the last round in " + Nadai.inWords(nadai),
          PlanSurgery.withLastRound(plan, nadai, 1));
    }
    Step.Say first = PlanSurgery.firstSay(plan);
    List<Step> speeds = new ArrayList<>();
    for (int kalam = 1; kalam <= Composition.HIGHEST_KALAM; kalam++) {
      speeds.add(new Step.Say(first.phrase(), 1, first.nadai(), kalam));
    }
    add(versions, piece, "three speeds, each twice as fast as the one before", speeds);
    List<Step> densities = new ArrayList<>();
    THREE_DENSITIES.forEach(nadai -> densities.add(new Step.Say(first.phrase(), 1, nadai, 1)));
    add(versions, piece, "three rounds in 3, 4 and 6 a beat", densities);
    return List.copyOf(versions);
  }

  /**
   * The piece taken over as wished, all of the wish at once.
   *
   * @param piece the piece
   * @param wish what is to be other
   * @return the version; its words name everything that changes, places that move to samam too
   */
  public static Conversion of(Composition piece, ConversionWish wish) {
    return of(piece, wish.words(piece), wish.edits(piece));
  }

  /**
   * All ways to make this version land.
   *
   * @param piece the piece that was converted
   * @param lexicon gives the words for matras that are added
   * @param talas the talas in which it may be set
   * @return the repairs, each with all edits from the unconverted piece; none if it lands already
   */
  public List<Repair> repairs(Composition piece, Lexicon lexicon, List<Tala> talas) {
    return Repairs.of(Edit.all(piece, edits), lexicon, talas).stream()
        .map(
            repair -> {
              List<Edit> all = new ArrayList<>(edits);
              all.addAll(repair.edits());
              return new Repair(
                  repair.kind(), all, repair.words(), repair.cost(), repair.performance());
            })
        .toList();
  }

  private static void add(
      List<Conversion> versions, Composition piece, String words, List<Step> plan) {
    if (!Performance.of(new Edit.Plan(plan).appliedTo(piece))
        .spans()
        .equals(Performance.of(piece).spans())) {
      versions.add(of(piece, words, List.of(new Edit.Plan(plan))));
    }
  }

  private static Conversion of(Composition piece, String words, List<Edit> edits) {
    return new Conversion(words, edits, Landing.of(Performance.of(Edit.all(piece, edits))));
  }
}
