package org.matraloom.app.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.log.History;
import org.matraloom.log.LogEntry;
import org.matraloom.log.PracticeLog;
import org.matraloom.notation.ScoreReader;
import org.matraloom.schedule.Event;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.sound.Sruti;
import org.matraloom.sound.SrutiDrone;
import org.matraloom.staircase.Help;
import org.matraloom.staircase.Spot;
import org.matraloom.staircase.StairSettings;
import org.matraloom.voice.FormantVoice;
import org.matraloom.voice.SolluVoice;
import org.matraloom.voice.VoiceSettings;
import org.matraloom.wav.PcmFormat;
import org.matraloom.wav.WavReader;

/** Whole sessions with a made reciter, heard by the full measure, without a sound card. */
class LessonTest {

  private static final Spot JOIN = new Spot(Spot.Kind.JOIN, "1");

  @TempDir private Path folder;

  private final Composition song =
      ScoreReader.read(Path.of("samples-synth/gutter-song.loom"), Lexicon.standard())
          .composition()
          .orElseThrow();
  private final LessonPieces pieces = new LessonPieces(song, Lexicon.standard(), Optional.empty());

  private Lesson.End run(MadeReciter reciter, int start, int goal, int minutes, boolean whole)
      throws IOException {
    return run(reciter, start, goal, minutes, whole, Lesson.REST_AFTER_SECONDS);
  }

  private Lesson.End run(
      MadeReciter reciter, int start, int goal, int minutes, boolean whole, double restAfter)
      throws IOException {
    Course course = new Course(pieces, StairSettings.usual(start, 34, goal, 144), whole);
    LessonNotes notes = new LessonNotes(folder.resolve("takes"), Optional.of(log()));
    return new Lesson(course, reciter, new PassEar(Lexicon.standard()), notes, true, restAfter)
        .run(60.0 * minutes, reciter::nanos);
  }

  private PracticeLog log() {
    return new PracticeLog(folder.resolve("log.jsonl"));
  }

  private List<String> decisions() throws IOException {
    return Files.readAllLines(folder.resolve("takes/decisions.txt"));
  }

  @Test
  void whoKeepsTheOldSpeedInFiveIsLedToTheJoinAndToTheTempoThatHolds() throws IOException {
    MadeReciter reciter = new MadeReciter(MadeReciter.Kind.VOICE, 60);
    Lesson.End end = run(reciter, 80, 80, 9, true);
    String told = String.join("\n", decisions());
    assertEquals("The time is up.", end.why(), told);
    assertTrue(told.contains("join 1 twice running"), told);
    assertTrue(
        reciter.steps().stream().anyMatch(step -> step.looped().equals(Optional.of(JOIN))), told);
    int last = reciter.steps().get(reciter.steps().size() - 1).tempo();
    assertEquals(60, last, 5, told);
    assertTrue(told.contains("Join 1 was clean twice in a row"), told);
    assertTrue(end.summary().contains("Worst place: join 1, " + faults(told) + " times."), told);
    History history = log().read();
    assertEquals(reciter.passes().size(), history.entries().size(), "one entry a pass");
    assertTrue(history.damaged().isEmpty());
  }

  private static long faults(String told) {
    return told.lines()
        .filter(line -> line.contains("The whole") && line.contains(": missed."))
        .count();
  }

  @Test
  void whoIsCleanAtTheGoalLosesTheHelpAndIsDone() throws IOException {
    MadeReciter reciter = new MadeReciter(MadeReciter.Kind.VOICE, 500);
    Lesson.End end = run(reciter, 90, 90, 60, true);
    String told = String.join("\n", decisions());
    assertTrue(end.why().endsWith("done."), told);
    assertEquals(10, reciter.passes().size(), told);
    assertEquals(Help.CLAPS_AWAY, reciter.passes().get(9).help());
    Optional<Integer> next = LessonTempi.leftOff(log().read(), "Gutter Song");
    assertEquals(95, next.orElseThrow(), "two clean takes lead up by 5");
  }

  @Test
  void itBeginsWithWordsTheJoinAndTheSections() throws IOException {
    MadeReciter reciter = new MadeReciter(MadeReciter.Kind.VOICE, 500);
    run(reciter, 80, 90, 5, false);
    List<String> what = reciter.passes().stream().map(LessonPass::what).toList();
    String told = String.join("\n", decisions());
    assertEquals("Warm-up in plain words", what.get(0), told);
    assertTrue(what.contains("Join 1"), told);
    assertTrue(what.contains("The phrase Stream"), told);
    assertTrue(what.contains("The whole"), told);
    assertTrue(what.indexOf("Join 1") < what.indexOf("The phrase Stream"), told);
    assertTrue(what.indexOf("The phrase Stream") < what.indexOf("The whole"), told);
  }

  /** Beats 1 to 4 of rupaka are four words of takadimi before a start on beat 5. */
  @Test
  void wordsLeadIntoTheWholeAndADroneLiesBelow() {
    Composition late =
        ScoreReader.read(
                "tala rupaka\ntempo 60\nstart beat 5\nSong = takadimi takadimi\n",
                "",
                Lexicon.standard())
            .composition()
            .orElseThrow();
    LessonPass bare =
        new LessonPieces(late, Lexicon.standard(), Optional.empty()).whole(60, Help.ALL);
    LessonPass led = new LessonPieces(late, Lexicon.standard(), Optional.of(1)).whole(60, Help.ALL);
    assertEquals(8, ExpectedSollu.of(bare.timeline()).size());
    assertEquals(8, ExpectedSollu.of(led.timeline()).size(), "the words are not measured");
    long words =
        StreamSupport.stream(led.timeline().spliterator(), false)
            .filter(event -> event instanceof Event.SolluSaid said && said.round() == 0)
            .count();
    assertEquals(16 + 24, words);
    PcmFormat format = new PcmFormat(48_000, 16, 2);
    SrutiDrone drone = new SrutiDrone(Sruti.parse("C#"), 48_000);
    SolluVoice voice = new FormantVoice(48_000, Lexicon.standard(), VoiceSettings.USUAL);
    assertEquals(Optional.of(drone), led.piece(voice, Optional.of(drone), format).drone());
  }

  @Test
  void silenceNoiseAndTheGuideAreToldAndDecideNothing() throws IOException {
    for (MadeReciter.Kind kind :
        List.of(MadeReciter.Kind.SILENCE, MadeReciter.Kind.NOISE, MadeReciter.Kind.GUIDE)) {
      Path takes = folder.resolve("takes");
      MadeReciter reciter = new MadeReciter(kind, 500);
      Lesson.End end = run(reciter, 70, 80, 15, true);
      assertTrue(end.why().startsWith("Three passes running could not be judged"), end.why());
      assertTrue(reciter.steps().stream().allMatch(step -> step.tempo() == 70));
      String told = String.join("\n", decisions());
      assertEquals(kind == MadeReciter.Kind.GUIDE, told.contains("headphones"), told);
      Files.move(takes, folder.resolve("takes-" + kind));
    }
    List<LogEntry> entries = log().read().entries();
    assertEquals(9, entries.size());
    assertTrue(entries.stream().allMatch(entry -> entry.clean().isEmpty()));
  }

  @Test
  void afterEnoughVoiceItRestsAndGoesOn() throws IOException {
    assertEquals(900, Lesson.REST_AFTER_SECONDS, "a quarter of an hour");
    MadeReciter reciter = new MadeReciter(MadeReciter.Kind.VOICE, 500);
    Lesson.End end = run(reciter, 90, 120, 7, true, 60);
    String told = String.join("\n", decisions());
    assertEquals("The time is up.", end.why(), told);
    assertEquals(1, reciter.rests(), told);
    int rest = told.indexOf("rest: That was a quarter of an hour of voice");
    assertTrue(rest > told.indexOf("pass-03"), told);
    assertTrue(told.indexOf("pass-04") > rest, "it goes on after the rest: " + told);
  }

  @Test
  void aMicrophoneThatGoesLosesNothing() throws IOException {
    MadeReciter reciter = new MadeReciter(MadeReciter.Kind.UNPLUGGED, 500);
    Lesson.End end = run(reciter, 70, 80, 15, true);
    assertTrue(end.isBroken());
    assertTrue(end.why().contains("gives no more sound; 2 takes are kept"), end.why());
    try (WavReader half = new WavReader(folder.resolve("takes/pass-02.wav"))) {
      assertTrue(half.lengthFrames() > 10 * half.ratePerSecond());
    }
    assertEquals(1, log().read().entries().size());
    assertFalse(end.summary().isEmpty());
  }
}
