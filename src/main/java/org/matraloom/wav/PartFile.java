package org.matraloom.wav;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** A file that is written under another name and takes its own when it is whole. */
final class PartFile implements AutoCloseable {

  private final Path target;
  private final Path part;
  private final FileChannel channel;

  /** Opens it beside the target, in the same folder; it is gone even if the program is stopped. */
  PartFile(Path target) throws IOException {
    this.target = target;
    if (Files.isDirectory(target)) {
      throw new IOException(target + " is a folder; give the name of a file");
    }
    if (Files.exists(target) && !Files.isRegularFile(target)) {
      throw new IOException(target + " is a device; give the name of a file");
    }
    Path folder = target.toAbsolutePath().getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      throw new IOException("cannot write " + target + ": there is no folder " + folder);
    }
    LeftOvers.removeBeside(target);
    part = folder.resolve(partName());
    try {
      channel = FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    } catch (IOException failure) {
      throw new IOException(
          "cannot write " + target + ": no file can be made in " + folder, failure);
    }
    part.toFile().deleteOnExit();
  }

  private String partName() {
    return "." + target.getFileName() + "." + Long.toHexString(System.nanoTime()) + ".part";
  }

  FileChannel channel() {
    return channel;
  }

  /** Gives the whole file its name, in place of what had it before. */
  void finish() throws IOException {
    channel.force(false);
    channel.close();
    try {
      Files.move(part, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException notHere) {
      Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** Leaves nothing behind if the file was not finished. */
  @Override
  public void close() throws IOException {
    channel.close();
    Files.deleteIfExists(part);
  }
}
