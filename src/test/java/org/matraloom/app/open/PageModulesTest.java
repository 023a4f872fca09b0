package org.matraloom.app.open;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The page's modules, read as a lint would: what they import, put into the page, and say. */
class PageModulesTest {

  private static final Path PARTS = Path.of("src/main/resources/org/matraloom/app/open");
  private static final String OWN = "/page/";

  private static final Pattern IMPORT =
      Pattern.compile("import (?:\\{([^}]*)\\} from )?'([^']+)'|import\\('([^']+)'\\)");
  private static final Pattern EXPORT =
      Pattern.compile("export (?:async )?(?:function|class|const) (\\w+)");
  private static final Pattern HTML =
      Pattern.compile("(?:innerHTML|outerHTML|insertAdjacentHTML|document\\.write)[^;]*;");
  private static final Pattern FORBIDDEN =
      Pattern.compile(
          "\\beval\\(|new Function\\(|setAttribute\\('(?:style|on\\w+)'|javascript:|\\bvar |[^=!]==[^=]"
              + "|https?://|console\\.");

  /** HTML that the program has made, or with nothing of a score in it; all else is text. */
  private static final List<String> MADE_HTML =
      List.of(
          "innerHTML = `<svg viewBox=\"0 0 24 24\"><use href=\"#f-${hand.figure}\"></use></svg>`;",
          "insertAdjacentHTML('beforeend', vocabulary.figures);",
          "innerHTML = piece.head;",
          "innerHTML = piece.closing;",
          "innerHTML = html;");

  private final Map<String, String> modules = modules();

  private static Map<String, String> modules() {
    Map<String, String> found = new TreeMap<>();
    try (Stream<Path> files = Files.list(PARTS)) {
      for (Path file : files.filter(one -> one.toString().endsWith(".js")).toList()) {
        found.put(file.getFileName().toString(), Files.readString(file));
      }
    } catch (IOException unreadable) {
      throw new IllegalStateException(unreadable);
    }
    return found;
  }

  private static List<MatchResult> all(Pattern pattern, String text) {
    return pattern.matcher(text).results().toList();
  }

  @Test
  void everyImportIsThereAndUsed() throws Exception {
    String map = new ModuleMap().importMap();
    List<String> faults = new ArrayList<>();
    int seen = 0;
    for (Map.Entry<String, String> module : modules.entrySet()) {
      for (MatchResult found : all(IMPORT, module.getValue())) {
        String from = found.group(2) == null ? found.group(3) : found.group(2);
        String where = module.getKey() + " from " + from;
        boolean own = from.startsWith(OWN);
        String source = own ? modules.get(from.substring(OWN.length())) : "";
        if (own ? source == null : !map.contains("\"" + from + "\"")) {
          faults.add(where + ": no such module");
          continue;
        }
        seen++;
        for (String name : names(found.group(1))) {
          if (own && all(EXPORT, source).stream().noneMatch(one -> one.group(1).equals(name))) {
            faults.add(where + ": exports no " + name);
          }
          if (all(Pattern.compile("\\b" + name + "\\b"), module.getValue()).size() < 2) {
            faults.add(where + ": does not use " + name);
          }
        }
      }
    }
    assertEquals(List.of(), faults);
    assertTrue(seen > 60, "imports were found: " + seen);
  }

  private static List<String> names(String inBraces) {
    return inBraces == null
        ? List.of()
        : Stream.of(inBraces.split(",")).map(String::strip).filter(one -> !one.isEmpty()).toList();
  }

  @Test
  void everyExportIsImported() {
    String together = String.join("\n", modules.values());
    List<String> faults = new ArrayList<>();
    int seen = 0;
    for (Map.Entry<String, String> module : modules.entrySet()) {
      for (MatchResult found : all(EXPORT, module.getValue())) {
        seen++;
        if (all(Pattern.compile("\\b" + found.group(1) + "\\b"), together).size() < 2) {
          faults.add(module.getKey() + ": " + found.group(1) + " is used by nobody");
        }
      }
    }
    assertEquals(List.of(), faults);
    assertTrue(seen > 30, "exports were found: " + seen);
  }

  @Test
  void noTextOfAScoreBecomesHtmlOrCode() {
    List<String> faults = new ArrayList<>();
    TreeSet<String> made = new TreeSet<>();
    modules.forEach(
        (name, text) -> {
          all(FORBIDDEN, text).forEach(found -> faults.add(name + ": " + found.group()));
          for (MatchResult found : all(HTML, text)) {
            if (MADE_HTML.contains(found.group())) {
              made.add(found.group());
            } else {
              faults.add(name + ": " + found.group());
            }
          }
        });
    assertEquals(List.of(), faults);
    assertEquals(new TreeSet<>(MADE_HTML), made, "what is allowed is there");
  }

  @Test
  void everyModuleTellsItsIdea() {
    modules.forEach((name, text) -> assertTrue(text.startsWith("/**"), name));
    assertTrue(modules.size() > 20, "modules were found: " + modules.size());
  }

  /** A word that nobody says is dead; keys put together have their beginning in the code. */
  @Test
  void everyWordIsSaid() throws IOException {
    String code =
        String.join("\n", modules.values()) + Files.readString(PARTS.resolve("open.html"));
    List<String> dead = new ArrayList<>();
    int seen = 0;
    String words = Files.readString(PARTS.resolve("words-en.json"));
    for (MatchResult found : all(Pattern.compile("(?m)^  \"([\\w-]+)\":"), words)) {
      String key = found.group(1);
      String beginning = key.contains("-") ? key.substring(0, key.indexOf('-') + 1) : key;
      seen++;
      if (!code.contains("'" + key + "'")
          && !code.contains("\"" + key + "\"")
          && !(key.contains("-") && code.contains("say('" + beginning + "' + "))) {
        dead.add(key);
      }
    }
    assertEquals(List.of(), dead);
    assertTrue(seen > 100, "words were found: " + seen);
  }
}
