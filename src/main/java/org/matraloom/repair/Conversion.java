package org.matraloom.repair;

import java.util.ArrayList;
import java.util.List;
import org.matraloom.kanakku.Landing;
import org.matraloom.kanakku.PlaceWords;
import org.matraloom.score.Composition;
import org.matraloom.score.Edit;
import org.matraloom.score.Jati;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Nadai;
import org.matraloom.score.Performance;
import org.matraloom.score.Step;
import org.matraloom.score.Tala;
import org.matraloom.time.Ratio;

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
      add(versions, piece, "all rounds in " + Nadai.inWords(nadai), inNadai(plan, nadai));
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
   * The piece with every round in one nadai.
   *
   * @param piece the piece
   * @param nadai matras a beat in the first kalam
   * @return the version
   */
  public static Conversion toNadai(Composition piece, int nadai) {
    return of(
        piece,
        "all rounds in " + Nadai.inWords(nadai),
        List.of(new Edit.Plan(inNadai(piece.plan(), nadai))));
  }

  /**
   * The piece in another tala. A place that the other cycle is too short for moves to samam.
   *
   * @param piece the piece
   * @param tala the other tala
   * @return the version
   */
  public static Conversion toTala(Composition piece, Tala tala) {
    List<Edit> edits = new ArrayList<>();
    Ratio beats = Ratio.of((long) tala.aksharas() * piece.avartana().kalai());
    if (!isInside(piece.startBeat(), beats)) {
      edits.add(new Edit.Start(Ratio.ZERO));
    }
    if (!isInside(piece.eduppuBeat(), beats)) {
      edits.add(new Edit.Eduppu(Ratio.ZERO));
    }
    List<Step> plan = new ArrayList<>(piece.plan());
    plan.replaceAll(
        step ->
            step instanceof Step.Until until && !isInside(until.place(), beats)
                ? new Step.Until(Ratio.ZERO)
                : step);
    if (!plan.equals(piece.plan())) {
      edits.add(new Edit.Plan(plan));
    }
    edits.add(new Edit.InTala(tala));
    return of(piece, "in " + tala.name() + " (" + PlaceWords.beats(beats) + ")", edits);
  }

  /**
   * The piece started on the place where it lands: eduppu to eduppu.
   *
   * @param piece the piece
   * @return the version
   */
  public static Conversion eduppuToEduppu(Composition piece) {
    return of(
        piece,
        "started where it lands, eduppu to eduppu",
        List.of(new Edit.Start(piece.eduppuBeat())));
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

  private static boolean isInside(Ratio place, Ratio beats) {
    return place.compareTo(beats) < 0 && place.compareTo(beats.negate()) > 0;
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

  private static List<Step> inNadai(List<Step> plan, int nadai) {
    List<Step> changed = new ArrayList<>();
    for (Step step : plan) {
      if (step instanceof Step.Say say) {
        changed.add(new Step.Say(say.phrase(), say.times(), nadai, say.kalam()));
      } else if (step instanceof Step.RestMatras rest) {
        changed.add(new Step.RestMatras(rest.matras(), nadai));
      } else {
        changed.add(step);
      }
    }
    return changed;
  }
}
