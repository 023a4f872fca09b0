package org.matraloom.app.open;

import java.util.List;
import java.util.Optional;
import org.matraloom.app.cli.ReciterOption;
import org.matraloom.app.cli.UserError;
import org.matraloom.app.cli.VoiceOptions;
import org.matraloom.breath.BreathPlanner;
import org.matraloom.breath.BreathSettings;
import org.matraloom.breath.BreathTimeline;
import org.matraloom.live.Fade;
import org.matraloom.live.LivePiece;
import org.matraloom.live.PieceSection;
import org.matraloom.live.PieceSections;
import org.matraloom.live.PulledPlay;
import org.matraloom.notation.ScoreReader;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.sound.MixPart;
import org.matraloom.sound.Sruti;
import org.matraloom.sound.SrutiDrone;
import org.matraloom.voice.SolluVoice;
import org.matraloom.voice.VoiceSettings;
import org.matraloom.wav.PcmFormat;

/** Makes plays of texts. */
final class PlayedPieces {

  private static final PcmFormat FORMAT = PcmFormat.USUAL;

  private final Lexicon lexicon;
  private final String who;

  PlayedPieces(Lexicon lexicon, String who) {
    this.lexicon = lexicon;
    this.who = who;
  }

  PlayedPiece of(JsonFields sent) {
    Composition composition =
        ReciterOption.requireOne(
            ScoreReader.read(sent.text("text"), "", lexicon)
                .composition()
                .orElseThrow(() -> new UserError("the score has errors; mend them first")),
            "this page");
    Performance performance = Performance.of(composition);
    int countIn = sent.find("countIn").isPresent() ? sent.number("countIn") : 1;
    if (countIn < 0 || countIn > ScoreTimeline.MOST_COUNT_IN) {
      throw new UserError("the count-in takes 0 to 16 avartanas, given " + countIn);
    }
    // A voice that breathes stops its sounds for it, so breaths are planned only where they sound.
    Timeline said = ScoreTimeline.of(performance, countIn);
    boolean breathes = PlayedPiece.parts(sent).contains(MixPart.BREATH);
    Timeline timeline =
        breathes
            ? new BreathTimeline(said, BreathPlanner.plan(performance, BreathSettings.study()))
            : said;
    Optional<SrutiDrone> drone =
        sent.find("drone")
            .filter(tonic -> !tonic.isBlank())
            .map(Sruti::parse)
            .map(tonic -> new SrutiDrone(tonic, FORMAT.ratePerSecond()));
    LivePiece piece =
        new LivePiece(
            List.of(timeline), countIn, voice(who, lexicon), drone, FORMAT, BreathSettings.study());
    Optional<Fade> fade =
        sent.find("fade")
            .filter(given -> !given.isBlank())
            .map(given -> new Fade(sent.number("fade")));
    Optional<PieceSection> chosen = PlayedPiece.chosen(sent, piece);
    Optional<PieceSection> looped = chosen.or(() -> PlayStep.looped(sent, piece));
    PieceSection start =
        looped
            .or(() -> PlayStep.asked(sent, piece))
            .orElseGet(() -> PieceSections.of(piece.passages()).first());
    PulledPlay play =
        new PulledPlay(
            piece, fade, start, PlayedPiece.tempo(sent, composition), PlayedPiece.mix(sent));
    play.loop(looped);
    return new PlayedPiece(piece, play);
  }

  /** A voice for one play, by its name. */
  static SolluVoice voice(String who, Lexicon lexicon) {
    return VoiceOptions.named(who, FORMAT.ratePerSecond(), lexicon, VoiceSettings.USUAL, false);
  }
}
