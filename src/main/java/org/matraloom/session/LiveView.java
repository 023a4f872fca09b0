package org.matraloom.session;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.matraloom.live.LivePosition;
import org.matraloom.score.Avartana;
import org.matraloom.score.Kriya;

/**
 * Lays out what is to be seen as lines of text, for a screen of any size; 80 by 24 shows all.
 *
 * <p>Nothing depends on colour. What matters most is highest, so that a low screen loses the least.
 */
final class LiveView {

  private static final int USUAL_WIDTH = 80;
  private static final int LABEL = 10;

  private LiveView() {}

  /** The lines of a screen, each cut to its width, no more than its height. */
  static List<String> lines(PlayState state, int width, int height) {
    List<String> lines = state.told().showsKeys() ? keys() : page(state);
    return lines.stream()
        .limit(Math.max(1, height))
        .map(line -> line.length() > width ? line.substring(0, Math.max(0, width)) : line)
        .toList();
  }

  private static List<String> page(PlayState state) {
    LiveWords words = new LiveWords(state);
    List<String> lines = new ArrayList<>();
    String title = state.played().composition().title();
    lines.add(apart(title.isEmpty() ? state.chosen().section().name() : title, words.tempo()));
    String playing = state.played().isPlaying() ? "playing" : "silent; space starts";
    lines.add(apart(words.tala(), playing));
    lines.add("");
    state
        .played()
        .position()
        .ifPresentOrElse(position -> place(state, words, position, lines), () -> ready(lines));
    lines.add(row("nadai", state.played().position().map(words::nadai).orElse("")));
    lines.add(row("change", state.played().position().flatMap(words::change).orElse("")));
    lines.add(row("piece", words.round() + ", " + words.section() + ", " + words.loop()));
    lines.add("");
    lines.add(row("sound", parts(state, words)));
    lines.add(row("underruns", state.played().gaps().words()));
    lines.add(row("", state.told().message()));
    lines.add(state.told().meter().isEmpty() ? "" : row("level", state.told().meter()));
    lines.add(state.told().hint());
    return lines;
  }

  private static void place(
      PlayState state, LiveWords words, LivePosition position, List<String> lines) {
    Avartana avartana = state.played().composition().avartana();
    List<String> figure = BigDigits.of(words.beatNumber(position));
    List<String> beside =
        List.of(
            words.avartana(position),
            "beat " + words.beatNumber(position) + " of " + avartana.beats(),
            words.kriya(position.beat()).toUpperCase(Locale.ROOT),
            "then " + words.kriya(position.beat() + 1),
            "");
    for (int line = 0; line < BigDigits.HEIGHT; line++) {
      lines.add("  " + padded(figure.get(line), 2 * 7 + 4) + beside.get(line));
    }
    lines.add("");
    lines.add(row("hand", hand(avartana, position)));
    if (state.said().isPresent()) {
      SaidLines said = said(state, words, position);
      lines.add(row("early", said.early()));
      lines.add(row("now", said.words()));
      lines.add(row("late", said.late()));
    } else {
      lines.add(row("now", words.words(position, 0)));
    }
    lines.add(row("next", words.words(position, 1)));
    lines.add("");
  }

  private static SaidLines said(PlayState state, LiveWords words, LivePosition position) {
    return SaidLines.of(
        state.played().sheet(),
        state.said().orElseThrow(),
        position.beat(),
        List.of(words.words(position, -1), words.words(position, 0)),
        USUAL_WIDTH - LABEL - 2);
  }

  private static void ready(List<String> lines) {
    lines.addAll(Collections.nCopies(BigDigits.HEIGHT, ""));
    lines.addAll(List.of("", row("hand", ""), row("now", ""), row("next", ""), ""));
  }

  /** The kriyas of the avartana, the one that is given in brackets. */
  private static String hand(Avartana avartana, LivePosition position) {
    StringBuilder text = new StringBuilder();
    long samam = position.beat() - Math.floorMod(position.beat(), (long) avartana.beats());
    for (int beat = 0; beat < avartana.beats(); beat++) {
      String sign = sign(avartana.kriyaAt(samam + beat));
      text.append(samam + beat == position.beat() ? "[" + sign + "]" : " " + sign + " ");
    }
    return text.toString();
  }

  private static String sign(Kriya kriya) {
    if (kriya instanceof Kriya.Clap) {
      return "X";
    } else if (kriya instanceof Kriya.Wave) {
      return "~";
    }
    return kriya instanceof Kriya.Count count ? initial(count) : "-";
  }

  private static String initial(Kriya.Count count) {
    return count.finger().name().substring(0, 1).toLowerCase(Locale.ROOT);
  }

  private static String parts(PlayState state, LiveWords words) {
    return state.chosen().parts().stream()
        .map(part -> part.words() + (words.isOn(part) ? " on" : " off"))
        .collect(Collectors.joining("  "));
  }

  private static List<String> keys() {
    return KeyAction.all().stream()
        .map(action -> "  " + padded(action.keys(), 2 * LABEL) + action.words())
        .toList();
  }

  private static String row(String label, String text) {
    return "  " + padded(label, LABEL) + text;
  }

  private static String apart(String left, String right) {
    int gap = USUAL_WIDTH - 2 - left.length() - right.length();
    return left + " ".repeat(Math.max(2, gap)) + right;
  }

  private static String padded(String text, int width) {
    return text + " ".repeat(Math.max(1, width - text.length()));
  }
}
