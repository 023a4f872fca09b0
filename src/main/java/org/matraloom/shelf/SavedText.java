package org.matraloom.shelf;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * A text as it lies on the disk.
 *
 * @param text the text
 * @param stamp what it is known by: the beginning of its SHA-256
 */
public record SavedText(String text, String stamp) {

  private static final int STAMP_BYTES = 12;

  /**
   * A text with its stamp.
   *
   * @param text the text
   * @return both
   */
  public static SavedText of(String text) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      byte[] hash = digest.digest(text.getBytes(StandardCharsets.UTF_8));
      return new SavedText(text, HexFormat.of().formatHex(hash, 0, STAMP_BYTES));
    } catch (NoSuchAlgorithmException never) {
      throw new IllegalStateException("every Java has SHA-256", never);
    }
  }
}
