package org.matraloom.onset;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.matraloom.recording.Recording;
import org.matraloom.recording.Recordings;

/**
 * Writes what the onset net looks at, for {@code scripts/train-onsets}.
 *
 * <p>Reads names of recordings, one a line, and writes beside each a file with {@code .features} in
 * place of the suffix: the count of steps (int), the seconds of the first and between two (double),
 * then the levels and the rises, band by band (float), all little-endian.
 */
final class OnsetFeaturesDump {

  private OnsetFeaturesDump() {}

  /**
   * Runs it.
   *
   * @param arguments none
   * @throws IOException if a recording cannot be read or a file not written
   */
  public static void main(String[] arguments) throws IOException {
    BufferedReader names =
        new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
    for (String name = names.readLine(); name != null; name = names.readLine()) {
      try (Recording recording = Recordings.open(Path.of(name))) {
        BandEnergies energies = BandEnergies.of(recording);
        Path file = Path.of(name.replaceFirst("\\.[^.]*$", ".features"));
        Files.write(file, bytes(energies, OnsetFeatures.of(energies)));
      }
    }
  }

  private static byte[] bytes(BandEnergies energies, OnsetFeatures features) {
    int steps = features.steps();
    int bands = OnsetFeatures.WIDE_BANDS;
    ByteBuffer bytes = ByteBuffer.allocate(20 + 8 * steps * bands).order(ByteOrder.LITTLE_ENDIAN);
    bytes.putInt(steps).putDouble(energies.secondsAt(0));
    bytes.putDouble(energies.secondsAt(1) - energies.secondsAt(0));
    for (int band = 0; band < bands; band++) {
      for (int step = 0; step < steps; step++) {
        bytes.putFloat(features.level(step, band));
      }
    }
    for (int band = 0; band < bands; band++) {
      for (int step = 0; step < steps; step++) {
        bytes.putFloat(features.rise(step, band));
      }
    }
    return bytes.array();
  }
}
