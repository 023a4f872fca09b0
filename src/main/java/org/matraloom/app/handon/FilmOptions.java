package org.matraloom.app.handon;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.app.cli.ExactNumber;
import org.matraloom.app.cli.ScriptOption;
import org.matraloom.app.cli.TimelineOptions;
import org.matraloom.app.cli.UserError;
import org.matraloom.breath.Breath;
import org.matraloom.film.FilmLook;
import org.matraloom.film.FilmOrder;
import org.matraloom.film.FilmPass;
import org.matraloom.film.FilmSize;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.script.SolluWriting;
import org.matraloom.sheet.Sheet;
import org.matraloom.sheet.SheetOptions;
import org.matraloom.sound.Mix;
import org.matraloom.sound.SrutiDrone;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;
import org.matraloom.voice.SolluVoice;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How a film looks, and how often the piece is shown in it. */
final class FilmOptions {

  private static final List<Integer> RATES = List.of(25, 30, 60);
  private static final Ratio WHOLE = Ratio.of(100);

  /** Stands for every sollu where the words are hidden. */
  private static final String HIDDEN = "_";

  @Option(
      names = "--size",
      paramLabel = "SIZE",
      defaultValue = "1920x1080",
      description = "1920x1080, 1080x1920 or 1280x720 (default ${DEFAULT-VALUE}).")
  private String size;

  @Option(
      names = "--pictures",
      paramLabel = "N",
      defaultValue = "30",
      description = "Pictures a second: 25, 30 or 60 (default ${DEFAULT-VALUE}).")
  private int picturesPerSecond;

  @Option(names = "--dark", description = "Chalk on slate, not ink on paper.")
  private boolean dark;

  @Option(
      names = "--tempi",
      split = ",",
      paramLabel = "PERCENT",
      description = "The piece at several tempi one after another, such as 60,80,100.")
  private List<ExactNumber> tempi;

  @Option(
      names = "--hidden",
      description = "Once more at the end with the words hidden, to say from memory.")
  private boolean hidden;

  @Mixin private ScriptOption script;

  @Option(names = "--no-breaths", description = "Leave the breath marks out.")
  private boolean withoutBreaths;

  @Mixin private TimelineOptions timeline;

  /** What a film of a piece is made of. */
  FilmOrder order(
      Composition piece, Lexicon lexicon, Mix mix, SolluVoice voice, Optional<SrutiDrone> drone) {
    if (!RATES.contains(picturesPerSecond)) {
      throw new UserError("--pictures takes 25, 30 or 60 a second, given " + picturesPerSecond);
    }
    List<FilmPass> passes = new ArrayList<>();
    SolluWriting written = script.writing(lexicon);
    List<Ratio> percents = percents();
    boolean named = hidden || percents.size() > 1;
    for (Ratio percent : percents) {
      String name = named ? percent.toMixed() + " %" : "";
      passes.add(pass(at(piece, percent), written, mix, name, false));
    }
    if (hidden) {
      SolluWriting blank = SolluWriting.named(lexicon, sollu -> HIDDEN);
      Composition last = at(piece, percents.get(percents.size() - 1));
      passes.add(pass(last, blank, mix, "from memory", true));
    }
    FilmLook look = dark ? FilmLook.DARK : FilmLook.LIGHT;
    return new FilmOrder(passes, size(), look, picturesPerSecond, voice, drone);
  }

  private FilmPass pass(
      Composition piece, SolluWriting writing, Mix mix, String name, boolean wordsHidden) {
    TimelineOptions.Shown shown = timeline.shown(piece);
    Performance performance = shown.timeline().performance();
    if (!Sheet.canHold(performance)) {
      throw new UserError(
          "a film holds at most "
              + Sheet.MOST_MATRAS
              + " matras and this piece has more; take some of it with --rounds");
    }
    List<Breath> breaths = withoutBreaths ? List.of() : shown.plan().get().breaths();
    SheetOptions options = new SheetOptions(SheetOptions.Lines.AVARTANA, false, false, writing);
    Sheet sheet = Sheet.of(performance, options, breaths);
    return new FilmPass(shown.timeline(), sheet, mix, name, wordsHidden);
  }

  private static Composition at(Composition piece, Ratio percent) {
    Tempo tempo = UserError.unlessRefused(() -> piece.tempo().scaled(percent.dividedBy(WHOLE)));
    return piece.at(tempo);
  }

  private List<Ratio> percents() {
    if (tempi == null) {
      return List.of(WHOLE);
    }
    List<Ratio> percents = new ArrayList<>();
    for (ExactNumber tempo : tempi) {
      Ratio percent = tempo.isPercent() ? tempo.value().times(WHOLE) : tempo.value();
      if (percent.compareTo(Ratio.of(10)) < 0 || percent.compareTo(Ratio.of(400)) > 0) {
        throw new UserError("--tempi takes 10 to 400 percent, given " + percent.toMixed());
      }
      percents.add(percent);
    }
    return percents;
  }

  private FilmSize size() {
    for (FilmSize known : FilmSize.values()) {
      if (known.words().equals(size)) {
        return known;
      }
    }
    throw new UserError("--size takes 1920x1080, 1080x1920 or 1280x720, given " + size);
  }
}
