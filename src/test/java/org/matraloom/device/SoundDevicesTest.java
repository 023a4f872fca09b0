package org.matraloom.device;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.SourceDataLine;
import javax.sound.sampled.TargetDataLine;
import org.junit.jupiter.api.Test;
import org.matraloom.wav.PcmFormat;

/** Devices are found, chosen and opened; what cannot be opened is explained in one sentence. */
class SoundDevicesTest {

  private static final int FRAMES = 480;

  private final FakeMixer speaker = FakeMixer.speaker("Veranda [speaker]");
  private final FakeMixer microphone =
      new FakeMixer("Well [microphone]", TargetDataLine.class, Set.of(48_000));

  private static SoundDevices devices(FakeMixer... mixers) {
    return new SoundDevices(Arrays.stream(mixers).map(FakeMixer::mixer).toList());
  }

  @Test
  void listsWhatEachDeviceCanDo() {
    assertEquals(
        List.of(
            new SoundDevice("Veranda [speaker]", true, false),
            new SoundDevice("Well [microphone]", false, true)),
        devices(speaker, microphone).list());
  }

  @Test
  void choosesByNumberByPartOfTheNameOrTheFirst() throws DeviceException {
    FakeMixer other = FakeMixer.speaker("Roof [speaker]");
    SoundDevices devices = devices(microphone, speaker, other);
    assertEquals("Veranda [speaker]", devices.outName(Optional.empty()));
    assertEquals("Roof [speaker]", devices.outName(Optional.of("roof")));
    assertEquals("Roof [speaker]", devices.outName(Optional.of("3")));
    assertEquals("Well [microphone]", devices.inName(Optional.of("1")));
  }

  @Test
  void noDeviceIsExplained() {
    DeviceException none = fails(devices(), Optional.empty(), PcmFormat.USUAL);
    assertEquals("this machine has no sound device that can play", none.getMessage());
    assertEquals(DeviceAdvice.Kind.CONNECT, none.advice().kind());
    DeviceException noInput =
        assertThrows(
            DeviceException.class,
            () -> devices(speaker).openIn(Optional.empty(), PcmFormat.USUAL));
    assertTrue(noInput.getMessage().contains("can record"), noInput.getMessage());
  }

  @Test
  void anUnknownNameIsAnsweredWithTheNamesThereAre() {
    DeviceException unknown = fails(devices(speaker), Optional.of("attic"), PcmFormat.USUAL);
    assertEquals(
        "no device that can play is called attic; there are Veranda [speaker]",
        unknown.getMessage());
  }

  @Test
  void aBusyDeviceIsExplained() {
    speaker.busy = true;
    DeviceException busy = fails(devices(speaker), Optional.empty(), PcmFormat.USUAL);
    String message = busy.getMessage();
    assertEquals(DeviceAdvice.Kind.FREE, busy.advice().kind());
    assertTrue(message.startsWith("Veranda [speaker] cannot be opened"), message);
    assertTrue(message.contains("another program"), message);
    assertFalse(message.contains("\n"), message);
  }

  @Test
  void anUnsupportedRateIsAnsweredWithTheRatesThereAre() {
    FakeMixer narrow = new FakeMixer("Narrow", SourceDataLine.class, Set.of(44_100, 48_000));
    DeviceException refused =
        fails(devices(narrow), Optional.empty(), new PcmFormat(96_000, 16, 2));
    assertEquals("Narrow does not take 96000 frames a second with 16 bits", refused.getMessage());
    assertEquals(
        new DeviceAdvice(DeviceAdvice.Kind.OTHER_RATE, List.of(48_000, 44_100)), refused.advice());
    assertFalse(narrow.open, "what was opened to find out is closed again");
  }

  @Test
  void aDeviceThatTakesNoMoreIsExplained() throws Exception {
    AudioOut out = devices(speaker).openOut(Optional.empty(), PcmFormat.USUAL, 120);
    write(out, 1);
    speaker.dead = true;
    DeviceException gone = assertThrows(DeviceException.class, () -> write(out, 1));
    assertTrue(gone.getMessage().contains("unplugged"), gone.getMessage());
    assertEquals(DeviceAdvice.Kind.PLUG_IN_OUTPUT, gone.advice().kind());
  }

  @Test
  void aDeviceThatStandsStillIsNotWaitedForForEver() throws Exception {
    AudioOut out = started(300);
    DeviceException still = assertThrows(DeviceException.class, () -> write(out, 100));
    assertTrue(still.getMessage().contains("still there"), still.getMessage());
    assertFalse(still.getMessage().contains("unplugged"), still.getMessage());
    assertEquals(DeviceAdvice.Kind.NONE, still.advice().kind());
    assertTrue(speaker.written < speaker.bufferBytes, "the long buffer is kept partly full");
  }

  /** The machine is busy: the device tells nothing for a while, and then that it has played all. */
  @Test
  void aDeviceThatStandsStillForAWhileHasNotGone() throws Exception {
    AudioOut out = started(60_000);
    write(out, 12);
    speaker.looksUntilDry = 300;
    write(out, 1);
    assertEquals(13 * FRAMES * 4, speaker.written);
  }

  @Test
  void aDeviceThatRunsDryWhileItIsWaitedForHasRunDry() throws Exception {
    AudioOut out = started(60_000);
    write(out, 12);
    assertEquals(0, out.gaps().count());
    long given = speaker.written;
    speaker.looksUntilDry = 5;
    write(out, 1);
    assertEquals(List.of(new DeviceGap(given / 4, 0)), out.gaps().all());
    write(out, 14);
    assertTrue(speaker.written - speaker.played > given, "more is kept in the device than before");
  }

  private LineOut started(int longestStallMs) throws Exception {
    SourceDataLine line = (SourceDataLine) speaker.line();
    line.open(new AudioFormat(48_000, 16, 2, true, false), 96_000 * 3);
    return new LineOut(line, "Veranda", 120, longestStallMs);
  }

  @Test
  void heardFramesAreCountedByWhatIsQueued() throws Exception {
    AudioOut out = devices(speaker).openOut(Optional.empty(), PcmFormat.USUAL, 120);
    write(out, 4);
    assertEquals(0, out.playedFrames());
    write(out, 8);
    speaker.played = 3 * FRAMES * 4;
    write(out, 1);
    long heard = out.playedFrames();
    assertTrue(heard >= 3 * FRAMES && heard <= 13 * FRAMES, "heard " + heard);
    assertEquals(0, out.gaps().count());
  }

  @Test
  void theLineIsStartedWhenItIsFilledAndThenLeftRunning() throws Exception {
    AudioOut out = devices(speaker).openOut(Optional.empty(), PcmFormat.USUAL, 120);
    write(out, 4);
    assertFalse(speaker.running);
    write(out, 8);
    assertTrue(speaker.running);
    speaker.played = speaker.written;
    out.drain();
    assertTrue(speaker.running);
  }

  @Test
  void whatIsTooShortToFillTheLineIsHeardAsWell() throws Exception {
    AudioOut out = devices(speaker).openOut(Optional.empty(), PcmFormat.USUAL, 120);
    write(out, 1);
    out.drain();
    assertTrue(speaker.running);
    assertEquals(FRAMES, out.playedFrames());
  }

  @Test
  void aWriteThatIsRefusedOnceIsTriedAgain() throws Exception {
    AudioOut out = devices(speaker).openOut(Optional.empty(), PcmFormat.USUAL, 120);
    speaker.refusals = 3;
    write(out, 2);
    assertEquals(2 * FRAMES * 4, speaker.written);
  }

  @Test
  void runningDryIsCountedAndTheDeviceIsFilledMoreAfterwards() throws Exception {
    AudioOut out = devices(speaker).openOut(Optional.empty(), PcmFormat.USUAL, 120);
    write(out, 12);
    long filled = speaker.written;
    speaker.played = speaker.written;
    write(out, 1);
    assertEquals(1, out.gaps().count());
    write(out, 14);
    assertTrue(speaker.written - speaker.played > filled, "more is kept in the device than before");
  }

  @Test
  void silenceAfterTheEndIsNoUnderrun() throws Exception {
    AudioOut out = devices(speaker).openOut(Optional.empty(), PcmFormat.USUAL, 120);
    write(out, 2);
    speaker.played = speaker.written;
    out.drain();
    assertEquals(2 * FRAMES, out.playedFrames());
    write(out, 1);
    assertEquals(0, out.gaps().count());
    long played = out.playedFrames();
    assertTrue(
        played >= 2 * FRAMES && played < 3 * FRAMES,
        "what was drained, and what the clock has moved since the last write: " + played);
  }

  @Test
  void framesAreTakenInOrderAndLateOnesCounted() throws Exception {
    AudioIn in = devices(microphone).openIn(Optional.empty(), new PcmFormat(48_000, 16, 1));
    byte[] block = new byte[64];
    microphone.captured = 101;
    assertEquals(64, in.read(block, 0, 64));
    assertEquals(36, in.read(block, 0, 64));
    assertEquals(64, block[0]);
    assertTrue(in.capturedFrames() >= 50);
    assertEquals(0, in.overruns());
    microphone.captured = 101 + microphone.bufferBytes;
    in.read(block, 0, 64);
    assertEquals(1, in.overruns());
  }

  private static void write(AudioOut out, int blocks) throws java.io.IOException {
    byte[] block = new byte[FRAMES * 4];
    for (int i = 0; i < blocks; i++) {
      out.write(block, 0, block.length);
    }
  }

  private static DeviceException fails(
      SoundDevices devices, Optional<String> device, PcmFormat format) {
    return assertThrows(DeviceException.class, () -> devices.openOut(device, format, 120));
  }
}
