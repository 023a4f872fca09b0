package org.matraloom.app.cli;

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
import org.matraloom.wav.LeftOvers;

/**
 * Writes a file so that it is whole or not there: under another name beside it, then moved.
 *
 * <p>Whatever goes wrong is told in one sentence that begins with the file's name, and nothing is
 * left behind.
 */
public final class WholeFile {

  /** Writes bytes. */
  public interface Bytes {
    /**
     * Writes all of it.
     *
     * @param out where it goes; it is closed by others
     * @throws IOException if it cannot be written
     */
    void to(OutputStream out) throws IOException;
  }

  /** Writes text. */
  public interface Text {
    /**
     * Writes all of it.
     *
     * @param out where it goes
     * @throws IOException if it cannot be written
     */
    void to(Appendable out) throws IOException;
  }

  private WholeFile() {}

  /**
   * Writes a file of bytes.
   *
   * @param target the file; one of that name is replaced
   * @param content writes it
   * @throws UserError if no file can be there
   * @throws IOException if it cannot be written; the message names the file and why
   */
  public static void write(Path target, Bytes content) throws IOException {
    Path folder = folderOf(target);
    LeftOvers.removeBeside(target);
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

  /**
   * Writes a file of text in UTF-8.
   *
   * @param target the file; one of that name is replaced
   * @param content writes it
   * @throws UserError if no file can be there
   * @throws IOException if it cannot be written; the message names the file and why
   */
  public static void writeText(Path target, Text content) throws IOException {
    write(
        target,
        out -> {
          Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
          content.to(writer);
          writer.flush();
        });
  }

  /**
   * Refuses a place where no file can be.
   *
   * @param target the file to be written
   * @throws UserError if it is a folder or a device, or its folder is not there
   */
  public static void requirePlace(Path target) {
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
