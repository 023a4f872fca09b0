package org.matraloom.site;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import org.matraloom.picture.Xml;

/** What all pages of a class begin and end with; nothing of a score runs or is fetched. */
final class SiteHtml {

  /** Who made the pages, so that no page of somebody else is written over. */
  static final String MADE_BY = "<meta name=\"generator\" content=\"matraloom class\">";

  private static final String POLICY =
      "default-src 'none'; style-src '%s'; script-src %s; img-src 'self' file:;"
          + " media-src 'self' file:; base-uri 'none'; form-action 'none'";

  private SiteHtml() {}

  /** A whole page; the script may be empty. */
  static String page(String title, String body, String script) {
    String styles = resource("site.css");
    String runs = script.isEmpty() ? "'none'" : "'" + hash(script) + "'";
    return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
        + "<meta http-equiv=\"Content-Security-Policy\" content=\""
        + String.format(POLICY, hash(styles), runs)
        + "\">\n"
        + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
        + MADE_BY
        + "\n<title>"
        + Xml.escape(title)
        + "</title>\n<style>"
        + styles
        + "</style>\n</head>\n<body>\n<main>\n"
        + body
        + "</main>\n"
        + (script.isEmpty() ? "" : "<script>" + script + "</script>\n")
        + "</body>\n</html>\n";
  }

  /** A link to a file; its name may hold anything. */
  static String link(String target, String words) {
    return "<a href=\"" + address(target) + "\">" + Xml.escape(words) + "</a>";
  }

  /** A name with slashes as an address below the page. */
  static String address(String name) {
    try {
      return Xml.escape(new URI(null, null, "./" + name, null).toASCIIString());
    } catch (URISyntaxException impossible) {
      throw new IllegalStateException("any name can be escaped: " + name, impossible);
    }
  }

  static String resource(String name) {
    try (InputStream in = SiteHtml.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("the part " + name + " of the program cannot be read", e);
    }
  }

  /** What a page may run, and how it may look, is named by hash (Content Security Policy 3). */
  private static String hash(String text) {
    return "sha256-" + Base64.getEncoder().encodeToString(sha256(text));
  }

  static byte[] sha256(String text) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java has SHA-256", impossible);
    }
  }
}
