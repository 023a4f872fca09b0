import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.Line;
import javax.sound.sampled.Mixer;
import javax.sound.sampled.SourceDataLine;
import javax.sound.sampled.spi.MixerProvider;

/** A sound device whose driver fails after a second, to see what the program does then. */
public final class FaultyDevice extends MixerProvider {

  private static final class Info extends Mixer.Info {
    Info() {
      super("faulty", "made up", "fails after a second", "1");
    }
  }

  private static final Info INFO = new Info();
  private final long opened = System.nanoTime();
  private AudioFormat format;
  private int size;

  @Override
  public Mixer.Info[] getMixerInfo() {
    return new Mixer.Info[] {INFO};
  }

  @Override
  public Mixer getMixer(Mixer.Info wanted) {
    if (!INFO.equals(wanted)) {
      throw new IllegalArgumentException("not here");
    }
    return proxy(Mixer.class);
  }

  private <T> T proxy(Class<T> type) {
    return type.cast(
        Proxy.newProxyInstance(type.getClassLoader(), new Class<?>[] {type}, this::answer));
  }

  private Object answer(Object self, Method method, Object[] given) {
    switch (method.getName()) {
      case "getMixerInfo":
        return INFO;
      case "isLineSupported":
        return ((Line.Info) given[0]).getLineClass() == SourceDataLine.class;
      case "getLine":
        return proxy(SourceDataLine.class);
      case "open":
        format = (AudioFormat) given[0];
        size = (Integer) given[1];
        return null;
      case "getFormat":
        return format;
      case "getBufferSize":
        return size;
      case "available":
        return size - size / 20;
      case "isOpen":
        return true;
      case "write":
        if (System.nanoTime() - opened > 4_000_000_000L) {
          throw new IllegalStateException("the driver has failed");
        }
        pause();
        return given[2];
      case "equals":
        return self == given[0];
      case "hashCode":
        return 1;
      default:
        return null;
    }
  }

  private static void pause() {
    try {
      Thread.sleep(10);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }
}
