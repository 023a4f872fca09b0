package org.matraloom.app.open;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.app.Main;
import org.matraloom.app.cli.Program;
import org.matraloom.app.cli.UserError;
import org.matraloom.app.prove.LandingText;
import org.matraloom.door.DoorFault;
import org.matraloom.door.DoorReply;
import org.matraloom.door.DoorRequest;
import org.matraloom.door.DoorRoute;
import org.matraloom.door.PageParts;
import org.matraloom.kanakku.Landing;
import org.matraloom.log.PracticeLog;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.shelf.ScoreFolder;
import org.matraloom.shelf.ScoreName;
import picocli.CommandLine;

/** What the page is told is what the commands print. */
class OpenAnswersTest {

  private static final Path PARTS = Path.of("src/main/resources/org/matraloom/app/open");
  private static final String MISSES =
      "tala adi\nSong = takadimi takajunu\nperform\n Song nadai 5\n";

  @TempDir private Path top;
  private ScoreFolder scores;
  private List<DoorRoute> routes;

  @BeforeEach
  void open() throws IOException {
    scores =
        new ScoreFolder(
            Files.createDirectory(top.resolve("scores")), top.resolve("kept"), Clock.systemUTC());
    PracticeLog log = new PracticeLog(top.resolve("log.jsonl"));
    OpenDesk desk = new OpenDesk(scores, Lexicon.standard(), log, new InProcess(), "low");
    routes = OpenRoutes.of(desk, Optional.empty());
  }

  /** Runs other commands as the program does. */
  private static final class InProcess implements Program {
    @Override
    public int runAlso(PrintWriter out, PrintWriter err, String... arguments) {
      return Main.run(out, err, arguments);
    }

    @Override
    public CommandLine whole() {
      throw new UnsupportedOperationException("the page describes no commands");
    }
  }

  private String ask(String method, String path, Map<String, String> query, String body)
      throws Exception {
    DoorRoute route =
        routes.stream()
            .filter(one -> one.method().equals(method) && one.path().equals(path))
            .findFirst()
            .orElseThrow();
    DoorRequest request = new DoorRequest(path, query, body.getBytes(StandardCharsets.UTF_8));
    DoorReply reply = route.answer().to(request);
    return new String(reply.body(), StandardCharsets.UTF_8);
  }

  private String post(String path, String body) throws Exception {
    return ask("POST", path, Map.of(), body);
  }

  private static String quoted(String text) {
    return "\"" + text.replace("\n", "\\n") + "\"";
  }

  @Test
  void theLandingIsThatOfCheckAndARepairLands() throws Exception {
    String told = post("/api/read", "{\"text\":" + quoted(MISSES) + "}");
    Performance performance =
        Performance.of(
            ScoreReader.read(MISSES, "", Lexicon.standard()).composition().orElseThrow());
    String verdict = new LandingText(Landing.of(performance)).verdict();
    assertTrue(told.contains(quoted(verdict)), told);
    assertTrue(told.contains("\"lands\":false"), told);
    assertFalse(told.contains(" style="), "styles are data");
    assertFalse(told.contains(" id="), "rows have no numbers");
    assertTrue(told.contains("data-grow"), told);
    assertTrue(post("/api/repairs", "{\"text\":" + quoted(MISSES) + "}").contains("start on"));
    String mended =
        post("/api/repair", "{\"number\":1,\"text\":" + quoted(MISSES) + "}")
            .replaceFirst("\\{\"text\":\"", "")
            .replaceFirst("\"}$", "");
    String again = post("/api/read", "{\"text\":\"" + mended + "\"}");
    assertTrue(again.contains("\"lands\":true"), again);
  }

  @Test
  void onlyRowsThatThePageLacksAreWrittenOut() throws Exception {
    String two =
        "title Rill\ntala adi\ntempo 60\nA = takadimi takajunu\nB = takadimi\nperform\n A x8\n";
    String first = post("/api/read", "{\"text\":" + quoted(two) + "}");
    List<String> keys =
        Pattern.compile("\"key\":\"([^\"]+)\"")
            .matcher(first)
            .results()
            .map(m -> m.group(1))
            .toList();
    assertEquals(2, keys.size(), first);
    String changed = two.replace(" A x8", " A x7\n B\n B");
    String body = "{\"text\":" + quoted(changed) + ",\"known\":\"" + String.join(" ", keys) + "\"}";
    String second = post("/api/read", body);
    assertTrue(second.contains("{\"key\":\"" + keys.get(0) + "\",\"from\":0.0}"), second);
    assertFalse(second.contains(keys.get(1)), second);
    assertEquals(1, second.split("\"html\":", -1).length - 1, second);
  }

  @Test
  void theFilesOfAScoreGoAlongWhenItIsRenamed() throws Exception {
    post("/api/new", "{\"title\":\"Rill\"}");
    Path files = Files.createDirectory(scores.folder().resolve("rill-files"));
    Files.writeString(files.resolve("take-1.wav"), "a take");
    post("/api/rename", "{\"name\":\"rill.loom\",\"to\":\"brook\"}");
    assertTrue(Files.exists(scores.folder().resolve("brook-files/take-1.wav")));
    assertFalse(Files.exists(files));
  }

  @Test
  void aWrongTextHasItsProblemAndNoSheet() throws Exception {
    String told = post("/api/read", "{\"text\":\"tala adi\\nSong = blub\\n\"}");
    assertTrue(told.contains("\"line\":2,\"column\":8,\"width\":4"), told);
    assertFalse(told.contains("\"rows\""), told);
  }

  @Test
  void theShelfTellsWhatAScoreIsLike() throws Exception {
    scores.create(new ScoreName("a.loom"), MISSES);
    scores.create(new ScoreName("b.loom"), "tala nothing\n");
    String shelf = ask("GET", "/api/shelf", Map.of(), "");
    assertTrue(shelf.contains("\"tala\":\"adi\"") || shelf.contains("triputa"), shelf);
    assertTrue(shelf.contains("\"lands\":false"), shelf);
    assertTrue(shelf.contains("\"problem\""), shelf);
  }

  @Test
  void whatAnotherWroteIsAConflict() throws Exception {
    scores.create(new ScoreName("a.loom"), "one");
    String body = "{\"name\":\"a.loom\",\"text\":\"two\",\"stamp\":\"old\"}";
    DoorRoute save =
        routes.stream().filter(one -> one.path().equals("/api/save")).findFirst().get();
    DoorReply reply =
        save.answer()
            .to(new DoorRequest("/api/save", Map.of(), body.getBytes(StandardCharsets.UTF_8)));
    assertEquals(DoorReply.CONFLICT, reply.status());
    assertTrue(new String(reply.body(), StandardCharsets.UTF_8).contains("\"one\""));
    assertEquals("one", scores.read(new ScoreName("a.loom")).text());
  }

  @Test
  void badWordsAreRefusedWithReasons() {
    for (String body : List.of("", "[]", "{\"text\":{}}", "{", "nonsense", "{\"x\":1}")) {
      DoorFault fault =
          assertThrows(DoorFault.class, () -> post("/api/read", body), "for: " + body);
      assertEquals(DoorReply.BAD, fault.status());
    }
    for (String name : List.of("../a.loom", "/etc/passwd", "a/b.loom")) {
      assertThrows(DoorFault.class, () -> ask("GET", "/api/score", Map.of("name", name), ""), name);
      String body = "{\"name\":" + quoted(name) + ",\"text\":\"x\",\"stamp\":\"\"}";
      assertThrows(DoorFault.class, () -> post("/api/save", body), name);
    }
    assertThrows(DoorFault.class, () -> post("/api/new", "{\"sample\":\"../../version.txt\"}"));
  }

  @Test
  void takesAndKindsAreKnownByNameOnly() throws Exception {
    scores.create(new ScoreName("a.loom"), MISSES);
    Files.writeString(scores.folder().resolve("take-1.wav"), "not a take of it");
    assertEquals("{\"takes\":[]}", ask("GET", "/api/takes", Map.of("name", "a.loom"), ""));
    for (String take : List.of("../take-1.wav", "/etc/passwd", "take-9.wav", "a.loom")) {
      String body = "{\"name\":\"a.loom\",\"one\":" + quoted(take) + ",\"other\":\"take-1.wav\"}";
      DoorFault fault = assertThrows(DoorFault.class, () -> post("/api/compare", body), take);
      assertTrue(fault.getMessage().startsWith("there is no take"), fault.getMessage());
    }
    for (String kind : List.of("", "check", "sheet-pdf; rm", "demo")) {
      String body = "{\"name\":\"a.loom\",\"kind\":" + quoted(kind) + "}";
      assertThrows(DoorFault.class, () -> post("/api/make", body), kind);
    }
    assertThrows(DoorFault.class, () -> post("/api/drill", "{\"name\":\"a.loom\"}"));
    assertThrows(DoorFault.class, () -> ask("GET", "/api/made", Map.of("id", "1"), ""));
    Path files = scores.folder().resolve("a-files");
    Files.delete(files);
    Files.createSymbolicLink(files, top);
    assertThrows(DoorFault.class, () -> ask("GET", "/api/takes", Map.of("name", "a.loom"), ""));
  }

  @Test
  void theSamplesAreThoseOfTheFolder() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("samples-synth"))) {
      List<String> names = files.map(file -> file.getFileName().toString()).sorted().toList();
      assertEquals(names, Samples.NAMES);
    }
    for (String name : Samples.NAMES) {
      assertEquals(Files.readString(Path.of("samples-synth", name)), Samples.text(name));
    }
    assertThrows(UserError.class, () -> Samples.text("x.loom"));
  }

  @Test
  void everyModuleOfTheMapIsServed() throws Exception {
    ModuleMap modules = new ModuleMap();
    Matcher served = Pattern.compile("/lib/([^\"]+)").matcher(modules.importMap());
    int count = 0;
    while (served.find()) {
      assertTrue(modules.reply(served.group(1)).body().length > 100);
      count++;
    }
    assertEquals(12, count);
    assertThrows(DoorFault.class, () -> modules.reply("../x.js"));
  }

  @Test
  void thePageHasNoCodeInIt() throws Exception {
    DoorRoute frame = routes.stream().filter(one -> one.path().equals("/")).findFirst().get();
    DoorReply reply = frame.answer().to(new DoorRequest("/", Map.of(), new byte[0]));
    String policy = reply.headers().get("Content-Security-Policy");
    assertTrue(policy.startsWith("default-src 'none'"), policy);
    assertFalse(policy.contains("unsafe"), policy);
    String page = Files.readString(PARTS.resolve("open.html"));
    assertFalse(page.matches("(?s).* on\\w+=.*"), page);
    assertFalse(page.contains(" style="), page);
  }

  /** A worker goes by the policy of its own script: Content Security Policy Level 3, 4.2. */
  @Test
  void theWorkerOfThePageMayAskThisServerOnly() throws Exception {
    DoorReply reply = new PageParts("/org/matraloom/app/open/").reply("feeder.js");
    String policy = reply.headers().get("Content-Security-Policy");
    assertEquals(
        "default-src 'none'; script-src 'self'; connect-src 'self'; frame-ancestors 'none'",
        policy);
  }

  /** What the page says stands in its file of words, and another language has no other keys. */
  @Test
  void allWordsOfThePageAreInItsFile() throws IOException {
    TreeSet<String> english = keys("words-en.json");
    TreeSet<String> german = keys("words-de.json");
    assertTrue(english.size() > 50, "words were found: " + english.size());
    assertTrue(english.containsAll(german), "unknown: " + german);
    List<String> missing = new ArrayList<>();
    Pattern said = Pattern.compile("say\\('([\\w-]+)'(?! \\+)|data-say=\"([\\w-]+)\"");
    try (Stream<Path> files = Files.list(PARTS)) {
      for (Path file : files.filter(one -> one.toString().matches(".*\\.(js|html)")).toList()) {
        said.matcher(Files.readString(file))
            .results()
            .map(found -> found.group(1) == null ? found.group(2) : found.group(1))
            .filter(key -> !key.endsWith("-") && !english.contains(key))
            .forEach(key -> missing.add(file.getFileName() + ": " + key));
      }
    }
    assertEquals(List.of(), missing);
  }

  private static TreeSet<String> keys(String file) throws IOException {
    TreeSet<String> keys = new TreeSet<>();
    Pattern.compile("(?m)^  \"([\\w-]+)\":")
        .matcher(Files.readString(PARTS.resolve(file)))
        .results()
        .forEach(found -> keys.add(found.group(1)));
    return keys;
  }

  @Test
  void aFolderThatIsNotThereIsToldInWords() {
    StringWriter err = new StringWriter();
    int code =
        Main.run(
            new PrintWriter(new StringWriter()),
            new PrintWriter(err, true),
            "open",
            top.resolve("none").toString(),
            "--no-browser");
    assertEquals(2, code);
    assertTrue(err.toString().contains("there is no folder and no score"), err.toString());
  }

  @Test
  void theBrowserIsOpenedInTheWayOfEachSystem() {
    assertEquals("xdg-open", Browser.command("Linux", "a").get(0));
    assertEquals("open", Browser.command("Mac OS X", "a").get(0));
    assertEquals("rundll32", Browser.command("Windows 11", "a").get(0));
  }
}
