package org.matraloom.device;

import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.util.Set;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.DataLine;
import javax.sound.sampled.Line;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.Mixer;
import javax.sound.sampled.SourceDataLine;
import javax.sound.sampled.TargetDataLine;

/** A device that exists in the test only; its queue moves when the test says so. */
final class FakeMixer {

  static final class Info extends Mixer.Info {
    Info(String name) {
      super(name, "made up", "a device of the tests", "1");
    }
  }

  private final String name;
  private final Set<Integer> rates;
  private final Class<? extends DataLine> kind;

  boolean busy;
  boolean dead;
  int refusals;

  /** After so many more looks at it the device has played all it had. */
  int looksUntilDry = Integer.MAX_VALUE;

  AudioFormat format;
  int bufferBytes;
  long written;
  long played;
  long captured;
  long read;
  boolean open;
  boolean running;

  FakeMixer(String name, Class<? extends DataLine> kind, Set<Integer> rates) {
    this.name = name;
    this.kind = kind;
    this.rates = rates;
  }

  static FakeMixer speaker(String name) {
    return new FakeMixer(name, SourceDataLine.class, Set.of(44_100, 48_000, 96_000));
  }

  Mixer mixer() {
    return (Mixer)
        Proxy.newProxyInstance(
            getClass().getClassLoader(), new Class<?>[] {Mixer.class}, this::askMixer);
  }

  private Object askMixer(Object self, Method method, Object[] arguments)
      throws LineUnavailableException {
    return switch (method.getName()) {
      case "getMixerInfo" -> new Info(name);
      case "isLineSupported" -> ((Line.Info) arguments[0]).getLineClass() == kind;
      case "getLine" -> line();
      case "equals" -> self == arguments[0];
      case "hashCode" -> System.identityHashCode(self);
      default -> throw new UnsupportedOperationException(method.getName());
    };
  }

  DataLine line() {
    return (DataLine)
        Proxy.newProxyInstance(getClass().getClassLoader(), new Class<?>[] {kind}, this::askLine);
  }

  private Object askLine(Object self, Method method, Object[] arguments)
      throws LineUnavailableException {
    switch (method.getName()) {
      case "open":
        open((AudioFormat) arguments[0], (Integer) arguments[1]);
        return null;
      case "start":
        running = true;
        return null;
      case "close":
        open = false;
        return null;
      case "isOpen":
        return open;
      case "getFormat":
        return format;
      case "getBufferSize":
        return bufferBytes;
      case "available":
        return available();
      case "write":
        return write((Integer) arguments[2]);
      case "read":
        return read((byte[]) arguments[0], (Integer) arguments[1], (Integer) arguments[2]);
      default:
        throw new UnsupportedOperationException(method.getName());
    }
  }

  private void open(AudioFormat wanted, int bytes) throws LineUnavailableException {
    if (busy || !rates.contains((int) wanted.getSampleRate())) {
      throw new LineUnavailableException("line with format " + wanted + " not supported.");
    }
    format = wanted;
    bufferBytes = bytes;
    open = true;
  }

  private int available() {
    if (kind == TargetDataLine.class) {
      return (int) (captured - read);
    }
    if (looksUntilDry-- == 0) {
      played = written;
    }
    return (int) (bufferBytes - (written - played));
  }

  private int write(int length) {
    if (dead || refusals-- > 0) {
      return 0;
    }
    written += length;
    return length;
  }

  private int read(byte[] bytes, int offset, int length) {
    for (int i = 0; i < length; i++) {
      bytes[offset + i] = (byte) (read + i);
    }
    read += length;
    return length;
  }
}
