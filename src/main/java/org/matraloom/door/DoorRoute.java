package org.matraloom.door;

import java.io.IOException;

/**
 * A thing that can be asked for.
 *
 * @param method GET, which changes nothing, or POST
 * @param path the path; one that ends with a slash stands for all that begin with it
 * @param mostBytes how long a body may be
 * @param answer gives the reply
 */
public record DoorRoute(String method, String path, long mostBytes, Answer answer) {

  /** Gives the reply to what was asked. */
  @FunctionalInterface
  public interface Answer {
    /**
     * Replies; several threads may ask at once.
     *
     * @param request what is asked
     * @return the reply
     * @throws DoorFault if it cannot be done as asked
     * @throws IOException if the machine could not
     */
    DoorReply to(DoorRequest request) throws DoorFault, IOException;
  }

  /**
   * Something that is only looked at.
   *
   * @param path the path
   * @param answer gives the reply
   * @return the route
   */
  public static DoorRoute get(String path, Answer answer) {
    return new DoorRoute("GET", path, 0, answer);
  }

  /**
   * Something that may change things.
   *
   * @param path the path
   * @param mostBytes how long a body may be
   * @param answer gives the reply
   * @return the route
   */
  public static DoorRoute post(String path, long mostBytes, Answer answer) {
    return new DoorRoute("POST", path, mostBytes, answer);
  }

  boolean serves(String asked) {
    return path.endsWith("/") && path.length() > 1 ? asked.startsWith(path) : asked.equals(path);
  }
}
