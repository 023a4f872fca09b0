package org.matraloom.mouth;

/**
 * Whose voice it is, and what may be done with it.
 *
 * @param name what the voice is called: small letters, digits and hyphens
 * @param owner who spoke; one line, perhaps empty
 * @param terms what may be done with the voice; one line, perhaps empty
 * @param consent when the owner agreed, and to what; one line, empty if nobody did
 */
public record KitHead(String name, String owner, String terms, String consent) {

  /** What the owner of a voice agrees to, in one sentence. */
  public static final String CONSENT =
      "It is my own voice, it is kept on this machine only, and whoever gets a page, a track or a"
          + " film made with it, or the voice itself, hears it.";

  private static final int LONGEST_NAME = 40;

  /**
   * Checks the name and makes one line of each text.
   *
   * @throws IllegalArgumentException if the name is not of the allowed form
   */
  public KitHead {
    requireName(name);
    owner = oneLine(owner);
    terms = oneLine(terms);
    consent = oneLine(consent);
  }

  /**
   * Refuses what cannot be the name of a voice.
   *
   * @param name the name
   * @throws IllegalArgumentException with what is allowed
   */
  public static void requireName(String name) {
    if (!name.matches("[a-z0-9][a-z0-9-]*") || name.length() > LONGEST_NAME) {
      throw new IllegalArgumentException(
          "\""
              + name
              + "\" cannot be the name of a voice: use small letters, digits and hyphens, at most "
              + LONGEST_NAME
              + ", such as river-one");
    }
    if (name.equals("none")) {
      throw new IllegalArgumentException(
          "\"none\" is said where no voice is wanted; give yours another name");
    }
    if (name.equals("low") || name.equals("high")) {
      throw new IllegalArgumentException(
          "\"" + name + "\" is a voice of the program; give yours another name");
    }
  }

  private static String oneLine(String text) {
    return text.replaceAll("\\s+", " ").strip();
  }
}
