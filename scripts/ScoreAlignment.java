import org.matraloom.follow.Aligner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.matraloom.score.Sollu;
import org.matraloom.follow.Alignment;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.onset.OnsetCurve;
import org.matraloom.recording.Recording;
import org.matraloom.recording.Recordings;
import org.matraloom.time.Ratio;

/**
 * Aligns takes with their scores: NAME.wav with NAME.score.txt (when each sollu falls in the score
 * and its name) and NAME.txt (when it was truly said).
 *
 * <p>Prints for each take "file|sollus|paired within 50 ms|paired elsewhere|unpaired", and the
 * sollus that are not well paired after a "#".
 */
final class ScoreAlignment {

  private static final double NEAR_SECONDS = 0.050;

  private ScoreAlignment() {}

  public static void main(String[] files) throws IOException {
    for (String file : files) {
      String stem = file.replaceFirst("\\.wav$", "");
      List<ExpectedSollu> score = score(Files.readAllLines(Path.of(stem + ".score.txt")));
      double[] truth =
          Files.readAllLines(Path.of(stem + ".txt")).stream()
              .filter(line -> !line.isBlank())
              .mapToDouble(Double::parseDouble)
              .toArray();
      if (truth.length != score.size()) {
        throw new IOException(file + ": " + score.size() + " in the score, " + truth.length);
      }
      try (Recording recording = Recordings.open(Path.of(file))) {
        report(file, score, truth, Aligner.of(score, OnsetCurve.of(recording)));
      }
    }
  }

  private static void report(
      String file, List<ExpectedSollu> score, double[] truth, Alignment alignment) {
    Set<Integer> near =
        alignment.said().stream()
            .filter(said -> Math.abs(alignment.secondsOf(said) - truth[said.sollu()]) <= NEAR_SECONDS)
            .map(Alignment.Said::sollu)
            .collect(Collectors.toSet());
    List<Integer> missed = alignment.missed();
    int elsewhere = score.size() - near.size() - missed.size();
    System.out.println(
        file + "|" + score.size() + "|" + near.size() + "|" + elsewhere + "|" + missed.size());
    for (int k = 0; k < score.size(); k++) {
      if (!near.contains(k)) {
        String how = missed.contains(k) ? "unpaired" : "paired elsewhere";
        System.out.printf("# %s at %.3f: %s%n", score.get(k).sollu().spelling(), truth[k], how);
      }
    }
  }

  private static List<ExpectedSollu> score(List<String> lines) {
    List<ExpectedSollu> score = new ArrayList<>();
    double first = 0;
    for (String line : lines) {
      String[] words = line.trim().split("\\s+");
      if (words.length == 2) {
        double seconds = Double.parseDouble(words[0]);
        first = score.isEmpty() ? seconds : first;
        score.add(
            new ExpectedSollu(
                Ratio.of(score.size(), 1),
                seconds - first,
                new Sollu(words[1], words[1]),
                1,
                "",
                4,
                0,
                score.isEmpty()));
      }
    }
    return score;
  }
}
