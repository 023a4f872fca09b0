package org.matraloom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Beats, seconds and frames are turned into one another in the package {@code time} only. */
class ConversionsTest {

  private static final Path SOURCES = Path.of("src/main/java/org/matraloom");

  /** A minute of 60 seconds in a product or a quotient, or the length of a beat by name. */
  private static final Pattern BEATS_AND_SECONDS =
      Pattern.compile(
          "\\b60(\\.0|L)?\\s*[/*]|[/*]\\s*60(\\.0|L)?\\b|secondsPerBeat|new FrameClock\\(");

  /** A sample rate in a product or a quotient. */
  private static final Pattern SECONDS_AND_FRAMES =
      Pattern.compile(
          "(ratePerSecond(\\(\\))?|\\brate|\\bRATE)\\s*[/*]|[/*]\\s*(ratePerSecond|rate|RATE)\\b");

  private static final Map<String, String> MAY_COUNT_SECONDS =
      Map.of(
          "measure/Tolerance.java", "the share of a minute that a tempo may drift, in percent",
          "follow/HabitLayouts.java", "the mean pace of sollus whose tempo may change",
          "measure/RoundMeasure.java",
              "the slopes between pairs of sollus, before they are a tempo",
          "wav/WavWriter.java", "minutes of a file, in a message",
          "app/hear/TakeReport.java", "minutes of voice",
          "breath/Care.java", "minutes of voice",
          "live/LiveSegment.java",
              "live playing sets the tempo anew at a beat, with a clock from there",
          "schedule/Timeline.java", "the clock of a timeline");

  /**
   * Rooms that work on samples: windows, filters, fades and buffers have a length in seconds, but
   * no place in the music.
   */
  private static final List<String> ON_SAMPLES =
      List.of(
          "device/",
          "drum/",
          "live/",
          "loudness/",
          "mouth/",
          "onset/",
          "prompt/",
          "recording/",
          "retell/",
          "session/",
          "sound/",
          "voice/",
          "wav/");

  private static final Map<String, String> MAY_COUNT_FRAMES =
      Map.of(
          "app/write/SpectrogramPicture.java", "pixels a second of a picture of samples",
          "follow/PairingWalk.java", "a tempo against that of the take, called its rate",
          "follow/TempoFilter.java", "a tempo against that of the take, called its rate");

  @Test
  void beatsAndSecondsMeetInTimeOnly() throws IOException {
    assertEquals(List.of(), outside(BEATS_AND_SECONDS, MAY_COUNT_SECONDS, List.of()));
  }

  @Test
  void secondsAndFramesMeetInTimeOrAmongSamples() throws IOException {
    assertEquals(List.of(), outside(SECONDS_AND_FRAMES, MAY_COUNT_FRAMES, ON_SAMPLES));
  }

  private static List<String> outside(
      Pattern pattern, Map<String, String> reasons, List<String> rooms) throws IOException {
    List<String> found = new ArrayList<>();
    List<String> excused = new ArrayList<>();
    int seen = 0;
    try (Stream<Path> files = Files.walk(SOURCES)) {
      for (Path file : files.filter(path -> path.toString().endsWith(".java")).toList()) {
        String name = SOURCES.relativize(file).toString().replace('\\', '/');
        boolean matches =
            Files.readAllLines(file).stream()
                .filter(line -> !line.strip().startsWith("*") && !line.strip().startsWith("//"))
                .map(line -> line.replaceAll("\"[^\"]*\"|/\\*.*\\*/", ""))
                .anyMatch(line -> pattern.matcher(line).find());
        seen++;
        if (matches && reasons.containsKey(name)) {
          excused.add(name);
        } else if (matches
            && !name.startsWith("time/")
            && rooms.stream().noneMatch(name::startsWith)) {
          found.add(name);
        }
      }
    }
    assertTrue(seen > 500, "sources were read: " + seen);
    assertEquals(reasons.keySet().size(), excused.size(), "excuses that are needed: " + excused);
    return found;
  }
}
