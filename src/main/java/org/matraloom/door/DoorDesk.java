package org.matraloom.door;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Takes a request in, has it answered, and sends the reply with the rules for the page. */
final class DoorDesk {

  private static final String ASK_AGAIN =
      "Open the newest address that the program has printed; each opens one page.";
  private static final int CHUNK = 16_384;

  private static final Map<String, String> RULES =
      Map.of(
          "X-Content-Type-Options", "nosniff",
          "X-Frame-Options", "DENY",
          "Referrer-Policy", "no-referrer",
          "Cross-Origin-Opener-Policy", "same-origin",
          "Cross-Origin-Resource-Policy", "same-origin",
          "Permissions-Policy", "microphone=(self), camera=(), geolocation=()",
          "Cache-Control", "no-store",
          "Content-Security-Policy", "default-src 'none'; frame-ancestors 'none'");

  private final DoorGuard guard;
  private final DoorEntrance entrance;
  private final List<DoorRoute> routes;

  DoorDesk(DoorGuard guard, DoorEntrance entrance, List<DoorRoute> routes) {
    this.guard = guard;
    this.entrance = entrance;
    this.routes = routes;
  }

  void serve(HttpExchange exchange) throws IOException {
    DoorReply reply;
    try {
      reply = reply(exchange);
    } catch (DoorFault fault) {
      reply = DoorReply.text(fault.status(), fault.getMessage());
    } catch (IOException | RuntimeException problem) {
      reply = DoorReply.text(DoorReply.FAILED, "the machine could not: " + problem.getMessage());
    }
    send(exchange, reply);
  }

  private DoorReply reply(HttpExchange exchange) throws DoorFault, IOException {
    Headers headers = exchange.getRequestHeaders();
    String method = exchange.getRequestMethod();
    Optional<String> refusal = guard.refusal(method, headers);
    if (refusal.isPresent()) {
      throw new DoorFault(DoorReply.REFUSED, refusal.get());
    }
    String path = exchange.getRequestURI().getPath();
    Map<String, String> query = query(exchange.getRequestURI().getRawQuery());
    if (path.equals(DoorEntrance.PATH) && method.equals("GET")) {
      return entered(guard.knows(headers), query.getOrDefault("key", ""));
    }
    if (!guard.knows(headers)) {
      throw new DoorFault(DoorReply.REFUSED, ASK_AGAIN);
    }
    DoorRoute route =
        routes.stream()
            .filter(one -> one.method().equals(method) && one.serves(path))
            .findFirst()
            .orElseThrow(() -> new DoorFault(DoorReply.MISSING, "there is nothing at " + path));
    return route.answer().to(new DoorRequest(path, query, body(exchange, route.mostBytes())));
  }

  private DoorReply entered(boolean known, String key) throws DoorFault {
    if (!known && !entrance.opensFor(key)) {
      throw new DoorFault(DoorReply.REFUSED, ASK_AGAIN);
    }
    Map<String, String> head = Map.of("Location", "/", "Set-Cookie", guard.handedOver());
    return new DoorReply(303, "text/plain", head, new byte[0]);
  }

  /** Reads what was sent along, and stops as soon as it is too much. */
  private static byte[] body(HttpExchange exchange, long most) throws DoorFault, IOException {
    String said = exchange.getRequestHeaders().getFirst("Content-Length");
    if (said != null && Long.parseLong(said) > most) {
      throw tooLarge(most);
    }
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    byte[] chunk = new byte[CHUNK];
    InputStream in = exchange.getRequestBody();
    for (int length = in.read(chunk); length > 0; length = in.read(chunk)) {
      body.write(chunk, 0, length);
      if (body.size() > most) {
        throw tooLarge(most);
      }
    }
    return body.toByteArray();
  }

  private static DoorFault tooLarge(long most) {
    return new DoorFault(DoorReply.TOO_LARGE, "more was sent than the " + most + " bytes allowed");
  }

  private static Map<String, String> query(String raw) throws DoorFault {
    Map<String, String> values = new HashMap<>();
    if (raw == null || raw.isEmpty()) {
      return values;
    }
    for (String pair : raw.split("&")) {
      int equals = pair.indexOf('=');
      String name = equals < 0 ? pair : pair.substring(0, equals);
      values.put(decoded(name), equals < 0 ? "" : decoded(pair.substring(equals + 1)));
    }
    return values;
  }

  private static String decoded(String word) throws DoorFault {
    try {
      return URLDecoder.decode(word, StandardCharsets.UTF_8);
    } catch (IllegalArgumentException unreadable) {
      throw new DoorFault(DoorReply.BAD, "the address cannot be read");
    }
  }

  private static void send(HttpExchange exchange, DoorReply reply) throws IOException {
    Headers head = exchange.getResponseHeaders();
    RULES.forEach(head::set);
    head.set("Content-Type", reply.type());
    reply.headers().forEach(head::set);
    byte[] body = reply.body();
    exchange.sendResponseHeaders(reply.status(), body.length == 0 ? -1 : body.length);
    if (body.length > 0) {
      try (OutputStream out = exchange.getResponseBody()) {
        out.write(body);
      }
    }
  }
}
