package org.matraloom.picture;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/** The objects of a PDF file with their places (ISO 32000-1, 7.5). */
public final class PdfObjects {

  private final OutputStream out;
  private final List<Long> offsets = new ArrayList<>();
  private long written;

  /**
   * Begins a file.
   *
   * @param out where it goes
   * @throws IOException if it cannot be written
   */
  public PdfObjects(OutputStream out) throws IOException {
    this.out = out;
    raw("%PDF-1.5\n%\u00e2\u00e3\u00cf\u00d3\n".getBytes(StandardCharsets.ISO_8859_1));
  }

  /**
   * Keeps a number for an object that is written later.
   *
   * @return the number
   */
  public int reserve() {
    offsets.add(0L);
    return offsets.size();
  }

  /**
   * Writes an object.
   *
   * @param number its number
   * @param body what it is
   * @throws IOException if it cannot be written
   */
  public void write(int number, String body) throws IOException {
    begin(number);
    raw((body + "\nendobj\n").getBytes(StandardCharsets.ISO_8859_1));
  }

  /**
   * Writes a compressed stream.
   *
   * @param content what is in it
   * @return its number
   * @throws IOException if it cannot be written
   */
  public int stream(String content) throws IOException {
    return stream("", content);
  }

  /**
   * Writes a compressed stream with further entries in its dictionary.
   *
   * @param entries the entries
   * @param content what is in it
   * @return its number
   * @throws IOException if it cannot be written
   */
  public int stream(String entries, String content) throws IOException {
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    Deflater deflater = new Deflater();
    try (DeflaterOutputStream deflating = new DeflaterOutputStream(packed, deflater)) {
      deflating.write(content.getBytes(StandardCharsets.ISO_8859_1));
    } finally {
      deflater.end();
    }
    int number = reserve();
    begin(number);
    String head =
        "<< " + entries + "/Filter /FlateDecode /Length " + packed.size() + " >>\nstream\n";
    raw(head.getBytes(StandardCharsets.ISO_8859_1));
    raw(packed.toByteArray());
    raw("\nendstream\nendobj\n".getBytes(StandardCharsets.ISO_8859_1));
    return number;
  }

  /**
   * Writes the table of places and the end of the file.
   *
   * @param catalog the number of the catalog
   * @param info the number of the title and the like
   * @throws IOException if it cannot be written
   */
  public void finish(int catalog, int info) throws IOException {
    long table = written;
    StringBuilder end = new StringBuilder("xref\n0 " + (offsets.size() + 1) + "\n");
    end.append("0000000000 65535 f \n");
    for (long offset : offsets) {
      end.append(String.format(Locale.ROOT, "%010d 00000 n \n", offset));
    }
    end.append("trailer\n<< /Size " + (offsets.size() + 1) + " /Root " + catalog + " 0 R /Info ");
    end.append(info + " 0 R >>\nstartxref\n" + table + "\n%%EOF\n");
    raw(end.toString().getBytes(StandardCharsets.ISO_8859_1));
  }

  /**
   * A text string with a byte order mark, as a document's title is given.
   *
   * @param text the text
   * @return hexadecimal digits in brackets
   */
  public static String text(String text) {
    return "<FEFF" + utf16(text) + ">";
  }

  /**
   * A text as hexadecimal UTF-16, the high byte first.
   *
   * @param text the text
   * @return hexadecimal digits
   */
  public static String utf16(String text) {
    return HexFormat.of().withUpperCase().formatHex(text.getBytes(StandardCharsets.UTF_16BE));
  }

  private void begin(int number) throws IOException {
    offsets.set(number - 1, written);
    raw((number + " 0 obj\n").getBytes(StandardCharsets.ISO_8859_1));
  }

  private void raw(byte[] bytes) throws IOException {
    out.write(bytes);
    written += bytes.length;
  }
}
