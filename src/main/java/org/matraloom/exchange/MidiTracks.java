package org.matraloom.exchange;

import java.nio.charset.StandardCharsets;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MetaMessage;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;
import org.matraloom.time.Ratio;

/** Puts notes and texts into tracks of a Standard MIDI File, each at its beat. */
final class MidiTracks {

  private static final int PERCUSSION = 9;
  private static final String WRONG = "a MIDI message was put together wrongly";

  private final Ratio originBeat;
  private final int ticksPerBeat;

  /** Tick 0 is the origin. */
  MidiTracks(Ratio originBeat, int ticksPerBeat) {
    this.originBeat = originBeat;
    this.ticksPerBeat = ticksPerBeat;
  }

  boolean note(Track track, int key, int velocity, Ratio beat, Ratio beats) {
    long from = tick(beat);
    long to = Math.max(from + 1, tick(beat.plus(beats)));
    try {
      ShortMessage on = new ShortMessage(ShortMessage.NOTE_ON, PERCUSSION, key, velocity);
      ShortMessage off = new ShortMessage(ShortMessage.NOTE_OFF, PERCUSSION, key, 0);
      return track.add(new MidiEvent(on, from)) && track.add(new MidiEvent(off, to));
    } catch (InvalidMidiDataException wrong) {
      throw new IllegalStateException(WRONG, wrong);
    }
  }

  boolean text(Track track, int kind, Ratio beat, String text) {
    return meta(track, kind, beat, text.getBytes(StandardCharsets.UTF_8));
  }

  boolean meta(Track track, int kind, Ratio beat, byte[] bytes) {
    try {
      return track.add(new MidiEvent(new MetaMessage(kind, bytes, bytes.length), tick(beat)));
    } catch (InvalidMidiDataException wrong) {
      throw new IllegalStateException(WRONG, wrong);
    }
  }

  /** The tick nearest to a beat, rounded half up. */
  private long tick(Ratio beat) {
    Ratio exact = beat.minus(originBeat).times(ticksPerBeat);
    return exact.plus(Ratio.of(1, 2)).floor();
  }
}
