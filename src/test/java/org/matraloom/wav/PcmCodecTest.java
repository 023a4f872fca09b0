package org.matraloom.wav;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Float samples become whole numbers in one place, by one rule. */
class PcmCodecTest {

  /** The seven values of the sink test in oboe, tests/testFlowgraph.cpp (Apache 2.0). */
  @ParameterizedTest
  @CsvSource({
    "1.0, 32767, 8388607",
    "0.5, 16384, 4194304",
    "-0.25, -8192, -2097152",
    "-1.0, -32768, -8388608",
    "0.0, 0, 0",
    "53.9, 32767, 8388607",
    "-87.2, -32768, -8388608"
  })
  void sevenValues(float sample, int in16Bits, int in24Bits) {
    assertEquals(in16Bits, new PcmCodec(16).encode(sample));
    assertEquals(in24Bits, new PcmCodec(24).encode(sample));
  }

  @ParameterizedTest
  @CsvSource({"0.5, 1", "-0.5, -1", "0.49, 0", "-0.49, 0", "1.5, 2", "-1.5, -2", "2.5, 3"})
  void halvesGoAwayFromZero(float steps, int expected) {
    assertEquals(expected, new PcmCodec(16).encode(steps / 32768));
    assertEquals(expected, new PcmCodec(24).encode(steps / 8388608));
  }

  @ParameterizedTest
  @ValueSource(ints = {8, 16, 24})
  void everyWholeNumberComesBack(int bits) {
    PcmCodec codec = new PcmCodec(bits);
    int fullScale = 1 << (bits - 1);
    for (int value = -fullScale; value < fullScale; value++) {
      if (codec.encode(codec.decode(value)) != value) {
        assertEquals(value, codec.encode(codec.decode(value)));
      }
    }
  }

  @Test
  void notANumberIsSilence() {
    assertEquals(0, new PcmCodec(16).encode(Float.NaN));
    assertEquals(8388607, new PcmCodec(24).encode(Float.POSITIVE_INFINITY));
  }

  @Test
  void bytesAreLittleEndian() {
    byte[] bytes = new byte[6];
    new PcmCodec(24).encode(new float[] {0x123456 / 8388608f, -1 / 8388608f}, 2, bytes);
    assertArrayEquals(new byte[] {0x56, 0x34, 0x12, -1, -1, -1}, bytes);
  }

  @Test
  void shortNumbersAreTheSameNumbers() {
    PcmCodec codec = new PcmCodec(16);
    float[] odd = {Float.NaN, Float.POSITIVE_INFINITY, -Float.MAX_VALUE, 1, -1, -0f, 0.99999f};
    float[] samples = Arrays.copyOf(odd, 200_000);
    Random random = new Random(7);
    for (int i = odd.length; i < samples.length; i++) {
      int halves = random.nextInt(140_000) - 70_000;
      float near = (float) (halves * 0.5 / 32768);
      samples[i] = i % 3 == 0 ? near : i % 3 == 1 ? Math.nextUp(near) : Math.nextDown(near);
    }
    short[] values = new short[samples.length];
    codec.encode(samples, samples.length, values);
    for (int i = 0; i < samples.length; i++) {
      if (values[i] != codec.encode(samples[i])) {
        assertEquals(codec.encode(samples[i]), values[i], "of " + samples[i]);
      }
    }
    assertThrows(
        IllegalStateException.class,
        () -> new PcmCodec(24).encode(samples, 1, values),
        "another size has no short numbers");
  }
}
