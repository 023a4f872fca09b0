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
  private int lastUnderruns;

  PlainLines(PrintWriter out) {
    this.out = out;
  }

  void show(PlayState state) {
    LiveWords words = new LiveWords(state);
    lastSettings = told(settings(state, words), lastSettings);
    Optional<LivePosition> spot = state.played().spot().filter(heard -> state.played().isPlaying());
    if (spot.isPresent()) {
      lastPlace = told(place(words, spot.get()), lastPlace);
      String change = words.change(spot.get()).map(to -> to.replaceAll(" in .*", "")).orElse("");
      if (!change.equals(lastChange) && !change.isEmpty()) {
        out.println("nadai change coming: " + words.change(spot.get()).get());
      }
      lastChange = change;
    }
    if (state.played().underruns() > lastUnderruns) {
      lastUnderruns = state.played().underruns();
      out.println("underruns " + lastUnderruns);
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

  private static String place(LiveWords words, LivePosition spot) {
    String avartana = spot.isBeforeTheMouth() ? "lead-in" : words.avartana(spot);
    return avartana + ", " + words.round() + ", " + words.section() + ", " + words.nadai(spot);
  }
}
