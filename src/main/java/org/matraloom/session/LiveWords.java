package org.matraloom.session;

import java.util.Optional;
import org.matraloom.live.LivePosition;
import org.matraloom.live.PieceSection;
import org.matraloom.score.Avartana;
import org.matraloom.score.Nadai;
import org.matraloom.time.Ratio;

/** What is going on, in words. */
final class LiveWords {

  private final PlayState state;
  private final Avartana avartana;

  LiveWords(PlayState state) {
    this.state = state;
    this.avartana = state.played().composition().avartana();
  }

  String tempo() {
    return state.chosen().tempo().beatsPerMinute().toMixed() + " beats a minute";
  }

  String tala() {
    int beats = avartana.beats();
    return avartana.tala().name() + ", " + beats + (beats == 1 ? " beat" : " beats");
  }

  String round() {
    return "round "
        + state.chosen().section().round()
        + (state.chosen().rounds() > 1 ? " of " + state.chosen().rounds() : "");
  }

  String section() {
    return "section "
        + state.chosen().section().name()
        + " ("
        + state.chosen().sectionNumber()
        + " of "
        + state.chosen().sections()
        + ")";
  }

  String loop() {
    return "loop "
        + state.chosen().loop().map(loop -> loop.name() + ", round " + loop.round()).orElse("off");
  }

  /** "avartana 3", or the beats that are still counted before the mouth begins. */
  String avartana(LivePosition spot) {
    if (spot.isBeforeTheMouth()) {
      Ratio wait = spot.lap().section().startBeat().minus(Ratio.of(spot.beat()));
      return state.chosen().section().name() + " in " + beats(wait.ceil());
    }
    if (Ratio.of(spot.beat()).compareTo(state.played().endBeat()) >= 0) {
      return "the end";
    }
    return "avartana " + (Math.floorDiv(spot.beat(), (long) avartana.beats()) + 1);
  }

  /** The beat in its avartana, from 1. */
  int beatNumber(LivePosition spot) {
    return (int) Math.floorMod(spot.beat(), (long) avartana.beats()) + 1;
  }

  String kriya(long beat) {
    String again = avartana.repeatsKriya(beat) ? ", again" : "";
    return avartana.kriyaAt(beat).words() + again;
  }

  String nadai(LivePosition spot) {
    int matras = state.played().sheet().at(spot.beat()).matrasPerBeat();
    return matras == 0 ? "" : Nadai.inWords(matras);
  }

  /** A change of nadai that comes within an avartana and before the loop turns back. */
  Optional<String> change(LivePosition spot) {
    return state
        .played()
        .sheet()
        .changeAfter(spot.beat(), avartana.beats())
        .filter(
            coming ->
                state.chosen().loop().stream().allMatch(loop -> comesBefore(coming, loop, spot)))
        .map(
            coming ->
                "to "
                    + Nadai.inWords(coming.matrasPerBeat())
                    + " in "
                    + beats(coming.beat().minus(Ratio.of(spot.beat())).ceil()));
  }

  private static boolean comesBefore(
      BeatSheet.Coming coming, PieceSection loop, LivePosition spot) {
    boolean isInside = Ratio.of(spot.beat()).compareTo(loop.endBeat()) < 0;
    return !isInside || coming.beat().compareTo(loop.endBeat()) < 0;
  }

  /** The words of a beat; before the mouth begins there are none. */
  String words(LivePosition spot, int beatsOn) {
    LivePosition there = new LivePosition(spot.lap(), spot.liveBeat() + beatsOn);
    return there.isBeforeTheMouth() ? "" : state.played().sheet().at(there.beat()).words();
  }

  boolean isOn(PartSwitch part) {
    return !state.chosen().mix().channels().get(part.part()).muted();
  }

  private static String beats(long count) {
    return count == 1 ? "1 beat" : count + " beats";
  }
}
