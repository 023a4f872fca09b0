package org.matraloom.breath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.matraloom.notation.ScoreEditor;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Composition;
import org.matraloom.score.Edit;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.spell.ScorePrinter;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/** What the score asks for and forbids, and plans kept in scores. */
class BreathWishTest {

  private static final BreathSettings STUDY = BreathSettings.study();
  private static final BreathSettings FEWEST = STUDY.by(BreathSettings.Way.FEWEST);

  @Test
  void aBreathAskedForIsTakenThoughNothingElseWouldTakeIt() {
    for (BreathSettings settings : List.of(STUDY, FEWEST)) {
      assertEquals(List.of(), after(plan("Song = takadimi , takita", 60, settings)));
      BreathPlan asked = plan("Song = takadimi , ' takita", 60, settings);
      assertEquals(List.of("mi"), after(asked));
      assertEquals("inside a phrase, the score asks for it", asked.breaths().get(0).why());
      BreathPlan early = plan("Song = takadimi ' , takita", 60, settings);
      assertEquals(asked.breaths(), early.breaths(), "before its karvai or after");
    }
  }

  /** A sollu that does not ring is said short for it, if that gives time: a matra of 0.75 s. */
  @Test
  void aSolluIsSaidShortWhereTheScoreAsks() {
    BreathPlan slow = plan("Song = takadimi ' takita", 20, STUDY);
    assertEquals(List.of("mi"), after(slow));
    assertEquals(Breath.Source.SOLLU, slow.breaths().get(0).air().source());
    BreathPlan quick = plan("Song = takadimi ' takita", 90, STUDY);
    assertEquals(List.of(), after(quick));
    assertEquals(
        List.of(
            "Round 1: the score asks for a breath after the mi on beat 1 3/4, but"
                + " there is no time (0.00 s after its matra)"),
        quick.notes());
  }

  @Test
  void aBreathForbiddenIsNotTakenOnToTheEndOfThePhrase() {
    String line = "Reed = takadimi tom , , , takadimi tom , , ,\nSong = Reed Reed";
    assertEquals(List.of("tom", "tom", "tom"), after(plan(line, 60, STUDY)));
    String once = line.replaceFirst("tom , , ,", "tom , , , '!");
    BreathPlan kept = plan(once, 60, STUDY);
    assertEquals(1, kept.breaths().size(), "only between the two");
    String all = line.replace("takadimi tom", "takadimi '! tom");
    assertEquals(1, plan(all, 60, STUDY).breaths().size(), "the ban lasts to the end of Reed");
    String end = line.replace("Reed Reed", "Reed '! Reed");
    assertEquals(2, plan(end, 60, STUDY).breaths().size(), "it ends where the next one begins");
  }

  /** The ban breaks a limit, and the plan says which one. */
  @Test
  void aBanIsObeyedThoughALimitBreaks() {
    String song = "Reed = takadimi takajunu takadimi takajunu takadimi tom , , ,\nSong = Reed Reed";
    assertTrue(plan(song, 60, STUDY).isPossible());
    for (BreathSettings settings : List.of(STUDY, FEWEST)) {
      BreathPlan banned = plan(song.replace("Reed Reed", "Reed '! Reed"), 60, settings);
      assertFalse(banned.isPossible());
      assertEquals(
          List.of(
              "The score forbids a breath after the tom on beat 6, in a stretch that is too"
                  + " long"),
          banned.notes());
    }
  }

  /** Forbidden at one gap, the others of the mora follow the limit, and the exception is told. */
  @Test
  void anExceptionIsTold() {
    BreathPlan plan = plan("Song = 10(4)10(4)'! 10(4)10(4)10", 48, STUDY);
    assertEquals(3, plan.breaths().size());
    assertEquals(1, plan.notes().size());
    assertTrue(
        plan.notes().get(0).endsWith("elsewhere: the score forbids it"), plan.notes().get(0));
  }

  /** Marks change no matra, and reading what was printed gives the same marks. */
  @Test
  void marksArePrintedAndTakeNoTime() {
    Composition marked = piece("Song = takita ' , (taka '!) x3 9(1)'9 [ta '!] '", 60);
    Composition again =
        ScoreReader.read(ScorePrinter.print(marked), "", Lexicon.standard())
            .composition()
            .orElseThrow();
    assertEquals(marked.phrases(), again.phrases());
    Composition plain = piece("Song = takita , (taka) x3 9(1)9 [ta]", 60);
    assertEquals(Performance.of(plain).beats(), Performance.of(marked).beats());
  }

  @Test
  void aKeptPlanAsksForAllOfItsBreathsAndIsTheSamePlan() {
    int breaths = 0;
    int same = 0;
    for (int number = 0; number < 120; number++) {
      Composition piece = Pieces.korvai(50_000 + number);
      BreathPlan plan = BreathPlanner.plan(Performance.of(piece), STUDY);
      KeptPlan kept = KeptPlan.of(plan);
      Composition marked = Edit.all(piece, kept.edits());
      assertEquals(beats(plan).size() + kept.added().size(), beats(kept.asked()).size());
      assertTrue(beats(kept.asked()).containsAll(beats(plan)), "piece " + number);
      Voice voice = VoiceReader.read(Performance.of(marked)).orElseThrow();
      Set<Ratio> asked =
          voice.stops().stream()
              .filter(VoiceStop::isAsked)
              .map(stop -> stop.last().beat())
              .collect(Collectors.toSet());
      assertTrue(asked.containsAll(beats(plan)), "piece " + number);
      breaths += plan.breaths().size();
      same += kept.added().isEmpty() ? 1 : 0;
    }
    assertTrue(breaths > 200 && same > 100, breaths + ", " + same);
  }

  @Test
  void marksAreWrittenIntoTheTextAsItStands() {
    String text =
        """
        tala adi     # a note
        tempo 60
        Drip = takadimi takajunu tom ; ,   # the line
        Song = Drip (takadimi tom ; ,) x2
          12(3)12(3)12
        """;
    Composition piece = ScoreReader.read(text, "", Lexicon.standard()).composition().orElseThrow();
    KeptPlan kept = KeptPlan.of(BreathPlanner.plan(Performance.of(piece), STUDY));
    assertEquals(
        """
        tala adi     # a note
        tempo 60
        Drip = takadimi takajunu tom ; , '   # the line
        Song = Drip (takadimi tom ; , ') x2
          12(3)' 12(3)' 12
        """,
        ScoreEditor.apply(text, kept.edits(), Lexicon.standard()));
  }

  private static Set<Ratio> beats(BreathPlan plan) {
    return plan.breaths().stream().map(Breath::afterBeat).collect(Collectors.toSet());
  }

  private static List<String> after(BreathPlan plan) {
    return plan.breaths().stream().map(breath -> breath.after().sollu()).toList();
  }

  private static BreathPlan plan(String phrases, int tempo, BreathSettings settings) {
    return BreathPlanner.plan(Performance.of(piece(phrases, tempo)), settings);
  }

  private static Composition piece(String phrases, int tempo) {
    String score = "tala adi\ntempo 60\n" + phrases + "\n";
    return ScoreReader.read(score, "", Lexicon.standard())
        .composition()
        .orElseThrow()
        .at(Tempo.of(tempo));
  }
}
