package org.matraloom.recording;

import java.io.IOException;
import java.nio.file.Path;

/** A recording that cannot be measured; the message names the file, the fault and a way out. */
public final class RecordingException extends IOException {

  private static final long serialVersionUID = 1;

  /**
   * A fault of a file.
   *
   * @param file the recording
   * @param fault what is wrong, as a sentence without its subject: "breaks off inside its header"
   */
  public RecordingException(Path file, String fault) {
    super(file + " " + fault);
  }

  /**
   * A fault of a file that showed itself in a decoder.
   *
   * @param file the recording
   * @param fault what is wrong, as a sentence without its subject
   * @param cause what the decoder said
   */
  public RecordingException(Path file, String fault, Throwable cause) {
    super(file + " " + fault, cause);
  }
}
