package org.matraloom.door;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.BindException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;

/**
 * Serves pages to the browser of this machine and to nobody else.
 *
 * <p>The first address holds a word that opens the door once; the page it opens is given a secret
 * that later requests carry. Then another first address is made and told.
 */
public final class Door implements AutoCloseable {

  /** The loopback address that the door stands on. */
  public static final String HOST = "127.0.0.1";

  private static final int THREADS = 12;
  private static final String LONGEST_REQUEST_SECONDS = "60";
  private static final long LAST_WRITES_MS = 10_000;

  private final HttpServer server;
  private final ExecutorService threads = Executors.newFixedThreadPool(THREADS, Door::thread);
  private final DoorKeys keys;
  private final DoorEntrance entrance;
  private final DoorWork work = new DoorWork();

  private Door(HttpServer server, DoorKeys keys, List<DoorRoute> routes, Consumer<String> next) {
    this.server = server;
    this.keys = keys;
    this.entrance = new DoorEntrance(keys, next);
    DoorDesk desk = new DoorDesk(new DoorGuard(keys), entrance, routes);
    server.setExecutor(threads);
    server.createContext("/", exchange -> work.does(() -> serve(desk, exchange)));
  }

  /**
   * Opens a door; it answers at once.
   *
   * @param wanted where it shall stand; another port is taken if that one is not free
   * @param routes what can be asked for
   * @param next is told each first address after the one that {@link #address} gives
   * @return the door
   * @throws IOException if no port can be had
   */
  public static Door open(DoorKeys wanted, List<DoorRoute> routes, Consumer<String> next)
      throws IOException {
    HttpServer server = bound(wanted.port());
    DoorKeys keys = wanted.at(server.getAddress().getPort());
    Door door = new Door(server, keys, List.copyOf(routes), next);
    server.start();
    return door;
  }

  private static HttpServer bound(int port) throws IOException {
    // Else one who sends nothing more keeps a thread for ever.
    System.setProperty("sun.net.httpserver.maxReqTime", LONGEST_REQUEST_SECONDS);
    // Else a reply waits until the browser has confirmed its head, up to 40 ms (RFC 1122, 4.2.3.4).
    System.setProperty("sun.net.httpserver.nodelay", "true");
    InetAddress loopback = InetAddress.getByAddress(HOST, new byte[] {127, 0, 0, 1});
    try {
      return HttpServer.create(new InetSocketAddress(loopback, port), 0);
    } catch (BindException taken) {
      return HttpServer.create(new InetSocketAddress(loopback, 0), 0);
    }
  }

  /**
   * The first address, for one page.
   *
   * @return an address that opens the door once
   */
  public String address() {
    return entrance.address();
  }

  /**
   * What opens this door.
   *
   * @return its port and its secret
   */
  public DoorKeys keys() {
    return keys;
  }

  /** Lets what has begun come to its end, at most ten seconds, and lets nothing more begin. */
  @Override
  public void close() {
    work.finish(LAST_WRITES_MS);
    server.stop(0);
    threads.shutdownNow();
  }

  private static void serve(DoorDesk desk, HttpExchange exchange) throws IOException {
    try (exchange) {
      desk.serve(exchange);
    }
  }

  private static Thread thread(Runnable task) {
    Thread thread = new Thread(task, "matraloom-door");
    thread.setDaemon(true);
    return thread;
  }
}
