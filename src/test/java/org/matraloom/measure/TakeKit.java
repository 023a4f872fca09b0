package org.matraloom.measure;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.matraloom.madetake.Flaws;
import org.matraloom.madetake.MadeTake;
import org.matraloom.madetake.SolluSpeaker;
import org.matraloom.madetake.Speakers;
import org.matraloom.madetake.TakeCase;
import org.matraloom.madetake.TakeCases;
import org.matraloom.onset.OnsetCurve;
import org.matraloom.recording.SoundFiles;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Lexicon;
import org.matraloom.wav.PcmFormat;
import org.matraloom.wav.WavWriter;

/**
 * Makes takes, measures them and says how far the findings can be trusted; for {@code
 * scripts/crosscheck-takes}.
 */
final class TakeKit {

  private static final int BLOCK = 1 << 16;

  private TakeKit() {}

  /**
   * Runs it.
   *
   * @param arguments {@code sounds} prints what the samples have said, each with its phones; {@code
   *     judge FOLDER FIRST-SEED} measures takes in our voices and in those of the folder, each a
   *     folder of words; more arguments are seeds or groups, of which alone takes are made; {@code
   *     mistake} holds takes against scores of other pieces; {@code write SCORE SEED OUT.wav} makes
   *     a take of a score in our lower voice
   * @throws IOException if a file cannot be read or written
   */
  public static void main(String[] arguments) throws IOException {
    if (arguments[0].equals("sounds")) {
      sounds().forEach(System.out::println);
      return;
    }
    if (arguments[0].equals("write")) {
      write(Path.of(arguments[1]), Long.parseLong(arguments[2]), Path.of(arguments[3]));
      return;
    }
    if (arguments[0].equals("mistake")) {
      System.exit(mistake() ? 0 : 1);
    }
    Path folder = Path.of(arguments[1]);
    long firstSeed = Long.parseLong(arguments[2]);
    List<String> only = List.of(arguments).subList(3, arguments.length);
    List<TakeVerdict> verdicts =
        TakeCases.with(folders(folder), firstSeed).parallelStream()
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
    return TakeVerdict.of(made, take.plan(), TakeFindings.of(made.timeline(), listen(take)));
  }

  private static OnsetCurve listen(MadeTake take) {
    try {
      return OnsetCurve.of(SoundFiles.recording(take.sound(), take.rate()));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** Holds a take of each sample against the scores of all others. */
  private static boolean mistake() {
    List<TakeCase> takes =
        TakeCases.with(List.of(), 1).stream()
            .filter(made -> made.group() == TakeCase.Group.DRIFT)
            .toList();
    List<String> believed =
        takes.parallelStream()
            .flatMap(
                made -> {
                  OnsetCurve curve = listen(made.make(new Speakers(Path.of("."))));
                  return TakeCases.SAMPLES.stream()
                      .filter(sample -> !sample.equals(made.sample()))
                      .filter(sample -> isBelieved(curve, sample))
                      .map(sample -> made + " for " + sample);
                })
            .toList();
    believed.forEach(line -> System.out.println("# taken: " + line));
    int trials = takes.size() * (TakeCases.SAMPLES.size() - 1);
    System.out.println(
        (believed.isEmpty() ? "ok - " : "not ok - ")
            + believed.size()
            + " takes were taken for another piece, in "
            + trials
            + " trials");
    return believed.isEmpty();
  }

  private static boolean isBelieved(OnsetCurve curve, String sample) {
    Timeline timeline = TakeCase.timeline(Path.of("samples-synth", sample + ".loom"));
    return TakeFindings.of(timeline, curve).doubt().isEmpty();
  }

  /** The take has breaths, errors of some milliseconds, and drifts by a percent. */
  private static void write(Path score, long seed, Path out) throws IOException {
    Flaws flaws = new Flaws(seed);
    flaws.driftPercent = 1;
    flaws.breathes = true;
    SolluSpeaker speaker = new Speakers(out).named(Speakers.LOW);
    MadeTake take = MadeTake.of(TakeCase.timeline(score), flaws, speaker);
    PcmFormat format = new PcmFormat(take.rate(), 16, 1);
    try (WavWriter writer = new WavWriter(out, format, take.sound().length, List.of())) {
      for (int from = 0; from < take.sound().length; from += BLOCK) {
        int to = Math.min(take.sound().length, from + BLOCK);
        writer.write(Arrays.copyOfRange(take.sound(), from, to), to - from);
      }
      writer.finish();
    }
    System.out.println(take.plan().sollus().size());
  }

  private static List<String> folders(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  private static TreeSet<String> sounds() {
    Lexicon lexicon = Lexicon.standard();
    TreeSet<String> lines = new TreeSet<>();
    for (TakeCase made : TakeCases.with(List.of(), 1)) {
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
