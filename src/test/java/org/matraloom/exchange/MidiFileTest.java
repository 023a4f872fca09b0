package org.matraloom.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MetaMessage;
import javax.sound.midi.MidiMessage;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Composition;
import org.matraloom.score.Kriya;
import org.matraloom.score.Performance;
import org.matraloom.script.Script;
import org.matraloom.script.SolluWriting;
import org.matraloom.sheet.Sheets;
import org.matraloom.time.Ratio;

/** MIDI files read back by the platform's own reader. */
class MidiFileTest {

  private static final SolluWriting WRITING = new SolluWriting(Script.LATIN, Sheets.LEXICON);

  @Test
  void everyEventIsOnItsTick() throws Exception {
    int compared = 0;
    for (Path sample : Sheets.samples()) {
      Timeline timeline = ScoreTimeline.of(Performance.of(Sheets.read(sample)), 1);
      Sequence read = read(bytes(timeline));
      assertEquals(Sequence.PPQ, read.getDivisionType(), 0);
      assertEquals(5040, read.getResolution());
      List<Long> sollus = new ArrayList<>();
      List<Long> strokes = new ArrayList<>();
      for (Event event : timeline) {
        Ratio tick = event.beat().minus(timeline.originBeat()).times(5040);
        if (event instanceof Event.SolluSaid) {
          assertTrue(tick.isWhole(), "the samples fall on ticks exactly");
          sollus.add(tick.num());
        } else if (event instanceof Event.HandBeat hand && !(hand.kriya() instanceof Kriya.Hold)) {
          strokes.add(tick.num());
        }
      }
      assertEquals(sollus, ticks(read.getTracks()[1], 0x05), sample + " lyrics");
      assertEquals(sollus, noteTicks(read.getTracks()[1]), sample + " sollus");
      assertEquals(strokes, noteTicks(read.getTracks()[2]), sample + " hand");
      compared += sollus.size() + strokes.size();
    }
    assertTrue(compared > 1_000, "ticks were compared: " + compared);
  }

  /** Figures: tempo and metre metas, worked out from the definition of the format. */
  @ParameterizedTest
  @CsvSource({
    "adi, 60, 0f4240, 08021808",
    "adi, 90, 0a2c2b, 08021808",
    "adi, 120, 07a120, 08021808",
    "misra chapu, 120, 07a120, 07021808"
  })
  void tempoAndMetreAreTheKnownBytes(String tala, int bpm, String tempo, String metre)
      throws Exception {
    Composition small = Sheets.score("tala " + tala + "\ntempo " + bpm + "\nA = takadimi\n");
    Sequence read = read(bytes(ScoreTimeline.of(Performance.of(small), 0)));
    assertEquals(List.of(tempo), metas(read.getTracks()[0], 0x51));
    assertEquals(List.of(metre), metas(read.getTracks()[0], 0x58));
  }

  @Test
  void aStartInsideTheCycleMakesTheFirstBarShorter() throws Exception {
    Composition culvert = Sheets.sample("culvert");
    Sequence read = read(bytes(ScoreTimeline.of(Performance.of(culvert), 0)));
    assertEquals(List.of("04021808", "08021808"), metas(read.getTracks()[0], 0x58));
    assertEquals(List.of(0L, 4L * 5040), ticks(read.getTracks()[0], 0x58));
  }

  @Test
  void theSecondsOfTheFileAreThoseOfTheTimeline() throws Exception {
    Timeline timeline = ScoreTimeline.of(Performance.of(Sheets.sample("gutter-song")), 1);
    Sequence read = read(bytes(timeline));
    double beats = timeline.endBeat().minus(timeline.originBeat()).toDouble();
    double tickSeconds = 60.0 / 66 / 5040;
    double fileSeconds = beats * Integer.parseInt("0ddf23", 16) / 1e6;
    assertEquals(List.of("0ddf23"), metas(read.getTracks()[0], 0x51));
    assertEquals(beats * 60 / 66, fileSeconds, tickSeconds);
  }

  @Test
  void namesRoundsAndLyricsAreText() throws Exception {
    Timeline timeline = ScoreTimeline.of(Performance.of(Sheets.sample("gutter-song")), 1);
    Sequence read = read(bytes(timeline));
    List<String> markers = texts(read.getTracks()[0], 0x06);
    assertEquals("Count-in", markers.get(0));
    assertEquals("Round 1, chatusra nadai (4)", markers.get(1));
    assertTrue(markers.contains("Stream"));
    assertEquals("Landing", markers.get(markers.size() - 1));
    assertEquals(List.of("ta ", "ki ", "ta "), texts(read.getTracks()[1], 0x05).subList(0, 3));
  }

  private static byte[] bytes(Timeline timeline) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    MidiFile.write(timeline, WRITING, out);
    return out.toByteArray();
  }

  private static Sequence read(byte[] file) throws InvalidMidiDataException, IOException {
    return MidiSystem.getSequence(new ByteArrayInputStream(file));
  }

  private static List<Long> ticks(Track track, int meta) {
    List<Long> ticks = new ArrayList<>();
    for (int index = 0; index < track.size(); index++) {
      if (track.get(index).getMessage() instanceof MetaMessage message
          && message.getType() == meta) {
        ticks.add(track.get(index).getTick());
      }
    }
    return ticks;
  }

  private static List<Long> noteTicks(Track track) {
    List<Long> ticks = new ArrayList<>();
    for (int index = 0; index < track.size(); index++) {
      MidiMessage message = track.get(index).getMessage();
      if (message instanceof ShortMessage note
          && note.getCommand() == ShortMessage.NOTE_ON
          && note.getData2() > 0) {
        ticks.add(track.get(index).getTick());
      }
    }
    return ticks;
  }

  private static List<String> metas(Track track, int meta) {
    List<String> bytes = new ArrayList<>();
    for (int index = 0; index < track.size(); index++) {
      if (track.get(index).getMessage() instanceof MetaMessage message
          && message.getType() == meta) {
        bytes.add(HexFormat.of().formatHex(message.getData()));
      }
    }
    return bytes;
  }

  private static List<String> texts(Track track, int meta) {
    List<String> texts = new ArrayList<>();
    for (String bytes : metas(track, meta)) {
      texts.add(new String(HexFormat.of().parseHex(bytes), StandardCharsets.UTF_8));
    }
    return texts;
  }
}
