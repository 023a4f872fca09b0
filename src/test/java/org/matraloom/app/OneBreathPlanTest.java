package org.matraloom.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.InflaterInputStream;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.UnsupportedAudioFileException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.cli.ExitCode;

/** With the same settings, all that shows, sounds or judges breaths has them at the same places. */
class OneBreathPlanTest {

  private static final List<List<String>> SETTINGS =
      List.of(
          List.of(),
          List.of("--concert"),
          List.of("--concert", "--whole-karvais"),
          List.of("--fewest", "--longest", "5", "--sollus", "20"));

  private static final String BEAT = "\"beat\" : \"([^\"]+)\"";

  /** Long karvais between words, and a rest: places that other settings use otherwise. */
  private static final String FERRY =
      """
      title Ferry
      tala adi
      tempo 60
      Row = takadimi takajunu tom , , , takita takita tom ; , takadimi takajunu takita tom ; ; .
      perform
        Row x2 nadai 4
        rest 2 beats
        Row nadai 5
      """;

  /** The reciter's own marks: one breath inside a phrase, none after the first tom. */
  private static final String MARKED =
      FERRY
          .replace("Row = takadimi takajunu tom", "Row = takadimi ' takajunu tom '!")
          .replace("tempo 60", "tempo 24");

  @TempDir private Path folder;

  @Test
  void everySampleBreathesAtTheSamePlacesInEveryForm() throws IOException {
    int breaths = 0;
    List<Path> scores = new ArrayList<>(samples());
    scores.add(Files.writeString(folder.resolve("marked.loom"), MARKED));
    for (Path sample : scores) {
      for (List<String> settings : SETTINGS) {
        String plan = breaths(sample, settings);
        List<String> planned = groups(BEAT, plan);
        assertEquals(planned, cued(run(settings, "events", "--breath-cue", sample)), "events");
        Path table = folder.resolve("t.csv");
        run(settings, "export", "--breath-cue", sample, "-o", table);
        assertEquals(planned, cued(Files.readString(table)), "export");
        Path sheet = folder.resolve("t.html");
        run(settings, "sheet", sample, "-o", sheet);
        assertEquals(planned.size(), count("class=\"air\"", sheet), "sheet " + sample);
        Path staff = folder.resolve("t.musicxml");
        run(settings, "export", sample, "-o", staff);
        assertEquals(cut(plan), count("<breath-mark", staff), "staff " + sample);
        breaths += planned.size();
      }
    }
    assertTrue(breaths > 100, "breaths were planned: " + breaths);
  }

  /** Drawn sheets hold one tick more, in the legend; on a text sheet a beat is marked once. */
  @Test
  void everyFormOfTheSheetBreathesAsOften() throws IOException {
    Path ferry = ferry();
    for (List<String> settings : SETTINGS) {
      List<String> planned = planned(ferry, settings);
      assertTrue(!planned.isEmpty(), settings.toString());
      Path drawn = folder.resolve("t.svg");
      run(settings, "sheet", ferry, "-o", drawn);
      assertEquals(planned.size() + 1, count("href=\"#BREATH\"", drawn), "SVG " + settings);
      Path printed = folder.resolve("t.pdf");
      run(settings, "sheet", ferry, "-o", printed);
      assertEquals(planned.size() + 1, groups("/BREATH Do", inflated(printed)).size(), "PDF");
      Path typed = folder.resolve("t.txt");
      run(settings, "sheet", ferry, "-o", typed);
      String words = Files.readString(typed);
      long beats = planned.stream().map(OneBreathPlanTest::wholeBeats).distinct().count();
      assertEquals(beats, groups("\\bbreath\\b", words).size(), words);
    }
    // A page renders the voice: one setting that is not the usual one.
    List<String> shorter = SETTINGS.get(3);
    Path page = folder.resolve("page.html");
    run(shorter, "page", ferry, "-o", page);
    assertEquals(planned(ferry, shorter).size(), count("class=\"air\"", page), "page");
  }

  /** The mark asks in every round; the ban holds in every round up to the end of the phrase. */
  @Test
  void marksOfTheReciterAreObeyedInEveryForm() throws IOException {
    Path marked = Files.writeString(folder.resolve("marked.loom"), MARKED);
    String plan = breaths(marked, List.of());
    assertEquals(
        List.of("mi", "tom", "mi", "tom", "mi"), groups("\"after\" : \"([^\"]+)\"", plan), plan);
  }

  @Test
  void otherSettingsAreOtherPlaces() throws IOException {
    Path ferry = ferry();
    assertNotEquals(planned(ferry, SETTINGS.get(0)), planned(ferry, SETTINGS.get(2)));
    assertNotEquals(planned(ferry, SETTINGS.get(0)), planned(ferry, SETTINGS.get(3)));
  }

  /** A track of nothing but breaths is silent outside of them. */
  @Test
  void theTrackBreathesWhereTheEventsDo() throws IOException, UnsupportedAudioFileException {
    Path ferry = ferry();
    for (List<String> settings : SETTINGS) {
      Path track = folder.resolve("t.wav");
      run(settings, "render", "--breath-cue", ferry, "--only", "breath", "--mono", "-o", track);
      boolean[] sounds = sounds(track);
      int breaths = 0;
      for (String row : run(settings, "events", "--breath-cue", ferry).split("\n")) {
        if (row.startsWith("breath,")) {
          int from = Integer.parseInt(row.split(",")[4]);
          int to = from;
          while (!sounds[to]) {
            to++;
          }
          assertTrue(to - from < 4_800, "a breath begins at frame " + from);
          Arrays.fill(sounds, from, Math.min(sounds.length, from + 48_000), false);
          breaths++;
        }
      }
      assertTrue(breaths > 0, settings.toString());
      for (boolean sound : sounds) {
        assertTrue(!sound, "no other breath is heard");
      }
    }
  }

  @Test
  void theTakeIsJudgedByThePlanThatIsAskedFor() throws IOException {
    Path ferry = ferry();
    Path take = folder.resolve("take.wav");
    run(List.of(), "render", ferry, "-o", take);
    for (List<String> settings : SETTINGS) {
      String judged = run(settings, "take", "--json", "--no-log", ferry, take);
      List<String> found = groups("\"planned\" : (\\d+)", judged);
      assertEquals(List.of("" + planned(ferry, settings).size()), found, settings.toString());
    }
  }

  @Test
  void settingsThatNobodyWouldHearAreRefused() throws IOException {
    String ferry = ferry().toString();
    CommandLineRun render =
        CommandLineRun.of("render", "--concert", ferry, "-o", folder.resolve("x.wav").toString());
    assertEquals(ExitCode.BAD_INPUT, render.code());
    assertEquals(
        "matraloom: how to breathe is said, but breaths are heard only with --breath-cue\n",
        render.err());
    CommandLineRun pack =
        CommandLineRun.of(
            "pack", "--concert", ferry, "--no-papers", "-d", folder.resolve("set").toString());
    assertEquals(ExitCode.BAD_INPUT, pack.code());
  }

  @Test
  void aSetAndADrillBreatheAsAsked() throws IOException {
    Path ferry = ferry();
    List<byte[]> tracks = new ArrayList<>();
    for (List<String> settings :
        List.of(List.<String>of(), List.of("--breath-cue"), withCue(SETTINGS.get(3)))) {
      Path set = folder.resolve("set" + tracks.size());
      run(
          settings,
          "pack",
          ferry,
          "-d",
          set,
          "--tempi=100",
          "--mixes=FULL",
          "--no-drills",
          "--no-mp3");
      try (Stream<Path> files = Files.list(set)) {
        Path track = files.filter(file -> file.toString().endsWith(".wav")).findAny().orElseThrow();
        tracks.add(Files.readAllBytes(track));
      }
    }
    assertTrue(!Arrays.equals(tracks.get(0), tracks.get(1)), "breaths are heard");
    assertTrue(!Arrays.equals(tracks.get(1), tracks.get(2)), "at other places when asked");
    Path loop = folder.resolve("loop.wav");
    Path other = folder.resolve("other.wav");
    run(List.of(), "drill", "loop", "--phrase", "Row", "--breath-cue", ferry, "-o", loop);
    run(withCue(SETTINGS.get(2)), "drill", "loop", "--phrase", "Row", ferry, "-o", other);
    assertTrue(!Arrays.equals(Files.readAllBytes(loop), Files.readAllBytes(other)));
  }

  private static List<String> withCue(List<String> settings) {
    return Stream.concat(settings.stream(), Stream.of("--breath-cue")).toList();
  }

  private Path ferry() throws IOException {
    return Files.writeString(folder.resolve("ferry.loom"), FERRY);
  }

  private static List<Path> samples() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("samples-synth"))) {
      return files.filter(file -> file.toString().endsWith(".loom")).sorted().toList();
    }
  }

  private static String run(List<String> settings, Object... arguments) {
    Stream<String> words = Stream.of(arguments).map(Object::toString);
    String[] line = Stream.concat(words, settings.stream()).toArray(String[]::new);
    CommandLineRun run = CommandLineRun.of(line);
    assertTrue(run.code() <= ExitCode.CHECK_FAILED, run.err());
    return run.out();
  }

  /** Where breaths begin by the plan, in beats. */
  private static List<String> planned(Path score, List<String> settings) {
    return groups(BEAT, breaths(score, settings));
  }

  private static int cut(String plan) {
    return (int)
        groups("\"cutBeats\" : \"([^\"]+)\"", plan).stream()
            .filter(cut -> !cut.equals("0"))
            .count();
  }

  private static String breaths(Path score, List<String> settings) {
    String plan = run(settings, "breaths", "--json", score);
    return plan.substring(plan.indexOf("\"breaths\""), plan.indexOf("\"stretches\""));
  }

  /** Where breaths begin by a printed timeline, in beats. */
  private static List<String> cued(String table) {
    return table
        .lines()
        .filter(row -> row.startsWith("breath,"))
        .map(row -> row.split(",")[2])
        .toList();
  }

  private static int count(String what, Path file) throws IOException {
    return Files.readString(file).split(Pattern.quote(what), -1).length - 1;
  }

  private static long wholeBeats(String beat) {
    String[] parts = beat.split("/");
    return Math.floorDiv(
        Long.parseLong(parts[0]), parts.length == 1 ? 1 : Long.parseLong(parts[1]));
  }

  /** The streams of a PDF file as text (ISO 32000-1, 7.3.8: between "stream" and "endstream"). */
  private static String inflated(Path pdf) throws IOException {
    byte[] bytes = Files.readAllBytes(pdf);
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    StringBuilder out = new StringBuilder();
    Matcher begin =
        Pattern.compile("FlateDecode.*?>>\\s*?stream\\r?\\n", Pattern.DOTALL).matcher(text);
    while (begin.find()) {
      ByteArrayInputStream rest =
          new ByteArrayInputStream(bytes, begin.end(), bytes.length - begin.end());
      try (InflaterInputStream plain = new InflaterInputStream(rest)) {
        out.append(new String(plain.readAllBytes(), StandardCharsets.ISO_8859_1));
      }
    }
    return out.toString();
  }

  private static List<String> groups(String pattern, String text) {
    return Pattern.compile(pattern)
        .matcher(text)
        .results()
        .map((MatchResult found) -> found.group(found.groupCount()))
        .toList();
  }

  /** Which frames of a track of 16 bits in one channel are not silent. */
  private static boolean[] sounds(Path track) throws IOException, UnsupportedAudioFileException {
    try (AudioInputStream in = AudioSystem.getAudioInputStream(track.toFile())) {
      assertEquals(2, in.getFormat().getFrameSize());
      byte[] bytes = in.readAllBytes();
      boolean[] sounds = new boolean[bytes.length / 2];
      for (int frame = 0; frame < sounds.length; frame++) {
        sounds[frame] = Math.abs((bytes[2 * frame + 1] << 8) + (bytes[2 * frame] & 0xff)) > 4;
      }
      return sounds;
    }
  }
}
