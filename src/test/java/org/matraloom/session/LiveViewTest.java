package org.matraloom.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.FeltBeat;
import org.matraloom.live.LivePiece;
import org.matraloom.live.LivePosition;
import org.matraloom.live.LiveSegment;
import org.matraloom.live.PieceSection;
import org.matraloom.live.PieceSections;
import org.matraloom.live.Rivers;
import org.matraloom.onset.Onset;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Lexicon;
import org.matraloom.sound.Mix;
import org.matraloom.sound.MixPart;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/** What is shown at a given moment, line by line. */
class LiveViewTest {

  private final LivePiece piece = Rivers.piece(Tempo.of(60), 1);
  private final PieceSections sections = PieceSections.of(piece.passages());

  private PlayState state(
      Optional<LivePosition> position,
      PieceSection section,
      Optional<PieceSection> loop,
      boolean showsKeys) {
    return new PlayState(
        new PlayState.Played(
            piece.passages().get(0).performance().composition(),
            piece.passages().get(0).performance().endBeat(),
            position.isPresent(),
            position,
            BeatSheet.of(piece.passages().get(0), Tempo.of(60), piece.breaths()),
            new GapTally(2, 0.414)),
        new PlayState.Chosen(
            section,
            sections.all().indexOf(section) + 1,
            sections.all().size(),
            sections.rounds(0).size(),
            Tempo.of(60),
            Mix.lesson().without(Set.of(MixPart.TICK)),
            loop,
            List.of(PartSwitch.CLAPS, PartSwitch.TICKS, PartSwitch.VOICE)),
        new PlayState.Told(showsKeys, "to Delta, round 1", "", "space starts"),
        Optional.empty());
  }

  private LivePosition position(long beat, PieceSection from) {
    return new LivePosition(
        new LiveSegment(-8, 0, -8, 0, Tempo.of(60), Rivers.RATE, from, Mix.lesson()), beat);
  }

  /** What a session shows while one speaks: marks over and under the words, in 80 by 24. */
  @Test
  void whatWasSaidIsMarkedOverAndUnderItsWords() {
    Timeline timeline = piece.passages().get(0);
    SaidMarks marks = new SaidMarks(timeline, Lexicon.standard(), true, Rivers.RATE);
    ExpectedSollu.of(timeline).stream()
        .filter(asked -> asked.beat().floor() == 16 || asked.beat().floor() == 17)
        .limit(7)
        .forEach(asked -> marks.hear(heard(timeline, asked), 0));
    PlayState state =
        state(
                Optional.of(position(17, sections.first())),
                sections.all().get(2),
                Optional.empty(),
                false)
            .recording(
                "Join 1, 60 beats a minute", "[###...] -20 dB", "q ends", Optional.of(marks));
    List<String> lines = LiveView.lines(state, 80, 24);
    assertEquals(24, LiveView.lines(state, 80, 60).size(), "all of it is seen");
    assertTrue(lines.contains("  early           o            o"), String.join("\n", lines));
    assertTrue(lines.contains("  now       ta ta ta ta  |  ta ta ta ta"), String.join("\n", lines));
    assertTrue(lines.contains("  late      .  O     .      O     ."), String.join("\n", lines));
  }

  /** 30 ms early, 5 and 60 ms late, in turn. */
  private static Onset heard(Timeline timeline, ExpectedSollu asked) {
    double[] late = {-0.030, 0.005, 0.060};
    int turn = (int) (asked.beat().times(4).floor() % 3);
    double lag = FeltBeat.of(asked.sollu(), Lexicon.standard()).usualLagSeconds();
    return new Onset(timeline.secondsAt(asked.beat()).toDouble() - lag + late[turn], 1);
  }

  @Test
  void aBeatInTheMiddle() {
    PieceSection delta = sections.all().get(2);
    PlayState state =
        state(Optional.of(position(17, sections.first())), delta, Optional.empty(), false);
    assertEquals(
        """
        River                                                        60 beats a minute
        chatusra triputa, 8 beats                                              playing

           #####            avartana 3
               #            beat 2 of 8
           #####            LITTLE FINGER
           #                then ring finger
           #####

          hand       X [l] r  m  X  ~  X  ~
          now       ta ta ta ta
          next      ta ta ta ta

          nadai     chatusra nadai (4)
          change
          piece     round 1 of 3, section Delta (3 of 9), loop off

          sound     claps on  ticks off  voice on
          underruns 2, 0.41 s of silence put in
                    to Delta, round 1

        space starts
        """
            .replaceAll(" +\n", "\n"),
        String.join("\n", LiveView.lines(state, 100, 24)).replaceAll(" +\n", "\n") + "\n");
  }

  @Test
  void aChangeOfNadaiIsAnnouncedAnAvartanaAhead() {
    assertEquals("", change(31, Optional.empty()));
    assertEquals("to khanda nadai (5) in 8 beats", change(32, Optional.empty()));
    assertEquals("to khanda nadai (5) in 1 beat", change(39, Optional.empty()));
    assertEquals("", change(40, Optional.empty()));
    assertEquals(
        "", change(39, Optional.of(sections.rounds(0).get(1))), "the loop turns back first");
  }

  private String change(long beat, Optional<PieceSection> loop) {
    PlayState state =
        state(Optional.of(position(beat, sections.first())), sections.first(), loop, false);
    return row(LiveView.lines(state, 80, 24), "change");
  }

  private static String row(List<String> lines, String label) {
    return lines.stream()
        .filter(line -> line.strip().startsWith(label))
        .findFirst()
        .orElseThrow()
        .strip()
        .substring(label.length())
        .strip();
  }

  @Test
  void inTheLeadInTheWaitIsCountedAndTheFirstWordsAreShownAsNext() {
    PieceSection delta = sections.all().get(2);
    PlayState state = state(Optional.of(position(15, delta)), delta, Optional.empty(), false);
    List<String> lines = LiveView.lines(state, 80, 24);
    assertTrue(lines.stream().anyMatch(line -> line.endsWith("Delta in 1 beat")), lines.toString());
    assertEquals("", row(lines, "now"));
    assertEquals("ta ta ta ta", row(lines, "next"));
  }

  @ParameterizedTest
  @CsvSource({"80, 24", "40, 12", "10, 3", "1, 1", "200, 60"})
  void everySizeOfScreenIsKeptTo(int width, int height) {
    PieceSection first = sections.first();
    for (PlayState state :
        List.of(
            state(Optional.empty(), first, Optional.empty(), false),
            state(Optional.of(position(3, first)), first, Optional.of(first), false),
            state(Optional.empty(), first, Optional.empty(), true))) {
      List<String> lines = LiveView.lines(state, width, height);
      assertTrue(lines.size() <= height, "lines: " + lines.size());
      assertTrue(lines.stream().allMatch(line -> line.length() <= width));
      if (width >= 80 && height >= 24) {
        assertEquals(LiveView.lines(state, 1_000, 1_000), lines, "80 by 24 shows all there is");
      }
    }
  }

  @Test
  void theListOfKeysNamesEveryAction() {
    List<String> lines =
        LiveView.lines(state(Optional.empty(), sections.first(), Optional.empty(), true), 80, 24);
    assertEquals(KeyAction.all().size(), lines.size());
    for (KeyAction action : KeyAction.all()) {
      assertTrue(lines.stream().anyMatch(line -> line.endsWith(action.words())), action.words());
    }
  }

  @Test
  void plainLinesTellEachAvartanaAndEachChangeOnce() {
    StringWriter text = new StringWriter();
    PlainLines plain = new PlainLines(new PrintWriter(text));
    for (long beat = 30; beat < 42; beat++) {
      PieceSection section = sections.at(0, Ratio.of(beat));
      PlayState state =
          state(Optional.of(position(beat, sections.first())), section, Optional.empty(), false);
      plain.show(state);
      plain.show(state);
    }
    assertEquals(
        """
        60 beats a minute, ticks off
        avartana 4, round 2 of 3, section Bend (5 of 9), chatusra nadai (4)
        underruns 2, 0.41 s of silence put in
        avartana 5, round 2 of 3, section Bend (5 of 9), chatusra nadai (4)
        nadai change coming: to khanda nadai (5) in 8 beats
        avartana 5, round 2 of 3, section Delta (6 of 9), chatusra nadai (4)
        avartana 6, round 3 of 3, section Source (7 of 9), khanda nadai (5)
        """,
        text.toString());
  }
}
