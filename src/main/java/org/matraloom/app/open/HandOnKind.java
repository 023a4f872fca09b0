package org.matraloom.app.open;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.matraloom.app.cli.UserError;

/**
 * A thing that is handed on, and the command that makes it.
 *
 * @param command the name of the command and its options, before the file
 * @param ending how its file ends; empty for a folder
 */
record HandOnKind(List<String> command, String ending) {

  private static final List<String> SPOKEN = List.of("render", "pack", "page");

  private static final Map<String, HandOnKind> KINDS =
      Map.ofEntries(
          Map.entry("sheet-pdf", new HandOnKind(List.of("sheet"), ".pdf")),
          Map.entry("sheet-svg", new HandOnKind(List.of("sheet"), ".svg")),
          Map.entry("sheet-html", new HandOnKind(List.of("sheet"), ".html")),
          Map.entry("sheet-txt", new HandOnKind(List.of("sheet"), ".txt")),
          Map.entry("read-aloud", new HandOnKind(List.of("sheet", "--read-aloud"), "-aloud.txt")),
          Map.entry("track", new HandOnKind(List.of("render"), ".wav")),
          Map.entry("slow-track", new HandOnKind(List.of("render", "--slow", "75%"), "-slow.wav")),
          Map.entry("pack", new HandOnKind(List.of("pack"), "")),
          Map.entry("page", new HandOnKind(List.of("page"), "-page.html")),
          Map.entry("midi", new HandOnKind(List.of("export"), ".mid")),
          Map.entry("musicxml", new HandOnKind(List.of("export"), ".musicxml")),
          Map.entry("vtt", new HandOnKind(List.of("export"), ".vtt")));

  HandOnKind {
    command = List.copyOf(command);
  }

  static HandOnKind of(String name) {
    return Optional.ofNullable(KINDS.get(name))
        .orElseThrow(() -> new UserError("nothing of the kind " + name + " is made"));
  }

  /** Whether the sollus are said in it. */
  boolean isSpoken() {
    return SPOKEN.contains(command.get(0));
  }

  boolean isSheet() {
    return command.get(0).equals("sheet");
  }

  boolean isFolder() {
    return ending.isEmpty();
  }
}
