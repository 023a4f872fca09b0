package org.matraloom.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a text file: first under another name beside it, so that it is whole or not there. */
final class TextOutput {

  private TextOutput() {}

  static void write(Path target, String text) throws IOException {
    Path folder = target.toAbsolutePath().getParent();
    if (Files.isDirectory(target)) {
      throw new UserError(target + " is a folder; give the name of a file, such as new.loom");
    }
    if (folder == null || !Files.isDirectory(folder)) {
      throw new UserError("the folder " + folder + " does not exist; make it first");
    }
    Path part = Files.createTempFile(folder, target.getFileName().toString(), ".part");
    try {
      Files.writeString(part, text, StandardCharsets.UTF_8);
      Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(part);
    }
  }
}
