package org.matraloom.session;

import java.io.IOException;
import java.io.InputStream;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/**
 * Keys from a stream that is no terminal, such as a pipe; line feeds only end lines there, and the
 * end of the stream asks for nothing.
 */
final class InputKeys implements KeyDecoder.Source {

  private final BlockingQueue<Integer> characters = new LinkedBlockingQueue<>();

  InputKeys(InputStream in) {
    Thread reader = new Thread(() -> readAll(in), "matraloom-keys");
    reader.setDaemon(true);
    reader.start();
  }

  private void readAll(InputStream in) {
    try {
      int character;
      while ((character = in.read()) >= 0) {
        if (character != '\n') {
          characters.add(character);
        }
      }
    } catch (IOException gone) {
      return;
    }
  }

  @Override
  public int read(long waitMs) {
    try {
      Integer character = characters.poll(waitMs, TimeUnit.MILLISECONDS);
      return character == null ? NONE : character;
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return END;
    }
  }
}
