package org.matraloom.app.open;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Optional;
import org.matraloom.app.lesson.LessonPass;
import org.matraloom.onset.BandEnergies;
import org.matraloom.score.Lexicon;
import org.matraloom.session.FedEar;
import org.matraloom.session.SaidMark;
import org.matraloom.wav.PcmFormat;

/** Listens to the passes of a session while the page records them; to one at a time. */
final class PageEar {

  private static final int TENTHS = 10_000;

  private int number = -1;
  private Optional<FedEar> ear = Optional.empty();

  /**
   * Takes the next block of the pass that was shown under a number.
   *
   * @param knowsDelay whether the page knows its round trip; the first block of a pass decides
   */
  synchronized FedEar.Heard hear(
      int shown,
      LessonPass pass,
      Lexicon lexicon,
      byte[] pcm,
      PcmFormat format,
      Optional<Long> startFrame,
      boolean knowsDelay) {
    if (shown != number) {
      end();
      number = shown;
      ear = Optional.of(new FedEar(format, pass.timeline(), lexicon, knowsDelay));
    }
    return ear.orElseThrow().hear(pcm, startFrame);
  }

  /** What was heard of a whole pass; it is told once. */
  synchronized Optional<BandEnergies> whole(int shown) {
    Optional<BandEnergies> whole = shown == number ? ear.flatMap(FedEar::whole) : Optional.empty();
    end();
    return whole;
  }

  /** Listens no more. */
  synchronized void end() {
    ear.ifPresent(FedEar::close);
    ear = Optional.empty();
    number = -1;
  }

  static void write(FedEar.Heard heard, JsonGenerator json) throws IOException {
    json.writeArrayFieldStart("marks");
    for (SaidMark mark : heard.marks()) {
      json.writeStartObject();
      json.writeNumberField("place", mark.place());
      json.writeNumberField("frame", mark.onsetFrame());
      json.writeNumberField("lateMs", Math.round(TENTHS * mark.lateSeconds()) / 10.0);
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeStringField("notice", heard.notice().orElse(""));
  }
}
