package org.matraloom.app.open;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.matraloom.door.DoorFault;
import org.matraloom.door.DoorReply;
import org.matraloom.door.DoorRequest;
import org.matraloom.door.DoorRoute;
import org.matraloom.door.PageParts;
import org.matraloom.picture.Typeface;
import org.matraloom.sheet.HtmlSheet;
import org.matraloom.shelf.ScoreName;

/**
 * The page itself: its frame, its parts, and the modules of the editor out of their WebJars.
 *
 * <p>The policy (W3C, "Content Security Policy Level 3") lets no code run but files of this server
 * and the import map, which is known by its hash; styles that the editor makes carry a word of the
 * page.
 */
final class PageAnswers {

  private static final String FOLDER = "/org/matraloom/app/open/";
  private static final String LIBRARY = "/lib/";
  private static final String PARTS = "/page/";
  private static final String FONTS = "/font/";
  private static final int WORD_BYTES = 18;

  private static final Set<String> SCRIPTS_WITH_FONTS =
      Set.of("tamil", "kannada", "telugu", "malayalam", "devanagari");

  private final PageParts parts = new PageParts(FOLDER);
  private final ModuleMap modules = new ModuleMap();
  private final Optional<ScoreName> first;

  PageAnswers(Optional<ScoreName> first) {
    this.first = first;
  }

  List<DoorRoute> routes() {
    return List.of(
        DoorRoute.get("/", request -> frame()),
        DoorRoute.get("/page/sheet.css", request -> sheetStyles()),
        DoorRoute.get(FONTS, request -> font(request.path().substring(FONTS.length()))),
        DoorRoute.get(PARTS, request -> parts.reply(request.path().substring(PARTS.length()))),
        DoorRoute.get(LIBRARY, this::module));
  }

  private DoorReply frame() throws DoorFault, IOException {
    String word = random();
    String map = modules.importMap();
    String page =
        new String(PageParts.read(FOLDER + "open.html"), StandardCharsets.UTF_8)
            .replace("@map@", map)
            .replace("@word@", word)
            .replace("@first@", first.map(ScoreName::file).orElse("").replace("'", "&#39;"));
    String policy =
        "default-src 'none'; script-src 'self' 'sha256-"
            + hash(map)
            + "'; style-src 'self' 'nonce-"
            + word
            + "'; connect-src 'self'; img-src 'self' data:; media-src 'self' blob:; font-src 'self';"
            + " worker-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
    Map<String, String> head =
        Map.of("Content-Security-Policy", policy, "Content-Encoding", "gzip");
    byte[] body = PageParts.packed(page.getBytes(StandardCharsets.UTF_8));
    return new DoorReply(DoorReply.OK, "text/html; charset=utf-8", head, body);
  }

  private static DoorReply sheetStyles() {
    return DoorReply.of(
        "text/css; charset=utf-8", HtmlSheet.styles().getBytes(StandardCharsets.UTF_8));
  }

  /** The font of a script, which the reader's system may lack. */
  private static DoorReply font(String name) throws DoorFault {
    if (!SCRIPTS_WITH_FONTS.contains(name)) {
      throw new DoorFault(DoorReply.MISSING, "there is no font for " + name);
    }
    return DoorReply.of("font/ttf", Typeface.fontFile(name.toUpperCase(Locale.ROOT)));
  }

  private DoorReply module(DoorRequest request) throws DoorFault, IOException {
    return modules.reply(request.path().substring(LIBRARY.length()));
  }

  private static String random() {
    byte[] bytes = new byte[WORD_BYTES];
    new SecureRandom().nextBytes(bytes);
    return Base64.getEncoder().encodeToString(bytes);
  }

  private static String hash(String text) {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return Base64.getEncoder().encodeToString(hash);
    } catch (NoSuchAlgorithmException never) {
      throw new IllegalStateException("every Java has SHA-256", never);
    }
  }
}
