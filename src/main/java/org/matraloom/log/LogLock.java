package org.matraloom.log;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/**
 * The right to change the log, for one at a time, in whatever process.
 *
 * <p>The lock is on an empty file beside the log, which is never replaced. The system lets go of it
 * when its process ends, in whatever way.
 */
final class LogLock {

  /** What is done meanwhile. */
  interface Work<T> {
    T run() throws IOException;
  }

  private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(20);
  private static final long NAP_NANOS = TimeUnit.MILLISECONDS.toNanos(1);

  private LogLock() {}

  /**
   * Waits for the lock and works while it is held.
   *
   * @throws IOException if somebody else keeps it for 20 seconds, the folder cannot be written, or
   *     the work fails
   */
  static <T> T whileHeld(Path log, Work<T> work) throws IOException {
    Path file = log.resolveSibling(log.getFileName() + ".lock");
    try (FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      long limit = System.nanoTime() + PATIENCE_NANOS;
      while (tryLock(channel).isEmpty()) {
        if (System.nanoTime() > limit) {
          throw new IOException("another program keeps " + log + " locked; try again");
        }
        LockSupport.parkNanos(NAP_NANOS);
      }
      return work.run();
    }
  }

  private static Optional<FileLock> tryLock(FileChannel channel) throws IOException {
    try {
      return Optional.ofNullable(channel.tryLock());
    } catch (OverlappingFileLockException elsewhereInThisProcess) {
      return Optional.empty();
    }
  }
}
