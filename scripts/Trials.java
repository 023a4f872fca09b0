import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import org.matraloom.app.Main;

/**
 * Spoils scores and recordings, runs commands on them inside this process, and counts the answers. Right is: exit
 * code 0, 1 or 2, no trace, no fault of the program itself, an end within ten seconds, and no more memory than this
 * process was given. What is not right is kept in the folder. See scripts/trials.
 */
class Trials {

  private static final Set<Integer> RIGHT = Set.of(0, 1, 2);
  private static final int[] ODD = {0, 1, -1, 0x7FFFFFFF, 0x80000000, 0x0FFFFFFF, 0xFFFF, 0x10000, 255, 8};
  private static final String[] WORDS = {
    "x999", "nadai 0", "tempo 1e9", "{5:", "}", "((((", "[", "]", "||", ";;;;", "99(99)99", "perform", "tala 3+2+2",
    "stroke", "\u0000", "\u202e", "\ud83d", "start 1/0", "9".repeat(30), "kalai 2", "A = A", "x-1", "eduppu -1"
  };

  public static void main(String[] words) throws Exception {
    int count = Integer.parseInt(words[0]);
    Random random = new Random(Long.parseLong(words[1]));
    Path folder = Path.of(words[2]);
    List<Path> seeds = new ArrayList<>();
    for (String given : Arrays.asList(words).subList(3, words.length)) {
      seeds.add(Path.of(given));
    }
    TreeMap<String, Integer> answers = new TreeMap<>();
    int wrong = 0;
    double slowest = 0;
    for (int trial = 0; trial < count; trial++) {
      Path seed = seeds.get(random.nextInt(seeds.size()));
      String name = seed.getFileName().toString();
      String kind = name.substring(name.lastIndexOf('.') + 1);
      Path file = folder.resolve("trial." + kind);
      Files.write(file, spoilt(Files.readAllBytes(seed), kind, random));
      String[] command = command(kind, file, folder, random);
      long begun = System.nanoTime();
      String answer = answer(command);
      slowest = Math.max(slowest, (System.nanoTime() - begun) / 1e9);
      boolean isRight = answer.length() == 1 && RIGHT.contains(Integer.parseInt(answer));
      answers.merge(kind + " exit " + (isRight ? answer : "wrong"), 1, Integer::sum);
      if (!isRight) {
        wrong++;
        Path kept = folder.resolve("wrong-" + trial + "." + kind);
        Files.copy(file, kept);
        System.out.println("not ok - " + String.join(" ", command) + " (kept as " + kept + "): " + answer);
        if (answer.startsWith("no end")) {
          break; // what has no end cannot be ended inside one process
        }
      }
      leftovers(folder);
    }
    System.out.println((wrong == 0 ? "ok - " : "not ok - ") + count + " trials, " + wrong + " wrong, the slowest "
        + String.format("%.1f", slowest) + " s: " + answers);
    System.exit(wrong == 0 ? 0 : 1);
  }

  private static String[] command(String kind, Path file, Path folder, Random random) {
    String path = file.toString();
    if (!kind.equals("loom")) {
      return new String[] {"take", "--onsets", path};
    }
    String out = folder.resolve("out").toString();
    return switch (random.nextInt(6)) {
      case 0 -> new String[] {"check", path, "--json"};
      case 1 -> new String[] {"breaths", path};
      case 2 -> new String[] {"sheet", path, "-o", out + ".html"};
      case 3 -> new String[] {"export", path, "-o", out + ".musicxml"};
      case 4 -> new String[] {"fit", path};
      default -> new String[] {"check", path};
    };
  }

  /** The exit code, or what is wrong. */
  private static String answer(String[] command) throws InterruptedException {
    StringWriter err = new StringWriter();
    ExecutorService one = Executors.newSingleThreadExecutor(work -> {
      Thread thread = new Thread(work);
      thread.setDaemon(true);
      return thread;
    });
    try {
      Future<Integer> code = one.submit(
          () -> Main.run(new PrintWriter(new StringWriter()), new PrintWriter(err), command));
      int exit = code.get(10, TimeUnit.SECONDS);
      String told = err.toString();
      return told.contains("\tat ") || told.contains("fault in the program") || !RIGHT.contains(exit)
          ? "exit " + exit + ": " + told.lines().findFirst().orElse("")
          : Integer.toString(exit);
    } catch (TimeoutException hangs) {
      return "no end in 10 s";
    } catch (ExecutionException thrown) {
      return "thrown: " + thrown.getCause();
    } finally {
      one.shutdown();
    }
  }

  private static void leftovers(Path folder) throws IOException {
    try (Stream<Path> inside = Files.list(folder)) {
      for (Path path : inside.toList()) {
        if (path.toString().endsWith(".part")) {
          System.out.println("not ok - left behind: " + path);
          Files.delete(path);
        }
      }
    }
  }

  private static byte[] spoilt(byte[] whole, String kind, Random random) {
    byte[] bytes = whole;
    for (int times = 1 + random.nextInt(4); times > 0; times--) {
      int at = random.nextInt(Math.max(1, bytes.length));
      // Heads and indices lie at the ends.
      at = random.nextInt(3) == 0 ? Math.min(at, random.nextInt(256)) : at;
      int to = Math.min(bytes.length, at + 1 + random.nextInt(64));
      switch (random.nextInt(kind.equals("loom") ? 8 : 6)) {
        case 0 -> {
          bytes = bytes.clone();
          if (bytes.length > 0) {
            bytes[at] ^= (byte) (1 << random.nextInt(8));
          }
        }
        case 1 -> bytes = Arrays.copyOf(bytes, at);
        case 2 -> bytes = joined(Arrays.copyOf(bytes, at), Arrays.copyOfRange(bytes, to, bytes.length));
        case 3 -> bytes = joined(Arrays.copyOf(bytes, to), Arrays.copyOfRange(bytes, at, bytes.length));
        case 4 -> {
          bytes = bytes.clone();
          if (bytes.length >= at + 4) {
            ByteBuffer.wrap(bytes).putInt(at, ODD[random.nextInt(ODD.length)]);
          }
        }
        case 5 -> {
          bytes = bytes.clone();
          for (int i = at; i < to; i++) {
            bytes[i] = (byte) random.nextInt();
          }
        }
        default -> bytes = joined(
            joined(Arrays.copyOf(bytes, at), (" " + WORDS[random.nextInt(WORDS.length)] + " ").getBytes()),
            Arrays.copyOfRange(bytes, at, bytes.length));
      }
    }
    return bytes;
  }

  private static byte[] joined(byte[] first, byte[] second) {
    byte[] both = Arrays.copyOf(first, first.length + second.length);
    System.arraycopy(second, 0, both, first.length, second.length);
    return both;
  }
}
