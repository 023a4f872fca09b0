package org.matraloom.app.open;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.matraloom.app.cli.UserError;
import org.matraloom.live.LivePiece;
import org.matraloom.live.PieceSection;
import org.matraloom.live.PieceSections;
import org.matraloom.live.PulledPlay;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.sound.Mix;
import org.matraloom.sound.MixPart;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/**
 * A piece that is played on the page.
 *
 * @param piece what is played
 * @param play its frames
 */
record PlayedPiece(LivePiece piece, PulledPlay play) {

  /** A tempo is sent in hundredths of a beat a minute. */
  private static final int HUNDREDTHS = 100;

  /** From its beginning to its end. */
  static PlayedPiece straight(LivePiece piece, Tempo tempo, Mix mix) {
    PieceSection first = PieceSections.of(piece.passages()).first();
    return new PlayedPiece(piece, new PulledPlay(piece, Optional.empty(), first, tempo, mix));
  }

  /** Takes over what was sent: a tempo, parts, a stretch to go to and loop, or its end. */
  void change(JsonFields sent) {
    if (sent.find("tempo").isPresent()) {
      play.tempo(tempo(sent, piece.composition(PieceSections.of(piece.passages()).first())));
    }
    if (sent.find("parts").isPresent()) {
      play.mix(mix(sent));
    }
    if (sent.isSet("letGo")) {
      play.loop(Optional.empty());
    }
    chosen(sent, piece)
        .ifPresent(
            section -> {
              play.loop(Optional.of(section));
              play.goTo(section);
            });
    if (sent.find("round").isPresent()) {
      play.goTo(round(sent.number("round")));
    }
    PlayStep.asked(sent, piece).ifPresent(section -> goOn(section, sent));
    PlayStep.looped(sent, piece).ifPresent(section -> play.loop(Optional.of(section)));
  }

  /** What comes again and again goes along. */
  private void goOn(PieceSection section, JsonFields sent) {
    if (sent.isSet("looping")) {
      play.loop(Optional.of(section));
    }
    play.goTo(section);
  }

  private PieceSection round(int number) {
    return PieceSections.of(piece.passages()).rounds(0).stream()
        .filter(round -> round.round() == number)
        .findFirst()
        .orElseThrow(() -> new UserError("there is no round " + number));
  }

  /** The stretch between two marks of the sheet, both included. */
  static Optional<PieceSection> chosen(JsonFields sent, LivePiece piece) {
    if (sent.find("fromMark").isEmpty()) {
      return Optional.empty();
    }
    Performance performance = piece.passages().get(0).performance();
    MarkBeats beats = MarkBeats.of(performance);
    Ratio from = beats.start(sent.number("fromMark"));
    Ratio to = beats.end(sent.number("toMark"));
    return Optional.of(PulledPlay.section(piece, from, to));
  }

  static Tempo tempo(JsonFields sent, Composition composition) {
    Ratio asked =
        sent.find("tempo").isPresent()
            ? Ratio.of(sent.number("tempo"), HUNDREDTHS)
            : composition.tempo().beatsPerMinute();
    if (!Tempo.inRange(asked)) {
      throw new UserError(
          "the tempo takes " + Tempo.SLOWEST + " to " + Tempo.FASTEST + " beats a minute");
    }
    return new Tempo(asked);
  }

  static Mix mix(JsonFields sent) {
    return Mix.lesson().only(parts(sent));
  }

  static Set<MixPart> parts(JsonFields sent) {
    Set<MixPart> parts = EnumSet.noneOf(MixPart.class);
    for (String part : sent.find("parts").orElse("clap,count,wave,tick,voice,drone").split(",")) {
      parts.add(MixPart.valueOf(part.toUpperCase(Locale.ROOT)));
    }
    return parts;
  }
}
