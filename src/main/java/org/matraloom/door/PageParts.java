package org.matraloom.door;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.zip.GZIPOutputStream;

/**
 * Parts of a page that lie in the jar, packed as they are first asked for.
 *
 * <p>A name holds letters, digits, hyphens, low lines and single dots between them, so that no name
 * leads elsewhere.
 */
public final class PageParts {

  private static final String NAME = "[\\w-]+(\\.[\\w-]+)+";

  private static final Map<String, String> TYPES =
      Map.of(
          "js", "text/javascript; charset=utf-8",
          "css", "text/css; charset=utf-8",
          "html", "text/html; charset=utf-8",
          "json", "application/json; charset=utf-8",
          "svg", "image/svg+xml",
          "ttf", "font/ttf");

  /**
   * What a script may do that is a worker's: run code of this server, and ask it. A worker goes by
   * the policy that comes with its own script, not by that of its page (W3C, Content Security
   * Policy Level 3, 4.2).
   */
  private static final String WORKER_POLICY =
      "default-src 'none'; script-src 'self'; connect-src 'self'; frame-ancestors 'none'";

  private final String folder;
  private final Map<String, byte[]> packed = new ConcurrentHashMap<>();

  /**
   * The parts in a folder of the jar.
   *
   * @param folder the folder, beginning and ending with a slash
   */
  public PageParts(String folder) {
    this.folder = folder;
  }

  /**
   * A part.
   *
   * @param name its name in the folder
   * @return it, packed
   * @throws DoorFault if there is no such part
   * @throws IOException if it cannot be read
   */
  public DoorReply reply(String name) throws DoorFault, IOException {
    String type = TYPES.get(name.substring(name.lastIndexOf('.') + 1));
    if (!name.matches(NAME) || type == null) {
      throw new DoorFault(DoorReply.MISSING, "there is no part of that name");
    }
    byte[] body = packed.get(name);
    if (body == null) {
      body = packed(read(folder + name));
      packed.put(name, body);
    }
    Map<String, String> head =
        name.endsWith(".js")
            ? Map.of("Content-Encoding", "gzip", "Content-Security-Policy", WORKER_POLICY)
            : Map.of("Content-Encoding", "gzip");
    return new DoorReply(DoorReply.OK, type, head, body);
  }

  /**
   * Reads a part of the jar.
   *
   * @param path where it lies
   * @return its bytes
   * @throws DoorFault if there is no such part
   * @throws IOException if it cannot be read
   */
  public static byte[] read(String path) throws DoorFault, IOException {
    try (InputStream in = PageParts.class.getResourceAsStream(path)) {
      return Optional.ofNullable(in)
          .orElseThrow(() -> new DoorFault(DoorReply.MISSING, "there is no part of that name"))
          .readAllBytes();
    }
  }

  /**
   * Packs bytes as RFC 1952 has it.
   *
   * @param bytes what is packed
   * @return the packed bytes
   * @throws IOException never, as nothing is written to a file
   */
  public static byte[] packed(byte[] bytes) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (GZIPOutputStream zip = new GZIPOutputStream(out)) {
      zip.write(bytes);
    }
    return out.toByteArray();
  }
}
