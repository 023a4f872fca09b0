package org.matraloom.breath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.matraloom.form.Joint;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/** The plan against every choice of places, each weighed afresh from the table of the docs. */
class ReciterSearchTest {

  private static final BreathSettings STUDY = BreathSettings.study();
  private static final Ratio FULL_SECONDS = Ratio.of(6, 10);

  /** Every choice of places. */
  private static final class EveryChoice {
    private final Voice voice;
    private final Tempo tempo;
    private final List<Candidate> candidates;
    private final Map<Object, List<Candidate>> places = new LinkedHashMap<>();
    private final List<Candidate> lastFree = new ArrayList<>();
    private List<Long> best = List.of();
    private long choices;

    EveryChoice(Composition piece) {
      this.voice = VoiceReader.read(Performance.of(piece)).orElseThrow();
      this.tempo = piece.tempo();
      this.candidates = Candidate.of(voice, tempo, STUDY);
      for (Candidate candidate : candidates) {
        Object place = crowds(candidate) ? candidate : candidate.stop().standing().place();
        places.computeIfAbsent(place, none -> new ArrayList<>()).add(candidate);
      }
      for (Ratio change : voice.changeBeats()) {
        Ratio since = voice.changeBeats().lower(change);
        candidates.stream()
            .filter(Candidate::free)
            .filter(each -> each.stop().next().beat().compareTo(change) <= 0)
            .filter(each -> since == null || each.stop().next().beat().compareTo(since) > 0)
            .reduce((earlier, later) -> later)
            .ifPresent(lastFree::add);
      }
    }

    int count() {
      return places.size();
    }

    List<Long> best() {
      List<List<Candidate>> all = List.copyOf(places.values());
      for (int choice = 0; choice < 1 << all.size(); choice++) {
        List<Candidate> taken = new ArrayList<>();
        boolean obeys = true;
        for (int place = 0; place < all.size(); place++) {
          boolean isTaken = (choice >> place & 1) == 1;
          if (isTaken) {
            taken.addAll(all.get(place));
          } else {
            obeys &= all.get(place).stream().noneMatch(each -> each.stop().isAsked());
          }
        }
        if (obeys) {
          choices++;
          taken.sort((a, b) -> a.usualStart().compareTo(b.usualStart()));
          List<Long> cost = cost(taken);
          best = best.isEmpty() || isLess(cost, best) ? cost : best;
        }
      }
      return best;
    }

    private static boolean crowds(Candidate candidate) {
      return candidate.beforeChange() && !candidate.free() && !candidate.stop().isAsked();
    }

    private static boolean isLess(List<Long> one, List<Long> other) {
      for (int at = 0; at < one.size(); at++) {
        if (!one.get(at).equals(other.get(at))) {
          return one.get(at) < other.get(at);
        }
      }
      return false;
    }

    private List<Long> cost(List<Candidate> taken) {
      long[] cost = new long[PlanTerm.values().length];
      Ratio from = voice.begin().beat();
      Ratio lastStart = null;
      long said = 0;
      Ratio lack = Ratio.ZERO;
      for (int at = 0; at <= taken.size(); at++) {
        boolean last = at == taken.size();
        long count = (last ? voice.sollus() : taken.get(at).stop().solluCount()) - said;
        Ratio to = last ? voice.endBeat() : taken.get(at).usualStart();
        if (!last && excess(to.minus(from), count) > 0) {
          to = taken.get(at).earliestStart();
        }
        cost[PlanTerm.OVER.ordinal()] += excess(to.minus(from), count);
        Ratio seconds = tempo.secondsOf(to.minus(from));
        long load =
            Math.min(10_000, Math.max(seconds.times(1000).dividedBy(8).floor(), 1000 * count / 40));
        cost[PlanTerm.UNEVEN.ordinal()] +=
            40 * load * load / 1_000_000 + 60 * load * lack.floor() / 1_000_000;
        if (!last) {
          Candidate candidate = taken.get(at);
          Ratio air = tempo.secondsOf(candidate.stop().next().beat().minus(to));
          boolean close =
              lastStart != null && tempo.secondsOf(to.minus(lastStart)).compareTo(Ratio.of(2)) < 0;
          cost[PlanTerm.CLOSE.ordinal()] += close ? 1 : 0;
          cost[PlanTerm.CHANGE.ordinal()] += crowds(candidate) ? 1 : 0;
          Joint joint = candidate.stop().joint();
          if (!candidate.free()) {
            cost[PlanTerm.valueOf(joint.name()).ordinal()]++;
          }
          cost[PlanTerm.BREATHS.ordinal()]++;
          cost[PlanTerm.CATCH.ordinal()] += air.compareTo(FULL_SECONDS) < 0 ? 1 : 0;
          cost[PlanTerm.CUT.ordinal()] += to.compareTo(candidate.stop().endBeat()) < 0 ? 1 : 0;
          lastStart = candidate.usualStart();
          from = candidate.stop().next().beat();
          said = candidate.stop().solluCount();
          Ratio usualAir = tempo.secondsOf(from.minus(candidate.usualStart()));
          long share = usualAir.times(1_000_000).dividedBy(600).floor();
          lack = Ratio.of(Math.max(0, 1000 - share));
        }
      }
      for (Candidate candidate : candidates) {
        boolean first =
            candidate.stop().standing().beforeLastMora() && !crowds(candidate)
                || lastFree.contains(candidate);
        if (!taken.contains(candidate) && (first || candidate.free())) {
          cost[(first ? PlanTerm.UNUSED_FIRST : PlanTerm.UNUSED).ordinal()]++;
        }
      }
      return Arrays.stream(cost).boxed().toList();
    }

    private long excess(Ratio beats, long sollus) {
      Ratio seconds = tempo.secondsOf(beats);
      if (seconds.compareTo(Ratio.of(8)) <= 0 && sollus <= 40) {
        return 0;
      }
      long load = Math.max(seconds.times(1000).dividedBy(8).floor(), 1000 * sollus / 40);
      return Math.max(1, load - 1000);
    }
  }

  @Test
  void agreesWithTryingEveryChoiceOfPlacesOnFiveHundredPieces() {
    int checked = 0;
    int several = 0;
    int impossible = 0;
    long choices = 0;
    for (long number = 0; checked < 500; number++) {
      Composition piece = Pieces.korvai(number);
      EveryChoice every = new EveryChoice(piece);
      if (every.count() < 2 || every.count() > 8) {
        continue;
      }
      BreathPlan plan = BreathPlanner.plan(Performance.of(piece), STUDY);
      assertEquals(every.best(), plan.cost().amounts(), "piece " + number);
      checked++;
      several += every.count() > 4 ? 1 : 0;
      impossible += plan.isPossible() ? 0 : 1;
      choices += every.choices;
    }
    assertTrue(
        several > 80 && impossible > 20 && choices > 8_000,
        several + ", " + impossible + ", " + choices);
  }

  /** Twelve rounds of 720 matras in three nadais: the search comes to its end. */
  @Test
  void aLongPieceIsSearchedToTheEnd() {
    Pieces pieces = new Pieces();
    StringBuilder song = new StringBuilder();
    for (int line = 0; line < 12; line++) {
      String name = "Line" + (char) ('A' + line);
      String half = " ta-ka-di-mi".repeat(3 + line % 3) + " ta , di-gi na tom ,";
      pieces.phrase(name, half + half + " ,".repeat(line % 4));
      song.append(name).append(' ');
    }
    String mora =
        "ta-ka-di-mi ta-ka-di-gi-na-tom , , ".repeat(2) + "ta-ka-di-mi ta-ka-di-gi-na-tom";
    pieces.phrase("Weir", mora);
    pieces.phrase("Song", song + "Weir , , Weir , , Weir");
    Composition piece = pieces.say("Song", 4, 4).say("Song", 4, 3).say("Song", 4, 5).at(90);
    assertTrue(Performance.of(piece).rounds().get(0).sollus() > 450);
    for (int tempo = 50; tempo <= 120; tempo += 10) {
      Tempo beat = Tempo.of(tempo);
      Voice voice = VoiceReader.read(Performance.of(piece.at(beat))).orElseThrow();
      List<Candidate> candidates = Candidate.of(voice, beat, STUDY);
      StretchGraph graph = new StretchGraph(voice, beat, STUDY, candidates);
      BreathPlaces places = new BreathPlaces(candidates, voice);
      graph.weigh(places);
      ReciterSearch search = new ReciterSearch(graph, places);
      assertTrue(search.path().size() > 100, "at " + tempo);
      assertTrue(search.isProven(), "at " + tempo);
    }
  }

  /** The table of the docs is the table of the program. */
  @Test
  void theDocsNameTheTermsInTheirOrder() throws IOException {
    String page = Files.readString(Path.of("docs", "breathing.md"));
    List<String> rows =
        page.substring(page.indexOf("<!-- terms"))
            .lines()
            .filter(line -> line.startsWith("| "))
            .map(line -> line.split("\\|")[1].strip())
            .toList();
    List<String> terms = Arrays.stream(PlanTerm.values()).map(PlanTerm::words).toList();
    assertEquals(terms, rows.subList(1, rows.size()));
  }

  @Test
  void aHeavierTermOutweighsAnyNumberOfLighterOnes() {
    int last = PlanTerm.values().length - 1;
    for (int term = 0; term < last; term++) {
      List<Long> one = new ArrayList<>(Collections.nCopies(last + 1, 0L));
      List<Long> many = new ArrayList<>(Collections.nCopies(last + 1, 0L));
      one.set(term, 1L);
      for (int lighter = term + 1; lighter <= last; lighter++) {
        many.set(lighter, 2_000_000L);
      }
      assertTrue(new PlanCost(one).compareTo(new PlanCost(many)) > 0);
      if (term > 0) {
        long[] packed = packed(one);
        assertTrue(PackedCost.compare(packed, 0, packed(many), 0) > 0);
        assertEquals(new PlanCost(one), PackedCost.unpacked(packed, 0, 0));
      }
    }
  }

  private static long[] packed(List<Long> amounts) {
    long[] packed = new long[PackedCost.WIDTH];
    for (PlanTerm term : PlanTerm.values()) {
      if (term != PlanTerm.OVER) {
        PackedCost.add(packed, 0, term, amounts.get(term.ordinal()));
      }
    }
    return packed;
  }
}
