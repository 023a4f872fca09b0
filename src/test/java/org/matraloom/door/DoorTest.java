package org.matraloom.door;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What a page elsewhere may try, said byte by byte. The attacks are those of the OWASP cheat sheets
 * "Cross-Site Request Forgery Prevention" and "REST Security", and of DNS rebinding as common
 * practice describes it: a foreign name that means this machine.
 */
class DoorTest {

  private static final int MOST = 100;

  private final AtomicInteger changes = new AtomicInteger();
  private final List<String> told = Collections.synchronizedList(new ArrayList<>());
  private Door door;
  private String cookie;

  @BeforeEach
  void open() throws IOException {
    door =
        Door.open(
            DoorKeys.fresh(),
            List.of(
                DoorRoute.get("/", request -> DoorReply.text(200, "the page")),
                DoorRoute.get("/parts/", request -> parts(request.path().substring(7))),
                DoorRoute.post("/change", MOST, request -> changed(request.body().length))),
            told::add);
    String path = door.address().substring(("http://" + own()).length());
    String entered = ask("GET " + path, "Host: " + own());
    assertTrue(entered.startsWith("HTTP/1.1 303"), entered);
    String line = entered.lines().filter(one -> one.startsWith("Set-cookie")).findFirst().get();
    assertTrue(line.contains("HttpOnly") && line.contains("SameSite=Strict"), line);
    cookie = "Cookie: " + line.substring(line.indexOf(' ') + 1, line.indexOf(';'));
  }

  @AfterEach
  void close() {
    door.close();
  }

  private DoorReply changed(int bytes) {
    changes.incrementAndGet();
    return DoorReply.text(200, "changed with " + bytes);
  }

  private static DoorReply parts(String name) throws DoorFault, IOException {
    return new PageParts("/org/matraloom/sheet/").reply(name);
  }

  private String own() {
    return "127.0.0.1:" + door.keys().port();
  }

  private String origin() {
    return "Origin: http://" + own();
  }

  private String ask(String request, String... head) throws IOException {
    return askWith(new byte[0], request, head);
  }

  private String askWith(byte[] body, String request, String... head) throws IOException {
    try (Socket socket = new Socket("127.0.0.1", door.keys().port())) {
      socket.setSoTimeout(10_000);
      String lines = request + " HTTP/1.1\r\n" + String.join("\r\n", head) + "\r\n";
      String end = "Connection: close\r\n\r\n";
      socket.getOutputStream().write((lines + end).getBytes(StandardCharsets.UTF_8));
      socket.getOutputStream().write(body);
      socket.getOutputStream().flush();
      socket.shutdownOutput();
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static void assertStatus(int status, String reply) {
    assertTrue(reply.startsWith("HTTP/1.1 " + status + " "), reply);
  }

  @Test
  void aPageThatWasLetInIsServed() throws IOException {
    String reply = ask("GET /", "Host: " + own(), cookie);
    assertStatus(200, reply);
    assertTrue(reply.endsWith("the page\n"), reply);
    assertTrue(reply.contains("default-src 'none'"), reply);
    assertTrue(reply.contains("nosniff"), reply);
    assertStatus(
        200, askWith(new byte[5], "POST /change", "Host: " + own(), origin(), cookie, length(5)));
    assertEquals(1, changes.get());
  }

  private static String length(int bytes) {
    return "Content-Length: " + bytes;
  }

  @Test
  void withoutTheSecretNothingIsServed() throws IOException {
    assertStatus(403, ask("GET /", "Host: " + own()));
    assertStatus(403, ask("GET /", "Host: " + own(), cookie.replace('=', '-')));
    assertStatus(403, ask("GET /", "Host: " + own(), cookie + "x"));
    assertStatus(403, ask("GET /enter?key=", "Host: " + own()));
    assertStatus(403, ask("GET /enter?key=%zz", "Host: " + own()).replace(" 400 ", " 403 "));
    assertStatus(403, ask("POST /change", "Host: " + own(), origin(), length(0)));
    assertEquals(0, changes.get());
  }

  @Test
  void aFirstAddressOpensOnce() throws IOException {
    String used = door.address().replaceAll("key=.*", "key=") + told.get(0).replaceAll(".*=", "");
    String path = used.substring(("http://" + own()).length());
    assertStatus(303, ask("GET " + path, "Host: " + own()));
    assertStatus(403, ask("GET " + path, "Host: " + own()));
    assertStatus(303, ask("GET " + path, "Host: " + own(), cookie));
    assertEquals(2, told.size());
    assertEquals(told.get(1), door.address());
    assertFalse(told.get(0).equals(told.get(1)));
  }

  /** DNS rebinding: the browser believes that the page and this server are one site. */
  @ParameterizedTest
  @ValueSource(strings = {"rain.example", "localhost", "127.0.0.1", "[::1]", "", "127.0.0.1:1"})
  void aForeignHostIsRefused(String host) throws IOException {
    String port = host.contains(":1") || host.isEmpty() ? "" : ":" + door.keys().port();
    String given = host.equals("127.0.0.1") ? host : host + port;
    assertStatus(403, ask("GET /", "Host: " + given, cookie));
    assertStatus(
        403, ask("POST /change", "Host: " + given, "Origin: http://" + given, cookie, length(0)));
    assertEquals(0, changes.get());
  }

  @Test
  void twoHostsAreRefused() throws IOException {
    String reply = ask("GET /", "Host: " + own(), "Host: rain.example", cookie);
    assertFalse(reply.startsWith("HTTP/1.1 200"), reply);
  }

  @ParameterizedTest
  @ValueSource(strings = {"http://rain.example", "null", "https://127.0.0.1", "http://localhost"})
  void aPostFromAnotherPageIsRefused(String from) throws IOException {
    assertStatus(403, ask("POST /change", "Host: " + own(), "Origin: " + from, cookie, length(0)));
    assertStatus(403, ask("GET /", "Host: " + own(), "Origin: " + from, cookie));
    assertEquals(0, changes.get());
  }

  @Test
  void aPostThatDoesNotSayWhereItComesFromIsRefused() throws IOException {
    assertStatus(403, ask("POST /change", "Host: " + own(), cookie, length(0)));
    assertEquals(0, changes.get());
  }

  @ParameterizedTest
  @ValueSource(strings = {"cross-site", "same-site"})
  void whatABrowserCallsForeignIsRefused(String site) throws IOException {
    assertStatus(403, ask("GET /", "Host: " + own(), "Sec-Fetch-Site: " + site, cookie));
    assertStatus(200, ask("GET /", "Host: " + own(), "Sec-Fetch-Site: same-origin", cookie));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/parts/../sheet/sheet.css",
        "/parts/%2e%2e/score/sollus.txt",
        "/parts/..%2fscore%2fsollus.txt",
        "/parts/%2fetc%2fpasswd",
        "/parts//etc/passwd",
        "/parts/sheet.css/",
        "/parts/.sheet.css",
        "/parts/HtmlSheet.class",
        "/parts/"
      })
  void noPathLeadsElsewhere(String path) throws IOException {
    assertStatus(404, ask("GET " + path, "Host: " + own(), cookie));
    assertStatus(200, ask("GET /parts/sheet.css", "Host: " + own(), cookie));
  }

  @Test
  void moreThanIsAllowedIsRefusedBeforeItIsRead() throws IOException {
    String[] head = {"Host: " + own(), origin(), cookie};
    assertStatus(413, ask("POST /change", head[0], head[1], head[2], length(2_000_000_000)));
    byte[] chunks = ("c8\r\n" + "x".repeat(200) + "\r\n0\r\n\r\n").getBytes(StandardCharsets.UTF_8);
    assertStatus(
        413,
        askWith(chunks, "POST /change", head[0], head[1], head[2], "Transfer-Encoding: chunked"));
    assertStatus(413, askWith(new byte[1], "GET /", head[0], head[2], length(1)));
    assertEquals(0, changes.get());
  }

  @Test
  void onlyTheLoopbackAddressAnswers() throws IOException {
    int port = door.keys().port();
    for (NetworkInterface card : Collections.list(NetworkInterface.getNetworkInterfaces())) {
      for (InetAddress address : Collections.list(card.getInetAddresses())) {
        if (!address.isLoopbackAddress()) {
          assertThrows(IOException.class, () -> new Socket(address, port).close(), address + "");
        }
      }
    }
    new Socket("127.0.0.1", port).close();
  }

  @Test
  void theEndWaitsForWhatHasBegun() throws Exception {
    CountDownLatch begun = new CountDownLatch(1);
    CountDownLatch go = new CountDownLatch(1);
    AtomicInteger written = new AtomicInteger();
    DoorWork work = new DoorWork();
    Thread writer =
        new Thread(
            () ->
                assertThrows(
                    IllegalStateException.class,
                    () ->
                        work.does(
                            () -> {
                              begun.countDown();
                              await(go);
                              written.incrementAndGet();
                              throw new IllegalStateException("also when it fails");
                            })));
    writer.start();
    begun.await();
    Thread ending = new Thread(() -> work.finish(60_000));
    ending.start();
    while (ending.getState() != Thread.State.TIMED_WAITING) {
      Thread.onSpinWait();
    }
    assertEquals(0, written.get());
    go.countDown();
    ending.join();
    assertEquals(1, written.get());
    assertThrows(IOException.class, () -> work.does(written::incrementAndGet));
    assertEquals(1, written.get());
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void whenItHasEndedNobodyAnswers() throws IOException {
    door.close();
    assertThrows(ConnectException.class, () -> ask("GET /", "Host: " + own(), cookie));
  }

  @Test
  void keptKeysAreReadBackAndAreTheirOwnersOnly(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("deep").resolve("door");
    assertEquals(0, DoorKeys.kept(file).port());
    door.keys().keep(file);
    assertEquals(door.keys(), DoorKeys.kept(file));
    assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
    Files.writeString(file, "80 short\n");
    assertEquals(0, DoorKeys.kept(file).port());
  }

  @Test
  void aTakenPortIsLeftAlone() throws IOException {
    try (Door second = Door.open(door.keys(), List.of(), told::add)) {
      assertTrue(second.keys().port() != door.keys().port());
    }
  }
}
