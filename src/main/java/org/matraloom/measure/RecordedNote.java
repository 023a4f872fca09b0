package org.matraloom.measure;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** The head of a WAVE file, in which the recorder of this program leaves its note. */
final class RecordedNote {

  private static final int MOST_HEAD = 1 << 20;

  private RecordedNote() {}

  /** The text in which a note may be found; empty if there is no such file of that kind. */
  static String of(Path file) throws IOException {
    if (!Files.isRegularFile(file)) {
      return "";
    }
    try (InputStream in = Files.newInputStream(file)) {
      String head = new String(in.readNBytes(MOST_HEAD), StandardCharsets.ISO_8859_1);
      return head.startsWith("RIFF") ? head : "";
    }
  }
}
