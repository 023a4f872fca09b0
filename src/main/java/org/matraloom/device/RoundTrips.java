package org.matraloom.device;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The round trips that were measured on this machine, kept in a text file: one line for each pair
 * of devices and rate, fields apart by tabs.
 */
public final class RoundTrips {

  private static final String HEADING = "# output, input, frames a second, frames, spread";

  private final Path file;

  /**
   * A store.
   *
   * @param file where it is kept; it need not exist yet
   */
  public RoundTrips(Path file) {
    this.file = file;
  }

  /**
   * Those of this user.
   *
   * @return the store, which need not exist yet
   */
  public static RoundTrips ofUser() {
    return new RoundTrips(UserFolders.state().resolve("round-trips.tsv"));
  }

  /**
   * Where they are kept.
   *
   * @return the file
   */
  public Path file() {
    return file;
  }

  /**
   * What was measured for a pair of devices.
   *
   * @param output the name of the device that plays
   * @param input the name of the device that records
   * @param ratePerSecond frames a second
   * @return empty if it was never measured
   * @throws IOException if the file cannot be read
   */
  public Optional<RoundTrip> find(String output, String input, int ratePerSecond)
      throws IOException {
    return all().stream().filter(trip -> trip.isOf(output, input, ratePerSecond)).findFirst();
  }

  /**
   * Keeps a measurement in place of the one before.
   *
   * @param trip what was measured
   * @throws IOException if the file cannot be written
   */
  public void keep(RoundTrip trip) throws IOException {
    List<RoundTrip> kept = new ArrayList<>(all());
    kept.removeIf(old -> old.isOf(trip.output(), trip.input(), trip.ratePerSecond()));
    kept.add(trip);
    StringBuilder text = new StringBuilder(HEADING).append('\n');
    kept.forEach(each -> text.append(line(each)).append('\n'));
    Path folder = file.toAbsolutePath().getParent();
    Files.createDirectories(folder);
    Path part = Files.createTempFile(folder, ".round-trips", ".part");
    Files.writeString(part, text, StandardCharsets.UTF_8);
    Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
  }

  /** All that can be read; a damaged line is as if it had never been measured. */
  private List<RoundTrip> all() throws IOException {
    List<RoundTrip> trips = new ArrayList<>();
    try {
      for (String line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
        read(line).ifPresent(trips::add);
      }
    } catch (NoSuchFileException none) {
      return trips;
    }
    return trips;
  }

  private static String line(RoundTrip trip) {
    return String.join(
        "\t",
        field(trip.output()),
        field(trip.input()),
        Integer.toString(trip.ratePerSecond()),
        Long.toString(trip.frames()),
        Long.toString(trip.spreadFrames()));
  }

  private static String field(String text) {
    return text.replaceAll("[\\t\\r\\n]", " ");
  }

  private static Optional<RoundTrip> read(String line) {
    String[] fields = line.split("\t");
    if (line.startsWith("#") || fields.length != 5) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new RoundTrip(
              fields[0],
              fields[1],
              Integer.parseInt(fields[2]),
              Long.parseLong(fields[3]),
              Long.parseLong(fields[4])));
    } catch (NumberFormatException damaged) {
      return Optional.empty();
    }
  }
}
