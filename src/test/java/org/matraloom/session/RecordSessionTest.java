package org.matraloom.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
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
import org.matraloom.measure.GuideGaps;
import org.matraloom.sound.Mix;
import org.matraloom.sound.MixPart;
import org.matraloom.sound.TakeNote;
import org.matraloom.time.Tempo;
import org.matraloom.wav.CuePoint;
import org.matraloom.wav.WavReader;

/** A take of the guide itself, on devices that are wired to each other. */
@Timeout(120)
class RecordSessionTest {

  private static final int DELAY = 700;
  private static final Tempo TEMPO = Tempo.of(240);
  private static final Mix CLAPS = Mix.lesson().only(Set.of(MixPart.CLAP));

  @TempDir private Path folder;

  private final FakeOut out = new FakeOut();
  private final FakeIn in = new FakeIn(out, DELAY);
  private final StringWriter lines = new StringWriter();

  private Path target() {
    return folder.resolve("take.wav");
  }

  private long record() throws IOException {
    LivePiece piece = Rivers.piece(TEMPO, 1);
    TakeNote note =
        new TakeNote(
            "river.loom", "", piece.passages().get(0), Optional.empty(), Optional.of(700L));
    RecordSession session = new RecordSession(piece, CLAPS, out, in, Rivers.MONO, note, target());
    return session.inLines(new PrintWriter(lines), new ByteArrayInputStream(new byte[0]));
  }

  @Test
  void theGuideIsInTheTakeWhereTheTakeSaysItIs() throws IOException {
    out.letGo();
    long frames = record();
    try (WavReader take = new WavReader(target())) {
      assertEquals(frames, take.lengthFrames());
      assertTrue(frames >= 16 * Rivers.RATE, "all of it: " + frames);
      CuePoint start = take.cues().get(0);
      assertEquals("count-in", start.label());
      float[] samples = new float[Math.toIntExact(frames)];
      take.read(samples, samples.length);
      int first = 0;
      while (samples[first] == 0) {
        first++;
      }
      assertEquals(first, start.frame(), 2_500, "as exact as the clocks of these devices");
    }
    assertTrue(lines.toString().contains("nothing is heard"), lines.toString());
    assertTrue(lines.toString().contains("lost 0 times"), lines.toString());
  }

  @Test
  void silencesThatTheDevicePutInAreNotedInTheTakeAndSaid() throws Exception {
    Thread puller =
        new Thread(
            () -> {
              out.allow(2 * Rivers.RATE);
              out.awaitFrames(2 * Rivers.RATE);
              out.putIn(1_234);
              out.letGo();
            });
    puller.start();
    record();
    puller.join();
    GuideGaps gaps = GuideGaps.of(target());
    assertEquals(1, gaps.count());
    assertEquals(1_234, gaps.frames());
    String said = String.format("underruns 1, %.2f s of silence", 1_234.0 / Rivers.RATE);
    assertTrue(lines.toString().contains(said), lines.toString());
  }

  @Test
  void whatWasRecordedIsKeptWhenTheDeviceGoes() throws Exception {
    Thread puller =
        new Thread(
            () -> {
              out.allow(2 * Rivers.RATE);
              out.awaitFrames(2 * Rivers.RATE);
              in.breakWith(new DeviceException("the well gives no more sound"));
            });
    puller.start();
    DeviceException gone = assertThrows(DeviceException.class, this::record);
    puller.join();
    assertEquals("the well gives no more sound", gone.getMessage());
    try (WavReader take = new WavReader(target())) {
      assertTrue(take.lengthFrames() > Rivers.RATE, "kept " + take.lengthFrames());
    }
  }

  @Test
  void levelsAreJudgedAndShown() {
    assertTrue(new InputLevel(-6, -0.5).advice().startsWith("too loud"));
    assertTrue(new InputLevel(-60, -45).advice().startsWith("too quiet"));
    assertTrue(new InputLevel(-120, -120).advice().startsWith("nothing is heard"));
    assertEquals("the level is good", new InputLevel(-20, -12).advice());
    assertEquals(
        "[####################..........] -20 dB, highest -12 dB", new InputLevel(-20, -12).bar());
    assertEquals(0, InputLevel.dbfs(32_768, 32_768), 1e-9);
    assertEquals(-6.02, InputLevel.dbfs(16_384, 32_768), 0.01);
  }
}
