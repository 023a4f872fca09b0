package org.matraloom.app.voices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.device.DeviceException;
import org.matraloom.prompt.AskedRow;
import org.matraloom.prompt.RowFolder;
import org.matraloom.session.RowDesk;
import org.matraloom.session.RowPass;
import org.matraloom.voice.FormantVoice;
import org.matraloom.voice.SpokenLine;
import org.matraloom.voice.VoiceSettings;
import org.matraloom.wav.CuePoint;
import org.matraloom.wav.PcmFormat;
import org.matraloom.wav.WavWriter;

/** Rows that are asked for, on a recorder that does what a microphone may do. */
class RowSessionTest {

  private static final int RATE = SpokenLine.RATE;
  private static final double START = 0.5;
  private static final List<AskedRow> ROWS =
      List.of(
          AskedRow.of("takadimi tam , , .", SpokenLine.LEXICON).orElseThrow(),
          AskedRow.of("tam , , . tom , , .", SpokenLine.LEXICON).orElseThrow());

  @TempDir private Path place;

  private final StringWriter lines = new StringWriter();
  private final List<String> asked = new ArrayList<>();

  private RowSession session(RowSession.Recorder recorder) throws IOException {
    RowFolder folder = new RowFolder(place.resolve("river.rows"), SpokenLine.LEXICON);
    folder.begin(new RowFolder.Head("Mira of the Delta", "", "yes"), ROWS);
    RowDesk desk =
        RowDesk.open(true, new PrintWriter(lines), new ByteArrayInputStream(new byte[0]));
    return new RowSession(folder, recorder, desk);
  }

  private void notes(AskedRow row, int says) {
    asked.add(row.words() + " x" + says);
  }

  /** So many sayings of a row by the synthesiser, in a room with a little noise. */
  private static RowPass.End said(AskedRow row, int says, double share, Path target)
      throws IOException {
    float[] sound = new float[(int) ((START + AskedRow.sayBegins(says) + 0.5) * RATE)];
    for (int say = 0; say < says; say++) {
      SpokenLine line = new SpokenLine();
      int first = (int) line.endFrame();
      for (int i = 0; i < row.places().size(); i++) {
        double next = i + 1 < row.places().size() ? row.places().get(i + 1).seconds() : 3.2;
        int ms = (int) (1000 * Math.min(1.2, next - row.places().get(i).seconds()));
        line.say(row.places().get(i).sound(), ms);
        if (next - row.places().get(i).seconds() > 1.2) {
          line.say(".", (int) (1000 * (next - row.places().get(i).seconds())) - ms);
        }
      }
      float[] wave = line.render(new FormantVoice(RATE, SpokenLine.LEXICON, VoiceSettings.USUAL));
      int at = (int) ((START + AskedRow.sayBegins(say)) * RATE) - first;
      for (int i = 0; i < wave.length && at + i < sound.length; i++) {
        sound[at + i] += 0.5f * wave[i];
      }
    }
    Random random = new Random(3);
    for (int i = 0; i < sound.length; i++) {
      sound[i] += (float) (1e-4 * random.nextGaussian());
    }
    int frames = (int) (share * sound.length);
    CuePoint begin = new CuePoint((long) (START * RATE), "count-in");
    try (WavWriter file =
        new WavWriter(target, new PcmFormat(RATE, 16, 1), frames, List.of(begin))) {
      file.write(sound, frames);
      file.finish();
    }
    return new RowPass.End(Optional.empty(), 0);
  }

  @Test
  void aRowIsAskedForAgainWhereTheMicrophoneStalledOnce() throws IOException {
    RowSession session =
        session(
            (row, says, target) -> {
              notes(row, says);
              if (asked.size() == 1) {
                said(row, says, 0.4, target);
                throw new DeviceException("the microphone gives nothing any more");
              }
              return said(row, says, 1, target);
            });
    assertTrue(session.run(), lines.toString());
    assertEquals(3, asked.size(), asked + lines.toString());
    assertTrue(asked.get(1).startsWith("takadimi tam"), "the row that broke off: " + asked);
    assertTrue(asked.get(2).startsWith("tam"), "and then the next: " + asked);
    assertEquals(List.of(), session.missing());
  }

  @Test
  void whatWasSaidWellBeforeItStalledIsKept() throws IOException {
    RowSession session =
        session(
            (row, says, target) -> {
              notes(row, says);
              if (asked.size() == 1) {
                said(row, says, 0.8, target);
                throw new DeviceException("the microphone gives nothing any more");
              }
              return said(row, says, 1, target);
            });
    assertTrue(session.run(), lines.toString());
    assertTrue(asked.get(0).endsWith("x3"), asked.toString());
    assertTrue(asked.get(1).matches("takadimi tam.* x[12]"), asked + lines.toString());
    assertEquals(6, session.kept());
  }

  @Test
  void aMicrophoneThatStallsTwiceInTurnIsGone() throws IOException {
    RowSession session =
        session(
            (row, says, target) -> {
              notes(row, says);
              said(row, says, 0.4, target);
              throw new DeviceException("the microphone gives nothing any more");
            });
    assertThrows(DeviceException.class, session::run);
    assertEquals(2, asked.size());
  }

  @Test
  void framesThatWereLostMakeATryThatDoesNotCount() throws IOException {
    RowSession session =
        session(
            (row, says, target) -> {
              notes(row, says);
              said(row, says, 1, target);
              return new RowPass.End(Optional.empty(), asked.size() == 1 ? 1 : 0);
            });
    assertTrue(session.run(), lines.toString());
    assertTrue(lines.toString().contains("The sound broke off; once more."), lines.toString());
    assertEquals(3, asked.size(), asked.toString());
    assertEquals(asked.get(0), asked.get(1));
    assertEquals(6, session.kept());
  }
}
