package org.matraloom.session;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOError;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jline.terminal.Attributes;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import org.jline.utils.Curses;
import org.jline.utils.InfoCmp.Capability;
import org.jline.utils.NonBlockingReader;

/**
 * The whole terminal as a page of lines, with keys that are heard as they go down.
 *
 * <p>The terminal is put back as it was when the screen is closed, and also when the program is
 * told to end in any way it can notice.
 */
final class Screen implements AutoCloseable, KeyDecoder.Source {

  private static final int USUAL_COLUMNS = 80;
  private static final int USUAL_ROWS = 24;

  private final Terminal terminal;
  private final Attributes before;
  private final byte[] farewell;
  private final AtomicBoolean isOpen = new AtomicBoolean(true);
  private final Thread atExit = new Thread(this::restore, "matraloom-terminal");
  private List<String> shown = List.of();
  private int shownColumns;
  private int shownRows;

  private Screen(Terminal terminal) {
    this.terminal = terminal;
    this.farewell = bytes(terminal, Capability.cursor_normal, Capability.exit_ca_mode);
    this.before = terminal.enterRawMode();
    Attributes keys = new Attributes(terminal.getAttributes());
    keys.setLocalFlag(Attributes.LocalFlag.ISIG, false);
    terminal.setAttributes(keys);
    terminal.puts(Capability.enter_ca_mode);
    terminal.puts(Capability.cursor_invisible);
    terminal.puts(Capability.keypad_local);
    terminal.flush();
    Runtime.getRuntime().addShutdownHook(atExit);
  }

  private static byte[] bytes(Terminal terminal, Capability... capabilities) {
    StringBuilder text = new StringBuilder();
    for (Capability capability : capabilities) {
      Optional.ofNullable(terminal.getStringCapability(capability))
          .ifPresent(sequence -> text.append(Curses.tputs(sequence)));
    }
    return text.toString().getBytes(StandardCharsets.US_ASCII);
  }

  /** Takes the terminal; empty if the program does not run in one that can show a page. */
  static Optional<Screen> open() {
    try {
      Terminal terminal = TerminalBuilder.builder().system(true).dumb(false).build();
      if (terminal.getType().startsWith(Terminal.TYPE_DUMB)
          || terminal.getStringCapability(Capability.cursor_address) == null) {
        terminal.close();
        return Optional.empty();
      }
      return Optional.of(new Screen(terminal));
    } catch (IOException | IllegalStateException noTerminal) {
      return Optional.empty();
    }
  }

  int columns() {
    int columns = terminal.getSize().getColumns();
    return columns > 0 ? columns : USUAL_COLUMNS;
  }

  int rows() {
    int rows = terminal.getSize().getRows();
    return rows > 0 ? rows : USUAL_ROWS;
  }

  /** Shows lines from the top; only those that differ are written. */
  synchronized void show(List<String> lines) {
    if (!isOpen.get()) {
      return;
    }
    if (shownColumns != columns() || shownRows != rows()) {
      shownColumns = columns();
      shownRows = rows();
      terminal.puts(Capability.clear_screen);
      shown = List.of();
    }
    for (int row = 0; row < Math.max(lines.size(), shown.size()); row++) {
      String line = row < lines.size() ? lines.get(row) : "";
      if (row >= shown.size() || !shown.get(row).equals(line)) {
        terminal.puts(Capability.cursor_address, row, 0);
        terminal.writer().write(line);
        if (line.length() < shownColumns) {
          terminal.puts(Capability.clr_eol);
        }
      }
    }
    terminal.flush();
    shown = lines;
  }

  @Override
  public int read(long waitMs) throws IOException {
    int character = terminal.reader().read(Math.max(1, waitMs));
    return character == NonBlockingReader.READ_EXPIRED ? NONE : character;
  }

  /**
   * Gives the terminal back. While the program is ending, the library may have closed its side
   * already, so the last characters go to the output itself.
   */
  private synchronized void restore() {
    if (!isOpen.getAndSet(false)) {
      return;
    }
    try {
      terminal.setAttributes(before);
    } catch (IllegalStateException | IOError closedAndRestored) {
      // The library has given the settings back itself.
    }
    try {
      OutputStream out = new FileOutputStream(FileDescriptor.out);
      out.write(farewell);
      out.flush();
    } catch (IOException gone) {
      // There is no terminal any more to be put right.
    }
  }

  @Override
  public void close() throws IOException {
    restore();
    if (Thread.currentThread() != atExit) {
      try {
        Runtime.getRuntime().removeShutdownHook(atExit);
      } catch (IllegalStateException endingAlready) {
        return;
      }
    }
    terminal.close();
  }
}
