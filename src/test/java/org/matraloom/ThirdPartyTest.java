package org.matraloom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Holds the list of what others wrote against the dependencies of the build. */
class ThirdPartyTest {

  private static final Path RESOURCES = Path.of("src/main/resources");
  private static final Path LICENSES = RESOURCES.resolve("META-INF/licenses");
  private static final String OUTSIDE = "Needed to build and test, not inside";

  private static String inside;
  private static String outside;

  @BeforeAll
  static void read() throws IOException {
    String list = Files.readString(RESOURCES.resolve("META-INF/THIRD-PARTY.txt"));
    int border = list.indexOf(OUTSIDE);
    assertTrue(border > 0);
    inside = list.substring(0, border);
    outside = list.substring(border);
  }

  @Test
  void everyDependencyIsNamedWithItsVersionInItsPart() throws Exception {
    List<String> missing = new ArrayList<>();
    int shipped = 0;
    for (Dependency dependency : dependencies()) {
      String part = dependency.test() ? outside : inside;
      shipped += dependency.test() ? 0 : 1;
      if (part.lines().noneMatch(dependency.name()::equals)) {
        missing.add(dependency.name());
      }
    }
    assertTrue(shipped >= 10, "only " + shipped + " libraries found in the build");
    assertEquals(List.of(), missing);
  }

  @Test
  void nothingIsNamedThatIsNoDependency() throws Exception {
    List<String> known = dependencies().stream().map(Dependency::name).toList();
    List<String> named =
        (inside + outside).lines().filter(line -> line.matches("[\\w.-]+:[\\w.-]+:.+")).toList();
    assertEquals(known.size(), named.size());
    assertTrue(known.containsAll(named));
  }

  @Test
  void everyNamedLicenceIsThereAndNoOther() throws IOException {
    List<String> named =
        Pattern.compile("licenses/([\\w.-]+\\.txt)")
            .matcher(inside)
            .results()
            .map(found -> found.group(1))
            .distinct()
            .sorted()
            .toList();
    try (Stream<Path> files = Files.list(LICENSES)) {
      assertEquals(files.map(file -> file.getFileName().toString()).sorted().toList(), named);
    }
    assertTrue(Files.readString(Path.of("LICENSE")).contains("GNU GENERAL PUBLIC LICENSE"));
    assertTrue(
        Files.readString(LICENSES.resolve("LGPL-2.1.txt"))
            .contains("GNU LESSER GENERAL PUBLIC LICENSE"));
    assertTrue(
        Files.readString(LICENSES.resolve("Apache-2.0.txt")).contains("Version 2.0, January 2004"));
  }

  private record Dependency(String name, boolean test) {}

  private static List<Dependency> dependencies() throws Exception {
    Document pom =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(Path.of("pom.xml").toFile());
    Element project = pom.getDocumentElement();
    Element properties = child(project, "properties");
    NodeList found = child(project, "dependencies").getElementsByTagName("dependency");
    List<Dependency> dependencies = new ArrayList<>();
    for (int i = 0; i < found.getLength(); i++) {
      Element one = (Element) found.item(i);
      String version = text(one, "version");
      Matcher property = Pattern.compile("\\$\\{(.+)}").matcher(version);
      if (property.matches()) {
        version = text(properties, property.group(1));
      }
      dependencies.add(
          new Dependency(
              text(one, "groupId") + ":" + text(one, "artifactId") + ":" + version,
              text(one, "scope").equals("test")));
    }
    return dependencies;
  }

  private static Element child(Element parent, String name) {
    for (var node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element element && element.getTagName().equals(name)) {
        return element;
      }
    }
    throw new AssertionError("no <" + name + "> in <" + parent.getTagName() + ">");
  }

  private static String text(Element parent, String name) {
    for (var node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element element && element.getTagName().equals(name)) {
        return element.getTextContent().strip();
      }
    }
    return "";
  }
}
