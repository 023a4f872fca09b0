package org.matraloom.app.voices;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.DeviceOptions;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.LexiconOptions;
import org.matraloom.app.cli.UserError;
import org.matraloom.app.cli.VoiceOptions;
import org.matraloom.app.cli.WholeFile;
import org.matraloom.device.AudioOut;
import org.matraloom.device.SoundDevices;
import org.matraloom.mouth.Kit;
import org.matraloom.mouth.OwnVoice;
import org.matraloom.notation.Problem;
import org.matraloom.notation.ScoreReader;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.time.FrameClock;
import org.matraloom.time.Ratio;
import org.matraloom.voice.SpokenPhrase;
import org.matraloom.voice.VoiceSettings;
import org.matraloom.wav.PcmCodec;
import org.matraloom.wav.PcmFormat;
import org.matraloom.wav.WavWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lets a voice be heard. */
@Command(
    name = "hear",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Let a voice say some words, or every sollu it has, one after another.",
      "It is played, or with -o written to a file."
    },
    footer = {
      "",
      "Example: matraloom voice hear river \"ta ka di mi\" -o heard.wav",
      "Start with a low level, above all with headphones."
    })
final class VoiceHearCommand implements Callable<Integer> {

  private static final int SHORTEST_MS = 40;
  private static final int LONGEST_MS = 3000;
  private static final int MATRAS_A_BEAT = 4;
  private static final int MS_A_MINUTE = 60_000;
  private static final PcmFormat FORMAT = new PcmFormat(48_000, 16, 1);

  @Spec private CommandSpec command;

  @Parameters(index = "0", paramLabel = "NAME", description = "The voice.")
  private String name;

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "PHRASE",
      description = "What it says, as in a score (every sollu it has, if not given).")
  private String phrase;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "OUT.wav",
      description = "Write a file in place of playing; an older one is replaced.")
  private Path output;

  @Option(
      names = "--length",
      paramLabel = "MS",
      defaultValue = "300",
      description = "How long a matra is, 40 to 3000 ms (default ${DEFAULT-VALUE}).")
  private int lengthMs;

  @Mixin private DeviceOptions device;

  @Mixin private ShelfOptions shelf;

  @Mixin private LexiconOptions lexicon;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = command.commandLine().getOut();
    if (device.isListAskedFor()) {
      DeviceOptions.print(out);
      return ExitCode.DONE;
    }
    if (lengthMs < SHORTEST_MS || lengthMs > LONGEST_MS) {
      throw new UserError(
          "--length takes " + SHORTEST_MS + " to " + LONGEST_MS + " ms, given " + lengthMs);
    }
    Kit kit = shelf.open(name);
    Lexicon known = lexicon.lexicon();
    OwnVoice voice =
        new OwnVoice(
            FORMAT.ratePerSecond(),
            known,
            VoiceSettings.USUAL,
            kit,
            shelf.shelf().folderOf(name),
            false);
    Performance performance = Performance.of(read(kit, known));
    if (performance.rounds().get(0).sollus() == 0) {
      throw new UserError("\"" + phrase + "\" is silent; give a sollu, such as ta");
    }
    SpokenPhrase spoken = SpokenPhrase.of(ScoreTimeline.of(performance, 0), voice);
    if (output == null) {
      play(spoken);
    } else {
      write(spoken, out);
    }
    VoiceOptions.tellInstead(List.of(voice), name, command.commandLine().getErr());
    return ExitCode.DONE;
  }

  private void write(SpokenPhrase spoken, PrintWriter out) throws IOException {
    WholeFile.requirePlace(output);
    int frames = spoken.samples().length;
    try (WavWriter file = new WavWriter(output, FORMAT, frames, List.of())) {
      file.write(spoken.samples(), frames);
      file.finish();
    }
    double seconds = FrameClock.seconds(frames, FORMAT.ratePerSecond());
    out.printf(Locale.ROOT, "%s: %.1f s%n", output, seconds);
  }

  private void play(SpokenPhrase spoken) throws IOException {
    float[] samples = spoken.samples();
    byte[] pcm = new byte[samples.length * FORMAT.bytesPerFrame()];
    new PcmCodec(FORMAT.bits()).encode(samples, samples.length, pcm);
    try (AudioOut heard =
        SoundDevices.find().openOut(device.device(), FORMAT, SoundDevices.SAFE_MS)) {
      heard.write(pcm, 0, pcm.length);
      heard.drain();
    }
  }

  /** A score of just this phrase, at the tempo that makes a matra so long. */
  private Composition read(Kit kit, Lexicon known) {
    String said =
        phrase == null ? String.join(" . ", kit.sollus()) : phrase.replaceAll("[\\r\\n#]", " ");
    Ratio tempo = Ratio.of(MS_A_MINUTE, (long) MATRAS_A_BEAT * lengthMs);
    String text =
        "tala 4\ntempo "
            + tempo.toMixed()
            + "\nSaid = "
            + said
            + "\nperform\n  Said nadai "
            + MATRAS_A_BEAT
            + "\n";
    var reading = ScoreReader.read(text, "", known);
    return reading
        .composition()
        .orElseThrow(
            () -> {
              Problem first = reading.problems().get(0);
              return new UserError(
                  "the phrase: " + first.message() + first.help().map("; "::concat).orElse(""));
            });
  }
}
