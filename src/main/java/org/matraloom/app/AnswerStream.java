package org.matraloom.app;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;

/**
 * The standard output, which remembers that it could not be written; writers of text only swallow
 * that. A reader that has read enough, such as head, is no fault.
 */
final class AnswerStream extends OutputStream {

  private static final String NO_READER = "Broken pipe";

  private final OutputStream target;
  private Optional<String> fault = Optional.empty();

  AnswerStream() {
    this(new FileOutputStream(FileDescriptor.out));
  }

  AnswerStream(OutputStream target) {
    this.target = target;
  }

  /** What the machine said when it could not write; empty if all went well. */
  Optional<String> fault() {
    return fault;
  }

  @Override
  public void write(int letter) throws IOException {
    write(new byte[] {(byte) letter}, 0, 1);
  }

  @Override
  public void write(byte[] bytes, int from, int count) throws IOException {
    try {
      target.write(bytes, from, count);
    } catch (IOException failure) {
      String said = String.valueOf(failure.getMessage());
      fault = said.contains(NO_READER) ? fault : Optional.of(said);
      throw failure;
    }
  }
}
