package org.matraloom.door;

import java.util.function.Consumer;

/** The first address: it opens the door once, then there is another. */
final class DoorEntrance {

  /** The path of the first address. */
  static final String PATH = "/enter";

  private final int port;
  private final Consumer<String> next;
  private String key = DoorKeys.word();

  DoorEntrance(DoorKeys keys, Consumer<String> next) {
    this.port = keys.port();
    this.next = next;
  }

  synchronized String address() {
    return "http://" + Door.HOST + ":" + port + PATH + "?key=" + key;
  }

  /** Whether a word opens the door now; it does so once. */
  synchronized boolean opensFor(String given) {
    if (!DoorKeys.same(given, key)) {
      return false;
    }
    key = DoorKeys.word();
    next.accept(address());
    return true;
  }
}
