package org.matraloom.device;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was measured is kept for each pair of devices, in the user's own folder. */
class RoundTripsTest {

  @TempDir private Path folder;

  private RoundTrips store() {
    return new RoundTrips(folder.resolve("deep").resolve("round-trips.tsv"));
  }

  @Test
  void eachPairAndRateHasItsOwn() throws IOException {
    RoundTrip roof = new RoundTrip("roof", "well", 48_000, 960, 3);
    RoundTrip slow = new RoundTrip("roof", "well", 44_100, 900, 1);
    RoundTrip other = new RoundTrip("veranda", "well", 48_000, -5, 0);
    for (RoundTrip trip : List.of(roof, slow, other)) {
      store().keep(trip);
    }
    assertEquals(Optional.of(roof), store().find("roof", "well", 48_000));
    assertEquals(Optional.of(slow), store().find("roof", "well", 44_100));
    assertEquals(Optional.of(other), store().find("veranda", "well", 48_000));
    assertEquals(Optional.empty(), store().find("well", "roof", 48_000));
    assertEquals(20, roof.ms());
  }

  @Test
  void aNewMeasurementTakesThePlaceOfTheOld() throws IOException {
    store().keep(new RoundTrip("roof", "well", 48_000, 960, 3));
    RoundTrip later = new RoundTrip("roof", "well", 48_000, 970, 2);
    store().keep(later);
    assertEquals(Optional.of(later), store().find("roof", "well", 48_000));
    assertEquals(2, Files.readAllLines(store().file()).size(), "a heading and one line");
  }

  @Test
  void aDamagedLineIsAsIfItHadNeverBeenMeasured() throws IOException {
    store().keep(new RoundTrip("roof", "well", 48_000, 960, 3));
    String good = Files.readString(store().file());
    Files.writeString(store().file(), good + "roof\twell\t96000\tmany\t0\nroof\twell\n\n");
    assertTrue(store().find("roof", "well", 48_000).isPresent());
    assertEquals(Optional.empty(), store().find("roof", "well", 96_000));
  }

  @Test
  void nothingIsFoundBeforeAnythingIsKept() throws IOException {
    assertEquals(Optional.empty(), store().find("roof", "well", 48_000));
  }

  /** freedesktop.org, "XDG Base Directory Specification" 0.8: relative paths are passed over. */
  @Test
  void theFolderIsTheUsualOneOfTheSystem() {
    String home = folder.resolve("home").toString();
    assertEquals(
        Path.of(home, ".local", "state", "matraloom"), UserFolders.state(Map.of(), "Linux", home));
    String set = folder.resolve("set").toString();
    assertEquals(
        Path.of(set, "matraloom"), UserFolders.state(Map.of("XDG_STATE_HOME", set), "Linux", home));
    assertEquals(
        Path.of(home, ".local", "state", "matraloom"),
        UserFolders.state(Map.of("XDG_STATE_HOME", "relative"), "Linux", home));
    assertEquals(
        Path.of(home, "Library", "Application Support", "matraloom"),
        UserFolders.state(Map.of(), "Mac OS X", home));
    assertEquals(
        Path.of(set, "matraloom"),
        UserFolders.state(Map.of("LOCALAPPDATA", set), "Windows 11", home));
  }

  @Test
  void whatTheUserMadeGoesIntoTheDataFolder() {
    String home = folder.resolve("home").toString();
    assertEquals(
        Path.of(home, ".local", "share", "matraloom"), UserFolders.data(Map.of(), "Linux", home));
    String set = folder.resolve("set").toString();
    assertEquals(
        Path.of(set, "matraloom"), UserFolders.data(Map.of("XDG_DATA_HOME", set), "Linux", home));
    assertEquals(
        Path.of(home, "Library", "Application Support", "matraloom"),
        UserFolders.data(Map.of("XDG_DATA_HOME", set), "Mac OS X", home));
  }
}
