package org.matraloom.app.handon;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.BreathOptions;
import org.matraloom.app.cli.DroneOptions;
import org.matraloom.app.cli.ExactNumber;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.OneTala;
import org.matraloom.app.cli.Paragraph;
import org.matraloom.app.cli.ProgressLine;
import org.matraloom.app.cli.ScoreOptions;
import org.matraloom.app.cli.UserError;
import org.matraloom.app.cli.VoiceOptions;
import org.matraloom.app.cli.WholeFile;
import org.matraloom.breath.BreathPlan;
import org.matraloom.breath.BreathText;
import org.matraloom.drum.DrumVoice;
import org.matraloom.drum.StrokeTable;
import org.matraloom.pack.PackBeside;
import org.matraloom.pack.PackFiles;
import org.matraloom.pack.PackMaker;
import org.matraloom.pack.PackMix;
import org.matraloom.pack.PackOrder;
import org.matraloom.pack.PackPaper;
import org.matraloom.page.PageSound;
import org.matraloom.page.PhonePage;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.score.Wording;
import org.matraloom.sheet.PdfPages;
import org.matraloom.sheet.Sheet;
import org.matraloom.sheet.SheetOptions;
import org.matraloom.sound.Sruti;
import org.matraloom.time.Ratio;
import org.matraloom.wav.PcmFormat;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Makes a set of practice tracks. */
@Command(
    name = "pack",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Make a set of practice tracks for students, at several tempi and in several mixes.",
      "With sections and joins, all equally loud, as MP3 that can be sent; with the sheet, a page",
      "for the phone, the breath plan, a page of the tracks and a list.",
      "Started again after an interruption it makes only what is missing."
    },
    footer = {
      "",
      "Example: matraloom pack samples-synth/gutter-song.loom -d gutter-set --drone C#",
      "Keep the level low when you listen through headphones."
    })
public final class PackCommand implements Callable<Integer> {

  @Spec private CommandSpec command;

  @Mixin private ScoreOptions score;

  @Option(
      names = {"-o", "--output", "-d", "--folder"},
      required = true,
      paramLabel = "DIR",
      description = "The folder of the set; it is made if it does not exist.")
  private Path folder;

  @Option(
      names = "--tempi",
      split = ",",
      paramLabel = "PERCENT",
      description = "Tempi in percent of the full one (60,75,88,100 if not given).")
  private List<ExactNumber> tempi;

  @Option(
      names = "--mixes",
      split = ",",
      paramLabel = "MIX",
      description = "full, voice, tala, answer, split (full,voice,tala if not given).")
  private List<PackMix> mixes;

  @Option(names = "--no-drills", description = "Leave out the sections and joins.")
  private boolean noDrills;

  @Option(names = "--wav", description = "Make the exact WAV files too.")
  private boolean wav;

  @Option(names = "--no-mp3", description = "Make WAV files only.")
  private boolean noMp3;

  @Option(names = "--no-papers", description = "Leave out sheet, phone page and breath plan.")
  private boolean noPapers;

  @Option(
      names = "--count-in",
      paramLabel = "N",
      defaultValue = "1",
      description = "Avartanas counted before each track, 1 to 4 (default ${DEFAULT-VALUE}).")
  private int countIn;

  @Option(
      names = "--breath-cue",
      description = "Plan the breaths of every track and cue each with the sound of an inhalation.")
  private boolean breathCue;

  @Option(
      names = "--with-drum",
      description = "A drum plays beside the voice in every mix that has more than the voice.")
  private boolean withDrum;

  @Mixin private PageContentOptions content;

  @Mixin private DroneOptions drone;

  @Mixin private VoiceOptions voice;

  @Override
  public Integer call() throws IOException {
    if (content.breathOptions().isGiven() && !breathCue && noPapers) {
      throw BreathOptions.unheard();
    }
    Composition composition = OneTala.of(score.read(), "a set of tracks");
    PackOrder order = UserError.unlessRefused(() -> order(composition));
    Files.createDirectories(folder);
    int rate = PcmFormat.USUAL.ratePerSecond();
    PackMaker maker =
        UserError.unlessRefused(
            () ->
                new PackMaker(
                    order,
                    folder,
                    () -> voice.voice(rate, score.lexicon()),
                    beside(composition.wording())));
    claim(maker);
    if (!noPapers) {
      papers(composition);
    }
    int made = make(maker);
    voice.tellInstead(command.commandLine().getErr());
    PrintWriter out = command.commandLine().getOut();
    out.println(
        folder
            + ": "
            + maker.tracks().size()
            + " tracks, "
            + made
            + " files made now; open "
            + folder.resolve("index.html"));
    return ExitCode.DONE;
  }

  private void papers(Composition composition) throws IOException {
    Performance performance = Performance.of(composition);
    SheetOptions options = content.options(performance, score.lexicon());
    Sheet sheet = Sheet.of(performance, options, content.breaths(performance));
    WholeFile.write(paper(PackPaper.SHEET), file -> PdfPages.write(sheet, file));
    PageSound sound =
        PhoneSound.of(
            performance, PhoneSound.voice(voice.who(), score.lexicon()), content, drone.sruti());
    WholeFile.writeText(paper(PackPaper.PHONE), file -> PhonePage.write(sheet, sound, file));
    BreathPlan plan = content.breathOptions().plan(performance);
    String text = BreathText.of(plan, List.of(), false, Paragraph::folded);
    WholeFile.writeText(paper(PackPaper.BREATHS), file -> file.append(text));
  }

  private Path paper(PackPaper paper) {
    return folder.resolve(paper.fileName());
  }

  private static void claim(PackMaker maker) throws IOException {
    try {
      maker.claim();
    } catch (IllegalArgumentException refused) {
      throw new UserError(refused.getMessage());
    }
  }

  private int make(PackMaker maker) throws IOException {
    int threads = Runtime.getRuntime().availableProcessors();
    try (ProgressLine progress = new ProgressLine(command.commandLine().getErr())) {
      return maker.make(threads, progress::rendered);
    } catch (IllegalArgumentException refused) {
      throw new UserError(refused.getMessage());
    }
  }

  private PackOrder order(Composition composition) {
    List<Ratio> percents =
        tempi == null
            ? PackOrder.USUAL_PERCENTS
            : tempi.stream()
                .map(tempo -> tempo.isPercent() ? tempo.value().times(100) : tempo.value())
                .toList();
    return new PackOrder(
        composition,
        percents,
        mixes == null ? PackOrder.USUAL_MIXES : mixes,
        !noDrills,
        countIn,
        drone.sruti(),
        noMp3 ? PackFiles.WAV : wav ? PackFiles.BOTH : PackFiles.MP3,
        breathCue ? Optional.of(content.breathOptions().settings()) : Optional.empty());
  }

  private PackBeside beside(Wording wording) {
    double hertz = drone.sruti().map(Sruti::hertz).orElse(DrumVoice.USUAL_HERTZ);
    StrokeTable strokes = StrokeTable.usual(score.lexicon()).plus(wording);
    return new PackBeside(
        content.leadIn(),
        withDrum ? Optional.of(rate -> new DrumVoice(rate, hertz, strokes)) : Optional.empty(),
        withDrum ? "usual" : "");
  }
}
