package org.matraloom.door;

import java.nio.charset.StandardCharsets;
import java.util.Map;

/**
 * What a page is told.
 *
 * @param status a status of HTTP (RFC 9110, section 15)
 * @param type the media type of the body
 * @param headers further lines of the head
 * @param body the body, possibly empty
 */
public record DoorReply(int status, String type, Map<String, String> headers, byte[] body) {

  /** Done. */
  public static final int OK = 200;

  /** What was asked cannot be understood. */
  public static final int BAD = 400;

  /** Who asks is not let in. */
  public static final int REFUSED = 403;

  /** There is no such thing. */
  public static final int MISSING = 404;

  /** Something changed meanwhile. */
  public static final int CONFLICT = 409;

  /** More was sent than is taken. */
  public static final int TOO_LARGE = 413;

  /** The machine could not. */
  public static final int FAILED = 500;

  /** The server is about to end. */
  public static final int CLOSING = 503;

  /** Copies the map. */
  public DoorReply {
    headers = Map.copyOf(headers);
  }

  /**
   * A reply in words.
   *
   * @param status a status of HTTP
   * @param text what is said
   * @return the reply
   */
  public static DoorReply text(int status, String text) {
    byte[] bytes = (text + "\n").getBytes(StandardCharsets.UTF_8);
    return new DoorReply(status, "text/plain; charset=utf-8", Map.of(), bytes);
  }

  /**
   * A reply that went well.
   *
   * @param type the media type of the body
   * @param body the body
   * @return the reply
   */
  public static DoorReply of(String type, byte[] body) {
    return new DoorReply(OK, type, Map.of(), body);
  }
}
