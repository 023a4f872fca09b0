package org.matraloom.app.open;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.matraloom.app.cli.UserError;
import org.matraloom.door.DoorReply;
import org.matraloom.door.DoorRequest;
import org.matraloom.live.LiveSegment;
import org.matraloom.score.Lexicon;
import org.matraloom.wav.PcmCodec;
import org.matraloom.wav.PcmFormat;

/**
 * Sound for the page: it begins a play, then asks for its frames as they are wanted.
 *
 * <p>Frames come as samples of 16 bits, left and right in turn, the smaller byte first.
 */
final class PlayAnswers {

  private static final int MOST_PLAYS = 4;
  private static final int MOST_FRAMES = 96_000;

  private final PlayedPieces pieces;
  private final PcmCodec codec = new PcmCodec(PcmFormat.USUAL.bits());
  private final Map<Integer, PlayedPiece> plays = new LinkedHashMap<>();
  private int last;

  PlayAnswers(Lexicon lexicon, String voice) {
    this.pieces = new PlayedPieces(lexicon, voice);
  }

  /** Begins to play a text. */
  DoorReply begin(DoorRequest request) throws IOException {
    return begin(pieces.of(JsonFields.of(request)));
  }

  /** Begins to play a piece. */
  DoorReply begin(PlayedPiece play) throws IOException {
    int id = add(play);
    return JsonReply.of(
        json -> {
          json.writeNumberField("id", id);
          json.writeNumberField("rate", PcmFormat.USUAL.ratePerSecond());
          clock(play, json);
        });
  }

  private synchronized int add(PlayedPiece play) {
    while (plays.size() >= MOST_PLAYS) {
      plays.remove(plays.keySet().iterator().next());
    }
    plays.put(++last, play);
    return last;
  }

  private synchronized PlayedPiece play(int id) {
    return Optional.ofNullable(plays.get(id))
        .orElseThrow(() -> new UserError("nothing is played under the number " + id));
  }

  /** The next frames of a play. */
  DoorReply next(DoorRequest request) throws IOException {
    JsonFields sent = JsonFields.of(request);
    int frames = sent.number("frames");
    if (frames < 1 || frames > MOST_FRAMES) {
      throw new UserError("frames takes 1 to " + MOST_FRAMES + ", given " + frames);
    }
    int channels = PcmFormat.USUAL.channels();
    float[] block = new float[frames * channels];
    int got = play(sent.number("id")).play().pull(block, frames);
    byte[] bytes = new byte[got * PcmFormat.USUAL.bytesPerFrame()];
    codec.encode(block, got * channels, bytes);
    return DoorReply.of("application/octet-stream", bytes);
  }

  /** Changes what is played from the next beat on. */
  DoorReply change(DoorRequest request) throws IOException {
    JsonFields sent = JsonFields.of(request);
    PlayedPiece play = play(sent.number("id"));
    play.change(sent);
    return JsonReply.of(json -> clock(play, json));
  }

  /** Where frames lie in the piece; a loop or a jump adds a segment. */
  DoorReply clock(DoorRequest request) throws IOException {
    PlayedPiece play = play(JsonFields.of(request).number("id"));
    return JsonReply.of(json -> clock(play, json));
  }

  private static void clock(PlayedPiece play, JsonGenerator json) throws IOException {
    json.writeArrayFieldStart("segments");
    for (LiveSegment segment : play.play().segments()) {
      json.writeStartObject();
      json.writeNumberField("fromBeat", segment.fromBeat());
      json.writeNumberField("shift", segment.shiftBeats());
      json.writeNumberField("clockBeat", segment.clockBeat());
      json.writeNumberField("clockFrame", segment.clockFrame());
      json.writeNumberField("tempo", segment.tempo().beatsPerMinute().toDouble());
      json.writeNumberField("start", segment.section().startBeat().toDouble());
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
