package org.matraloom.film;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.matraloom.schedule.Event;
import org.matraloom.script.Script;
import org.matraloom.sheet.DrawnLine;
import org.matraloom.sheet.Sheets;
import org.matraloom.time.FrameClock;
import org.matraloom.time.Ratio;

/** Which pictures a film has, and when they change. */
class FilmReelTest {

  /** Two passes of a piece whose nadai changes, the second one slower. */
  private static FilmOrder order() {
    var piece = Sheets.sample("culvert");
    return Films.order(
        FilmSize.SMALL,
        25,
        Films.pass(piece, Script.LATIN, "100 %"),
        Films.pass(piece.at(piece.tempo().scaled(Ratio.of(4, 5))), Script.LATIN, "80 %"));
  }

  @Test
  void theHandMovesInThePictureNearestToItsClapAndInNoOther() throws IOException {
    FilmOrder order = order();
    FilmPlan plan = new FilmPlan(order);
    TreeMap<Long, Integer> changes = new TreeMap<>();
    List<byte[]> before = new ArrayList<>();
    long[] put = {0};
    PictureSink sink =
        (canvas, changed) -> {
          byte[] now = canvas.planes();
          boolean differs = before.isEmpty() || !Arrays.equals(before.get(0), now);
          assertTrue(changed || !differs, "picture " + put[0] + " is new and is not said to be");
          if (differs) {
            before.clear();
            before.add(now.clone());
            changes.put(put[0], changes.size());
          }
          put[0]++;
        };
    new FilmReel(order, plan).run(sink, (done, total) -> assertEquals(plan.pictures(), total));
    assertEquals(plan.pictures(), put[0]);
    int beats = 0;
    TreeSet<Long> expected = new TreeSet<>();
    for (FilmPlan.Part part : plan.parts()) {
      expected.add(plan.clock().pictureAt(part.startFrame()));
      if (!part.isCard()) {
        FrameClock clock = plan.pass(part).timeline().clock(Films.RATE);
        for (Event event : plan.pass(part).timeline()) {
          boolean seen = event instanceof Event.HandBeat || event instanceof Event.SolluSaid;
          long frame = part.startFrame() + clock.frameAt(event.beat());
          if (seen && frame < plan.frames()) {
            expected.add(plan.clock().pictureAt(frame));
            beats++;
          }
        }
      }
    }
    assertTrue(beats > 200, "events: " + beats);
    TreeSet<Long> missing = new TreeSet<>(expected);
    missing.removeAll(changes.keySet());
    assertEquals(new TreeSet<>(), missing);
  }

  @Test
  void theLampLiesUnderTheBeatAndNothingElse() {
    FilmPass pass = Films.pass(Sheets.sample("culvert"), Script.LATIN, "");
    FilmOrder order = Films.order(FilmSize.WIDE, 30, pass);
    FilmReel reel = new FilmReel(order, new FilmPlan(order));
    FilmCanvas canvas = reel.canvas();
    PassViews views = reel.views(pass);
    double scale = FilmSize.WIDE.room() / DrawnLine.WIDTH;
    int lit = 0;
    int dark = 0;
    while (views.hasNext()) {
      ScreenView view = views.next();
      canvas.show(reel.screen(view));
      TreeSet<Integer> columns = columns(canvas, FilmLook.LIGHT.lamp());
      if (view.line().cell().isEmpty()) {
        assertEquals(new TreeSet<>(), columns);
        dark++;
        continue;
      }
      DrawnLine.Stretch cell = view.line().cell().get();
      assertTrue(cell.holds(view.beat()));
      assertEquals(FilmSize.MARGIN + cell.left() * scale, columns.first(), 9);
      assertEquals(FilmSize.MARGIN + cell.right() * scale, columns.last(), 9);
      lit++;
    }
    assertTrue(lit > 80 && dark >= 8, lit + " lit, " + dark + " in the count-in and at the end");
  }

  private static TreeSet<Integer> columns(FilmCanvas canvas, Color lamp) {
    TreeSet<Integer> columns = new TreeSet<>();
    for (int x = 0; x < canvas.image().getWidth(); x++) {
      for (int y = 200; y < 530; y += 6) {
        if (canvas.image().getRGB(x, y) == lamp.getRGB()) {
          columns.add(x);
        }
      }
    }
    return columns;
  }

  @Test
  void aChangeOfNadaiIsToldAnAvartanaBefore() {
    FilmPass pass = Films.pass(Sheets.sample("monsoon-ledger"), Script.LATIN, "");
    FilmOrder order = Films.order(FilmSize.WIDE, 30, pass);
    PassViews views = new FilmReel(order, new FilmPlan(order)).views(pass);
    TreeMap<Integer, Integer> beatsLeft = new TreeMap<>();
    while (views.hasNext()) {
      ScreenView view = views.next();
      view.news()
          .filter(ScreenView.News.Change.class::isInstance)
          .map(ScreenView.News.Change.class::cast)
          .filter(change -> change.after() == 5)
          .ifPresent(
              change -> {
                assertEquals(4, change.before());
                assertEquals("from samam", change.place());
                beatsLeft.put((int) view.beat().ceil(), change.beatsLeft());
              });
    }
    assertEquals(32, beatsLeft.firstKey(), "the nadai changes on beat 40 and adi has 8 beats");
    assertEquals(8, beatsLeft.get(32));
    assertEquals(1, beatsLeft.get(39));
    assertEquals(0, beatsLeft.get(40));
    assertEquals(42, beatsLeft.lastKey(), 1);
  }
}
