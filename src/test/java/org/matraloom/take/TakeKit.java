package org.matraloom.take;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.matraloom.schedule.Event;
import org.matraloom.score.Lexicon;

/**
 * Makes takes, measures them and says how far the findings can be trusted; for {@code
 * scripts/crosscheck-takes}.
 */
final class TakeKit {

  private TakeKit() {}

  /**
   * Runs it.
   *
   * @param arguments {@code sounds} prints what the samples have said, each with its phones; {@code
   *     judge FOLDER} measures takes in our voices and in those of the folder, each a folder of
   *     words; more arguments are seeds or groups, of which alone takes are made
   * @throws IOException if the folder cannot be read
   */
  public static void main(String[] arguments) throws IOException {
    if (arguments[0].equals("sounds")) {
      sounds().forEach(System.out::println);
      return;
    }
    Path folder = Path.of(arguments[1]);
    List<String> only = List.of(arguments).subList(2, arguments.length);
    List<TakeVerdict> verdicts =
        TakeCases.with(folders(folder)).parallelStream()
            .filter(
                made ->
                    only.isEmpty()
                        || only.contains(Long.toString(made.flaws().seed))
                        || only.contains(made.group().name()))
            .map(made -> judge(made, new Speakers(folder)))
            .toList();
    System.out.println(
        (verdicts.size() >= 200 ? "ok - " : "not ok - ")
            + "takes made and measured: "
            + verdicts.size());
    TakeTally tally = new TakeTally(verdicts);
    tally.lines().forEach(System.out::println);
    System.exit(tally.isGood() ? 0 : 1);
  }

  /** Makes a take and measures it through what anyone may call. */
  static TakeVerdict judge(TakeCase made, Speakers speakers) {
    MadeTake take = made.make(speakers);
    try {
      OnsetCurve curve = OnsetCurve.of(SoundFiles.recording(take.sound(), take.rate()));
      return TakeVerdict.of(made, take.plan(), TakeFindings.of(made.timeline(), curve));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static List<String> folders(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  private static TreeSet<String> sounds() {
    Lexicon lexicon = Lexicon.standard();
    TreeSet<String> lines = new TreeSet<>();
    for (TakeCase made : TakeCases.with(List.of())) {
      for (Event event : made.timeline()) {
        if (event instanceof Event.SolluSaid said) {
          String phones = String.join(" ", lexicon.sound(said.sollu()).orElseThrow().phones());
          lines.add(said.sollu().sound() + "\t" + phones);
        }
      }
    }
    return lines;
  }
}
