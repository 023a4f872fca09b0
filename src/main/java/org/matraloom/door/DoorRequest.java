package org.matraloom.door;

import java.util.Map;

/**
 * What a page asks for, after it has been let in.
 *
 * @param path the path, decoded, as in {@code /api/shelf}
 * @param query the named values after the question mark, decoded
 * @param body what was sent along, at most as long as its route allows
 */
public record DoorRequest(String path, Map<String, String> query, byte[] body) {

  /** Copies the map. */
  public DoorRequest {
    query = Map.copyOf(query);
  }

  /**
   * A named value of the address.
   *
   * @param name its name
   * @return its value
   * @throws DoorFault if it was not given
   */
  public String value(String name) throws DoorFault {
    String value = query.get(name);
    if (value == null) {
      throw new DoorFault(DoorReply.BAD, "the address lacks " + name + "=");
    }
    return value;
  }
}
