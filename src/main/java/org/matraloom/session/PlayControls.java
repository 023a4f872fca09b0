package org.matraloom.session;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.matraloom.live.LivePiece;
import org.matraloom.live.LivePlayer;
import org.matraloom.live.LivePosition;
import org.matraloom.live.PieceSection;
import org.matraloom.live.PieceSections;
import org.matraloom.schedule.Timeline;
import org.matraloom.sound.Mix;
import org.matraloom.sound.MixPart;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/** Turns presses into wishes to the player and knows what is to be shown. */
final class PlayControls {

  private static final String HINT =
      "space start, stop   enter again   arrows section, tempo   ? keys   q quit";
  private static final int SMALL_STEP = 1;
  private static final int LARGE_STEP = 5;

  private final LivePiece piece;
  private final LivePlayer player;
  private final PieceSections sections;
  private final TapTempo taps = new TapTempo();

  private Optional<BeatSheet> sheet = Optional.empty();
  private int passage;
  private PieceSection chosen;

  /** Whether the chosen section has been asked for and its lead-in is not heard yet. */
  private boolean isUnderWay;

  private Tempo tempo;
  private Mix mix;
  private Optional<PieceSection> loop = Optional.empty();
  private boolean showsKeys;
  private boolean hasQuit;
  private String message = "";

  PlayControls(LivePiece piece, Mix mix, LivePlayer player) {
    this.piece = piece;
    this.player = player;
    this.mix = mix;
    this.sections = PieceSections.of(piece.passages());
    this.chosen = sections.first();
    this.tempo = piece.composition(chosen).tempo();
  }

  boolean hasQuit() {
    return hasQuit;
  }

  void start() {
    player.start(chosen, tempo, mix);
  }

  void press(KeyPress press) {
    message = "";
    boolean wasShowingKeys = showsKeys;
    showsKeys = false;
    switch (press.action()) {
      case START_STOP -> startOrStop();
      case AGAIN -> goTo(here());
      case NEXT -> goTo(sections.neighbour(here(), 1));
      case PREVIOUS -> goTo(sections.neighbour(here(), -1));
      case FIRST -> goTo(sections.first());
      case ROUND -> goToRound(press.number());
      case FASTER -> step(SMALL_STEP);
      case SLOWER -> step(-SMALL_STEP);
      case MUCH_FASTER -> step(LARGE_STEP);
      case MUCH_SLOWER -> step(-LARGE_STEP);
      case DOUBLE -> tempo(tempo.beatsPerMinute().times(2));
      case HALF -> tempo(tempo.beatsPerMinute().dividedBy(2));
      case TAP -> tap(press.nanos());
      case LOOP -> loop(here());
      case LOOP_ROUND -> loop(sections.roundOf(here()));
      case HELP -> showsKeys = !wasShowingKeys;
      case QUIT -> hasQuit = true;
      default -> toggle(press.action());
    }
  }

  private void startOrStop() {
    if (player.isPlaying()) {
      chosen = here();
      player.stop();
      message = "stopped; space goes on from " + chosen.name();
    } else {
      start();
    }
  }

  /** The section that is heard or, while nothing is, the one that will be. */
  private PieceSection here() {
    Optional<LivePosition> position = player.isPlaying() ? player.position() : Optional.empty();
    isUnderWay &= position.isPresent() && !position.get().segment().section().equals(chosen);
    return position
        .filter(heard -> !isUnderWay && !heard.isBeforeTheMouth())
        .map(heard -> sections.at(heard.segment().section().passage(), Ratio.of(heard.beat())))
        .orElse(chosen);
  }

  private void goTo(PieceSection section) {
    chosen = section;
    enter(section.passage());
    isUnderWay = true;
    loop = loop.map(looped -> section);
    player.loop(loop);
    start();
    message = "to " + section.name() + ", round " + section.round();
  }

  /** Each passage begins at its own tempo. */
  private void enter(int next) {
    if (passage != next) {
      passage = next;
      tempo = piece.passages().get(next).performance().composition().tempo();
      sheet = Optional.empty();
    }
  }

  private void goToRound(int number) {
    sections.rounds(here().passage()).stream()
        .filter(round -> round.round() == number)
        .findFirst()
        .ifPresentOrElse(
            round -> goTo(sections.at(round.passage(), round.startBeat())),
            () -> message = "there is no round " + number);
  }

  private void loop(PieceSection section) {
    loop = loop.equals(Optional.of(section)) ? Optional.empty() : Optional.of(section);
    player.loop(loop);
  }

  private void step(int beatsPerMinute) {
    tempo(tempo.beatsPerMinute().plus(Ratio.of(beatsPerMinute)));
  }

  private void tap(long nanos) {
    Optional<Tempo> tapped = taps.tap(nanos);
    message = tapped.isPresent() ? "" : "tap on";
    tapped.ifPresent(found -> tempo(found.beatsPerMinute()));
  }

  private void tempo(Ratio beatsPerMinute) {
    if (!Tempo.inRange(beatsPerMinute)) {
      message = "the tempo stays from " + Tempo.SLOWEST + " to " + Tempo.FASTEST;
      return;
    }
    tempo = new Tempo(beatsPerMinute);
    sheet = Optional.empty();
    player.tempo(tempo);
  }

  private void toggle(KeyAction action) {
    for (PartSwitch part : parts()) {
      if (part.action() == action) {
        Mix.Channel channel = mix.channels().get(part.part());
        mix =
            mix.with(
                part.part(), new Mix.Channel(channel.levelDb(), !channel.muted(), channel.pan()));
        player.mix(mix);
      }
    }
  }

  private List<PartSwitch> parts() {
    return Arrays.stream(PartSwitch.values())
        .filter(part -> part.part() != MixPart.DRONE || piece.drone().isPresent())
        .filter(
            part ->
                part.part() != MixPart.BREATH
                    || piece.passages().stream().anyMatch(Timeline::cuesBreaths))
        .toList();
  }

  PlayState state() {
    PieceSection section = here();
    enter(section.passage());
    BeatSheet known =
        sheet.orElseGet(() -> BeatSheet.of(piece.timeline(section), tempo, piece.breaths()));
    sheet = Optional.of(known);
    return new PlayState(played(section, known), asked(section), told(), Optional.empty());
  }

  private PlayState.Played played(PieceSection section, BeatSheet known) {
    return new PlayState.Played(
        piece.composition(section),
        piece.timeline(section).performance().endBeat(),
        player.isPlaying(),
        player.position(),
        known,
        GapTally.of(player.gaps(), piece.format().ratePerSecond()));
  }

  private PlayState.Chosen asked(PieceSection section) {
    return new PlayState.Chosen(
        section,
        sections.all().indexOf(section) + 1,
        sections.all().size(),
        sections.rounds(section.passage()).size(),
        tempo,
        mix,
        loop,
        parts());
  }

  private PlayState.Told told() {
    return new PlayState.Told(showsKeys, message, "", HINT);
  }
}
