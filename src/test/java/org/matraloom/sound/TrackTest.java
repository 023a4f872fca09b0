package org.matraloom.sound;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.matraloom.schedule.Timeline;
import org.matraloom.time.Tempo;
import org.matraloom.wav.CuePoint;

class TrackTest {

  private static final int RATE = 48_000;
  private static final SrutiDrone DRONE = new SrutiDrone(Sruti.parse("C#3"), RATE);

  @Test
  void theDroneRunsThroughEveryChangeOfTempoAndNadai() {
    Mix droneOnly = Mix.lesson().only(Set.of(MixPart.DRONE));
    Track track = track(droneOnly, Pieces.adi80(Tempo.of(200), 1), Pieces.adi80(Tempo.of(250), 1));
    float[] samples = all(track, 4096);
    assertEquals(track.lengthFrames(), samples.length);
    float gain = droneOnly.gains(MixPart.DRONE, 0).left();
    int compared = 0;
    for (int frame = RATE; frame < samples.length - RATE; frame++) {
      assertEquals(gain * DRONE.sampleAt(frame), samples[frame], "at frame " + frame);
      compared++;
    }
    assertTrue(compared > 20 * RATE && track.startFrame(1) > RATE, "frames compared: " + compared);
    assertEquals(0, samples[samples.length - 1], 1e-5, "faded out at the end");
  }

  /** The rule of practice tracks: a drone lies 18 dB or more under the clap. */
  @Test
  void theDroneStaysEighteenDecibelsUnderTheClap() {
    Timeline timeline = Pieces.adi80(Tempo.of(120), 1);
    Mix loudest = Mix.lesson().withLevel(MixPart.DRONE, Mix.HIGHEST_DRONE_DB);
    double drone = peak(all(track(loudest.only(Set.of(MixPart.DRONE)), timeline), 4096), RATE);
    float[] claps = Rendered.mono(timeline, RATE, loudest.only(Set.of(MixPart.CLAP)));
    double clap = peak(claps, RATE);
    double samam = Math.pow(10, 2 / 20.0);
    assertTrue(20 * Math.log10(clap / samam / drone) > 17.9, clap + " and " + drone);
    assertThrows(IllegalArgumentException.class, () -> Mix.lesson().withLevel(MixPart.DRONE, -17));
  }

  @Test
  void blocksChangeNothing() {
    Track track = track(Mix.lesson(), Pieces.ringing(Tempo.of(90)), Pieces.ringing(Tempo.of(70)));
    assertArrayEquals(all(track, 4096), all(track, 77));
  }

  @Test
  void partsOfATrackAreWhatTheyAreAlone() {
    Timeline first = Pieces.ringing(Tempo.of(90));
    Timeline second = Pieces.ringing(Tempo.of(70));
    Mix dry = Mix.lesson().without(Set.of(MixPart.DRONE));
    Track track = track(dry, first, second);
    float[] joined = all(track, 4096);
    float[] alone = Rendered.mono(second, RATE, dry);
    int from = Math.toIntExact(track.startFrame(1));
    assertEquals(joined.length - from, alone.length);
    assertArrayEquals(
        Arrays.copyOfRange(alone, RATE, alone.length),
        Arrays.copyOfRange(joined, from + RATE, joined.length),
        "after the soft start");
  }

  @Test
  void placesOfAllPassagesAreNamedInOrder() {
    Track track = track(Mix.lesson(), Pieces.ringing(Tempo.of(90)), Pieces.ringing(Tempo.of(70)));
    List<CuePoint> cues = new ArrayList<>();
    track.cues().forEach(cues::add);
    long before = 0;
    for (CuePoint cue : cues) {
      assertTrue(cue.frame() >= before);
      before = cue.frame();
    }
    assertEquals(2, cues.stream().filter(cue -> cue.label().startsWith("round 1")).count());
    assertTrue(before >= track.startFrame(1));
  }

  @Test
  void aFadingVoiceFallsFromRoundToRound() {
    Timeline rounds = Pieces.adi80(Tempo.of(120), 0);
    Mix fading = Mix.lesson().only(Set.of(MixPart.VOICE)).withVoiceFade(12);
    float[] samples = Rendered.mono(rounds, RATE, fading);
    int beat = RATE / 2;
    double first = peak(Arrays.copyOfRange(samples, 4 * beat, 18 * beat), 0);
    double second = peak(Arrays.copyOfRange(samples, 22 * beat, 38 * beat), 0);
    double third = peak(Arrays.copyOfRange(samples, 42 * beat, 54 * beat), 0);
    assertEquals(12, 20 * Math.log10(first / second), 0.5);
    assertEquals(24, 20 * Math.log10(first / third), 0.5);
    assertThrows(IllegalArgumentException.class, () -> fading.withVoiceFade(-1));
  }

  @Test
  void aDroneOfAnotherRateIsRefused() {
    SrutiDrone other = new SrutiDrone(new Sruti(140), 44_100);
    Timeline timeline = Pieces.ringing(Tempo.of(90));
    Track track =
        new Track(
            List.of(new Passage(timeline, Mix.lesson())), new GridVoice(RATE), Optional.of(other));
    assertThrows(IllegalArgumentException.class, () -> track.stream(1).render(new float[10], 10));
  }

  private static Track track(Mix mix, Timeline... timelines) {
    List<Passage> passages =
        Arrays.stream(timelines).map(timeline -> new Passage(timeline, mix)).toList();
    return new Track(passages, new GridVoice(RATE), Optional.of(DRONE));
  }

  private static float[] all(Track track, int blockFrames) {
    float[] all = new float[Math.toIntExact(track.lengthFrames())];
    float[] block = new float[blockFrames];
    TrackStream stream = track.stream(1);
    int at = 0;
    int frames;
    while ((frames = stream.render(block, blockFrames)) > 0) {
      System.arraycopy(block, 0, all, at, frames);
      at += frames;
    }
    assertEquals(all.length, at);
    return all;
  }

  private static double peak(float[] samples, int from) {
    double peak = 0;
    for (int i = from; i < samples.length; i++) {
      peak = Math.max(peak, Math.abs(samples[i]));
    }
    return peak;
  }
}
