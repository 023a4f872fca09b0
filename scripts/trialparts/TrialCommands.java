import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Which commands are run on a file of a kind: a cheap one always, a dear one on a share. */
class TrialCommands {

  private static final String SCORE = "samples-synth/tin-roof.loom";

  private final Path folder;
  private final Path outputs;
  private final Random random;
  private final double share;

  TrialCommands(Path folder, Random random, double share) throws IOException {
    this.folder = folder;
    this.outputs = Files.createDirectories(folder.resolve("outputs"));
    this.random = random;
    this.share = share;
  }

  /** Where all that is written goes. */
  Path outputs() {
    return outputs;
  }

  List<String[]> of(String kind, Path file) throws IOException {
    String path = file.toString();
    List<String[]> commands = new ArrayList<>();
    boolean isDear = random.nextDouble() < share;
    switch (kind) {
      case "loom" -> {
        commands.add(random.nextInt(5) == 0 ? words("check", path, "--json") : words("check", path));
        if (isDear) {
          commands.add(onScore(path));
        }
      }
      case "jsonl" -> commands.add(onLog(path));
      case "lexicon" -> commands.add(words("check", SCORE, "--lexicon", path));
      case "strokes" -> commands.add(
          words("sheet", SCORE, "--with-drum", "-o", out(".txt"), "--strokes", path));
      case "class" -> {
        Path room = Files.createDirectories(folder.resolve("class"));
        Files.copy(Path.of(SCORE), room.resolve("tin-roof.loom"), StandardCopyOption.REPLACE_EXISTING);
        Files.copy(file, room.resolve("class.txt"), StandardCopyOption.REPLACE_EXISTING);
        commands.add(words("class", room.toString(), "-o", outputs.resolve("set").toString(), "--contents"));
      }
      case "cue" -> commands.add(words("voice", "make", "rain", folder.resolve("seeds/list.wav").toString(),
          "--cue", path, "--consent", "--replace", "--shelf", outputs.resolve("voices").toString()));
      case "paste" -> commands.add(words("tidy", path));
      case "zip" -> commands.add(words("voice", "make", "rain", path, "--consent", "--replace", "--shelf",
          outputs.resolve("voices").toString()));
      default -> {
        commands.add(words("take", "--onsets", path));
        if (isDear) {
          commands.add(random.nextBoolean()
              ? words("take", SCORE, path, "--no-log", "--json")
              : words("voice", "make", "rain", path, "--cue", folder.resolve("seeds/list.cue").toString(),
                  "--consent", "--replace", "--shelf", outputs.resolve("voices").toString()));
        }
      }
    }
    return commands;
  }

  private String[] onScore(String path) {
    return switch (random.nextInt(22)) {
      case 0 -> words("breaths", path);
      case 1 -> words("breaths", path, "--json");
      case 2 -> words("sheet", path, "-o", out(".html"));
      case 3 -> words("sheet", path, "-o", out(".txt"), "--cues");
      case 4 -> words("sheet", path, "-o", out(".pdf"));
      case 5 -> words("sheet", path, "--read-aloud");
      case 6 -> words("export", path, "-o", out(".musicxml"));
      case 7 -> words("export", path, "-o", out(".mid"));
      case 8 -> words("export", path, "-o", out(".vtt"));
      case 9 -> words("fit", path);
      case 10 -> words("fit", path, "--json");
      case 11 -> words("convert", path);
      case 12 -> words("convert", path, "--nadai", "5");
      case 13 -> words("rebar", path);
      case 14 -> words("shape", path);
      case 15 -> words("page", path, "-o", out(".page.html"), "--rounds", "1");
      case 16 -> words("tidy", path);
      case 17 -> words("render", path, "-o", out(".wav"), "--rounds", "1", "--mono", "--count-in", "0");
      case 18 -> words("events", path);
      case 19 -> words("sheet", path, "-o", out(".svg"), "--script", "tamil");
      case 20 -> words("booklet", path, path, "-o", out(".pdf"));
      default -> words("drill", "loop", path, "--phrase", "Song", "--score", out(".loom"));
    };
  }

  private String[] onLog(String path) {
    return switch (random.nextInt(7)) {
      case 0 -> words("log", "--log-file", path, "--json");
      case 1 -> words("log", "--log-file", path, "--csv", out(".csv"));
      case 2 -> words("log", "--log-file", path, "--picture", out(".svg"));
      case 3 -> words("log", "--log-file", path, "--mend");
      case 4 -> words("log", "history", SCORE, "--log-file", path);
      case 5 -> words("log", "undo", "--log-file", path);
      default -> words("log", "--log-file", path);
    };
  }

  private String out(String ending) {
    return outputs.resolve("out" + ending).toString();
  }

  private static String[] words(String... words) {
    return words;
  }
}
