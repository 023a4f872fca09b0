package org.matraloom.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.matraloom.device.FakeIn;
import org.matraloom.device.FakeOut;
import org.matraloom.live.LivePiece;
import org.matraloom.live.Rivers;
import org.matraloom.score.Lexicon;
import org.matraloom.sound.Mix;
import org.matraloom.sound.MixPart;
import org.matraloom.sound.TakeNote;
import org.matraloom.time.Tempo;
import org.matraloom.wav.WavReader;

/** A row on devices that are wired to each other, and what is seen of it. */
@Timeout(120)
class RowPassTest {

  private static final Tempo TEMPO = Tempo.of(240);

  @TempDir private Path folder;

  private final FakeOut out = new FakeOut();
  private final FakeIn in = new FakeIn(out, 700);
  private final StringWriter lines = new StringWriter();

  private RowPass.End record(String keys) throws IOException {
    LivePiece piece = Rivers.piece(TEMPO, 1);
    TakeNote note =
        new TakeNote("river", "", piece.passages().get(0), Optional.empty(), Optional.of(700L));
    Mix claps = Mix.lesson().only(Set.of(MixPart.CLAP, MixPart.COUNT));
    ByteArrayInputStream keysIn = new ByteArrayInputStream(keys.getBytes());
    try (RowDesk desk = RowDesk.open(true, new PrintWriter(lines), keysIn)) {
      desk.row("row 1 of 2", "taka", 2);
      PassSound sound = new PassSound(piece, claps, Rivers.MONO, note, Lexicon.standard());
      return RowPass.record(sound, 8, out, in, take(), desk);
    }
  }

  private Path take() {
    return folder.resolve("row.wav");
  }

  @Test
  void aRowIsPlayedAndRecordedAndTellsWhereItsClapsAre() throws IOException {
    out.letGo();
    RowPass.End end = record("");
    assertEquals(new RowPass.End(Optional.empty(), 0), end);
    assertTrue(lines.toString().contains("row 1 of 2: listen to \"taka\", then say it 2 times"));
    try (WavReader take = new WavReader(take())) {
      assertTrue(take.lengthFrames() >= 16 * Rivers.RATE, "all of it");
      assertEquals("count-in", take.cues().get(0).label());
    }
    assertTrue(GuideHeard.peakDbfs(take(), TEMPO).orElseThrow() > -30, "claps are heard");
  }

  @Test
  void aKeyEndsItAndIsTold() throws IOException {
    out.letGo();
    assertEquals(Optional.of(RowKey.SKIP), record("xs").key());
    try (WavReader take = new WavReader(take())) {
      assertTrue(take.lengthFrames() < 16 * Rivers.RATE);
    }
  }

  @Test
  void eachKeyAsksForOneThing() {
    assertEquals(Optional.of(RowKey.AGAIN), RowKey.of('a'));
    assertEquals(Optional.of(RowKey.PAUSE), RowKey.of(' '));
    assertEquals(Optional.of(RowKey.END), RowKey.of('q'));
    assertEquals(Optional.of(RowKey.END), RowKey.of(3), "control-C");
    assertEquals(Optional.of(RowKey.END), RowKey.of(KeyDecoder.Source.END));
    assertEquals(Optional.empty(), RowKey.of(KeyDecoder.Source.NONE));
    assertEquals(Optional.empty(), RowKey.of('z'));
  }

  @Test
  void thePageTellsWhatToDoNowAndFits() {
    assertEquals(RowView.Now.WAIT, RowView.at(-1, 4));
    assertEquals(RowView.Now.LISTEN, RowView.at(3, 4));
    assertEquals(RowView.Now.SAY, RowView.at(4, 4));
    RowView view =
        new RowView(
            "row 7 of 25, about 5 min left",
            "tadinginatom",
            RowView.Now.SAY,
            Optional.of(3),
            "[###] -12 dB",
            "2 of 3 are good; number 2: it was too soft, -50 dB; come nearer, or turn the input up.");
    List<String> page = view.lines(80, 24);
    assertTrue(page.size() <= 24, page.toString());
    assertTrue(page.stream().allMatch(line -> line.length() <= 80), page.toString());
    assertTrue(page.contains("    SAY IT NOW"), page.toString());
    assertTrue(page.contains("    T A D I N G I N A T O M"), page.toString());
    assertEquals(10, view.lines(80, 10).size());
    RowView words = new RowView("", "ta ka tom", RowView.Now.WAIT, Optional.empty(), "", "");
    assertTrue(words.lines(80, 24).contains("    T A  K A  T O M"), "words stay apart");
  }
}
