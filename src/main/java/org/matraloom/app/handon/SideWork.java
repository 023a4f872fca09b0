package org.matraloom.app.handon;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.matraloom.app.cli.ProgressLine;

/** Pieces of work that need nothing of one another, as many at a time as there are processors. */
final class SideWork {

  private SideWork() {}

  /** Does all of it; the first one that fails stops what has not begun. */
  static void all(List<Callable<Void>> work, ProgressLine line) throws IOException {
    int threads = Math.max(1, Math.min(work.size(), Runtime.getRuntime().availableProcessors()));
    ExecutorService workers = Executors.newFixedThreadPool(threads);
    try (ProgressLine progress = line) {
      List<Future<Void>> running = new ArrayList<>();
      work.forEach(each -> running.add(workers.submit(each)));
      for (int index = 0; index < running.size(); index++) {
        running.get(index).get();
        progress.rendered(index + 1, running.size());
      }
    } catch (ExecutionException failed) {
      throw told(failed.getCause());
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IOException("the work was stopped");
    } finally {
      workers.shutdownNow();
    }
  }

  private static IOException told(Throwable cause) {
    if (cause instanceof RuntimeException unchecked) {
      throw unchecked;
    }
    return cause instanceof IOException io ? io : new IOException(cause);
  }
}
