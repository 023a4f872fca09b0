package org.matraloom.app.open;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Set;
import org.matraloom.sheet.HtmlSheet;
import org.matraloom.sheet.Row;
import org.matraloom.sheet.Sheet;

/**
 * The rows of a sheet as they are sent: each under a key made of what is in it, and written out
 * only if the page does not have it already. Of a long piece a key press changes one row of
 * hundreds.
 *
 * @param known the keys of the rows that the page has
 */
record SentRows(Set<String> known) {

  /** Twelve bytes of a hash: two rows that differ never meet in practice. */
  private static final int KEY_BYTES = 12;

  /** The keys that a page has sent, between spaces. */
  static SentRows knownBy(JsonFields sent) {
    return new SentRows(Set.copyOf(Arrays.asList(sent.find("known").orElse("").split(" "))));
  }

  void write(Sheet sheet, JsonGenerator json) throws IOException {
    json.writeArrayFieldStart("rows");
    List<String> drawn = HtmlSheet.rowsApart(sheet);
    for (int index = 0; index < drawn.size(); index++) {
      Row row = sheet.rows().get(index);
      String html = drawn.get(index);
      String key = key(html);
      json.writeStartObject();
      json.writeStringField("key", key);
      json.writeNumberField("from", row.startBeat().toDouble());
      if (!known.contains(key)) {
        json.writeStringField("html", html);
        beats(row, json);
      }
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** Where the marks begin, in beats from where the row does. */
  private static void beats(Row row, JsonGenerator json) throws IOException {
    json.writeArrayFieldStart("at");
    for (var cell : row.cells()) {
      for (var mark : cell.marks()) {
        json.writeNumber(mark.beat().minus(row.startBeat()).toDouble());
      }
    }
    json.writeEndArray();
  }

  private static String key(String html) {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(html.getBytes(StandardCharsets.UTF_8));
      return Base64.getUrlEncoder().encodeToString(Arrays.copyOf(hash, KEY_BYTES));
    } catch (NoSuchAlgorithmException never) {
      throw new IllegalStateException("every Java has SHA-256", never);
    }
  }
}
