package org.matraloom.exchange;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Map;
import java.util.Optional;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import javax.sound.midi.Track;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.EventVisitor;
import org.matraloom.schedule.Stress;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Avartana;
import org.matraloom.score.Finger;
import org.matraloom.score.Kriya;
import org.matraloom.score.Nadai;
import org.matraloom.script.SolluWriting;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/**
 * A timeline as a Standard MIDI File of three tracks: signs, sollus and hand.
 *
 * <p>A beat is a quarter of {@value #TICKS_PER_BEAT} ticks, which 3, 4, 5, 7 and 9 divide even in
 * the third kalam. The tempo is kept in whole microseconds a quarter, as the format has it, so a
 * clock that follows it is off by at most half a microsecond a beat. Sollus are lyrics and notes,
 * rounds and phrases are markers, kriyas are percussion notes of General MIDI. Texts are UTF-8,
 * since the format names no encoding.
 */
public final class MidiFile {

  /** Ticks a beat. */
  public static final int TICKS_PER_BEAT = 5040;

  private static final int FORMAT_WITH_TRACKS = 1;
  private static final int TEXT_NAME = 0x03;
  private static final int TEXT_LYRIC = 0x05;
  private static final int TEXT_MARKER = 0x06;
  private static final int TEMPO = 0x51;
  private static final int METRE = 0x58;
  private static final int CLOCKS_PER_QUARTER = 24;
  private static final int THIRTY_SECONDS_PER_QUARTER = 8;
  private static final int MOST_METRE = 255;
  private static final long MICROSECONDS = 1_000_000;

  private static final int CLAP_KEY = 39;
  private static final int WAVE_KEY = 69;
  private static final int SOLLU_KEY = 63;
  private static final int SECOND_KEY = 64;
  private static final Map<Finger, Integer> FINGER_KEYS =
      Map.of(
          Finger.LITTLE,
          76,
          Finger.RING,
          77,
          Finger.MIDDLE,
          75,
          Finger.INDEX,
          37,
          Finger.THUMB,
          62);

  private static final String WRONG = "a MIDI message was put together wrongly";

  private final Timeline timeline;
  private final Avartana avartana;
  private final SolluWriting writing;
  private final Track signs;
  private final Track sollus;
  private final Track hand;
  private final Sequence sequence;
  private final MidiTracks tracks;

  private MidiFile(Timeline timeline, SolluWriting writing) throws InvalidMidiDataException {
    this.timeline = timeline;
    this.avartana = timeline.performance().avartana();
    this.writing = writing;
    this.tracks = new MidiTracks(timeline.originBeat(), TICKS_PER_BEAT);
    this.sequence = new Sequence(Sequence.PPQ, TICKS_PER_BEAT);
    this.signs = sequence.createTrack();
    this.sollus = sequence.createTrack();
    this.hand = sequence.createTrack();
  }

  /**
   * Writes a timeline.
   *
   * @param timeline what happens
   * @param writing how the lyrics are written
   * @param out where the file goes
   * @throws IOException if it cannot be written
   */
  public static void write(Timeline timeline, SolluWriting writing, OutputStream out)
      throws IOException {
    write(timeline, Optional.empty(), writing, out);
  }

  /**
   * Writes a timeline and what a second reciter says beside it, which is a track of its own.
   *
   * @param timeline what happens
   * @param second what the second reciter says, from the same origin on; its hand is not written
   * @param writing how the lyrics are written
   * @param out where the file goes
   * @throws IOException if it cannot be written
   */
  public static void write(
      Timeline timeline, Optional<Timeline> second, SolluWriting writing, OutputStream out)
      throws IOException {
    try {
      MidiFile file = new MidiFile(timeline, writing);
      file.head();
      Writer writer = file.new Writer();
      for (Event event : timeline) {
        event.told(writer);
      }
      second.ifPresent(file::second);
      MidiSystem.write(file.sequence, FORMAT_WITH_TRACKS, out);
    } catch (InvalidMidiDataException e) {
      throw new IllegalStateException(WRONG, e);
    }
  }

  private void head() {
    String title = timeline.performance().composition().title();
    tracks.text(signs, TEXT_NAME, timeline.originBeat(), title);
    tracks.text(sollus, TEXT_NAME, timeline.originBeat(), "Sollus");
    tracks.text(hand, TEXT_NAME, timeline.originBeat(), "Hand");
    Tempo tempo = timeline.performance().composition().tempo();
    int microseconds = (int) tempo.unitsOf(Ratio.ONE, MICROSECONDS);
    tracks.meta(
        signs,
        TEMPO,
        timeline.originBeat(),
        new byte[] {(byte) (microseconds >> 16), (byte) (microseconds >> 8), (byte) microseconds});
    metres();
  }

  private void second(Timeline other) {
    Track track = sequence.createTrack();
    tracks.text(track, TEXT_NAME, timeline.originBeat(), "Sollus, second reciter");
    for (Event event : other) {
      if (event instanceof Event.SolluSaid said) {
        solluSaid(track, SECOND_KEY, said);
      }
    }
  }

  private boolean solluSaid(Track track, int key, Event.SolluSaid said) {
    tracks.text(track, TEXT_LYRIC, said.beat(), writing.alone(said.sollu()) + " ");
    return tracks.note(track, key, velocity(said.stress()), said.beat(), said.beats());
  }

  private void metres() {
    MidiMetre.of(avartana, timeline.originBeat()).forEach(one -> metre(one.beat(), one.beats()));
  }

  private void metre(Ratio beat, int beats) {
    if (beats <= MOST_METRE) {
      byte[] metre = {(byte) beats, 2, CLOCKS_PER_QUARTER, THIRTY_SECONDS_PER_QUARTER};
      tracks.meta(signs, METRE, beat, metre);
    }
  }

  /** Writes an event; false for one that has no place in such a file. */
  private final class Writer implements EventVisitor<Boolean> {
    @Override
    public Boolean countIn(Event.CountIn countIn) {
      return tracks.text(signs, TEXT_MARKER, countIn.beat(), "Count-in");
    }

    @Override
    public Boolean noticePut(Event.NoticePut put) {
      return put.notice()
          .words()
          .map(w -> tracks.text(signs, TEXT_MARKER, put.beat(), w))
          .orElse(false);
    }

    @Override
    public Boolean roundStart(Event.RoundStart round) {
      String words = "Round " + round.number() + ", " + Nadai.inWords(round.nadai());
      return tracks.text(signs, TEXT_MARKER, round.beat(), words);
    }

    @Override
    public Boolean sectionStart(Event.SectionStart section) {
      return tracks.text(signs, TEXT_MARKER, section.beat(), section.phrase());
    }

    @Override
    public Boolean nadaiChange(Event.NadaiChange change) {
      return tracks.text(signs, TEXT_MARKER, change.beat(), change.to() + " matras a beat");
    }

    @Override
    public Boolean solluSaid(Event.SolluSaid said) {
      return MidiFile.this.solluSaid(sollus, SOLLU_KEY, said);
    }

    @Override
    public Boolean landing(Event.LandingPoint landing) {
      return tracks.text(signs, TEXT_MARKER, landing.beat(), "Landing");
    }

    @Override
    public Boolean tick(Event.Tick tick) {
      return false;
    }

    @Override
    public Boolean silence(Event.Silence silence) {
      return false;
    }

    @Override
    public Boolean inhale(Event.Inhale inhale) {
      return false;
    }

    @Override
    public Boolean handBeat(Event.HandBeat beat) {
      int softer = beat.again() ? 20 : 0;
      Ratio half = Ratio.of(1, 2);
      if (beat.kriya() instanceof Kriya.Clap) {
        return tracks.note(hand, CLAP_KEY, (beat.samam() ? 120 : 100) - softer, beat.beat(), half);
      } else if (beat.kriya() instanceof Kriya.Count count) {
        return tracks.note(hand, FINGER_KEYS.get(count.finger()), 60 - softer, beat.beat(), half);
      } else if (beat.kriya() instanceof Kriya.Wave) {
        return tracks.note(hand, WAVE_KEY, 80 - softer, beat.beat(), half);
      }
      return false;
    }
  }

  private static int velocity(Stress stress) {
    return switch (stress) {
      case ROUND -> 110;
      case SAMAM -> 104;
      case PHRASE -> 96;
      case NONE -> 84;
    };
  }
}
