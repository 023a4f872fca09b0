package org.matraloom.app.handon;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.CommandLineRun;
import org.matraloom.mouth.MadeMouth;

/** The command class: made, made again, made in parts. */
class ClassCommandTest {

  private static final String EVIL = "</title><script>alert(1)</script>";
  private static final Pattern ADDRESS = Pattern.compile("(?:href|src)=\"\\./([^\"]+)\"");

  @TempDir private Path home;

  private Path scores;
  private Path site;

  @BeforeEach
  void someScores() throws IOException {
    scores = Files.createDirectories(home.resolve("class"));
    site = home.resolve("site");
    score("evil", EVIL);
    score("drip", "Drip & Drop");
    Files.writeString(
        scores.resolve("class.txt"),
        "title Rain\npiece drip level 2 tags korvai\nhomework Nila | drip | 50% | <clean>\n");
  }

  private void score(String name, String title) throws IOException {
    Files.writeString(
        scores.resolve(name + ".loom"),
        "title "
            + title
            + "\ntala rupaka\ntempo 80\nSong = takadimi takadimi takadimi\nperform\n"
            + "  Song nadai 4\n");
  }

  private CommandLineRun made(Path target, String... more) {
    Stream<String> words =
        Stream.concat(
            Stream.of("class", scores.toString(), "-d", target.toString(), "--no-phone"),
            Stream.of(more));
    return CommandLineRun.of(words.toArray(String[]::new));
  }

  @Test
  void onlyWhatChangedIsMadeAgain() throws IOException {
    CommandLineRun first = made(site);
    assertEquals("", first.err());
    assertTrue(first.out().contains("2 pieces, 2 made now, the booklet too"), first.out());
    assertTrue(made(site).out().contains("2 pieces, 0 made now;"));
    score("drip", "Drip and Drop");
    assertTrue(made(site).out().contains("2 pieces, 1 made now, the booklet too"));
    Files.delete(site.resolve("evil/sheet.pdf"));
    assertTrue(made(site).out().contains("2 pieces, 1 made now;"));
    Files.writeString(scores.resolve("class.txt"), "piece evil level 3\n");
    assertTrue(made(site).out().contains("2 made now"), "one has a level, one has lost it");
    assertTrue(made(site, "--no-breaths").out().contains("2 made now"));
  }

  @Test
  void aRecordedVoiceSpeaksOnItsPages() throws IOException {
    String list = new MadeMouth().write(home).toString();
    String shelf = home.resolve("voices").toString();
    CommandLineRun voice =
        CommandLineRun.of("voice", "make", "river", list, "--consent", "--shelf", shelf);
    assertEquals(0, voice.code(), voice.err());
    String[] words = {"class", scores.toString(), "-d", site.toString(), "--piece", "drip"};
    assertEquals(0, CommandLineRun.of(words).code());
    String usual = Files.readString(site.resolve("drip/phone.html"));
    String[] spoken = Arrays.copyOf(words, words.length + 2);
    spoken[words.length] = "--voice";
    spoken[words.length + 1] = shelf + "/river";
    CommandLineRun own = CommandLineRun.of(spoken);
    assertEquals(0, own.code(), own.err());
    assertTrue(own.out().contains("1 made now"), "another voice makes other pages");
    assertFalse(usual.equals(Files.readString(site.resolve("drip/phone.html"))));
    assertTrue(made(home.resolve("none"), "--voice", "nobody").err().contains("--voice takes"));
  }

  @Test
  void everyAddressLeadsSomewhereAndNothingOfATitleIsMarkup() throws IOException {
    made(site);
    int seen = 0;
    for (Map.Entry<String, byte[]> file : files(site).entrySet()) {
      if (!file.getKey().endsWith(".html")) {
        continue;
      }
      String page = new String(file.getValue(), StandardCharsets.UTF_8);
      assertTrue(page.contains("Content-Security-Policy"), file.getKey());
      assertFalse(page.contains("<script>alert"), file.getKey());
      assertFalse(page.contains("<clean>"), file.getKey());
      Matcher matcher = ADDRESS.matcher(page);
      while (matcher.find()) {
        Path target = site.resolve(file.getKey()).resolveSibling(matcher.group(1));
        assertTrue(Files.exists(target), file.getKey() + " leads to " + target);
        seen++;
      }
    }
    assertTrue(seen > 12, "addresses: " + seen);
    String cards = Files.readString(site.resolve("homework.html"));
    assertTrue(cards.contains("50%, 40 beats a minute"), cards);
  }

  @Test
  void theLinesOfAPlanMakeTheSameBytesInAnyOrder() throws IOException {
    made(site);
    Path other = home.resolve("other");
    String[] lines = made(other, "--plan").out().split("\\R");
    assertEquals(3, lines.length);
    assertFalse(Files.exists(other), "a plan makes nothing");
    Path together = home.resolve("together");
    assertTrue(made(together, "--piece", "drip,evil").out().contains("2 of the pieces, 2 made"));
    assertArrayEquals(
        Files.readAllBytes(site.resolve("evil/sheet.pdf")),
        Files.readAllBytes(together.resolve("evil/sheet.pdf")));
    for (int index = lines.length - 1; index >= 0; index--) {
      String[] words = lines[index].split(" ");
      assertEquals("matraloom", words[0]);
      CommandLineRun run = CommandLineRun.of(Arrays.copyOfRange(words, 1, words.length));
      assertEquals(0, run.code(), run.err());
    }
    Map<String, byte[]> one = files(site);
    Map<String, byte[]> two = files(other);
    assertEquals(one.keySet(), two.keySet());
    one.forEach((name, bytes) -> assertArrayEquals(bytes, two.get(name), name));
  }

  @Test
  void aScoreWithErrorsIsToldAndTheOthersAreMade() throws IOException {
    Files.writeString(scores.resolve("broken.loom"), "tala nothing\n");
    CommandLineRun run = made(site);
    assertEquals(2, run.code());
    assertTrue(run.err().contains("broken.loom"), run.err());
    assertTrue(run.out().contains("2 pieces, 2 made now"), run.out());
  }

  @Test
  void foldersOfOthersAreLeftAlone() throws IOException {
    Files.createDirectories(site);
    Files.writeString(site.resolve("index.html"), "<p>my own page</p>");
    CommandLineRun run = made(site);
    assertEquals(2, run.code());
    assertTrue(run.err().contains("was not made by this program"), run.err());
    assertEquals("<p>my own page</p>", Files.readString(site.resolve("index.html")));
    assertTrue(made(scores).err().contains("give the set a folder of its own"));
    assertTrue(made(site, "--piece", "nila").err().contains("there is no score nila.loom"));
  }

  private static Map<String, byte[]> files(Path folder) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(folder.relativize(file).toString(), Files.readAllBytes(file));
      }
    }
    return files;
  }

  /** A list or a page of others may be in any coding. */
  @Test
  void textsInAnotherCodingAreToldByName() throws IOException {
    byte[] latin = "title Regen f\u00fcr alle\n".getBytes(StandardCharsets.ISO_8859_1);
    Files.createDirectories(site);
    Files.write(site.resolve("index.html"), latin);
    String[] command = {"class", scores.toString(), "-o", site.toString(), "--contents"};
    CommandLineRun others = CommandLineRun.of(command);
    assertEquals(2, others.code(), others.err());
    assertTrue(others.err().contains("was not made by this program"), others.err());
    assertArrayEquals(latin, Files.readAllBytes(site.resolve("index.html")));

    Files.delete(site.resolve("index.html"));
    Files.write(scores.resolve("class.txt"), latin);
    CommandLineRun list = CommandLineRun.of(command);
    assertEquals(2, list.code(), list.err());
    assertTrue(list.err().contains("class.txt cannot be read as UTF-8 text"), list.err());
  }
}
