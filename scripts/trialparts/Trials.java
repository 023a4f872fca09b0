import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Spoils files of every kind that the program reads, runs commands on them inside this process, and counts the
 * answers. See scripts/trials. What is not right is kept in the folder.
 */
class Trials {

  private static final long MOST_RESIDENT_KB = 512 * 1024;
  private static final long MOST_WRITTEN_BYTES = 256L << 20;

  private static final int TOLD_EVERY = 500;

  private final Path folder;
  private final Random random;
  private final TreeMap<String, Integer> files = new TreeMap<>();
  private final TreeMap<String, Integer> runs = new TreeMap<>();
  private final Watched watched = new Watched();
  private int wrong;
  private double slowestSeconds;
  private String slowest = "";

  private Trials(Path folder, long seed) {
    this.folder = folder;
    this.random = new Random(seed);
  }

  public static void main(String[] words) throws Exception {
    int count = Integer.parseInt(words[0]);
    long seed = Long.parseLong(words[1]);
    double share = Double.parseDouble(words[2]);
    Path folder = Path.of(words[3]);
    List<Path> whole = new ArrayList<>();
    for (String given : Arrays.asList(words).subList(4, words.length)) {
      whole.add(Path.of(given));
    }
    Trials trials = new Trials(folder, seed);
    int done = trials.all(whole, count, share);
    trials.tell("", done, count);
    System.exit(trials.wrong == 0 && done == count ? 0 : 1);
  }

  private int all(List<Path> whole, int count, double share) throws Exception {
    TrialCommands commands = new TrialCommands(folder, random, share);
    for (int trial = 0; trial < count; trial++) {
      Path seed = whole.get(random.nextInt(whole.size()));
      String name = seed.getFileName().toString();
      String kind = name.substring(name.lastIndexOf('.') + 1);
      Path file = folder.resolve("trial." + kind);
      Files.write(file, new Spoiling(random, kind).of(Files.readAllBytes(seed)));
      files.merge(kind, 1, Integer::sum);
      for (String[] command : commands.of(kind, file)) {
        String answer = watched.answer(command);
        if (watched.cpuSeconds() > slowestSeconds) {
          slowestSeconds = watched.cpuSeconds();
          slowest = command[0];
        }
        boolean isRight = answer.length() == 1;
        runs.merge(command[0] + (isRight ? "=" + answer : " WRONG"), 1, Integer::sum);
        if (!isRight) {
          keep(file, seed, kind, command, answer);
          if (answer.startsWith("no end")) {
            return trial + 1; // what has no end cannot be ended inside one process
          }
        }
        cleared(commands, command);
      }
      if ((trial + 1) % TOLD_EVERY == 0 && trial + 1 < count) {
        tell("# so far ", trial + 1, count);
      }
    }
    return count;
  }

  private void keep(Path file, Path seed, String kind, String[] command, String answer) throws IOException {
    wrong++;
    Path kept = Files.createTempFile(folder, "wrong-", "." + kind);
    // An answer of "log --mend" changes the file; what it was is told by the seed alone.
    Files.copy(file, kept, StandardCopyOption.REPLACE_EXISTING);
    System.out.println("not ok - " + String.join(" ", command) + " (kept as " + kept + ", from "
        + seed.getFileName() + "): " + answer);
  }

  /** Looks at what a command left, and takes it away. */
  private void cleared(TrialCommands commands, String[] command) throws IOException {
    for (Path place : List.of(folder, commands.outputs())) {
      try (Stream<Path> inside = Files.walk(place, place.equals(folder) ? 1 : 9)) {
        for (Path path : inside.filter(Files::isRegularFile).toList()) {
          if (path.toString().endsWith(".part")) {
            wrong++;
            System.out.println("not ok - left behind by " + command[0] + ": " + path);
            Files.delete(path);
          } else if (path.startsWith(commands.outputs())) {
            if (Files.size(path) > MOST_WRITTEN_BYTES) {
              wrong++;
              System.out.println("not ok - " + String.join(" ", command) + " wrote " + Files.size(path) + " bytes");
            }
            Files.delete(path);
          }
        }
      }
    }
  }

  private void tell(String first, int done, int count) throws IOException {
    long resident = Watched.mostResidentKb();
    if (first.isEmpty() && resident > MOST_RESIDENT_KB) {
      wrong++;
      System.out.println("not ok - " + resident / 1024 + " MB resident");
    }
    System.out.println(first + (wrong == 0 ? "ok - " : "not ok - ") + done + " of " + count + " files, " + wrong
        + " wrong, at most " + String.format("%.1f", slowestSeconds) + " s of processor time (" + slowest + ") and "
        + resident / 1024 + " MB; files: " + files + "; runs with exit code: " + runs);
  }
}
