package org.matraloom.app.open;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.matraloom.app.cli.UserError;
import org.matraloom.door.DoorReply;
import org.matraloom.door.DoorRequest;
import org.matraloom.live.PieceSection;
import org.matraloom.score.Lexicon;

/** What is tapped on the page, and where its keys go. */
class TapAnswersTest {

  private static final String PIECE =
      "tala adi\ntempo 60\nBank = takadimi takajunu\nRain = takita takita ta ta\n"
          + "Song = (Bank) x2 Rain\nperform\n Song x2 nadai 4\n";

  private final TapAnswers taps = new TapAnswers(Lexicon.standard());

  private static DoorRequest request(JsonReply.Fields fields) throws IOException {
    return new DoorRequest("/", Map.of(), JsonReply.of(fields).body());
  }

  private static String text(DoorReply reply) {
    return new String(reply.body(), StandardCharsets.UTF_8);
  }

  @Test
  void aTempoIsHeardFromTheFourthTapOn() throws IOException {
    assertEquals("{}", text(taps.tempo(request(json -> json.writeStringField("taps", "0,750")))));
    String told =
        text(taps.tempo(request(json -> json.writeStringField("taps", "0,750,1500.5,2250"))));
    assertEquals("{\"tempo\":80.0}", told);
  }

  private String rhythm(String tapped) throws IOException {
    return text(
        taps.rhythm(
            request(
                json -> {
                  json.writeStringField("text", PIECE);
                  json.writeStringField("taps", tapped);
                  json.writeNumberField("tempo", 6_000);
                })));
  }

  @Test
  void aRhythmIsWrittenInTheNadaiThatFits() throws IOException {
    String four = rhythm("-5,-4.75,-4.5,-4.25,-4,-3.75,-3.5,-3.25,-2.5");
    assertTrue(four.contains("\"phrase\":\"takadimi takita"), four);
    assertTrue(four.contains("\"begins\":\"beat 4\""), four);
    String five = rhythm("0,0.2,0.4,0.6,0.8,1,1.2,1.4,1.6,1.8");
    assertTrue(five.contains("\"phrase\":\"{5: tadiginatom tadiginatom}\""), five);
    for (String bad : List.of("", "x", "1", "1,1", "2,1", "NaN,1", "0,0.001", "0,1e300")) {
      assertThrows(
          RuntimeException.class, () -> rhythm(bad), "a rhythm of \"" + bad + "\" is refused");
    }
  }

  private static PieceSection section(String field, String what, double beat) throws IOException {
    PlayedPiece played =
        new PlayedPieces(Lexicon.standard(), "low")
            .of(JsonFields.of(request(json -> json.writeStringField("text", PIECE))));
    JsonFields sent =
        JsonFields.of(
            request(
                json -> {
                  json.writeStringField(field, what);
                  json.writeNumberField("at", Math.round(beat * 1000));
                }));
    return (field.equals("go")
            ? PlayStep.asked(sent, played.piece())
            : PlayStep.looped(sent, played.piece()))
        .orElseThrow();
  }

  /** Bank is said twice, 4 beats, Rain once, 2 beats; so a round has 6 beats and two sections. */
  @Test
  void keysGoFromThePlaceThatIsHeard() throws IOException {
    assertEquals(0, section("go", "again", 3.9).startBeat().toDouble());
    assertEquals(4, section("go", "next", 3.9).startBeat().toDouble());
    assertEquals(6, section("go", "next", 4.1).startBeat().toDouble());
    assertEquals(4, section("go", "previous", 7).startBeat().toDouble());
    assertEquals(0, section("go", "first", 11).startBeat().toDouble());
    assertEquals("Rain", section("loop", "section", 11).name());
    assertEquals(6, section("loop", "round", 11).startBeat().toDouble());
    assertEquals(12, section("loop", "round", 11).endBeat().toDouble());
    assertThrows(UserError.class, () -> section("go", "away", 1));
    assertThrows(UserError.class, () -> section("loop", "all", 1));
  }
}
