package org.matraloom.app.open;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Optional;
import org.matraloom.app.cli.UserError;
import org.matraloom.device.ClickRecording;
import org.matraloom.device.DeviceException;
import org.matraloom.device.RoundTrip;
import org.matraloom.device.RoundTrips;
import org.matraloom.door.DoorFault;
import org.matraloom.door.DoorReply;
import org.matraloom.door.DoorRequest;
import org.matraloom.wav.PcmCodec;
import org.matraloom.wav.PcmFormat;

/**
 * The round trip of the browser's output and a microphone, measured as {@code calibrate} does and
 * kept in the same file.
 *
 * <p>Samples go both ways with 16 bits, one channel, the smaller byte first, and without a head.
 */
final class RoundTripAnswers {

  /** A minute of samples. */
  static final long MOST_BYTES = 6_000_000;

  /** A page cannot know where its sound goes; the operating system's choice is one device here. */
  private static final String OUTPUT = "browser";

  private static final int RATE = PcmFormat.USUAL.ratePerSecond();
  private static final int BYTES = 2;

  private final RoundTrips store;
  private final PcmCodec codec = new PcmCodec(8 * BYTES);

  RoundTripAnswers(RoundTrips store) {
    this.store = store;
  }

  /** What is to be played. */
  DoorReply clicks() {
    float[] samples = ClickRecording.clicks(RATE);
    byte[] bytes = new byte[samples.length * BYTES];
    codec.encode(samples, samples.length, bytes);
    return DoorReply.of("application/octet-stream", bytes);
  }

  /** Finds the clicks in a recording, and keeps the round trip of the pair. */
  DoorReply measure(DoorRequest request) throws DoorFault, IOException {
    byte[] body = request.body();
    float[] samples = new float[body.length / BYTES];
    for (int i = 0; i < samples.length; i++) {
      samples[i] = codec.decode(body[BYTES * i + 1] << 8 | body[BYTES * i] & 0xFF);
    }
    RoundTrip trip;
    try {
      long offset = whole(request.value("offset"));
      trip = ClickRecording.find(samples, offset, RATE, OUTPUT, request.value("input"));
    } catch (DeviceException untrusted) {
      throw new UserError(untrusted.getMessage());
    }
    store.keep(trip);
    return JsonReply.of(json -> write(trip, json));
  }

  /** What was measured for a microphone before; an empty object if nothing. */
  DoorReply known(DoorRequest request) throws DoorFault, IOException {
    Optional<RoundTrip> trip = store.find(OUTPUT, request.value("input"), RATE);
    return JsonReply.of(
        json -> {
          if (trip.isPresent()) {
            write(trip.get(), json);
          }
        });
  }

  private static void write(RoundTrip trip, JsonGenerator json) throws IOException {
    json.writeNumberField("frames", trip.frames());
    json.writeNumberField("ms", Math.round(10 * trip.ms()) / 10.0);
    json.writeNumberField("spreadMs", Math.round(10 * trip.spreadMs()) / 10.0);
  }

  private static long whole(String text) {
    try {
      return Math.toIntExact(Long.parseLong(text));
    } catch (ArithmeticException | NumberFormatException noFrame) {
      throw new UserError("a frame is a whole number, given " + text);
    }
  }
}
