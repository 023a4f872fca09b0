package org.matraloom.sound;

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

  /** Opens it beside the target, in the same folder. */
  PartFile(Path target) throws IOException {
    this.target = target;
    if (Files.isDirectory(target)) {
      throw new IOException(target + " is a folder; give the name of a file");
    }
    Path folder = target.toAbsolutePath().getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      throw new IOException("cannot write " + target + ": there is no folder " + folder);
    }
    String name = "." + target.getFileName() + "." + Long.toHexString(System.nanoTime()) + ".part";
    this.part = folder.resolve(name);
    try {
      this.channel =
          FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    } catch (IOException failure) {
      throw new IOException("cannot write into the folder " + folder, failure);
    }
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
