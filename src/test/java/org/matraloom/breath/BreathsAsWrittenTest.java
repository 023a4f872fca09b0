package org.matraloom.breath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.AbstractMap.SimpleEntry;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.matraloom.Unrolled;
import org.matraloom.form.Joint;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.time.Ratio;

/** The breath plan and its lines name what the score says, where it says it. */
class BreathsAsWrittenTest {

  @Test
  void linesNameTheSameSollusAtTheSameBeats() {
    for (Composition composition : Unrolled.scores()) {
      Performance performance = Performance.of(composition);
      List<Map.Entry<Ratio, String>> signs = new ArrayList<>();
      for (Sign sign : Sign.of(performance)) {
        String text = sign.text().startsWith("(silence") ? "." : sign.text();
        signs.add(new SimpleEntry<>(sign.beat(), text));
      }
      assertEquals(Unrolled.lines(performance), Unrolled.lines(signs, performance.soundEndBeat()));
    }
  }

  /** The last stroke stands behind all rounds, as a round of its own would. */
  private static boolean isBeforeStroke(VoiceStop stop, Performance performance) {
    return performance.closing().stroke().isPresent()
        && stop.next().beat().equals(performance.endBeat());
  }

  @Test
  void theVoiceStopsWhereASolluRingsOutOrSilenceFollows() {
    int stops = 0;
    for (Composition composition : Unrolled.scores()) {
      Performance performance = Performance.of(composition);
      List<Unrolled.Piece> said =
          Unrolled.of(performance).stream().filter(piece -> !piece.name().equals(".")).toList();
      List<VoiceStop> expected = new ArrayList<>();
      for (int index = 0; index + 1 < said.size(); index++) {
        Unrolled.Piece last = said.get(index);
        Unrolled.Piece next = said.get(index + 1);
        if (last.end().compareTo(last.ownEnd()) > 0
            || next.beat().compareTo(last.end()) > 0
            || next.round() > last.round()) {
          expected.add(stop(last, next, index + 1));
        }
      }
      expected.removeIf(stop -> isBeforeStroke(stop, performance));
      List<VoiceStop> read =
          VoiceReader.read(performance).stream()
              .flatMap(voice -> voice.stops().stream())
              .filter(stop -> !isBeforeStroke(stop, performance))
              .filter(BreathsAsWrittenTest::stopsUnasked)
              .map(BreathsAsWrittenTest::plain)
              .toList();
      assertEquals(expected, read);
      stops += read.size();
    }
    assertTrue(stops > 1_000, "stops were read: " + stops);
  }

  private static VoiceStop stop(Unrolled.Piece last, Unrolled.Piece next, int count) {
    return new VoiceStop(
        new VoiceStop.Last(
            last.name(), last.beat(), last.ownEnd().minus(last.beat()), last.round()),
        last.end(),
        new VoiceStop.Resumption(next.beat(), next.round(), ""),
        count,
        standing(next.round() > last.round()));
  }

  /** A stop without the names of phrases. */
  private static VoiceStop plain(VoiceStop stop) {
    return new VoiceStop(
        stop.last(),
        stop.endBeat(),
        new VoiceStop.Resumption(stop.next().beat(), stop.next().round(), ""),
        stop.solluCount(),
        standing(stop.endsRound()));
  }

  private static VoiceStop.Standing standing(boolean endsRound) {
    Joint joint = endsRound ? Joint.ROUND : Joint.INSIDE;
    return new VoiceStop.Standing(joint, "", false, VoiceStop.Wish.NONE);
  }

  /** Where nothing else lets the voice stop, a score may still ask for a breath. */
  private static boolean stopsUnasked(VoiceStop stop) {
    return stop.rings() || stop.endsRound() || stop.silence().signum() > 0;
  }
}
