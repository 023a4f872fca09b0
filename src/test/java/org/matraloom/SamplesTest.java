package org.matraloom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collector;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.matraloom.kanakku.Entrance;
import org.matraloom.kanakku.FalseClaim;
import org.matraloom.kanakku.Landing;
import org.matraloom.kanakku.SpeechRate;
import org.matraloom.notation.Reading;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;

/** The sample scores are clean and do what their notes say. */
class SamplesTest {

  private static final Path FOLDER = Path.of("samples-synth");
  private static final Set<String> MEANT_TO_MISS = Set.of("crooked-ladder", "leaking-boat");

  static List<String> samples() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files
          .map(path -> path.getFileName().toString())
          .filter(name -> name.endsWith(".loom"))
          .map(name -> name.replace(".loom", ""))
          .sorted()
          .toList();
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void everySampleIsReadWithoutAWordOfComplaint(String sample) {
    Reading reading = ScoreReader.read(file(sample), Lexicon.standard());
    assertEquals("", reading.format());
    assertFalse(reading.composition().orElseThrow().title().isBlank());
  }

  @ParameterizedTest
  @MethodSource("samples")
  void everySampleLandsUnlessItIsMeantToMiss(String sample) throws IOException {
    Landing landing = landing(sample);
    assertEquals(!MEANT_TO_MISS.contains(sample), landing.lands());
    boolean says = Files.readString(file(sample)).contains("this score MISSES, and is meant to");
    assertEquals(says, !landing.lands());
    assertEquals(
        sample.equals("crooked-ladder") ? 1 : 0, FalseClaim.in(landing.performance()).size());
  }

  @Test
  void thereAreTenSamplesOrMore() throws IOException {
    assertTrue(samples().size() >= 10);
    assertTrue(samples().containsAll(MEANT_TO_MISS));
  }

  @ParameterizedTest
  @CsvSource({
    // sample, beats of the cycle, matras of the rounds, beats of the whole, where the rounds begin
    "gutter-song, 6, 60 60 60, 42, samam; beat 4; samam",
    "culvert, 8, 40 40 40, 28, beat 5; beat 7; samam",
    "monsoon-ledger, 8, 80 80 80, 56, samam; beat 5; samam",
    "sluice-gate, 8, 48 48 48, 40, samam; beat 5; samam",
    "lantern-ferry, 7, 56 20 20 20, 28, samam; samam; beat 6; beat 4",
    "reed-bed, 5, 60 60 60, 40, samam; samam; samam",
    "slow-water, 16, 80 80 80, 56, beat 9; beat 13; samam",
    "weir-steps, 8, 16 16 64 16 64, 40, samam; beat 5; samam; samam; samam",
    "crooked-ladder, 8, 33, 33/4, samam",
    "tin-roof, 8, 32 32 32, 24, samam; samam; samam",
    "last-drop, 8, 40 40 40, 28, beat 5; beat 7; samam",
    "leaking-boat, 8, 64 64 64, 224/5, samam; samam; samam"
  })
  void everySampleIsLaidOutAsItsNotesSay(
      String sample, int cycle, String matras, String beats, String places) {
    Landing landing = landing(sample);
    Avartana avartana = landing.performance().composition().avartana();
    List<Span.Round> rounds = landing.performance().rounds();
    assertEquals(cycle, avartana.beats());
    assertEquals(
        matras, rounds.stream().map(Span::matras).map(Object::toString).collect(spaced(" ")));
    assertEquals(beats, landing.beats().toString());
    assertEquals(
        places,
        rounds.stream().map(round -> avartana.say(round.startBeat())).collect(spaced("; ")));
  }

  private static Collector<CharSequence, ?, String> spaced(String between) {
    return Collectors.joining(between);
  }

  @Test
  void theHeronLandsHalfABeatAfterSamam() {
    Landing landing = landing("half-step-heron");
    assertEquals("1/2", landing.performance().composition().eduppuBeat().toString());
    assertEquals("81/2", landing.performance().endBeat().toString());
  }

  @Test
  void theBoatAndTheLadderMissByWhatTheirNotesSay() {
    assertEquals("-16/5", landing("leaking-boat").missBeats().toString());
    assertEquals("-16", landing("leaking-boat").missMatras().toString());
    assertEquals("1/4", landing("crooked-ladder").missBeats().toString());
    assertEquals("1", landing("crooked-ladder").missMatras().toString());
  }

  /** Only the half-step piece, whose rounds are 13 1/2 beats, enters inside a beat. */
  @ParameterizedTest
  @MethodSource("samples")
  void noSampleChangesNadaiInsideABeat(String sample) {
    List<Entrance> entrances = Entrance.of(landing(sample).performance());
    assertFalse(entrances.isEmpty());
    boolean inside = entrances.stream().anyMatch(Entrance::insideBeat);
    assertEquals(sample.equals("half-step-heron"), inside);
    assertTrue(entrances.stream().noneMatch(e -> e.insideBeat() && e.changesNadai()));
  }

  /** The samples are for practice: none asks for a rate that the check calls hard. */
  @ParameterizedTest
  @MethodSource("samples")
  void noSampleIsHardToSay(String sample) {
    for (SpeechRate rate : SpeechRate.of(landing(sample).performance())) {
      assertTrue(rate.fastestPerSecond() <= SpeechRate.HARD_PER_SECOND, sample + ": " + rate);
    }
  }

  @Test
  void theSamplesShowEveryMarkOfTheNotation() throws IOException {
    StringBuilder all = new StringBuilder();
    for (String sample : samples()) {
      for (String line : Files.readAllLines(file(sample))) {
        all.append(line.replaceAll("#.*", "")).append('\n');
      }
    }
    Set<String> missing = new TreeSet<>();
    for (String mark :
        List.of(
            ",", ";", "[", "(", ") x2", "{5:", "{3:", "||", " | ", "5*4", "4(1)", "kalam 2",
            "rest ", "until ", "start ", "eduppu ", "kalai ", "beat 5", "+1/2", "chapu", "stroke ",
            "after ")) {
      if (all.indexOf(mark) < 0) {
        missing.add(mark);
      }
    }
    assertEquals(Set.of(), missing);
  }

  private static Landing landing(String sample) {
    Composition composition =
        ScoreReader.read(file(sample), Lexicon.standard()).composition().orElseThrow();
    return Landing.of(Performance.of(composition));
  }

  private static Path file(String sample) {
    return FOLDER.resolve(sample + ".loom");
  }
}
