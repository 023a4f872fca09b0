package org.matraloom.kanakku;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.matraloom.score.Composition;
import org.matraloom.score.Edit;
import org.matraloom.score.Element;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Span;
import org.matraloom.time.Ratio;

/** Repairs that make a phrase longer or shorter, by itself or together with another start. */
final class LengthRepairs {

  private static final int MOST_PHRASES = 100;
  private static final int CHANGE = 2;
  private static final int CHANGE_AND_START = 4;

  private LengthRepairs() {}

  static void offer(RepairBench bench, Lexicon lexicon) {
    Map<Ratio, List<String>> byMove = phrasesByMove(bench, lexicon);
    byMove.forEach(
        (move, phrases) -> {
          for (int matras = 1; matras <= Lexicon.LARGEST_GROUP; matras++) {
            if (bench.landsMovedBy(move.times(matras))) {
              offerAdd(bench, lexicon, phrases, matras, List.of());
              break;
            }
          }
          for (int matras = 1; matras <= Lexicon.LARGEST_GROUP; matras++) {
            if (bench.landsMovedBy(move.times(-matras))
                && offerDrop(bench, lexicon, phrases, matras, List.of())) {
              break;
            }
          }
        });
    if (!byMove.isEmpty() && !bench.landing().startThatLands().isWhole()) {
      offerWithStart(bench, lexicon, byMove);
    }
  }

  /** The phrases, grouped by how far one matra more in them moves the end; the said ones first. */
  static Map<Ratio, List<String>> phrasesByMove(RepairBench bench, Lexicon lexicon) {
    Composition composition = bench.composition();
    List<String> names = new ArrayList<>();
    bench.performance().rounds().stream().map(Span.Round::phrase).distinct().forEach(names::add);
    composition.phrases().keySet().stream()
        .filter(name -> !names.contains(name))
        .forEach(names::add);
    Map<Ratio, List<String>> byMove = new LinkedHashMap<>();
    for (String name : names.subList(0, Math.min(names.size(), MOST_PHRASES))) {
      Ratio end = bench.after(List.of(added(name, 1, lexicon))).endBeat();
      Ratio move = end.minus(bench.performance().endBeat());
      if (move.signum() != 0) {
        byMove.computeIfAbsent(move, key -> new ArrayList<>()).add(name);
      }
    }
    return byMove;
  }

  private static Edit added(String phrase, int matras, Lexicon lexicon) {
    Element group = new Element.Group(matras, 1, 0, lexicon.words(matras));
    return new Edit.Splice(phrase, 0, 0, List.of(group));
  }

  private static boolean offerAdd(
      RepairBench bench, Lexicon lexicon, List<String> phrases, int matras, List<Edit> alsoStart) {
    String phrase = phrases.get(0);
    List<Edit> edits = new ArrayList<>(List.of(added(phrase, matras, lexicon)));
    edits.addAll(alsoStart);
    return bench.offer(
        alsoStart.isEmpty() ? Repair.Kind.ADD : Repair.Kind.ADD_AND_START,
        edits,
        "add "
            + PlaceWords.matras(Ratio.of(matras))
            + " in front of "
            + phrase
            + startWords(bench, alsoStart),
        (alsoStart.isEmpty() ? CHANGE : CHANGE_AND_START) + matras);
  }

  private static boolean offerDrop(
      RepairBench bench, Lexicon lexicon, List<String> phrases, int matras, List<Edit> alsoStart) {
    Optional<Omission> omission = Omission.easiest(bench.composition(), phrases, matras, lexicon);
    if (omission.isEmpty()) {
      return false;
    }
    List<Edit> edits = new ArrayList<>(List.of(omission.get().edit()));
    edits.addAll(alsoStart);
    return bench.offer(
        alsoStart.isEmpty() ? Repair.Kind.DROP : Repair.Kind.DROP_AND_START,
        edits,
        "drop "
            + PlaceWords.matras(Ratio.of(matras))
            + " from "
            + omission.get().edit().phrase()
            + " ("
            + omission.get().words()
            + ")"
            + startWords(bench, alsoStart),
        (alsoStart.isEmpty() ? CHANGE : CHANGE_AND_START) + matras + omission.get().harm());
  }

  private static void offerWithStart(
      RepairBench bench, Lexicon lexicon, Map<Ratio, List<String>> byMove) {
    Map.Entry<Ratio, List<String>> said = byMove.entrySet().iterator().next();
    Ratio start = bench.landing().startThatLands();
    boolean added = false;
    boolean dropped = false;
    for (int matras = 1; matras <= Lexicon.LARGEST_GROUP; matras++) {
      Ratio move = said.getKey().times(matras);
      Ratio earlier = start.minus(move).modulo(bench.cycle());
      Ratio later = start.plus(move).modulo(bench.cycle());
      if (!added && earlier.isWhole()) {
        Edit edit = new Edit.Start(earlier);
        added = offerAdd(bench, lexicon, said.getValue(), matras, List.of(edit));
      }
      if (!dropped && later.isWhole()) {
        Edit edit = new Edit.Start(later);
        dropped = offerDrop(bench, lexicon, said.getValue(), matras, List.of(edit));
      }
    }
  }

  private static String startWords(RepairBench bench, List<Edit> edits) {
    for (Edit edit : edits) {
      if (edit instanceof Edit.Start start) {
        return " and start " + PlaceRepairs.startWords(start.place(), bench);
      }
    }
    return "";
  }
}
