package org.matraloom.door;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;

/**
 * Where a door stands and what opens it.
 *
 * @param port the port on the loopback address; 0 for any that is free
 * @param secret what a page that was let in carries with it
 */
public record DoorKeys(int port, String secret) {

  private static final int KEY_BYTES = 24;
  private static final int LEAST_LETTERS = 32;
  private static final int LAST_PORT = 65_535;
  private static final SecureRandom RANDOM = new SecureRandom();

  /**
   * Keys that nobody has seen.
   *
   * @return any port, a new secret
   */
  public static DoorKeys fresh() {
    return new DoorKeys(0, word());
  }

  /**
   * The keys that a door had before, so that pages left open find it again.
   *
   * @param file where they were kept
   * @return those keys; fresh ones if there are none that can be read
   */
  public static DoorKeys kept(Path file) {
    try {
      String[] words = Files.readString(file).strip().split(" ");
      int port = Integer.parseInt(words[0]);
      boolean whole = words.length == 2 && words[1].length() >= LEAST_LETTERS;
      return whole && port > 0 && port <= LAST_PORT ? new DoorKeys(port, words[1]) : fresh();
    } catch (IOException | NumberFormatException none) {
      return fresh();
    }
  }

  /**
   * Keeps the keys in a file that only its owner may read.
   *
   * @param file where; its folder is made
   * @throws IOException if it cannot be written
   */
  public void keep(Path file) throws IOException {
    Files.createDirectories(file.toAbsolutePath().getParent());
    Path part = file.resolveSibling(file.getFileName() + ".part");
    Files.deleteIfExists(part);
    try {
      Files.createFile(
          part, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
    } catch (UnsupportedOperationException notHere) {
      Files.createFile(part);
    }
    Files.writeString(part, port + " " + secret + "\n");
    Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
  }

  /** A word of 192 random bits. */
  static String word() {
    byte[] bytes = new byte[KEY_BYTES];
    RANDOM.nextBytes(bytes);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  /** Whether two words are equal, in a time that does not tell how far they are. */
  static boolean same(String one, String other) {
    return MessageDigest.isEqual(
        one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
  }

  DoorKeys at(int other) {
    return new DoorKeys(other, secret);
  }
}
