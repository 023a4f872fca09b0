package org.matraloom.door;

import java.io.IOException;

/** What is being done at the moment; it is waited for at the end. */
final class DoorWork {

  /** A piece of work. */
  interface Task {
    void run() throws IOException;
  }

  private int running;
  private boolean over;

  /** Does something, unless the end has come; then the connection is dropped. */
  void does(Task task) throws IOException {
    begin();
    try {
      task.run();
    } finally {
      end();
    }
  }

  private synchronized void begin() throws IOException {
    if (over) {
      throw new IOException("the server has ended");
    }
    running++;
  }

  private synchronized void end() {
    running--;
    notifyAll();
  }

  /** Lets nothing more begin and waits for the rest. */
  synchronized void finish(long mostMs) {
    over = true;
    long limit = System.nanoTime() + mostMs * 1_000_000;
    try {
      for (long left = mostMs; running > 0 && left > 0; ) {
        wait(left);
        left = (limit - System.nanoTime()) / 1_000_000;
      }
    } catch (InterruptedException hurried) {
      Thread.currentThread().interrupt();
    }
  }
}
