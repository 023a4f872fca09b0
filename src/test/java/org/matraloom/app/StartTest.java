package org.matraloom.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What Java loads for the check of a small score, counted: machinery that costs more at the start
 * than the check does is to stay out of it. How long that takes is measured by scripts/bench-start.
 */
class StartTest {

  /** Each costs 3 to 40 ms of a process that takes 70, measured on OpenJDK 17. */
  private static final List<String> DEAR =
      List.of(
          "picocli.",
          "java.lang.invoke.InnerClassLambdaMetafactory",
          "java.lang.runtime.ObjectMethods",
          "java.util.Formatter",
          "java.util.regex.",
          "java.util.stream.",
          "java.text.Normalizer");

  private static final int MOST_OWN = 165;

  @TempDir private Path folder;

  /** The classes that a process loads, by their names. */
  private Set<String> loaded(List<String> command) throws IOException, InterruptedException {
    Path log = folder.resolve("loaded");
    Path told = folder.resolve("told");
    List<String> words = new ArrayList<>();
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    words.add("-Xlog:class+load:file=" + log + "::filecount=0");
    words.addAll(command);
    Process process =
        new ProcessBuilder(words).redirectErrorStream(true).redirectOutput(told.toFile()).start();
    assertEquals(0, process.waitFor(), Files.readString(told));
    Set<String> classes = new TreeSet<>();
    for (String line : Files.readAllLines(log)) {
      classes.add(line.replaceFirst("^(\\[[^]]*\\])* *", "").split(" ", 2)[0]);
    }
    return classes;
  }

  @Test
  void theCheckOfASmallScoreLoadsNothingDear() throws IOException, InterruptedException {
    String own = System.getProperty("java.class.path").split(File.pathSeparator, 2)[1];
    String path = Path.of("target", "classes") + File.pathSeparator + own;
    String score = Path.of("samples-synth", "gutter-song.loom").toString();
    Set<String> bare = loaded(List.of("-version"));
    Set<String> ours = loaded(List.of("-cp", path, "org.matraloom.app.Main", "check", score));
    assertTrue(bare.size() > 300 && ours.size() > bare.size(), bare.size() + ", " + ours.size());
    ours.removeAll(bare);
    List<String> dear =
        ours.stream().filter(type -> DEAR.stream().anyMatch(type::startsWith)).toList();
    assertEquals(List.of(), dear, "the check of a small score waits for these");
    long mine = ours.stream().filter(type -> type.startsWith("org.matraloom.")).count();
    assertTrue(mine > 50 && mine <= MOST_OWN, "classes of the program's own: " + mine);
  }
}
