package org.matraloom.session;

import java.io.PrintWriter;
import java.util.Optional;
import org.matraloom.live.LivePosition;

/** Tells what goes on in plain lines, one for each avartana and one for each thing that changes. */
final class PlainLines {

  private final PrintWriter out;
  private String lastPlace = "";
  private String lastChange = "";
  private String lastSettings = "";
  private String lastGaps = "0";

  PlainLines(PrintWriter out) {
    this.out = out;
  }

  void show(PlayState state) {
    LiveWords words = new LiveWords(state);
    lastSettings = told(settings(state, words), lastSettings);
    Optional<LivePosition> position =
        state.played().position().filter(heard -> state.played().isPlaying());
    if (position.isPresent()) {
      lastPlace = told(place(words, position.get()), lastPlace);
      String change =
          words.change(position.get()).map(to -> to.replaceAll(" in .*", "")).orElse("");
      if (!change.equals(lastChange) && !change.isEmpty()) {
        out.println("nadai change coming: " + words.change(position.get()).get());
      }
      lastChange = change;
    }
    String gaps = state.played().gaps().words();
    if (!gaps.equals(lastGaps)) {
      lastGaps = gaps;
      out.println("underruns " + gaps);
    }
    out.flush();
  }

  private String told(String text, String before) {
    if (!text.equals(before)) {
      out.println(text);
    }
    return text;
  }

  private static String settings(PlayState state, LiveWords words) {
    StringBuilder text = new StringBuilder(words.tempo());
    state.chosen().parts().stream()
        .filter(part -> !words.isOn(part))
        .forEach(part -> text.append(", ").append(part.words()).append(" off"));
    state.chosen().loop().ifPresent(loop -> text.append(", ").append(words.loop()));
    return text.toString();
  }

  private static String place(LiveWords words, LivePosition position) {
    String avartana = position.isBeforeTheMouth() ? "lead-in" : words.avartana(position);
    return avartana + ", " + words.round() + ", " + words.section() + ", " + words.nadai(position);
  }
}
