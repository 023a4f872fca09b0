package org.matraloom.film;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.picture.Typeface;
import org.matraloom.score.Avartana;
import org.matraloom.score.Kriya;
import org.matraloom.score.Performance;
import org.matraloom.sheet.SheetWords;
import org.matraloom.sound.RenderProgress;
import org.matraloom.time.FrameClock;
import org.matraloom.time.Ratio;

/** Puts the pictures of a film into a sink, each as often as it lasts. */
final class FilmReel {

  private final FilmOrder order;
  private final FilmPlan plan;
  private final Typeface typeface = new Typeface();
  private final ScreenBands bands;
  private final CardBand cards;
  private long put;

  FilmReel(FilmOrder order, FilmPlan plan) {
    this.order = order;
    this.plan = plan;
    this.bands = new ScreenBands(order.size());
    this.cards = new CardBand(order.size());
  }

  /** A canvas with the letters of this film. */
  FilmCanvas canvas() {
    return new FilmCanvas(order.size(), order.look(), typeface);
  }

  /** Puts all pictures, in order. */
  void run(PictureSink sink, RenderProgress progress) throws IOException {
    FilmCanvas canvas = canvas();
    List<Band> seen = List.of();
    put = 0;
    for (FilmPlan.Part part : plan.parts()) {
      if (part.isCard()) {
        hold(seen, part.startFrame(), canvas, sink);
        seen = card(part);
        continue;
      }
      FilmPass pass = plan.pass(part);
      FrameClock clock = pass.timeline().clock(plan.clock().ratePerSecond());
      PassViews views = views(pass);
      while (views.hasNext()) {
        ScreenView view = views.next();
        hold(seen, part.startFrame() + clock.frameAt(view.beat()), canvas, sink);
        seen = bands.of(view);
        progress.rendered(put, plan.pictures());
      }
    }
    hold(seen, plan.clock().frameAt(plan.pictures()), canvas, sink);
    progress.rendered(put, plan.pictures());
  }

  /** Shows what is seen up to a frame of sound. */
  private void hold(List<Band> seen, long untilFrame, FilmCanvas canvas, PictureSink sink)
      throws IOException {
    long until = Math.min(plan.pictures(), plan.clock().pictureAt(untilFrame));
    if (until <= put) {
      return;
    }
    boolean changed = canvas.show(seen);
    for (; put < until; put++) {
      sink.put(canvas, changed);
      changed = false;
    }
  }

  PassViews views(FilmPass pass) {
    return new PassViews(pass, typeface, order.size().body());
  }

  List<Band> screen(ScreenView view) {
    return bands.of(view);
  }

  FilmPen pen(Surface surface) {
    return new FilmPen(surface, typeface, order.look());
  }

  /** What is seen before a pass: the title before the first, how it is taken before the others. */
  List<Band> card(FilmPlan.Part part) {
    FilmPass pass = plan.pass(part);
    Performance performance = pass.timeline().performance();
    SheetWords words = new SheetWords(pass.sheet());
    String tempo = performance.composition().tempo().beatsPerMinute().toMixed() + " beats a minute";
    List<String> lines = new ArrayList<>();
    if (part.pass() > 0) {
      String name = pass.name().isEmpty() ? tempo : pass.name();
      if (!pass.name().isEmpty()) {
        lines.add(tempo);
      }
      if (pass.wordsHidden()) {
        lines.add("The words are hidden: say them from memory.");
      }
      return cards.of(new FilmCard(name, lines, List.of(), Optional.empty()));
    }
    lines.add(words.setting());
    if (!pass.name().isEmpty()) {
      lines.add("First: " + pass.name());
    }
    lines.add("Keep the level low, and stop if it strains.");
    return cards.of(
        new FilmCard(words.title(), lines, kriyas(performance), Optional.of(views(pass).first())));
  }

  private static List<Kriya> kriyas(Performance performance) {
    Avartana avartana = performance.avartana();
    return avartana.goingOnAt(Ratio.of(avartana.samamBefore(performance.startBeat()))).kriyas();
  }
}
