package org.matraloom.app.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.PrintWriter;

/** Indented JSON to a command's output, with a line end after it. */
public final class Json implements AutoCloseable {

  private static final DefaultIndenter INDENT = new DefaultIndenter("  ", "\n");

  private final PrintWriter out;
  private final JsonGenerator generator;

  private Json(PrintWriter out, JsonGenerator generator) {
    this.out = out;
    this.generator = generator;
  }

  /**
   * Opens a writer.
   *
   * @param out where the JSON goes; it stays open
   * @return the writer, to be closed
   * @throws IOException if it cannot be written
   */
  public static Json to(PrintWriter out) throws IOException {
    JsonGenerator generator = new JsonFactory().createGenerator(out);
    generator.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
    generator.setPrettyPrinter(
        new DefaultPrettyPrinter().withObjectIndenter(INDENT).withArrayIndenter(INDENT));
    return new Json(out, generator);
  }

  /**
   * Writes the parts of the JSON.
   *
   * @return the generator
   */
  public JsonGenerator generator() {
    return generator;
  }

  @Override
  public void close() throws IOException {
    generator.close();
    out.println();
  }
}
