package org.matraloom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** One name for one thing, and records that can be read at a glance. */
class NamesTest {

  private static final Path SOURCES = Path.of("src", "main", "java");

  /** More than this, and nobody knows which number of a call is which. */
  private static final int MOST_PARTS = 8;

  /** A composition has a part for each line of the head of a score. */
  private static final Map<String, Integer> AS_WRITTEN =
      Map.of("org.matraloom.score.Composition", 9);

  private static final Pattern IMPORT =
      Pattern.compile("(?m)^import org\\.matraloom\\.[a-z.]+\\.[A-Z]\\w*\\.([A-Z]\\w*);$");

  @Test
  void noTwoClassesBearOneName() throws IOException {
    List<Class<?>> files = files();
    assertTrue(files.size() > 500, "classes were found: " + files.size());
    TreeMap<String, List<String>> bearers = new TreeMap<>();
    files.forEach(type -> named(bearers, type));
    TreeSet<String> top = new TreeSet<>(bearers.keySet());
    files.stream()
        .flatMap(type -> nested(type).stream())
        .filter(type -> top.contains(type.getSimpleName()))
        .filter(type -> !Modifier.isPrivate(type.getModifiers()))
        .forEach(type -> named(bearers, type));
    bearers.values().removeIf(all -> all.size() == 1);
    assertEquals(Map.of(), bearers);
  }

  /** Many have a Kind; each is written with the class it belongs to. */
  @Test
  void aNestedNameThatIsUsedTwiceIsWrittenWithItsOwner() throws IOException {
    Map<String, Long> uses =
        files().stream()
            .flatMap(type -> nested(type).stream())
            .filter(type -> !Modifier.isPrivate(type.getModifiers()))
            .collect(Collectors.groupingBy(Class::getSimpleName, Collectors.counting()));
    assertTrue(uses.get("Kind") > 1, "kinds were found: " + uses);
    List<String> bare = new ArrayList<>();
    for (Path source : sources()) {
      IMPORT
          .matcher(Files.readString(source))
          .results()
          .filter(found -> uses.getOrDefault(found.group(1), 0L) > 1)
          .forEach(found -> bare.add(source + ": " + found.group()));
    }
    assertEquals(List.of(), bare);
  }

  @Test
  void recordsHaveAtMostEightParts() throws IOException {
    TreeMap<String, Integer> longer = new TreeMap<>();
    int seen = 0;
    for (Class<?> file : files()) {
      for (Class<?> type : Stream.concat(Stream.of(file), nested(file).stream()).toList()) {
        if (type.isRecord()) {
          seen++;
          int parts = type.getRecordComponents().length;
          if (parts > MOST_PARTS) {
            longer.put(type.getName(), parts);
          }
        }
      }
    }
    assertTrue(seen > 200, "records were found: " + seen);
    assertEquals(AS_WRITTEN, longer);
  }

  private static void named(Map<String, List<String>> bearers, Class<?> type) {
    bearers.computeIfAbsent(type.getSimpleName(), name -> new ArrayList<>()).add(type.getName());
  }

  private static List<Class<?>> nested(Class<?> type) {
    List<Class<?>> all = new ArrayList<>();
    for (Class<?> inner : type.getDeclaredClasses()) {
      all.add(inner);
      all.addAll(nested(inner));
    }
    return all;
  }

  private static List<Path> sources() throws IOException {
    try (Stream<Path> files = Files.walk(SOURCES)) {
      return files
          .filter(file -> file.toString().endsWith(".java"))
          .filter(file -> !file.endsWith("package-info.java"))
          .sorted()
          .toList();
    }
  }

  /** The class of each source, not initialised. */
  private static List<Class<?>> files() throws IOException {
    List<Class<?>> classes = new ArrayList<>();
    for (Path source : sources()) {
      String name =
          SOURCES.relativize(source).toString().replace(".java", "").replaceAll("[/\\\\]", ".");
      try {
        classes.add(Class.forName(name, false, NamesTest.class.getClassLoader()));
      } catch (ClassNotFoundException gone) {
        throw new AssertionError(name, gone);
      }
    }
    return classes;
  }
}
