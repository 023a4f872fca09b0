package org.matraloom.door;

import com.sun.net.httpserver.Headers;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Who may ask.
 *
 * <p>A page elsewhere can make a browser send anything here, and a name of its own can be made to
 * mean this machine. So each request must name this address as its host, must come from a page of
 * this address if it says where it comes from (RFC 6454; W3C, "Fetch Metadata Request Headers"),
 * and must carry the secret. What changes something must say where it comes from.
 */
final class DoorGuard {

  private static final Set<String> OWN_SITES = Set.of("same-origin", "none");

  private final String host;
  private final String cookie;
  private final String secret;

  DoorGuard(DoorKeys keys) {
    this.host = Door.HOST + ":" + keys.port();
    this.cookie = "matraloom-" + keys.port();
    this.secret = keys.secret();
  }

  /** Why a request is refused before anything of it is read; empty if it may come nearer. */
  Optional<String> refusal(String method, Headers headers) {
    if (!only(headers, "Host").filter(host::equals).isPresent()) {
      return Optional.of("this server answers as " + host + " only");
    }
    boolean changes = !method.equals("GET") && !method.equals("HEAD");
    List<String> origins = headers.getOrDefault("Origin", List.of());
    boolean own = origins.size() == 1 && origins.get(0).equals("http://" + host);
    if (!own && (changes || !origins.isEmpty())) {
      return Optional.of("another page may not ask here");
    }
    List<String> sites = headers.getOrDefault("Sec-fetch-site", List.of());
    if (!OWN_SITES.containsAll(sites)) {
      return Optional.of("another page may not ask here");
    }
    return Optional.empty();
  }

  /** Whether a request carries the secret. */
  boolean knows(Headers headers) {
    return headers.getOrDefault("Cookie", List.of()).stream()
        .flatMap(line -> Stream.of(line.split(";")))
        .map(String::strip)
        .filter(pair -> pair.startsWith(cookie + "="))
        .anyMatch(pair -> DoorKeys.same(pair.substring(cookie.length() + 1), secret));
  }

  /** The line that gives a browser the secret; no script can read it, no other page sends it. */
  String handedOver() {
    return cookie + "=" + secret + "; Path=/; HttpOnly; SameSite=Strict";
  }

  private static Optional<String> only(Headers headers, String name) {
    List<String> all = headers.getOrDefault(name, List.of());
    return all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
  }
}
