package org.matraloom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The packages stand in layers, and a package imports only from lower ones. */
class ArchitectureTest {

  private static final Map<String, Integer> LAYER =
      Map.ofEntries(
          Map.entry("time", 0),
          Map.entry("score", 1),
          Map.entry("notation", 2),
          Map.entry("kanakku", 2),
          Map.entry("schedule", 2),
          Map.entry("breath", 3),
          Map.entry("practice", 3),
          Map.entry("sound", 4),
          Map.entry("sheet", 4),
          Map.entry("take", 5),
          Map.entry("pack", 5),
          Map.entry("host", 5),
          Map.entry("log", 5),
          Map.entry("app", 6));

  private static final String ROOT = "org.matraloom.";

  private final JavaClasses classes =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("org.matraloom");

  @Test
  void everyPackageHasALayer() {
    TreeSet<String> packages = new TreeSet<>();
    classes.forEach(type -> packages.add(packageOf(type)));
    assertTrue(packages.size() > 3, "packages were found: " + packages);
    packages.removeAll(LAYER.keySet());
    assertEquals(new TreeSet<>(), packages);
  }

  @Test
  void importsRunDownwards() {
    TreeMap<String, String> upward = new TreeMap<>();
    int seen = 0;
    for (JavaClass type : classes) {
      for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
        JavaClass target = dependency.getTargetClass().getBaseComponentType();
        if (!target.getPackageName().startsWith(ROOT)
            || packageOf(target).equals(packageOf(type))) {
          continue;
        }
        seen++;
        if (LAYER.get(packageOf(target)) >= LAYER.get(packageOf(type))) {
          upward.put(type.getName(), target.getName());
        }
      }
    }
    assertTrue(seen > 10, "dependencies between packages were found: " + seen);
    assertEquals(Map.of(), upward);
  }

  @Test
  void onlyTheHostSeesSoundLines() {
    List<String> lines =
        classes.stream()
            .filter(type -> !packageOf(type).equals("host"))
            .flatMap(type -> type.getDirectDependenciesFromSelf().stream())
            .map(dependency -> dependency.getTargetClass().getName())
            .filter(name -> name.matches("javax\\.sound\\.sampled\\..*(Line|Mixer).*"))
            .toList();
    assertEquals(List.of(), lines);
  }

  @Test
  void noPackageIsCalledUtil() {
    assertFalse(classes.stream().anyMatch(type -> type.getPackageName().contains("util")));
  }

  private static String packageOf(JavaClass type) {
    String name = type.getPackageName();
    return name.length() < ROOT.length() ? name : name.substring(ROOT.length());
  }
}
