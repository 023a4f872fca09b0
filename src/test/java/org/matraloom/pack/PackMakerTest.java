package org.matraloom.pack;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.loudness.Levels;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.time.Ratio;
import org.matraloom.voice.FormantVoice;
import org.matraloom.voice.VoiceSettings;
import org.matraloom.wav.WavReader;

class PackMakerTest {

  private static final String SONG =
      """
      title Ferry Sóng!
      tala  3+2+2
      tempo 240
      Drip = takita takadimi
      Rain = takadimi tom , ,
      Song = Drip Rain
      perform
        Song x2 nadai 4
        Song    nadai 5
      """;

  @TempDir private Path folder;

  @Test
  void everyTrackIsEquallyLoudAndNonePeaksTooHigh() throws IOException {
    List<PackTrack> tracks = make(folder, order(SONG, false)).tracks();
    assertEquals(2 * 5 + 2 + 1, tracks.size(), "tempi and mixes, sections, joins");
    double quietest = 0;
    double loudest = -100;
    for (PackTrack track : tracks) {
      Levels levels = Levels.of(folder.resolve(track.waveName()));
      quietest = Math.min(quietest, levels.lufs());
      loudest = Math.max(loudest, levels.lufs());
      assertTrue(levels.dbtp() <= -1, track.name() + ": " + levels);
    }
    assertTrue(loudest - quietest <= 1, quietest + " to " + loudest);
    assertEquals(-23, loudest, 0.5);
  }

  @Test
  void namesSortInTheOrderOfTheSetAndSuitEveryPhone() {
    List<String> names =
        new PackMaker(order(SONG, false), folder, PackMakerTest::voice)
            .tracks().stream().map(PackTrack::name).toList();
    assertEquals(names.stream().sorted().toList(), names);
    names.forEach(name -> assertTrue(name.matches("[0-9a-z_-]+"), name));
    assertEquals("01_ferry-song_whole_180bpm_full", names.get(0));
    assertEquals("13_ferry-song_join-1_180bpm_full", names.get(names.size() - 1));
  }

  @Test
  void anInterruptedSetIsCompletedToTheSameBytes() throws IOException {
    Path whole = Files.createDirectory(folder.resolve("whole"));
    Path broken = Files.createDirectory(folder.resolve("broken"));
    PackOrder order =
        new PackOrder(
            read(SONG),
            List.of(Ratio.of(150)),
            List.of(PackMix.FULL, PackMix.ANSWER),
            true,
            1,
            Optional.empty(),
            PackFiles.BOTH,
            Optional.empty());
    PackMaker maker = make(whole, order);
    try (Stream<Path> files = Files.list(whole)) {
      for (Path file : files.toList()) {
        Files.copy(file, broken.resolve(file.getFileName()));
      }
    }
    List<Path> kept = new ArrayList<>();
    for (PackTrack track : maker.tracks()) {
      Path wave = broken.resolve(track.waveName());
      if (track.number() % 2 == 0) {
        Files.delete(wave);
        Files.delete(broken.resolve(track.mp3Name()));
        Files.writeString(broken.resolve("." + track.waveName() + ".12ab.part"), "half");
      } else {
        Files.setLastModifiedTime(wave, FileTime.fromMillis(1_000_000));
        kept.add(wave);
      }
    }
    int made = new PackMaker(order, broken, PackMakerTest::voice).make(2, (done, total) -> {});
    assertEquals(2 * (maker.tracks().size() / 2), made);
    for (Path wave : kept) {
      assertEquals(1_000_000, Files.getLastModifiedTime(wave).toMillis(), wave + " was kept");
    }
    assertSame(contents(whole), contents(broken));
  }

  @Test
  void aFolderOfAnotherSetIsLeftAlone() throws IOException {
    make(folder, small(SONG, false));
    Map<String, byte[]> before = contents(folder);
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class,
            () -> make(folder, small(SONG.replace("tempo 240", "tempo 239"), false)));
    assertTrue(refused.getMessage().contains("another set"), refused.getMessage());
    assertSame(before, contents(folder));
  }

  /** MP3 only, as a set is sent: no WAV file stays, and one that was interrupted is the same. */
  @Test
  void aSetToBeSentHasNoWaveFiles() throws IOException {
    PackOrder order =
        new PackOrder(
            read(SONG),
            List.of(Ratio.of(61)),
            List.of(PackMix.FULL),
            false,
            1,
            Optional.empty(),
            PackFiles.MP3,
            Optional.empty());
    PackTrack track = make(folder, order).tracks().get(0);
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(
          List.of("01_ferry-song_whole_146bpm_full.mp3", "index.html", "manifest.json"),
          files.map(file -> file.getFileName().toString()).sorted().toList());
    }
    assertEquals(
        "146", track.composition().tempo().beatsPerMinute().toMixed(), "240 x 61 % = 146.4");
    assertEquals(0, new PackMaker(order, folder, PackMakerTest::voice).make(1, (d, t) -> {}));
    Files.delete(folder.resolve(track.mp3Name()));
    Files.writeString(folder.resolve("." + track.name() + ".wav.part"), "half");
    assertEquals(1, new PackMaker(order, folder, PackMakerTest::voice).make(1, (d, t) -> {}));
    assertTrue(Files.size(folder.resolve(track.mp3Name())) > 10_000);
  }

  @Test
  void theListTellsWhatIsThere() throws IOException {
    make(folder, small(SONG, true));
    String list = Files.readString(folder.resolve("manifest.json"));
    assertTrue(list.contains("\"complete\" : true"), list);
    assertTrue(list.contains("\"wav\" : \"01_ferry-song_whole_240bpm_full.wav\""), list);
    assertTrue(list.contains("\"lufs\" : \"-23."), list);
    String page = Files.readString(folder.resolve("index.html"));
    assertEquals(1, page.split("<audio").length - 1);
    assertTrue(page.contains("Ferry Sóng!"));
  }

  @Test
  void waveFilesSayWhatTheyAreAndNameTheirPlaces() throws IOException {
    PackTrack track = make(folder, small(SONG, false)).tracks().get(0);
    Path wave = folder.resolve(track.waveName());
    String bytes = Files.readString(wave, StandardCharsets.ISO_8859_1);
    assertTrue(bytes.contains("INAM"));
    assertTrue(bytes.contains("whole, 100 %, everything"));
    assertTrue(bytes.contains("tempo 240, tala "));
    int size = Integer.reverseBytes(ByteBuffer.wrap(Files.readAllBytes(wave)).getInt(4));
    assertEquals(Files.size(wave) - 8, size, "the RIFF size covers all chunks");
    try (WavReader reader = new WavReader(wave)) {
      assertTrue(reader.cues().stream().anyMatch(cue -> cue.label().startsWith("nadai change")));
    }
  }

  /** An MPEG-1 layer III frame begins with eleven set bits (ISO/IEC 11172-3). */
  @Test
  void mp3FilesCarryTheirTags() throws IOException {
    PackTrack track = make(folder, small(SONG, true)).tracks().get(0);
    byte[] bytes = Files.readAllBytes(folder.resolve(track.mp3Name()));
    assertEquals("ID3", new String(bytes, 0, 3, StandardCharsets.US_ASCII));
    int size = bytes[6] << 21 | bytes[7] << 14 | bytes[8] << 7 | bytes[9];
    assertEquals(0xff, bytes[10 + size] & 0xff);
    assertEquals(0xe0, bytes[11 + size] & 0xe0);
    String tag = new String(bytes, 10, size, StandardCharsets.UTF_16LE);
    assertTrue(size > 100 && !tag.isEmpty());
  }

  private static PackMaker make(Path target, PackOrder order) throws IOException {
    PackMaker maker = new PackMaker(order, target, PackMakerTest::voice);
    maker.make(2, (done, total) -> assertTrue(done <= total));
    return maker;
  }

  private static FormantVoice voice() {
    return new FormantVoice(48_000, Lexicon.standard(), VoiceSettings.USUAL);
  }

  private static PackOrder small(String score, boolean compressed) {
    return new PackOrder(
        read(score),
        List.of(Ratio.of(100)),
        List.of(PackMix.FULL),
        false,
        1,
        Optional.empty(),
        compressed ? PackFiles.BOTH : PackFiles.WAV,
        Optional.empty());
  }

  private static Composition read(String score) {
    return ScoreReader.read(score, "song.loom", Lexicon.standard()).composition().orElseThrow();
  }

  private static PackOrder order(String score, boolean compressed) {
    return new PackOrder(
        read(score),
        List.of(Ratio.of(75), Ratio.of(100)),
        List.of(PackMix.values()),
        true,
        1,
        Optional.empty(),
        compressed ? PackFiles.BOTH : PackFiles.WAV,
        Optional.empty());
  }

  private static Map<String, byte[]> contents(Path folder) throws IOException {
    Map<String, byte[]> contents = new TreeMap<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        contents.put(file.getFileName().toString(), Files.readAllBytes(file));
      }
    }
    assertTrue(contents.size() >= 3);
    return contents;
  }

  private static void assertSame(Map<String, byte[]> expected, Map<String, byte[]> given) {
    assertEquals(expected.keySet(), given.keySet());
    expected.forEach((name, bytes) -> assertArrayEquals(bytes, given.get(name), name));
  }
}
