package org.matraloom.repair;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.matraloom.kanakku.LengthWords;
import org.matraloom.score.Composition;
import org.matraloom.score.Edit;
import org.matraloom.score.Element;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Span;
import org.matraloom.time.Ratio;

/** Repairs that make a phrase longer or shorter, by itself or together with another start. */
final class LengthRepairs {

  private static final int MOST_PHRASES = 100;
  private static final int MOST_ADDED = Lexicon.LARGEST_GROUP;
  private static final int MOST_DROPPED = 32;
  private static final int CHANGE = 2;
  private static final int CHANGE_AND_START = 4;

  private final RepairBench bench;
  private final Lexicon lexicon;
  private final Ratio move;
  private final List<String> phrases;
  private final int timesARound;

  /** Repairs of phrases in which one matra more moves the end by the same number of beats. */
  private LengthRepairs(
      RepairBench bench, Lexicon lexicon, Ratio move, List<String> phrases, int timesARound) {
    this.bench = bench;
    this.lexicon = lexicon;
    this.move = move;
    this.phrases = phrases;
    this.timesARound = timesARound;
  }

  static void offer(RepairBench bench, Lexicon lexicon) {
    Map<Ratio, List<String>> byMove = phrasesByMove(bench, lexicon);
    long saidPhrases =
        bench.performance().rounds().stream().map(Span.Round::phrase).distinct().count();
    byMove.forEach(
        (move, phrases) -> {
          Ratio times = move.dividedBy(byMove.keySet().iterator().next());
          boolean oftener = saidPhrases == 1 && times.isWhole() && times.num() > 1;
          int timesARound = oftener ? (int) times.num() : 1;
          LengthRepairs repairs = new LengthRepairs(bench, lexicon, move, phrases, timesARound);
          repairs.offerAlone();
          if (!bench.landing().startThatLands().isWhole()) {
            repairs.offerWithStart();
          }
        });
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
      Ratio end = bench.after(List.of(added(bench, name, 1, lexicon))).endBeat();
      Ratio move = end.minus(bench.performance().endBeat());
      if (move.signum() != 0) {
        byMove.computeIfAbsent(move, key -> new ArrayList<>()).add(name);
      }
    }
    return byMove;
  }

  private static Edit added(RepairBench bench, String phrase, int matras, Lexicon lexicon) {
    Element group = bench.composition().wording().group(matras, 1, 0, lexicon);
    return new Edit.Splice(phrase, 0, 0, List.of(group));
  }

  private void offerAlone() {
    for (int matras = 1; matras <= MOST_ADDED; matras++) {
      if (bench.landsMovedBy(move.times(matras)) && offerAdd(matras, Optional.empty())) {
        break;
      }
    }
    for (int matras = 1; matras <= MOST_DROPPED; matras++) {
      if (bench.landsMovedBy(move.times(-matras)) && offerDrop(matras, Optional.empty())) {
        break;
      }
    }
  }

  /** The fewest matras with which the start comes to lie on another beat than now. */
  private void offerWithStart() {
    Ratio start = bench.landing().startThatLands();
    boolean added = false;
    boolean dropped = false;
    for (int matras = 1; matras <= MOST_ADDED; matras++) {
      if (!added) {
        Optional<Edit.Start> earlier = otherBeat(start.minus(move.times(matras)));
        added = earlier.isPresent() && offerAdd(matras, earlier);
      }
      if (!dropped && matras <= MOST_DROPPED) {
        Optional<Edit.Start> later = otherBeat(start.plus(move.times(matras)));
        dropped = later.isPresent() && offerDrop(matras, later);
      }
    }
  }

  private Optional<Edit.Start> otherBeat(Ratio start) {
    Ratio place = start.modulo(bench.cycle());
    boolean other = !place.equals(bench.composition().startBeat().modulo(bench.cycle()));
    return place.isWhole() && other ? Optional.of(new Edit.Start(place)) : Optional.empty();
  }

  private boolean offerAdd(int matras, Optional<Edit.Start> start) {
    String phrase = phrases.get(0);
    List<Edit> edits = new ArrayList<>(List.of(added(bench, phrase, matras, lexicon)));
    start.ifPresent(edits::add);
    return bench.offer(
        start.isEmpty() ? Repair.Kind.ADD : Repair.Kind.ADD_AND_START,
        edits,
        "add "
            + LengthWords.matras(Ratio.of(matras))
            + " in front of "
            + phrase
            + (timesARound > 1 ? " (" + timesARound + " times a round)" : "")
            + startWords(start),
        (start.isEmpty() ? CHANGE : CHANGE_AND_START) + matras * timesARound);
  }

  private boolean offerDrop(int matras, Optional<Edit.Start> start) {
    Optional<Omission> omission = Omission.easiest(bench.composition(), phrases, matras, lexicon);
    if (omission.isEmpty()) {
      return false;
    }
    List<Edit> edits = new ArrayList<>(List.of(omission.get().edit()));
    start.ifPresent(edits::add);
    return bench.offer(
        start.isEmpty() ? Repair.Kind.DROP : Repair.Kind.DROP_AND_START,
        edits,
        "drop "
            + LengthWords.matras(Ratio.of(matras))
            + " from "
            + omission.get().edit().phrase()
            + " ("
            + omission.get().words()
            + (timesARound > 1 ? "; " + timesARound + " times a round)" : ")")
            + startWords(start),
        (start.isEmpty() ? CHANGE : CHANGE_AND_START)
            + matras * timesARound
            + omission.get().harm());
  }

  private String startWords(Optional<Edit.Start> start) {
    return start
        .map(edit -> " and start " + PlaceRepairs.startWords(edit.place(), bench))
        .orElse("");
  }
}
