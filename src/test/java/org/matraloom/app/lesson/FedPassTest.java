package org.matraloom.app.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.notation.ScoreReader;
import org.matraloom.onset.BandEnergies;
import org.matraloom.score.Lexicon;
import org.matraloom.session.FedEar;
import org.matraloom.session.SaidMark;
import org.matraloom.staircase.StairSettings;
import org.matraloom.wav.PcmFormat;
import org.matraloom.wav.WavReader;

/** A pass that is handed to the ear in blocks, as the page does it. */
class FedPassTest {

  private static final int BLOCKS_PER_SECOND = 10;

  /** What a made take records before its guide begins. */
  private static final double QUIET_SECONDS = 0.3;

  private static final double NEAR_SECONDS = 0.025;

  @TempDir private Path folder;

  /** The last mark of each sollu counts, as on the sheet. */
  private final Map<Integer, SaidMark> marks = new TreeMap<>();

  private final List<String> notices = new ArrayList<>();

  private final LessonPass pass = pass();

  private static LessonPass pass() {
    LessonPieces pieces =
        new LessonPieces(
            ScoreReader.read(Path.of("samples-synth/gutter-song.loom"), Lexicon.standard())
                .composition()
                .orElseThrow(),
            Lexicon.standard(),
            Optional.empty());
    return new Course(pieces, StairSettings.usual(60, 34, 120, 144), true).pass();
  }

  private static byte[] pcm(Path take) throws IOException {
    try (WavReader reader = new WavReader(take)) {
      float[] samples = new float[Math.toIntExact(reader.lengthFrames())];
      reader.read(samples, samples.length);
      byte[] pcm = new byte[2 * samples.length];
      for (int i = 0; i < samples.length; i++) {
        int sample = Math.round(32_768 * samples[i]);
        pcm[2 * i] = (byte) sample;
        pcm[2 * i + 1] = (byte) (sample >> 8);
      }
      return pcm;
    }
  }

  private Optional<BandEnergies> feed(Path take) throws IOException {
    int rate;
    try (WavReader reader = new WavReader(take)) {
      rate = reader.ratePerSecond();
    }
    byte[] pcm = pcm(take);
    int block = 2 * rate / BLOCKS_PER_SECOND;
    long start = Math.round(QUIET_SECONDS * rate);
    try (FedEar ear =
        new FedEar(new PcmFormat(rate, 16, 1), pass.timeline(), Lexicon.standard(), true)) {
      for (int at = 0; at < pcm.length; at += block) {
        // Where the guide begins is told after a while, as a page learns it.
        Optional<Long> known = at < 3 * block ? Optional.empty() : Optional.of(start);
        FedEar.Heard heard =
            ear.hear(Arrays.copyOfRange(pcm, at, Math.min(pcm.length, at + block)), known);
        heard.marks().forEach(mark -> marks.put(mark.place(), mark));
        heard.notice().ifPresent(notices::add);
      }
      return ear.whole();
    }
  }

  @Test
  void everySolluIsMarkedAndTheVerdictIsThatOfTheFile() throws IOException {
    Path take = folder.resolve("said.wav");
    new MadeReciter(MadeReciter.Kind.VOICE, 60).play(pass, take);
    BandEnergies heard = feed(take).orElseThrow();
    long near =
        marks.values().stream().filter(mark -> Math.abs(mark.lateSeconds()) < NEAR_SECONDS).count();
    assertTrue(marks.size() >= 140, "of 144: " + marks.size());
    assertTrue(near >= 0.95 * marks.size(), near + " of " + marks.size());
    assertEquals(List.of(), notices);
    PassEar ear = new PassEar(Lexicon.standard());
    PassEar.Verdict wanted = ear.listen(pass, take, Optional.empty());
    PassEar.Verdict told = ear.listen(pass, take, Optional.of(heard));
    assertEquals(wanted.heard(), told.heard());
    assertEquals(wanted.sentence(), told.sentence());
    assertTrue(told.heard().orElseThrow().clean(), told.sentence());
  }

  @Test
  void theGuideInTheMicrophoneIsToldOnce() throws IOException {
    Path take = folder.resolve("guide.wav");
    new MadeReciter(MadeReciter.Kind.GUIDE, 60).play(pass, take);
    feed(take);
    assertEquals(1, notices.size(), notices.toString());
    assertTrue(notices.get(0).contains("put on headphones"), notices.get(0));
  }
}
