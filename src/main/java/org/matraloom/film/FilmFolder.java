package org.matraloom.film;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.stream.Stream;

/**
 * A folder beside the film in which it is made; what an interrupted run left there is thrown away.
 *
 * <p>It is removed when it is closed, and when the program is interrupted.
 */
final class FilmFolder implements AutoCloseable {

  private final Path target;
  private final Path folder;
  private final FileChannel channel;
  private final Thread atEnd = new Thread(this::sweep);

  private FilmFolder(Path target, Path folder, FileChannel channel) {
    this.target = target;
    this.folder = folder;
    this.channel = channel;
  }

  /** Makes the folder for a film; the folder of the film must be there. */
  static FilmFolder beside(Path target) throws IOException {
    Path folder = target.toAbsolutePath().resolveSibling("." + target.getFileName() + ".part");
    Files.createDirectories(folder);
    Path held = folder.resolve("held");
    FileChannel channel =
        FileChannel.open(held, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    if (!hold(channel)) {
      channel.close();
      throw new FilmFault(target + " is being made by another run of this program; wait for it");
    }
    FilmFolder made = new FilmFolder(target, folder, channel);
    for (Path left : made.files()) {
      if (!left.equals(held)) {
        Files.delete(left);
      }
    }
    Runtime.getRuntime().addShutdownHook(made.atEnd);
    return made;
  }

  private static boolean hold(FileChannel channel) throws IOException {
    try {
      FileLock lock = channel.tryLock();
      return lock != null;
    } catch (OverlappingFileLockException here) {
      return false;
    }
  }

  Path file(String name) {
    return folder.resolve(name);
  }

  /** Gives a finished file its name. */
  void finish(Path made) throws IOException {
    Files.move(made, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }

  private List<Path> files() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.toList();
    }
  }

  private void sweep() {
    try {
      channel.close();
      for (Path left : files()) {
        Files.deleteIfExists(left);
      }
      Files.deleteIfExists(folder);
    } catch (IOException alreadyGone) {
      // The next run sweeps again.
      return;
    }
  }

  @Override
  public void close() {
    sweep();
    try {
      Runtime.getRuntime().removeShutdownHook(atEnd);
    } catch (IllegalStateException ending) {
      // The program is ending, and the hook runs or has run.
      return;
    }
  }
}
