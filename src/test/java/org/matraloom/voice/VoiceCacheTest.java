package org.matraloom.voice;

import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.matraloom.schedule.Stress;

/** What was said before is not worked out again, and the memory stays bounded. */
class VoiceCacheTest {

  @Test
  void keepsWhatWasAskedForLast() {
    VoiceCache<VoiceRequest> cache = cache(60_000);
    SolluWave first = cache.get(request(100));
    assertSame(first, cache.get(request(100)));
    for (int ms = 101; ms < 120; ms++) {
      cache.get(request(ms));
      assertTrue(cache.samples() <= 60_000, "kept: " + cache.samples());
    }
    assertNotSame(first, cache.get(request(100)));
  }

  private static VoiceCache<VoiceRequest> cache(long mostSamples) {
    return new VoiceCache<>(
        new VoiceSpeaker(SpokenLine.RATE, VoiceSettings.USUAL)::say, mostSamples);
  }

  private static VoiceRequest request(int endMs) {
    PhoneSyllable ta = PhoneSyllable.of(List.of("t", "a"));
    return new VoiceRequest(ta, Optional.empty(), 60, endMs, false, false, Stress.NONE, 0);
  }
}
