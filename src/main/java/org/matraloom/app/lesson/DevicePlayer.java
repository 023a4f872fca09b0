package org.matraloom.app.lesson;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.matraloom.device.AudioIn;
import org.matraloom.device.AudioOut;
import org.matraloom.device.RoundTrip;
import org.matraloom.device.RoundTrips;
import org.matraloom.device.SoundDevices;
import org.matraloom.live.LivePiece;
import org.matraloom.score.Lexicon;
import org.matraloom.session.DecisionSound;
import org.matraloom.session.LivePass;
import org.matraloom.session.PassSound;
import org.matraloom.session.PracticeDesk;
import org.matraloom.session.RecordedPass;
import org.matraloom.sound.SrutiDrone;
import org.matraloom.sound.TakeNote;
import org.matraloom.staircase.StairStep;
import org.matraloom.voice.SolluVoice;
import org.matraloom.wav.PcmFormat;

/** Plays passes on the sound devices of this machine, which are opened anew for each. */
final class DevicePlayer implements PassPlayer {

  private static final int SENTENCE_MS = 2500;

  /** So much of a take is enough to warm the ear with: 12 s at 48 kHz, in bytes. */
  private static final long ENOUGH_BYTES = 1_152_000;

  private final Devices devices;
  private final Guide guide;
  private final PracticeDesk desk;
  private final Lexicon lexicon;
  private final PassEar ear;
  private boolean isWarm;

  DevicePlayer(Devices devices, Guide guide, PracticeDesk desk, Lexicon lexicon, PassEar ear) {
    this.lexicon = lexicon;
    this.ear = ear;
    this.devices = devices;
    this.guide = guide;
    this.desk = desk;
  }

  /**
   * What the guide sounds like.
   *
   * @param voice says the sollus
   * @param drone sounds below it
   */
  record Guide(SolluVoice voice, Optional<SrutiDrone> drone) {}

  /**
   * Which devices are used.
   *
   * @param found those of this machine
   * @param output a part of the name of one; empty for the usual one
   * @param input the same of the microphone
   * @param rate frames a second
   */
  record Devices(SoundDevices found, Optional<String> output, Optional<String> input, int rate) {

    PcmFormat guide() {
      return new PcmFormat(rate, 16, 2);
    }

    Optional<Long> roundTripFrames() throws IOException {
      return RoundTrips.ofUser()
          .find(found.outName(output), found.inName(input), rate)
          .map(RoundTrip::frames);
    }
  }

  @Override
  public PlayedPass play(LessonPass pass, Path target) throws IOException {
    desk.heading(pass.words());
    PcmFormat taken = new PcmFormat(devices.rate, 16, 1);
    warm(pass, target);
    LivePiece piece = pass.piece(guide.voice(), guide.drone(), devices.guide());
    TakeNote note = pass.note(Optional.empty(), devices.roundTripFrames());
    try (AudioOut heard =
            devices.found.openOut(devices.output, devices.guide(), SoundDevices.SAFE_MS);
        AudioIn said = devices.found.openIn(devices.input, taken)) {
      PassSound sound = new PassSound(piece, pass.mix(), taken, note, lexicon);
      LivePass live = RecordedPass.record(sound, heard, said, target, desk);
      LiveMarks.write(live, target, devices.rate);
      LiveMarks.words(live).ifPresent(desk::tell);
      return new PlayedPass(live.isWhole(), live.heard());
    }
  }

  private void warm(LessonPass pass, Path target) {
    if (!isWarm) {
      isWarm = true;
      EarWarming.begin(ear, pass, target, ENOUGH_BYTES);
    }
  }

  @Override
  public boolean rest(double seconds, String sentence) throws IOException {
    desk.rest(sentence);
    return !desk.isEndAsked(Math.round(1000 * seconds));
  }

  @Override
  public boolean tell(StairStep step, String sentence, String decision) throws IOException {
    desk.say(step.tempo(), sentence, decision);
    byte[] told = DecisionSound.of(step.move(), devices.guide());
    if (told.length > 0) {
      try (AudioOut heard =
          devices.found.openOut(devices.output, devices.guide(), SoundDevices.SAFE_MS)) {
        heard.write(told, 0, told.length);
        heard.drain();
      }
    }
    return !desk.isEndAsked(SENTENCE_MS);
  }
}
