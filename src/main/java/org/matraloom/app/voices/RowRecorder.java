package org.matraloom.app.voices;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.matraloom.breath.BreathSettings;
import org.matraloom.device.AudioIn;
import org.matraloom.device.AudioOut;
import org.matraloom.device.RoundTrip;
import org.matraloom.device.RoundTrips;
import org.matraloom.device.SoundDevices;
import org.matraloom.live.LivePiece;
import org.matraloom.prompt.AskedRow;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.session.PassSound;
import org.matraloom.session.RowDesk;
import org.matraloom.session.RowPass;
import org.matraloom.sound.Mix;
import org.matraloom.sound.MixPart;
import org.matraloom.sound.TakeNote;
import org.matraloom.voice.FormantVoice;
import org.matraloom.voice.SolluVoice;
import org.matraloom.voice.VoiceSettings;
import org.matraloom.wav.PcmFormat;

/**
 * Plays rows to a reciter and records them, on the devices of this machine, opened anew for each.
 */
final class RowRecorder {

  private static final int RATE = 48_000;
  private static final PcmFormat GUIDE = new PcmFormat(RATE, 16, 2);
  private static final PcmFormat TAKEN = new PcmFormat(RATE, 16, 1);
  private static final Mix MIX =
      Mix.lesson()
          .only(Set.of(MixPart.CLAP, MixPart.COUNT, MixPart.VOICE))
          .withLevel(MixPart.COUNT, -6);

  private final SoundDevices devices;
  private final Optional<String> output;
  private final Optional<String> input;
  private final Lexicon lexicon;
  private final RowDesk desk;
  private final SolluVoice voice;

  /** Records by these devices; a part of a name each, empty for the usual ones. */
  RowRecorder(
      SoundDevices devices,
      Optional<String> output,
      Optional<String> input,
      Lexicon lexicon,
      RowDesk desk) {
    this.devices = devices;
    this.output = output;
    this.input = input;
    this.lexicon = lexicon;
    this.desk = desk;
    this.voice = new FormantVoice(RATE, lexicon, VoiceSettings.USUAL);
  }

  /** Plays a row once and records what is said after it, so many times, into a new file. */
  RowPass.End record(AskedRow row, int says, Path target) throws IOException {
    ScoreTimeline timeline = ScoreTimeline.of(Performance.of(row.piece(says, lexicon)), 1);
    LivePiece piece =
        new LivePiece(List.of(timeline), 1, voice, Optional.empty(), GUIDE, BreathSettings.study());
    Optional<Long> roundTrip =
        RoundTrips.ofUser()
            .find(devices.outName(output), devices.inName(input), RATE)
            .map(RoundTrip::frames);
    TakeNote note =
        new TakeNote(row.words(), row.score(says), timeline, Optional.empty(), roundTrip);
    try (AudioOut heard = devices.openOut(output, GUIDE, SoundDevices.SAFE_MS);
        AudioIn said = devices.openIn(input, TAKEN)) {
      PassSound sound = new PassSound(piece, MIX, TAKEN, note, lexicon);
      return RowPass.record(sound, AskedRow.BEATS, heard, said, target, desk);
    }
  }
}
