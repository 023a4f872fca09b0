package org.matraloom.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.device.DeviceException;
import org.matraloom.device.FakeIn;
import org.matraloom.device.FakeOut;
import org.matraloom.live.LivePiece;
import org.matraloom.live.Rivers;
import org.matraloom.onset.BandEnergies;
import org.matraloom.onset.Onset;
import org.matraloom.onset.OnsetCurve;
import org.matraloom.recording.Recording;
import org.matraloom.recording.Recordings;
import org.matraloom.score.Lexicon;
import org.matraloom.sound.Mix;
import org.matraloom.sound.MixPart;
import org.matraloom.sound.TakeNote;
import org.matraloom.time.Tempo;
import org.matraloom.wav.WavReader;

/** A pass on devices that are wired to each other, so that its guide is in the microphone. */
@Timeout(120)
class RecordedPassTest {

  private static final Tempo TEMPO = Tempo.of(240);

  @TempDir private Path folder;

  private final FakeOut out = new FakeOut();
  private final FakeIn in = new FakeIn(out, 700);
  private final StringWriter lines = new StringWriter();

  private LivePass record(String keys) throws IOException {
    LivePiece piece = Rivers.piece(TEMPO, 1);
    TakeNote note =
        new TakeNote("river", "", piece.passages().get(0), Optional.empty(), Optional.of(700L));
    Mix claps = Mix.practice().only(Set.of(MixPart.CLAP, MixPart.COUNT)).withWholeCountIn();
    ByteArrayInputStream keysIn = new ByteArrayInputStream(keys.getBytes());
    try (PracticeDesk desk = PracticeDesk.open(true, new PrintWriter(lines), keysIn)) {
      return RecordedPass.record(
          new PassSound(piece, claps, Rivers.MONO, note, Lexicon.standard()),
          out,
          in,
          take(),
          desk);
    }
  }

  private Path take() {
    return folder.resolve("pass.wav");
  }

  @Test
  void aPassIsPlayedAndRecordedToItsEndAndItsGuideIsNoticed() throws IOException {
    out.letGo();
    LivePass pass = record("");
    assertTrue(pass.isWhole());
    assertTrue(pass.guideDb().isPresent());
    assertTrue(lines.toString().contains("put on headphones"), lines.toString());
    try (WavReader take = new WavReader(take())) {
      assertTrue(take.lengthFrames() >= 16 * Rivers.RATE, "all of it");
    }
    assertTrue(GuideHeard.in(take(), TEMPO));
  }

  @Test
  void whatWasHeardMeanwhileIsWhatTheFileHolds() throws IOException {
    out.letGo();
    BandEnergies heard = record("").heard().orElseThrow();
    try (WavReader take = new WavReader(take());
        Recording file = Recordings.open(take())) {
      assertEquals(take.lengthFrames(), heard.lengthFrames());
      List<Onset> onsets = OnsetCurve.of(heard).heard(OnsetCurve.USUAL_CONFIDENCE);
      assertEquals(OnsetCurve.of(file).heard(OnsetCurve.USUAL_CONFIDENCE), onsets);
      assertTrue(onsets.size() > 10, "onsets: " + onsets.size());
    }
  }

  @Test
  void aKeyEndsItAndWhatWasSaidIsKept() throws IOException {
    out.letGo();
    assertEquals(false, record("q").isWhole());
    try (WavReader take = new WavReader(take())) {
      assertTrue(take.lengthFrames() < 16 * Rivers.RATE);
    }
  }

  @Test
  void whatWasRecordedIsKeptWhenTheMicrophoneGoes() throws Exception {
    Thread puller =
        new Thread(
            () -> {
              out.allow(2 * Rivers.RATE);
              out.awaitFrames(2 * Rivers.RATE);
              in.breakWith(new DeviceException("the well gives no more sound"));
            });
    puller.start();
    assertThrows(DeviceException.class, () -> record(""));
    puller.join();
    try (WavReader take = new WavReader(take())) {
      assertTrue(take.lengthFrames() > Rivers.RATE, "kept " + take.lengthFrames());
    }
  }

  @Test
  void thePageOfTheSentenceFits() {
    String long80 = "In round 3, khanda nadai (5), the matras kept the speed of the nadai before.";
    List<String> page = PracticeDesk.sentencePage(60, long80 + " " + long80, long80, 80);
    assertTrue(page.size() <= 24, "lines: " + page.size());
    assertTrue(page.stream().allMatch(line -> line.length() <= 80), page.toString());
    assertTrue(page.stream().anyMatch(line -> line.contains("KHANDA NADAI")), page.toString());
  }
}
