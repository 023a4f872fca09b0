package org.matraloom.app;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * Writes a file so that it is whole or not there: under another name beside it, then moved.
 *
 * <p>Whatever goes wrong is told in one sentence that begins with the file's name, and nothing is
 * left behind.
 */
final class WholeFile {

  /** Writes bytes. */
  interface Bytes {
    void to(OutputStream out) throws IOException;
  }

  /** Writes text. */
  interface Text {
    void to(Appendable out) throws IOException;
  }

  private WholeFile() {}

  static void write(Path target, Bytes content) throws IOException {
    Path folder = folderOf(target);
    Path part = folder.resolve(partName(target));
    try {
      try (OutputStream out = open(target, part)) {
        content.to(out);
      }
      move(part, target);
    } catch (IOException e) {
      throw new IOException("cannot write " + target + ": " + MachineWords.of(e), e);
    } finally {
      Files.deleteIfExists(part);
    }
  }

  static void writeText(Path target, Text content) throws IOException {
    write(
        target,
        out -> {
          Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
          content.to(writer);
          writer.flush();
        });
  }

  /** Refuses a place where no file can be. */
  static void requirePlace(Path target) {
    folderOf(target);
  }

  private static Path folderOf(Path target) {
    Path folder = target.toAbsolutePath().getParent();
    if (Files.isDirectory(target)) {
      throw new UserError(target + " is a folder; give the name of a file");
    }
    if (Files.exists(target) && !Files.isRegularFile(target)) {
      throw new UserError(target + " is a device; give the name of a file");
    }
    if (folder == null || !Files.isDirectory(folder)) {
      throw new UserError("the folder " + folder + " does not exist; make it first");
    }
    return folder;
  }

  private static String partName(Path target) {
    return "." + target.getFileName() + "." + Long.toHexString(System.nanoTime()) + ".part";
  }

  private static OutputStream open(Path target, Path part) throws IOException {
    try {
      return new BufferedOutputStream(
          Files.newOutputStream(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE));
    } catch (IOException e) {
      throw new IOException("no file can be made in the folder " + folderOf(target), e);
    }
  }

  private static void move(Path part, Path target) throws IOException {
    try {
      Files.move(part, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException notHere) {
      Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
