package org.matraloom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The rooms stand on floors, and a room knows only rooms on lower floors. */
class ArchitectureTest {

  private static final Map<String, Integer> FLOOR =
      Map.ofEntries(
          Map.entry("picture", 0),
          Map.entry("pulse", 0),
          Map.entry("recording", 1),
          Map.entry("time", 0),
          Map.entry("wav", 0),
          Map.entry("device", 1),
          Map.entry("loudness", 1),
          Map.entry("prompt", 5),
          Map.entry("onset", 2),
          Map.entry("score", 1),
          Map.entry("paper", 2),
          Map.entry("spell", 2),
          Map.entry("clap", 3),
          Map.entry("form", 2),
          Map.entry("notation", 3),
          Map.entry("phonetics", 2),
          Map.entry("practice", 2),
          Map.entry("schedule", 2),
          Map.entry("script", 2),
          Map.entry("follow", 3),
          Map.entry("kanakku", 3),
          Map.entry("voice", 3),
          Map.entry("breath", 4),
          Map.entry("fit", 4),
          Map.entry("pasted", 4),
          Map.entry("repair", 4),
          Map.entry("mouth", 4),
          Map.entry("sound", 4),
          Map.entry("drum", 4),
          Map.entry("live", 5),
          Map.entry("log", 5),
          Map.entry("measure", 5),
          Map.entry("pack", 5),
          Map.entry("sheet", 5),
          Map.entry("app.cli", 6),
          Map.entry("exchange", 6),
          Map.entry("film", 6),
          Map.entry("site", 2),
          Map.entry("page", 6),
          Map.entry("retell", 6),
          Map.entry("session", 6),
          Map.entry("verdict", 6),
          Map.entry("app.handon", 7),
          Map.entry("app.hear", 7),
          Map.entry("app.practise", 7),
          Map.entry("app.prove", 7),
          Map.entry("app.voices", 7),
          Map.entry("app.write", 7),
          Map.entry("door", 0),
          Map.entry("shelf", 7),
          Map.entry("sollus", 0),
          Map.entry("staircase", 0),
          Map.entry("app.lesson", 8),
          Map.entry("app.open", 9),
          Map.entry("app", 10));

  private static final String ROOT = "org.matraloom.";

  /** More than this, and one reads file names like a phone book. */
  private static final int MOST_FILES = 40;

  /**
   * Rooms that may hold more: the reading of scores uses one set of tokens and problems that nobody
   * else sees, what a score says is one set of records that know each other, the sheet of two
   * reciters is made of the same rows and columns as that of one, and all ways to pair a take with
   * its score are weighed by one set of prices.
   */
  private static final Map<String, Integer> MOST_FILES_BY_ROOM =
      Map.of("notation", 45, "score", 45, "sheet", 43, "follow", 41);

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("org.matraloom");

  @Test
  void everyRoomHasAFloor() {
    TreeSet<String> rooms = new TreeSet<>();
    CLASSES.forEach(type -> rooms.add(roomOf(type)));
    assertTrue(rooms.size() > 30, "rooms were found: " + rooms);
    assertEquals(new TreeSet<>(FLOOR.keySet()), rooms);
  }

  @Test
  void arrowsRunDownwards() {
    TreeMap<String, String> upward = new TreeMap<>();
    int seen = 0;
    for (JavaClass type : CLASSES) {
      for (JavaClass target : known(type)) {
        if (roomOf(target).equals(roomOf(type))) {
          continue;
        }
        seen++;
        if (FLOOR.get(roomOf(target)) >= FLOOR.get(roomOf(type))) {
          upward.put(type.getName(), target.getName());
        }
      }
    }
    assertTrue(seen > 1000, "arrows between rooms were found: " + seen);
    assertEquals(Map.of(), upward);
  }

  @Test
  void noRoomsStandInACircle() {
    Map<String, Set<String>> arrows = new TreeMap<>();
    for (JavaClass type : CLASSES) {
      Set<String> to = arrows.computeIfAbsent(roomOf(type), room -> new TreeSet<>());
      known(type).forEach(target -> to.add(roomOf(target)));
    }
    arrows.forEach((room, to) -> to.remove(room));
    assertTrue(arrows.values().stream().mapToInt(Set::size).sum() > 100, "arrows: " + arrows);
    assertEquals(List.of(), circles(arrows, 2));
  }

  @Test
  void noMoreThanTwoClassesOfARoomStandInACircle() {
    Map<String, Set<String>> arrows = new TreeMap<>();
    for (JavaClass type : CLASSES) {
      Set<String> to = arrows.computeIfAbsent(fileOf(type), file -> new TreeSet<>());
      known(type).forEach(target -> to.add(fileOf(target)));
    }
    assertTrue(arrows.size() > 500, "classes were found: " + arrows.size());
    arrows.forEach((file, to) -> to.remove(file));
    arrows.values().forEach(to -> to.removeIf(ArchitectureTest::visitsItsFamily));
    assertFalse(circles(arrows, 2).isEmpty(), "circles of two are seen");
    assertEquals(List.of(), circles(arrows, 3));
  }

  /** A family of types and the interface that has a method for each of them are one thing. */
  private static boolean visitsItsFamily(String file) {
    return file.endsWith("Visitor") || file.endsWith("Listener");
  }

  private static int most(String room) {
    return MOST_FILES_BY_ROOM.getOrDefault(room, MOST_FILES);
  }

  @Test
  void noRoomIsTooFull() {
    Map<String, Set<String>> files = new TreeMap<>();
    CLASSES.forEach(
        type -> files.computeIfAbsent(roomOf(type), room -> new TreeSet<>()).add(fileOf(type)));
    assertTrue(files.size() > 30, "rooms were found: " + files.keySet());
    files.entrySet().removeIf(room -> room.getValue().size() <= most(room.getKey()));
    assertEquals(Map.of(), files);
  }

  @Test
  void onlyTheRoomOfDevicesSeesSoundLines() {
    List<String> lines =
        CLASSES.stream()
            .filter(type -> !roomOf(type).equals("device"))
            .flatMap(type -> type.getDirectDependenciesFromSelf().stream())
            .map(dependency -> dependency.getTargetClass().getName())
            .filter(name -> name.matches("javax\\.sound\\.sampled\\..*(Line|Mixer).*"))
            .toList();
    assertEquals(List.of(), lines);
  }

  @Test
  void noPackageIsCalledUtil() {
    assertFalse(CLASSES.stream().anyMatch(type -> type.getPackageName().contains("util")));
  }

  /** The program's own classes that a class knows. */
  private static List<JavaClass> known(JavaClass type) {
    return type.getDirectDependenciesFromSelf().stream()
        .map(Dependency::getTargetClass)
        .map(JavaClass::getBaseComponentType)
        .filter(target -> target.getPackageName().startsWith(ROOT))
        .toList();
  }

  private static String roomOf(JavaClass type) {
    return type.getPackageName().substring(ROOT.length());
  }

  /** The class that gives the file its name. */
  private static String fileOf(JavaClass type) {
    return type.getName().replaceAll("\\$.*", "");
  }

  /** Sets of nodes that reach each other, of at least so many. */
  private static List<Set<String>> circles(Map<String, Set<String>> arrows, int fewest) {
    Map<String, Set<String>> reached = new TreeMap<>();
    arrows.keySet().forEach(from -> reached.put(from, reachedFrom(from, arrows)));
    List<Set<String>> circles = new ArrayList<>();
    Set<String> done = new TreeSet<>();
    for (String from : arrows.keySet()) {
      Set<String> circle = new TreeSet<>(Set.of(from));
      reached.get(from).stream()
          .filter(to -> reached.getOrDefault(to, Set.of()).contains(from))
          .forEach(circle::add);
      if (done.addAll(circle) && circle.size() >= fewest) {
        circles.add(circle);
      }
    }
    return circles;
  }

  private static Set<String> reachedFrom(String from, Map<String, Set<String>> arrows) {
    Set<String> reached = new TreeSet<>();
    Deque<String> open = new ArrayDeque<>(arrows.get(from));
    while (!open.isEmpty()) {
      String next = open.pop();
      if (reached.add(next)) {
        open.addAll(arrows.getOrDefault(next, Set.of()));
      }
    }
    return reached;
  }
}
