package org.matraloom.app.open;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.app.cli.UserError;
import org.matraloom.door.DoorReply;
import org.matraloom.door.DoorRequest;
import org.matraloom.kanakku.TappedPhrase;
import org.matraloom.kanakku.TappedRhythm;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.session.TapTempo;
import org.matraloom.time.MeasuredTempo;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/** What is tapped on a key: a tempo, or a rhythm against the clap. */
final class TapAnswers {

  private static final double NANOS_A_MS = 1e6;
  private static final double MS_A_SECOND = 1000;

  private final Lexicon lexicon;

  TapAnswers(Lexicon lexicon) {
    this.lexicon = lexicon;
  }

  /** The tempo of taps, given in milliseconds; none before the fourth. */
  DoorReply tempo(DoorRequest request) throws IOException {
    TapTempo taps = new TapTempo();
    Optional<Tempo> tempo = Optional.empty();
    for (double ms : numbers(JsonFields.of(request).text("taps"))) {
      tempo = taps.tap(Math.round(ms * NANOS_A_MS));
    }
    Optional<Tempo> heard = tempo;
    return JsonReply.of(
        json -> {
          if (heard.isPresent()) {
            json.writeNumberField("tempo", heard.get().beatsPerMinute().toDouble());
          }
        });
  }

  /** The phrase that lies nearest to taps, given in beats of the score's clap. */
  DoorReply rhythm(DoorRequest request) throws IOException {
    JsonFields sent = JsonFields.of(request);
    Composition composition =
        ScoreReader.read(sent.text("text"), "", lexicon)
            .composition()
            .orElseThrow(() -> new UserError("the score has errors; mend them first"));
    int nadai = Performance.of(composition).rounds().get(0).matrasPerBeat();
    MeasuredTempo tempo =
        new MeasuredTempo(PlayedPiece.tempo(sent, composition).beatsPerMinute().toDouble());
    TappedRhythm rhythm =
        TappedRhythm.of(numbers(sent.text("taps")), tempo, nadai)
            .orElseThrow(
                () -> new UserError("two taps fall on one matra; tap more slowly, or slow down"));
    String words = TappedPhrase.of(rhythm, lexicon);
    boolean other = rhythm.matrasPerBeat() != nadai;
    String phrase = other ? "{" + rhythm.matrasPerBeat() + ": " + words + "}" : words;
    Ratio place = rhythm.startBeat().modulo(Ratio.of(composition.avartana().beats()));
    return JsonReply.of(
        json -> {
          json.writeStringField("phrase", phrase);
          json.writeNumberField("nadai", rhythm.matrasPerBeat());
          json.writeNumberField("matras", rhythm.matras());
          json.writeStringField("begins", composition.avartana().say(place));
          json.writeNumberField("scatterMs", Math.round(rhythm.scatterSeconds() * MS_A_SECOND));
        });
  }

  private static List<Double> numbers(String text) {
    List<Double> numbers = new ArrayList<>();
    for (String word : text.split(",")) {
      try {
        numbers.add(Double.parseDouble(word));
      } catch (NumberFormatException noNumber) {
        throw new UserError("taps are numbers with commas between, given " + word);
      }
      if (!Double.isFinite(numbers.get(numbers.size() - 1))) {
        throw new UserError("taps are numbers with commas between, given " + word);
      }
    }
    return numbers;
  }
}
