package org.matraloom.session;

import java.util.List;

/** What a key can ask for, with its keys and its line in the list of keys. */
enum KeyAction {
  START_STOP("space, Page Down", "start, stop"),
  AGAIN("enter, Page Up", "again from this section, after a lead-in"),
  NEXT("right", "next section"),
  PREVIOUS("left", "previous section"),
  FIRST("0, Home", "from the beginning"),
  ROUND("1 to 9", "go to a round"),
  FASTER("up", "tempo 1 up"),
  SLOWER("down", "tempo 1 down"),
  MUCH_FASTER("+", "tempo 5 up"),
  MUCH_SLOWER("-", "tempo 5 down"),
  DOUBLE("d", "double tempo"),
  HALF("h", "half tempo"),
  TAP("t", "tap the tempo, four times or more"),
  LOOP("l", "loop this section, or let go"),
  LOOP_ROUND("r", "loop this round, or let go"),
  CLAPS("c", "claps on, off"),
  COUNTS("f", "finger counts on, off"),
  WAVES("w", "waves on, off"),
  TICKS("k", "ticks on, off"),
  VOICE("v", "voice on, off"),
  BREATHS("b", "breath cues on, off"),
  DRONE("s", "sruti drone on, off"),
  HELP("?", "this list"),
  QUIT("q", "quit");

  private final String keys;
  private final String words;

  KeyAction(String keys, String words) {
    this.keys = keys;
    this.words = words;
  }

  String keys() {
    return keys;
  }

  String words() {
    return words;
  }

  static List<KeyAction> all() {
    return List.of(values());
  }
}
