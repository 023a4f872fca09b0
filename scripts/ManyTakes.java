import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.matraloom.app.Main;

/**
 * Measures one take after another in one process, which saves the start of the program for each.
 * Reads lines of score, recording, where the answer goes and perhaps more options, apart by tabs;
 * runs the command line "take SCORE RECORDING --json --no-log" on each and says "done".
 */
final class ManyTakes {

  private ManyTakes() {}

  public static void main(String[] none) throws Exception {
    BufferedReader lines =
        new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
    for (String line = lines.readLine(); line != null; line = lines.readLine()) {
      String[] asked = line.split("\t");
      StringWriter told = new StringWriter();
      StringWriter trouble = new StringWriter();
      List<String> words = new ArrayList<>(List.of("take", asked[0], asked[1], "--json", "--no-log"));
      words.addAll(Arrays.asList(asked).subList(3, asked.length));
      String[] command = words.toArray(String[]::new);
      int code = Main.run(new PrintWriter(told), new PrintWriter(trouble), command);
      String answer = told.toString();
      String text = answer.isBlank() ? "exit " + code + ": " + trouble : answer;
      Path part = Path.of(asked[2] + ".part");
      Files.writeString(part, text);
      Files.move(part, Path.of(asked[2]), StandardCopyOption.ATOMIC_MOVE);
      System.out.println("done");
    }
  }
}
