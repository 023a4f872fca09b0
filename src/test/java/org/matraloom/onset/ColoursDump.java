package org.matraloom.onset;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.matraloom.recording.Recording;
import org.matraloom.recording.Recordings;

/**
 * Writes the colours of sounds, for {@code scripts/train-phones}.
 *
 * <p>Reads lines of a recording's name, a tab and moments in seconds; writes the name on a line and
 * then, for each moment, its {@link SoundLevels#colour colour} on another.
 */
final class ColoursDump {

  private ColoursDump() {}

  /**
   * Runs it.
   *
   * @param arguments none
   * @throws IOException if a recording cannot be read
   */
  public static void main(String[] arguments) throws IOException {
    BufferedReader lines =
        new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
    for (String line = lines.readLine(); line != null; line = lines.readLine()) {
      String[] parts = line.split("\t");
      try (Recording recording = Recordings.open(Path.of(parts[0]))) {
        BandEnergies energies = BandEnergies.of(recording);
        SoundLevels levels = new SoundLevels(energies, new float[energies.steps()]);
        StringBuilder told = new StringBuilder(parts[0]).append('\n');
        for (String moment : parts[1].split(" ")) {
          told.append(
                  Arrays.stream(levels.colour(Double.parseDouble(moment)))
                      .mapToObj(number -> String.format(Locale.ROOT, "%.4f", number))
                      .collect(Collectors.joining(" ")))
              .append('\n');
        }
        System.out.print(told);
      }
    }
    System.out.flush();
  }
}
