import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.matraloom.app.Main;

/**
 * Runs commands in this process, one at a time, and says what is wrong with one: a trace, a fault of the program
 * itself, want of memory, more than ten seconds of the whole process's processor time, more than a minute on the
 * clock, or an answer without an end.
 */
class Watched {

  private static final Set<Integer> RIGHT = Set.of(0, 1, 2);
  private static final double MOST_CPU_SECONDS = 10;
  private static final double MOST_WALL_SECONDS = 60;
  private static final long MOST_CHARACTERS = 256L << 20;

  private final ExecutorService one = Executors.newSingleThreadExecutor(work -> {
    Thread thread = new Thread(work, "trial");
    thread.setDaemon(true);
    return thread;
  });
  private final OperatingSystemMXBean process =
      (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
  private double cpuSeconds;

  /** The processor time of the command that ran last. */
  double cpuSeconds() {
    return cpuSeconds;
  }

  /** The exit code, or what is wrong. */
  String answer(String[] command) throws InterruptedException {
    StringWriter err = new StringWriter();
    Counted out = new Counted();
    long cpuBegun = process.getProcessCpuTime();
    long begun = System.nanoTime();
    Future<Integer> code = one.submit(() -> Main.run(new PrintWriter(out), new PrintWriter(err), command));
    try {
      while (true) {
        try {
          int exit = code.get(200, TimeUnit.MILLISECONDS);
          cpuSeconds = (process.getProcessCpuTime() - cpuBegun) / 1e9;
          return judged(exit, err.toString());
        } catch (TimeoutException still) {
          cpuSeconds = (process.getProcessCpuTime() - cpuBegun) / 1e9;
          double wall = (System.nanoTime() - begun) / 1e9;
          if (cpuSeconds > MOST_CPU_SECONDS || wall > MOST_WALL_SECONDS) {
            return String.format("no end in %.1f s of processor time, %.1f s: %s", cpuSeconds, wall, where());
          }
        }
      }
    } catch (ExecutionException thrown) {
      return "thrown: " + thrown.getCause();
    }
  }

  private static String judged(int exit, String told) {
    boolean isTrace = told.contains("\tat ") || told.contains("fault in the program")
        || told.contains("java.lang.") || told.contains("Exception");
    return isTrace || !RIGHT.contains(exit)
        ? "exit " + exit + ": " + told.lines().findFirst().orElse("")
        : Integer.toString(exit);
  }

  private static String where() {
    StringBuilder text = new StringBuilder();
    for (Map.Entry<Thread, StackTraceElement[]> each : Thread.getAllStackTraces().entrySet()) {
      if (each.getKey().getName().equals("trial")) {
        for (StackTraceElement element : each.getValue()) {
          text.append(element).append(" < ");
        }
      }
    }
    return text.substring(0, Math.min(900, text.length()));
  }

  /** The most that this process had in memory. */
  static long mostResidentKb() throws IOException {
    for (String line : Files.readAllLines(Path.of("/proc/self/status"))) {
      if (line.startsWith("VmHWM:")) {
        return Long.parseLong(line.replaceAll("[^0-9]", ""));
      }
    }
    return 0;
  }

  private static final class Counted extends Writer {
    private long characters;

    @Override
    public void write(char[] text, int from, int count) {
      characters += count;
      if (characters > MOST_CHARACTERS) {
        throw new IllegalStateException("an answer of more than " + MOST_CHARACTERS + " characters");
      }
    }

    @Override
    public void flush() {}

    @Override
    public void close() {}
  }
}
