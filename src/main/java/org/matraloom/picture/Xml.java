package org.matraloom.picture;

/** Text inside markup. */
public final class Xml {

  private Xml() {}

  /**
   * A text that may stand in an element or an attribute; what XML 1.0 cannot hold is dropped.
   *
   * @param text any text
   * @return the text in XML
   */
  public static String escape(String text) {
    StringBuilder safe = new StringBuilder();
    text.codePoints()
        .filter(letter -> letter >= ' ' && letter != 0xfffe && letter != 0xffff)
        .filter(letter -> letter < Character.MIN_SURROGATE || letter > Character.MAX_SURROGATE)
        .forEach(
            letter -> {
              switch (letter) {
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '&' -> safe.append("&amp;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> safe.appendCodePoint(letter);
              }
            });
    return safe.toString();
  }
}
