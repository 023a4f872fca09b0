package org.matraloom.film;

import java.util.List;
import java.util.Optional;
import org.matraloom.breath.BreathPlanner;
import org.matraloom.breath.BreathSettings;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.script.Script;
import org.matraloom.script.SolluWriting;
import org.matraloom.sheet.Sheet;
import org.matraloom.sheet.SheetOptions;
import org.matraloom.sheet.Sheets;
import org.matraloom.sound.Mix;
import org.matraloom.voice.FormantVoice;
import org.matraloom.voice.VoiceSettings;

/** Films for tests. */
final class Films {

  static final int RATE = 48_000;

  private Films() {}

  static FilmPass pass(Composition piece, Script script, String name) {
    Performance performance = Performance.of(piece);
    SheetOptions options =
        new SheetOptions(
            SheetOptions.Lines.AVARTANA, false, false, new SolluWriting(script, Sheets.LEXICON));
    Sheet sheet =
        Sheet.of(
            performance,
            options,
            BreathPlanner.plan(performance, BreathSettings.study()).breaths());
    return new FilmPass(ScoreTimeline.of(performance, 1), sheet, Mix.lesson(), name, false);
  }

  static FilmOrder order(FilmSize size, int picturesPerSecond, FilmPass... passes) {
    return new FilmOrder(
        List.of(passes),
        size,
        FilmLook.LIGHT,
        picturesPerSecond,
        new FormantVoice(RATE, Sheets.LEXICON, VoiceSettings.USUAL),
        Optional.empty());
  }
}
