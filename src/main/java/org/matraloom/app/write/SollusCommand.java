package org.matraloom.app.write;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.LexiconOptions;
import org.matraloom.app.cli.UserError;
import org.matraloom.app.cli.VoiceOptions;
import org.matraloom.app.cli.WholeFile;
import org.matraloom.notation.Problem;
import org.matraloom.notation.Reading;
import org.matraloom.notation.ScoreReader;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.time.FrameClock;
import org.matraloom.time.Ratio;
import org.matraloom.voice.SpokenPhrase;
import org.matraloom.wav.PcmFormat;
import org.matraloom.wav.WavWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Lists the sollus that are known, and lets them be heard. */
@Command(
    name = "sollus",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "List the sollus with their spellings and the words for groups, or let some be heard."
    },
    footer = {
      "",
      "Example: matraloom sollus --hear \"dhin , , ta ka\" -o dhin.wav --voice high",
      "Start with a low level, above all with headphones."
    })
public final class SollusCommand implements Callable<Integer> {

  private static final int SHORTEST_MS = 25;
  private static final int LONGEST_MS = 3000;
  private static final int MATRAS_A_BEAT = 4;
  private static final int MS_A_MINUTE = 60_000;

  @Spec private CommandSpec command;

  @Option(
      names = "--hear",
      paramLabel = "PHRASE",
      description = "Say sollus, written as in a score: ta, \"ta ka di mi\", \"dhin , ,\".")
  private String phrase;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "OUT.wav",
      description = "The sound file to write; an older one is replaced.")
  private Path output;

  @Option(
      names = "--length",
      paramLabel = "MS",
      defaultValue = "250",
      description = "How long a matra is, 25 to 3000 ms (default ${DEFAULT-VALUE}).")
  private int lengthMs;

  @Option(
      names = "--picture",
      paramLabel = "OUT.png",
      description = "Draw what is said as a spectrogram as well.")
  private Path picture;

  @Mixin private VoiceOptions voice;

  @Mixin private LexiconOptions lexicon;

  @Option(names = "--json", description = "Write the list as JSON.")
  private boolean json;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = command.commandLine().getOut();
    if (phrase != null) {
      hear(out);
      voice.tellInstead(command.commandLine().getErr());
    } else if (output != null || picture != null) {
      throw new UserError("what is to be said? Give it with --hear, such as --hear \"ta ka\"");
    } else if (json) {
      new SolluList(lexicon.lexicon()).printJson(out);
    } else {
      new SolluList(lexicon.lexicon()).print(out);
    }
    return ExitCode.DONE;
  }

  private void hear(PrintWriter out) throws IOException {
    if (output == null && picture == null) {
      throw new UserError("--hear needs a file for the sound: -o OUT.wav");
    }
    if (lengthMs < SHORTEST_MS || lengthMs > LONGEST_MS) {
      throw new UserError(
          "--length takes " + SHORTEST_MS + " to " + LONGEST_MS + " ms, given " + lengthMs);
    }
    int rate = PcmFormat.USUAL.ratePerSecond();
    SpokenPhrase spoken = said(rate);
    if (output != null) {
      write(spoken, new PcmFormat(rate, PcmFormat.USUAL.bits(), 1));
      double seconds = FrameClock.seconds(spoken.samples().length, rate);
      out.printf(Locale.ROOT, "%s: %.0f ms%n", output, 1000 * seconds);
    }
    if (picture != null) {
      new SpectrogramPicture(spoken, rate).write(picture);
      out.println(picture);
    }
  }

  private SpokenPhrase said(int rate) {
    Performance performance = Performance.of(read());
    if (performance.rounds().get(0).sollus() == 0) {
      throw new UserError("--hear: \"" + phrase + "\" is silent; give a sollu, such as ta");
    }
    return SpokenPhrase.of(ScoreTimeline.of(performance, 0), voice.voice(rate, lexicon.lexicon()));
  }

  private void write(SpokenPhrase spoken, PcmFormat format) throws IOException {
    WholeFile.requirePlace(output);
    int frames = spoken.samples().length;
    try (WavWriter file = new WavWriter(output, format, frames, List.of())) {
      file.write(spoken.samples(), frames);
      file.finish();
    }
  }

  /** A score of just this phrase, at the tempo that makes a matra so long. */
  private Composition read() {
    Ratio tempo = Ratio.of(MS_A_MINUTE, (long) MATRAS_A_BEAT * lengthMs);
    String text =
        "tala 4\ntempo "
            + tempo.toMixed()
            + "\nSaid = "
            + phrase.replaceAll("[\\r\\n#]", " ")
            + "\nperform\n  Said nadai "
            + MATRAS_A_BEAT
            + "\n";
    Reading reading = ScoreReader.read(text, "", lexicon.lexicon());
    return reading
        .composition()
        .orElseThrow(() -> new UserError(explain(reading.problems().get(0))));
  }

  private static String explain(Problem problem) {
    return "--hear: " + problem.message() + problem.help().map("; "::concat).orElse("");
  }
}
