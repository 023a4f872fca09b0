import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.matraloom.app.Main;

/**
 * Proves and lays out one score after another in one process, which saves the start of the program
 * for each. Reads names of scores, a line each; writes what "check SCORE --json" and "events SCORE
 * --csv" print beside it, as SCORE.check and SCORE.events, or what they complain of.
 */
final class ManyScores {

  private ManyScores() {}

  public static void main(String[] none) throws Exception {
    BufferedReader lines =
        new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
    for (String score = lines.readLine(); score != null; score = lines.readLine()) {
      write(score, ".check", "check", score, "--json");
      write(score, ".events", "events", score, "--csv");
    }
  }

  private static void write(String score, String ending, String... command) throws Exception {
    StringWriter told = new StringWriter();
    StringWriter trouble = new StringWriter();
    Main.run(new PrintWriter(told), new PrintWriter(trouble), command);
    String answer = told.toString();
    Files.writeString(Path.of(score + ending), answer.isBlank() ? trouble.toString() : answer);
  }
}
